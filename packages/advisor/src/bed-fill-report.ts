import type { BedFill, CautionId } from '@loamwright/science';
import type { Saying } from '@loamwright/words';
import {
  amountOf,
  byEye,
  LEAST_COUNT,
  lossPlaces,
  type PartWords,
  partWords,
  plainPlaces,
  twoDigits,
} from './blend-words.ts';
import { measured } from './measured.ts';
import { areaLoad, bulk, depth, mass, say, sayOf } from './saying.ts';

/** The filling of a raised bed in sentences. */
export interface BedFillReport {
  /** What goes in as the mix; its volumes stand in the places `stuff[i].volume` and `volume`. */
  readonly answer: Saying;
  /** The woody foot; null without one. */
  readonly base: Saying | null;
  readonly parts: readonly PartWords[];
  readonly judged: readonly Saying[];
  readonly advice: readonly Saying[];
  readonly cautions: readonly CautionId[];
}

/** The answer of `bed-fill` in sentences. */
export function bedFillReport(bed: BedFill): BedFillReport {
  const parts = bed.parts.map(partWords);
  const { base } = bed;
  return {
    answer: say('blend.bed.answer', { stuff: parts.map(({ said }) => said), volume: bulk(bed.volume_m3) }),
    base: base === undefined ? null : say('blend.bed.base', { stuff: amountOf(sayOf('blend.base', base.stuff), base) }),
    parts,
    judged: [
      say('blend.bed.settles', lossPlaces(bed.settled_share)),
      loadWords(bed),
      compostWords(bed),
      say('blend.bed.organic', plainPlaces(bed.organicMatter_pctDry)),
      ...(bed.compost.stands === 'none' ? [] : [say('blend.bed.phosphorus', twoDigits(bed.phosphorus_years))]),
      ...saltWords(bed),
      ...(bed.compost.stands === 'none' ? [] : [sayOf('blend.ripe', bed.ripeness)]),
      topUpWords(bed),
    ],
    advice: bed.advice.map((id) => sayOf('blend.bed.advice', id)),
    cautions: bed.cautions,
  };
}

function loadWords({ load_kgPerM2, mass_kg, deck_kgPerM2, overDeck }: BedFill): Saying {
  return say('blend.bed.load', {
    load: areaLoad(load_kgPerM2),
    mass: mass(mass_kg),
    deck: areaLoad(deck_kgPerM2),
    chance: { chance: overDeck },
  });
}

function compostWords({ compost }: BedFill): Saying {
  return sayOf('blend.bed.compost', compost.stands, {
    share: Math.round(compost.share_pctVolume),
    low: compost.low_pctVolume,
    high: compost.high_pctVolume,
  });
}

function saltWords({ salts, compost }: BedFill): readonly Saying[] {
  const { likely, low, high } = plainPlaces(salts.conductivity_dSPerM, 1);
  return [
    say('blend.bed.salts', {
      salts: likely,
      low,
      high,
      sensitive: salts.sensitive_dSPerM,
      underSensitive: { chance: salts.underSensitive },
      hardy: salts.hardy_dSPerM,
      underHardy: { chance: salts.underHardy },
    }),
    ...(salts.measured || compost.stands === 'none' ? [] : [say('blend.salts.guessed')]),
  ];
}

/** Less than this nobody sees a bed sink by. */
const LEAST_DROP_M = 0.005;

function topUpWords({ drop_m, topUp }: BedFill): Saying {
  if (drop_m.p50 < LEAST_DROP_M) return say('blend.bed.no-top-up');
  const places = { drop: depth(drop_m), range: { ...depth(drop_m), asRange: true } } as const;
  if (topUp.count.p50 < LEAST_COUNT)
    return say('blend.bed.top-up-little', { ...places, volume: bulk(topUp.volume_m3) });
  return say('blend.bed.top-up', {
    ...places,
    amount: measured(topUp.measure, byEye(topUp.count.p50)),
    volume: bulk(topUp.volume_m3),
  });
}
