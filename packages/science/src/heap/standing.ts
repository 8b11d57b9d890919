import type { Citation } from '../catalogue/index.ts';
import { type Chance, chance, likely } from '../estimate/index.ts';
import {
  heapLimits_degC,
  heapTriggers,
  type TemperatureBandGroup,
  type TemperatureBandId,
  type TriggerId,
  temperatureBandOf,
  temperatureBands,
  turnWhen,
} from './bands.ts';
import type { ReadingInput } from './observed.ts';
import type { ReadingTrend } from './trend.ts';

/** Where a reading lies to a band. */
export type Lies = 'below' | 'in' | 'above';

/** A band, and how the reading lies to it. */
export interface TemperatureStanding extends Citation {
  readonly id: TemperatureBandId;
  readonly group: TemperatureBandGroup;
  readonly low_degC: number | null;
  readonly high_degC: number | null;
  readonly lies: Lies;
  /** In how many draws the place probed truly lies in it. */
  readonly chanceIn: Chance;
}

/** How a temperature stands to every published and practised band. */
export function standings(likely_degC: number, draws_degC: Float64Array): readonly TemperatureStanding[] {
  return temperatureBands.map((band) => ({
    ...band,
    lies: liesTo(likely_degC, band.low_degC, band.high_degC),
    chanceIn: chance(draws_degC, (value) => liesTo(value, band.low_degC, band.high_degC) === 'in'),
  }));
}

/** How a temperature stands to one band. */
export function liesToBand(temp_degC: number, id: TemperatureBandId): Lies {
  const { low_degC, high_degC } = temperatureBandOf(id);
  return liesTo(temp_degC, low_degC, high_degC);
}

/** To a hundredth of a degree: 145 °F typed and stored in °C must still be 145 °F. */
const HAIR_K = 0.005;

function liesTo(temp_degC: number, low: number | null, high: number | null): Lies {
  if (low !== null && temp_degC < low - HAIR_K) return 'below';
  return high !== null && temp_degC > high + HAIR_K ? 'above' : 'in';
}

/** Whether a reading reaches a limit that is a rule's own. */
export function reaches(temp_degC: number, limit_degC: number): boolean {
  return temp_degC >= limit_degC - HAIR_K;
}

/** What a heap is doing, in one word: the message `reading.state.ID`. */
export type HeapState = 'cold' | 'mild' | 'warm' | 'hot' | 'sought' | 'over-limit' | 'alarm';

/** The state of the place probed. */
export function stateOf(temp_degC: number): HeapState {
  if (temp_degC >= heapLimits_degC.fire) return 'alarm';
  if (temp_degC >= heapLimits_degC.turning) return 'over-limit';
  if (liesToBand(temp_degC, 'growers-sought') === 'in') return 'sought';
  if (reaches(temp_degC, heapLimits_degC.sanitisingDay)) return 'hot';
  if (temp_degC >= heapLimits_degC.curing) return 'warm';
  return temp_degC >= heapLimits_degC.mild ? 'mild' : 'cold';
}

/** Whether something is so, as far as it was looked at. */
export type Known = 'yes' | 'no' | 'not-known';

/** One published reason to turn, and whether it is met. */
export interface TriggerStanding extends Citation {
  readonly id: TriggerId;
  readonly met: Known;
}

/** The published reasons to turn, each met, not met, or wanting an observation. */
export function turnTriggers(input: ReadingInput, trend: ReadingTrend): readonly TriggerStanding[] {
  const temp = likely(input.temp_degC);
  const cool = temp < heapLimits_degC.coolWithFood;
  return [
    standing('limit', yesNo(temp >= heapLimits_degC.turning)),
    standing('fall', yesNo(trend.belowPeak_K >= heapTriggers.fallFrom_K)),
    standing('cool-with-food', cool ? known(input.freshFood) : 'no'),
    standing('odour', known(smells(input))),
    standing('hot-days', yesNo(trend.hot_days >= heapTriggers.hotDays_days)),
  ];
}

function standing(id: TriggerId, met: Known): TriggerStanding {
  return { id, met, ...turnWhen[id] };
}

function smells(input: ReadingInput): boolean | undefined {
  if (input.smell === undefined) return undefined;
  return input.smell === 'ammonia' || input.smell === 'sour' || input.smell === 'rotten';
}

function yesNo(met: boolean): 'yes' | 'no' {
  return met ? 'yes' : 'no';
}

function known(met: boolean | undefined): Known {
  return met === undefined ? 'not-known' : yesNo(met);
}
