import type { Holding } from '@loamwright/daybook';
import {
  type CautionId,
  type Estimate,
  inOrder,
  type MixBalance,
  type NitrogenToReach,
  nitrogenGrade_pctAsIs,
  type WaterToAdd,
} from '@loamwright/science';
import type { Figure, Saying } from '@loamwright/words';
import { type BeliefSaid, beliefWords } from './belief-words.ts';
import { materialName } from './names.ts';
import { bulk, depth, liquid, liquidCover, mass, say, smallMass } from './saying.ts';

/** What was worked out of the same stuff. */
export interface NeedsFound {
  readonly balance: MixBalance;
  readonly water: WaterToAdd;
  /** Nitrogen to a C:N, the higher ratio first. */
  readonly nitrogen: readonly [NitrogenToRatio, NitrogenToRatio];
}

export interface NitrogenToRatio extends NitrogenToReach {
  readonly goal_ratio: number;
}

/** What a gauge shows after a day of steady rain. */
const GOOD_RAIN_MM = 25;
const MM_PER_M = 1000;

/** What amounts of stuff want before they rot hot, in sentences. */
export interface NeedsReport {
  readonly stuff: Saying;
  readonly water: readonly Saying[];
  readonly nitrogen: readonly Saying[];
  readonly beliefs: readonly BeliefSaid[];
  readonly cautions: readonly CautionId[];
}

/** A guess this wide, p90 over p10, is worth a scale. */
const WIDE_TIMES = 2;
/** From here on a bare kilogram tells enough. */
const SMALL_KG = 1;

/**
 * Water, dry stuff and nitrogen that the same stuff wants, in sentences.
 *
 * @param holding gives the names of the grower's own materials; a folded empty daybook will do.
 */
export function needsReport(found: NeedsFound, holding: Holding): NeedsReport {
  const { balance, water, nitrogen } = found;
  const [high] = nitrogen;
  const lacks = 2 * high.lacks.met > high.lacks.of;
  const { p10, p90 } = balance.wet_kg;
  const ratio = balance.carbonToNitrogen_ratio?.value;
  return {
    stuff: say('needs.stuff', {
      stuff: balance.ingredients.map(({ material }) => materialName(holding, material)),
      mass: { ...mass(balance.wet_kg), asRange: true },
      volume: { ...bulk(looseOf(balance)), asRange: true },
      water: Math.round(balance.moisture_pctWet.value.p50),
      ratio:
        ratio === undefined
          ? say('needs.ratio.none')
          : say('needs.ratio', { likely: sensible(ratio.p50), low: sensible(ratio.p10), high: sensible(ratio.p90) }),
    }),
    water: [...waterWords(water, holding), ...(p90 > WIDE_TIMES * p10 ? [say('needs.weigh')] : [])],
    nitrogen: lacks ? nitrogenWords(found) : [say('needs.nitrogen.enough')],
    beliefs: beliefWords({
      materials: balance.ingredients.map(
        ({ material }) => holding.materials.get(material)?.described?.body.like ?? material,
      ),
    }),
    cautions: inOrder([...balance.cautions, ...(lacks ? (['ammonia'] as const) : [])]),
  };
}

/** As it lies, before anything is mixed or trodden: the middle and ends of the parts added up. */
function looseOf({ ingredients }: MixBalance): Estimate {
  const sum = (of: keyof Estimate): number => ingredients.reduce((all, { volume_m3 }) => all + volume_m3[of], 0);
  return { p10: sum('p10'), p50: sum('p50'), p90: sum('p90') };
}

function waterWords(water: WaterToAdd, holding: Holding): readonly Saying[] {
  const { decision, goal_pctWet: goal, driers } = water;
  switch (decision) {
    case 'right':
      return [say('needs.water.right')];
    case 'add-water':
      return [
        say('needs.water.add-water', { goal, water: { ...liquid(water.water_L), asRange: true } }),
        say('needs.water.rain', { rain: depth(GOOD_RAIN_MM / MM_PER_M), water: liquidCover(GOOD_RAIN_MM) }),
      ];
    case 'too-wet':
      return [
        say('needs.water.too-wet', {
          goal,
          driers: driers.map(({ material, wet_kg, volume_m3 }) =>
            say('needs.drier', {
              mass: weight(wet_kg),
              volume: bulk(volume_m3),
              material: materialName(holding, material),
            }),
          ),
        }),
      ];
  }
}

function nitrogenWords({ balance, nitrogen: [high, low] }: NeedsFound): readonly Saying[] {
  const isWoody = balance.warnings.some(({ code }) => code === 'slow-carbon');
  return [
    say('needs.nitrogen.lacks', {
      high: weight(high.nitrogen_kg),
      highRatio: high.goal_ratio,
      highUrea: weight(ureaOf(high)),
      low: weight(low.nitrogen_kg),
      lowRatio: low.goal_ratio,
      lowUrea: weight(ureaOf(low)),
      grade: nitrogenGrade_pctAsIs('urea'),
    }),
    ...(isWoody ? [say('needs.nitrogen.slow')] : []),
    say('needs.nitrogen.how'),
    say('needs.nitrogen.none-for-mould'),
  ];
}

function ureaOf({ bought }: NitrogenToReach): Estimate {
  const urea = bought.find(({ id }) => id === 'urea');
  if (urea === undefined) throw new RangeError('urea is among what is sold');
  return urea.mass_kg;
}

/** Small masses to the gram, larger ones to the kilogram, each with its range. */
function weight(mass_kg: Estimate): Figure {
  return { ...(mass_kg.p50 < SMALL_KG ? smallMass(mass_kg) : mass(mass_kg)), asRange: true };
}

/** Two digits: no figure of a mix is better known. */
function sensible(value: number): number {
  return Number(value.toPrecision(2));
}
