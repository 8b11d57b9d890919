import table from '@loamwright/reference/not-heating.json' with { type: 'json' };
import type { Draws } from '../estimate/index.ts';
import { likely, shareOf } from '../estimate/index.ts';
import { heapLimits_degC, heapTriggers } from './bands.ts';
import type { Found } from './cold-odds.ts';
import { type HeatToHoldInput, heatToHold } from './heat-to-hold.ts';
import type { NotHeatingInput } from './not-heating-input.ts';
import type { HeapSmell } from './observed.ts';

/** What the stuff that went in comes to, where it was told. */
export interface WentIn {
  readonly ratio?: number | undefined;
  readonly moisture_pctWet?: number | undefined;
  readonly freeAirSpace_pctVolume?: number | undefined;
}

const { limits } = table;

/** From air of this warmth on it is not the weather that keeps a heap cold, °C: `reference/not-heating.json`. */
export const mildAir_degC: number = limits.warm_degC.value;

/** What is known of a heap, each as an outcome of its table. */
export function foundOf(input: NotHeatingInput, wentIn: WentIn, holds_share: number | undefined): Found {
  const { squeeze, smell, freshFood, brownsWhole, age_days, sinceTurn_days, hottest_degC, air_degC } = input;
  const { ratio, moisture_pctWet, freeAirSpace_pctVolume: air } = wentIn;
  return {
    ...(holds_share !== undefined && { size: sizeClass(holds_share) }),
    ...(squeeze !== undefined && { squeeze }),
    ...(ratio !== undefined && { ratio: ratioClass(ratio) }),
    ...(moisture_pctWet !== undefined && { 'laid-moisture': moistureClass(moisture_pctWet) }),
    ...(air !== undefined && { 'air-space': air < limits.leastAir_pctVolume.value ? 'packed' : 'open' }),
    ...(age_days !== undefined && { age: ageClass(age_days) }),
    ...(sinceTurn_days !== undefined && {
      turned: sinceTurn_days <= heapTriggers.turnTells_days ? 'lately' : 'not-lately',
    }),
    ...(hottest_degC !== undefined && {
      'was-hot': courseClass(likely(hottest_degC), input.temp_degC === undefined ? undefined : likely(input.temp_degC)),
    }),
    ...(smell !== undefined && smell !== 'smoke' && { smell: smellClass(smell) }),
    ...(freshFood !== undefined && { food: freshFood ? 'fresh' : foodLeft(brownsWhole) }),
    ...(air_degC !== undefined && { weather: weatherClass(likely(air_degC)) }),
  };
}

/** How well a size holds a hot core in three seasons. */
export interface SizeTold {
  readonly holds_share: number;
  readonly enough_m3: number;
}

export function sizeTold(size: HeatToHoldInput['size'] | undefined, draws: Draws): SizeTold | undefined {
  if (size === undefined) return undefined;
  const held = heatToHold.run({ size }, { draws });
  const bare = held.ok ? held.value.seasons[0]?.bare : undefined;
  return bare === undefined ? undefined : { holds_share: shareOf(bare.holds), enough_m3: bare.enough_m3 };
}

function sizeClass(holds_share: number): string {
  if (holds_share < limits.sizeTiny_share.value) return 'tiny';
  if (holds_share < limits.sizeSmall_share.value) return 'small';
  return holds_share < limits.sizeLarge_share.value ? 'enough' : 'large';
}

function ratioClass(ratio: number): string {
  if (ratio < limits.ratioRich.value) return 'rich';
  if (ratio <= limits.ratioPoor.value) return 'right';
  return ratio <= limits.ratioVeryPoor.value ? 'poor' : 'very-poor';
}

function moistureClass(moisture_pctWet: number): string {
  if (moisture_pctWet < limits.driest_pctWet.value) return 'dry';
  return moisture_pctWet <= limits.wettest_pctWet.value ? 'right' : 'wet';
}

function ageClass(age_days: number): string {
  if (age_days <= limits.firstDays_days.value) return 'first-days';
  if (age_days <= heapTriggers.reachedWithin_days) return 'first-week';
  return age_days <= limits.weeks_days.value ? 'weeks' : 'months';
}

/** How it went so far: a slow heap may rise and fall again without ever being hot. */
function courseClass(hottest_degC: number, now_degC: number | undefined): string {
  if (hottest_degC >= heapLimits_degC.sanitisingDay) return 'hot';
  if (hottest_degC < heapLimits_degC.mild) return 'never';
  return now_degC !== undefined && hottest_degC - now_degC >= heapTriggers.fallFrom_K ? 'fell' : 'warm';
}

/** Where no scraps are left: whether whole leaves are, if anyone looked. */
function foodLeft(brownsWhole: boolean | undefined): string {
  if (brownsWhole === undefined) return 'gone';
  return brownsWhole ? 'browns-only' : 'crumbs';
}

function smellClass(smell: Exclude<HeapSmell, 'smoke'>): string {
  switch (smell) {
    case 'none':
    case 'earthy':
      return 'earthy';
    case 'sour':
    case 'rotten':
      return 'sour';
    default:
      return smell;
  }
}

function weatherClass(air_degC: number): string {
  if (air_degC >= mildAir_degC) return 'warm';
  return air_degC >= heapLimits_degC.frozen ? 'cool' : 'frost';
}
