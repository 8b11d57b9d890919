import type { Holding } from '@loamwright/daybook';
import type { BuildCard, CardLayer, CautionId } from '@loamwright/science';
import type { Saying } from '@loamwright/words';
import { type Counted, countedOf } from './measured.ts';
import { type PermitWords, permitWords } from './mix-report.ts';
import { materialName } from './names.ts';
import { height, liquid, say, sayOf } from './saying.ts';

/** One layer of the card, to scale and in words. */
export interface CardLayerWords {
  readonly role: CardLayer['role'];
  readonly bottom_m: number;
  readonly height_m: number;
  /** The materials, for the drawing. */
  readonly materials: readonly string[];
  /** "Dry: 2 barrows of straw." */
  readonly said: Saying;
  /** Each material by itself: "2 barrows of straw". */
  readonly parts: readonly Saying[];
  readonly water_L: number;
  readonly water: Saying | null;
  readonly starter: Saying | null;
}

/** How to lay a heap, in sentences, from the ground up. */
export interface BuildCardReport {
  readonly layers: readonly CardLayerWords[];
  readonly repeats: Saying | null;
  readonly height: Saying;
  readonly water: Saying;
  readonly chop: readonly Saying[];
  readonly notes: readonly Saying[];
  readonly permits: readonly PermitWords[];
  readonly cautions: readonly CautionId[];
}

/**
 * The answer of `build-card` in sentences.
 *
 * @param holding gives the names of the grower's own materials; a folded empty daybook will do.
 */
export function buildCardReport(card: BuildCard, holding: Holding): BuildCardReport {
  const { layers, repeats, height_m, water_L, chop, notes, permits, cautions } = card;
  return {
    layers: layers.map((layer) => layerWords(layer, holding)),
    repeats: repeats > 0 && notes.includes('fork-together') ? say('advisor.card.repeats', { repeats }) : null,
    height: say('advisor.card.height', { height: height(height_m) }),
    water: water_L > 0 ? say('advisor.card.water-all', { water: liquid(water_L) }) : say('advisor.card.no-water'),
    chop: chop.map(({ material, reason }) =>
      say('advisor.card.chop', { material: materialName(holding, material), reason: sayOf('chop.reason', reason) }),
    ),
    notes: notes.map((code) => sayOf('advisor.card.note', code)),
    permits: permits.map((permitted) => permitWords(permitted, holding)),
    cautions,
  };
}

/** What lies thinner is no layer that anyone could lay: common practice, no source. */
const THINNEST_M = 0.03;

function layerWords(layer: CardLayer, holding: Holding): CardLayerWords {
  const { role, bottom_m, height_m, parts, water_L, starter } = layer;
  const some = (part: Counted): Saying => countedOf(holding, part);
  const stuff = parts.map(some);
  return {
    role,
    bottom_m,
    height_m,
    materials: parts.map(({ material }) => material),
    said: say(height_m < THINNEST_M ? 'advisor.card.scatter' : 'advisor.card.layer', {
      role: sayOf('advisor.card.role', role),
      stuff,
    }),
    parts: stuff,
    water_L,
    water: water_L > 0 ? say('advisor.card.water', { water: liquid(water_L) }) : null,
    starter: starter === undefined ? null : say('advisor.card.starter', { starter: some(starter) }),
  };
}
