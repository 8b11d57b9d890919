/**
 * The one table of conversions. Inside the program everything is SI (with °C, percent and days where
 * a name says so); these factors apply only where a person types or reads.
 *
 * Source of every factor: Thompson A., Taylor B. N. 2008, Guide for the Use of the International
 * System of Units, NIST Special Publication 811, Appendix B.8. Factors marked exact there are written
 * exactly; the others follow exactly from the inch (0.0254 m) and the pound (0.453 592 37 kg).
 */

/** What a unit measures; two units convert into one another only within one dimension. */
export type Dimension =
  | 'mass'
  | 'volume'
  | 'length'
  | 'area'
  | 'density'
  | 'rate'
  | 'cover'
  | 'temperature'
  | 'temperatureDifference'
  | 'speed';

/** A unit the program can read or show. */
export type Unit =
  | 'kg'
  | 'g'
  | 't'
  | 'lb'
  | 'oz'
  | 'm3'
  | 'L'
  | 'mL'
  | 'gal'
  | 'ft3'
  | 'yd3'
  | 'bushel'
  | 'm'
  | 'cm'
  | 'mm'
  | 'in'
  | 'ft'
  | 'yd'
  | 'm2'
  | 'ft2'
  | 'acre'
  | 'kgPerM3'
  | 'kgPerL'
  | 'lbPerYd3'
  | 'lbPerFt3'
  | 'kgPerM2'
  | 'lbPer1000Ft2'
  | 'lbPerFt2'
  | 'lbPer100Ft2'
  | 'tPerHa'
  | 'tonPerAcre'
  | 'LPerM2'
  | 'galPer100Ft2'
  | 'ft3Per100Ft2'
  | 'degC'
  | 'degF'
  | 'K'
  | 'degCDifference'
  | 'degFDifference'
  | 'mPerS'
  | 'kmPerH'
  | 'mph'
  | 'knot';

export interface UnitRow {
  readonly dimension: Dimension;
  /** SI value of one of this unit; for temperatures the size of one degree in kelvin. */
  readonly factor: number;
  /** °C reading of this scale's zero; only temperature scales have one. */
  readonly zero_degC?: number;
  /** How the unit is written for a reader. */
  readonly symbol: string;
  /** Other ways people type it, lower case. */
  readonly typed: readonly string[];
}

const INCH_M = 0.0254;
const FOOT_M = 12 * INCH_M;
const HOUR_S = 3600;
const KILOMETRE_M = 1000;
const MILE_M = 5280 * FOOT_M;
const NAUTICAL_MILE_M = 1852;
const ACRE_M2 = 43560 * FOOT_M ** 2;
const HECTARE_M2 = 10_000;
const POUND_KG = 0.45359237;
const SHORT_TON_KG = 2000 * POUND_KG;
const TONNE_KG = 1000;
const GALLON_M3 = 231 * INCH_M ** 3;
const CUBIC_FOOT_M3 = FOOT_M ** 3;
const CUBIC_YARD_M3 = 27 * CUBIC_FOOT_M3;
/** What covers a square metre a millimetre deep is a litre. */
const LITRES_PER_M3 = 1000;

