import type { Unit } from './table.ts';

/** The two ways growers count: what they type without a unit, and what they are shown. */
export type UnitSystem = 'us' | 'metric';

/** What a quantity is for; it decides the unit in which a person reads it. */
export type ShownAs =
  | 'temperature'
  | 'temperatureDifference'
  | 'mass'
  | 'smallMass'
  | 'liquid'
  | 'bulkVolume'
  | 'length'
  | 'depth'
  | 'bulkDensity'
  | 'areaLoad'
  /** What is spread on a bed, by weight. */
  | 'dressing'
  /** The same as farmers and trials count it. */
  | 'fieldRate'
  /** Water on or in a bed, by volume. */
  | 'liquidCover'
  /** Loose stuff on a bed, by volume. */
  | 'bulkCover'
  | 'area';

const shownIn: Readonly<Record<UnitSystem, Readonly<Record<ShownAs, Unit>>>> = {
  us: {
    temperature: 'degF',
    temperatureDifference: 'degFDifference',
    mass: 'lb',
    smallMass: 'oz',
    liquid: 'gal',
    bulkVolume: 'ft3',
    length: 'ft',
    depth: 'in',
    bulkDensity: 'lbPerYd3',
    areaLoad: 'lbPerFt2',
    dressing: 'lbPer100Ft2',
    fieldRate: 'tonPerAcre',
    liquidCover: 'galPer100Ft2',
    bulkCover: 'ft3Per100Ft2',
    area: 'ft2',
  },
  metric: {
    temperature: 'degC',
    temperatureDifference: 'degCDifference',
    mass: 'kg',
    smallMass: 'g',
    liquid: 'L',
    bulkVolume: 'L',
    length: 'm',
    depth: 'cm',
    bulkDensity: 'kgPerM3',
    areaLoad: 'kgPerM2',
    dressing: 'kgPerM2',
    fieldRate: 'tPerHa',
    liquidCover: 'LPerM2',
    bulkCover: 'LPerM2',
    area: 'm2',
  },
};

/** The unit in which people of one system read this kind of quantity. */
export function unitFor(shown: ShownAs, system: UnitSystem): Unit {
  return shownIn[system][shown];
}
