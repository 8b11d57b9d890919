import { isEstimate, likely, type PropertyId, type Quantity } from '@loamwright/science';
import type { Saying } from '@loamwright/words';
import { density, say, sayOf } from './saying.ts';

/** In which words a property is told. */
const toldAs: Readonly<Record<PropertyId, 'pct' | 'share' | 'ratio' | 'days' | 'density'>> = {
  carbonToNitrogen_ratio: 'ratio',
  nitrogen_pctDry: 'pct',
  moisture_pctWet: 'pct',
  densityLoose_kgPerM3AsIs: 'density',
  densityPacked_kgPerM3AsIs: 'density',
  volatileSolids_pctDry: 'pct',
  lignin_pctDry: 'pct',
  biodegradable_shareOfVolatile: 'share',
  phosphorus_pctDry: 'pct',
  potassium_pctDry: 'pct',
  storageLife_days: 'days',
};

/** What a check changes in what is believed. */
export interface ChangeWords {
  readonly property: PropertyId;
  readonly before: Quantity | null;
  readonly believed: Quantity;
  /** "water: between 10–25 % before; now 14–19 %, likeliest 16 %." */
  readonly said: Saying;
}

export function changeWords(property: PropertyId, before: Quantity | undefined, believed: Quantity): ChangeWords {
  const places = {
    property: propertyName(property),
    now: rangeOf(property, believed),
    likely: likelyOf(property, believed),
  };
  const said =
    before === undefined
      ? say('known.changeNew', places)
      : say('known.change', { ...places, before: rangeOf(property, before) });
  return { property, before: before ?? null, believed, said };
}

function propertyName(property: PropertyId): Saying {
  return sayOf('known.property', property);
}

/** "water: about 12 % (4.1–27 %)". */
export function factSaying(property: PropertyId, quantity: Quantity): Saying {
  const places = { property: propertyName(property), likely: likelyOf(property, quantity) };
  if (!isEstimate(quantity)) return say('known.factExact', places);
  return say('known.fact', { ...places, range: rangeOf(property, quantity) });
}

/** "water about 45 %": a figure inside a sentence of the daybook. */
export function figureSaying(property: PropertyId, quantity: Quantity): Saying {
  return say('known.figure', { property: propertyName(property), likely: likelyOf(property, quantity) });
}

/** "12 %", "310 kg/m³". */
export function likelyOf(property: PropertyId, quantity: Quantity): Saying {
  const as = toldAs[property];
  if (as === 'density') return say('known.density', { density: density(quantity) });
  return say(`known.${as === 'share' ? 'pct' : as}`, { likely: shown(property, likely(quantity)) });
}

function rangeOf(property: PropertyId, quantity: Quantity): Saying {
  const as = toldAs[property];
  if (!isEstimate(quantity)) return likelyOf(property, quantity);
  if (as === 'density') return say('known.density', { density: { ...density(quantity), asRange: true } });
  const [low, high] = [shown(property, quantity.p10), shown(property, quantity.p90)];
  return say(`known.${as === 'share' ? 'pct' : as}Range`, { low, high });
}

/** Two digits, three from a hundred up; whole days; a share as a percentage. */
function shown(property: PropertyId, value: number): number {
  const as = toldAs[property];
  if (as === 'days') return Math.max(1, Number(value.toPrecision(2)));
  const told = as === 'share' ? 100 * value : value;
  return Number(told.toPrecision(Math.abs(told) >= 100 ? 3 : 2));
}