/** Every unit with its dimension, factor and spelling. */
export const unitTable: Readonly<Record<Unit, UnitRow>> = {
  kg: { dimension: 'mass', factor: 1, symbol: 'kg', typed: ['kg', 'kilo', 'kilos', 'kilograms'] },
  g: { dimension: 'mass', factor: 0.001, symbol: 'g', typed: ['g', 'gram', 'grams'] },
  t: { dimension: 'mass', factor: TONNE_KG, symbol: 't', typed: ['t', 'tonne', 'tonnes'] },
  lb: { dimension: 'mass', factor: POUND_KG, symbol: 'lb', typed: ['lb', 'lbs', 'pound', 'pounds'] },
  oz: { dimension: 'mass', factor: POUND_KG / 16, symbol: 'oz', typed: ['oz', 'ounce', 'ounces'] },
  m3: { dimension: 'volume', factor: 1, symbol: 'm³', typed: ['m3', 'm³', 'cubic metres'] },
  L: { dimension: 'volume', factor: 0.001, symbol: 'L', typed: ['l', 'litre', 'litres', 'liter', 'liters'] },
  mL: { dimension: 'volume', factor: 1e-6, symbol: 'mL', typed: ['ml'] },
  gal: { dimension: 'volume', factor: GALLON_M3, symbol: 'gal', typed: ['gal', 'gallon', 'gallons'] },
  ft3: { dimension: 'volume', factor: CUBIC_FOOT_M3, symbol: 'ft³', typed: ['ft3', 'ft³', 'cubic feet', 'cubic foot'] },
  yd3: {
    dimension: 'volume',
    factor: CUBIC_YARD_M3,
    symbol: 'yd³',
    typed: ['yd3', 'yd³', 'cubic yards', 'cubic yard'],
  },
  bushel: { dimension: 'volume', factor: 2150.42 * INCH_M ** 3, symbol: 'bu', typed: ['bu'] },
  m: { dimension: 'length', factor: 1, symbol: 'm', typed: ['m', 'metre', 'metres', 'meter', 'meters'] },
  cm: { dimension: 'length', factor: 0.01, symbol: 'cm', typed: ['cm'] },
  mm: { dimension: 'length', factor: 0.001, symbol: 'mm', typed: ['mm'] },
  in: { dimension: 'length', factor: INCH_M, symbol: 'in', typed: ['in', 'inch', 'inches', '"', '″'] },
  ft: { dimension: 'length', factor: FOOT_M, symbol: 'ft', typed: ['ft', 'foot', 'feet', "'", '′'] },
  yd: { dimension: 'length', factor: 3 * FOOT_M, symbol: 'yd', typed: ['yd'] },
  m2: { dimension: 'area', factor: 1, symbol: 'm²', typed: ['m2', 'm²'] },
  ft2: { dimension: 'area', factor: FOOT_M ** 2, symbol: 'ft²', typed: ['ft2', 'ft²'] },
  acre: { dimension: 'area', factor: ACRE_M2, symbol: 'acre', typed: ['acre', 'acres'] },
  kgPerM3: { dimension: 'density', factor: 1, symbol: 'kg/m³', typed: ['kg/m3', 'kg/m³'] },
  kgPerL: { dimension: 'density', factor: 1000, symbol: 'kg/L', typed: ['kg/l'] },
  lbPerYd3: { dimension: 'density', factor: POUND_KG / CUBIC_YARD_M3, symbol: 'lb/yd³', typed: ['lb/yd3', 'lb/yd³'] },
  lbPerFt3: { dimension: 'density', factor: POUND_KG / CUBIC_FOOT_M3, symbol: 'lb/ft³', typed: ['lb/ft3', 'lb/ft³'] },
  kgPerM2: { dimension: 'rate', factor: 1, symbol: 'kg/m²', typed: ['kg/m2', 'kg/m²'] },
  lbPer1000Ft2: {
    dimension: 'rate',
    factor: POUND_KG / (1000 * FOOT_M ** 2),
    symbol: 'lb/1000 ft²',
    typed: ['lb/1000ft2', 'lb/1000 ft²'],
  },
  lbPerFt2: { dimension: 'rate', factor: POUND_KG / FOOT_M ** 2, symbol: 'lb/ft²', typed: ['lb/ft2', 'lb/ft²'] },
  lbPer100Ft2: {
    dimension: 'rate',
    factor: POUND_KG / (100 * FOOT_M ** 2),
    symbol: 'lb/100 ft²',
    typed: ['lb/100ft2', 'lb/100 ft²'],
  },
  tPerHa: { dimension: 'rate', factor: TONNE_KG / HECTARE_M2, symbol: 't/ha', typed: ['t/ha'] },
  tonPerAcre: {
    dimension: 'rate',
    factor: SHORT_TON_KG / ACRE_M2,
    symbol: 'tons/acre',
    typed: ['tons/acre', 'ton/acre'],
  },
  LPerM2: { dimension: 'cover', factor: 1, symbol: 'L/m²', typed: ['l/m2', 'l/m²'] },
  galPer100Ft2: {
    dimension: 'cover',
    factor: (GALLON_M3 * LITRES_PER_M3) / (100 * FOOT_M ** 2),
    symbol: 'gal/100 ft²',
    typed: ['gal/100ft2', 'gal/100 ft²'],
  },
  ft3Per100Ft2: {
    dimension: 'cover',
    factor: (FOOT_M * LITRES_PER_M3) / 100,
    symbol: 'ft³/100 ft²',
    typed: ['ft3/100ft2', 'ft³/100 ft²'],
  },
  degC: { dimension: 'temperature', factor: 1, zero_degC: 0, symbol: '°C', typed: ['c', '°c', 'degc', 'celsius'] },
  degF: {
    dimension: 'temperature',
    factor: 1 / 1.8,
    zero_degC: -32 / 1.8,
    symbol: '°F',
    typed: ['f', '°f', 'degf', 'fahrenheit'],
  },
  K: { dimension: 'temperature', factor: 1, zero_degC: -273.15, symbol: 'K', typed: ['k', 'kelvin'] },
  degCDifference: { dimension: 'temperatureDifference', factor: 1, symbol: '°C', typed: [] },
  degFDifference: { dimension: 'temperatureDifference', factor: 1 / 1.8, symbol: '°F', typed: [] },
  mPerS: { dimension: 'speed', factor: 1, symbol: 'm/s', typed: ['m/s', 'ms-1', 'm s-1'] },
  kmPerH: { dimension: 'speed', factor: KILOMETRE_M / HOUR_S, symbol: 'km/h', typed: ['km/h', 'kmh', 'kph'] },
  mph: { dimension: 'speed', factor: MILE_M / HOUR_S, symbol: 'mph', typed: ['mph', 'mi/h'] },
  knot: { dimension: 'speed', factor: NAUTICAL_MILE_M / HOUR_S, symbol: 'kn', typed: ['kn', 'kt', 'knots'] },
};

/** Every unit's name, in the table's order. */
export const allUnits: readonly Unit[] = Object.keys(unitTable) as Unit[];
