import { type CautionId, likely, type PottingMix } from '@loamwright/science';
import type { Saying } from '@loamwright/words';
import { lossPlaces, type PartWords, partWords, plainPlaces } from './blend-words.ts';
import { bulk, liquid, mass, say, sayOf } from './saying.ts';

/** A potting mix in sentences. */
export interface PottingReport {
  /** The answer as a sentence; its volumes stand in the places `stuff[i].volume` and `volume`. */
  readonly answer: Saying;
  readonly recipe: Saying;
  readonly parts: readonly PartWords[];
  /** Salts, ripeness, air, pH, weight, shrinkage: each with its range or chance. */
  readonly judged: readonly Saying[];
  readonly advice: readonly Saying[];
  readonly cautions: readonly CautionId[];
}

/** The answer of `potting-mix` in sentences. */
export function pottingReport(mix: PottingMix): PottingReport {
  const parts = mix.parts.map(partWords);
  return {
    answer: sayOf('blend.potting', isUnfit(mix) ? 'not-yet' : 'answer', {
      stuff: parts.map(({ said }) => said),
      volume: bulk(mix.volume_m3),
    }),
    recipe: sayOf('blend.recipe', mix.recipe ?? 'own'),
    parts,
    judged: [
      ...saltWords(mix),
      ...(mix.compost.stands === 'none' ? [] : [sayOf('blend.ripe', mix.maturity.ripeness)]),
      airWords(mix),
      ...pHWords(mix),
      say('blend.potting.wet', { mass: mass(mix.wet.mass_kg) }),
      ...(mix.parts.length > 1 ? [say('blend.potting.shrinks', lossPlaces(mix.mixed_share))] : []),
    ],
    advice: mix.advice.map((id) => sayOf('blend.advice', id, advicePlaces(mix))),
    cautions: mix.cautions,
  };
}

/** Young compost for what wants a ripe one, or compost so salty that hardly any of it is safe: no mix to make today. */
function isUnfit({ compost, maturity, salts }: PottingMix): boolean {
  if (compost.stands === 'none') return false;
  return maturity.ripeness === 'young' || salts.mostCompost_pctVolume < LEAST_COMPOST_PCT;
}

/** Less compost than this is none. */
const LEAST_COMPOST_PCT = 5;

function advicePlaces({ salts, compost }: PottingMix): Readonly<Record<string, number | ReturnType<typeof liquid>>> {
  return {
    water: liquid(likely(salts.leach_L)),
    share: Math.round(compost.share_pctVolume),
    low: Math.round(compost.low_pctVolume),
    high: Math.round(compost.high_pctVolume),
  };
}

function saltWords({ salts, use, compost }: PottingMix): readonly Saying[] {
  const { likely: told, low, high } = plainPlaces(salts.conductivity_dSPerM, 1);
  const sentence = say('blend.salts.potting', {
    salts: told,
    low,
    high,
    use: sayOf('blend.use', use),
    most: salts.most_dSPerM,
    chance: { chance: salts.under },
  });
  if (compost.stands === 'none') return [sentence];
  return [
    sentence,
    ...(salts.measured ? [] : [say('blend.salts.guessed')]),
    say('blend.salts.most', { share: salts.mostCompost_pctVolume }),
  ];
}

function airWords({ wet }: PottingMix): Saying {
  const { likely: air, low, high } = plainPlaces(wet.air_pctVolume);
  return say('blend.potting.air', {
    water: Math.round(wet.waterHeld_pctVolume.p50),
    air,
    low,
    high,
    least: wet.leastAir_pctVolume,
    chance: { chance: wet.airEnough },
  });
}

function pHWords({ pH }: PottingMix): readonly Saying[] {
  if (pH === undefined) return [];
  const tenth = (value: number): number => Math.round(10 * value) / 10;
  return [
    sayOf('blend.potting.pH', pH.leans, {
      low: tenth(pH.low),
      high: tenth(pH.high),
      wantedLow: pH.wanted.low,
      wantedHigh: pH.wanted.high,
    }),
  ];
}
