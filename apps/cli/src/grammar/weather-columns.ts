import type { Unit } from '@loamwright/units';
import { plainNames, shownName, type TimeColumns, temperatureUnitIn, timeColumns } from './temperature-columns.ts';

/** What a column of weather tells. */
export const weatherKinds = ['mean', 'lowest', 'highest', 'ground', 'humidity', 'wind', 'rain', 'sun'] as const;
export type WeatherKind = (typeof weatherKinds)[number];

/** What the sun is told in: its strength, or what it brought in the time of a row. */
export type SunUnit = 'WPerM2' | 'MJPerM2';

/** A column of weather. */
export interface WeatherColumn {
  readonly index: number;
  readonly name: string;
  readonly kind: WeatherKind;
  readonly unit?: Unit | SunUnit | undefined;
  /** Over which time rain or sun is told: the time of a row where nothing is said. */
  readonly per?: 'hour' | 'day' | undefined;
}

/** What stands in which column of a table of weather. */
export interface WeatherColumns {
  readonly when: TimeColumns;
  readonly columns: readonly WeatherColumn[];
  readonly aside: readonly string[];
}

const isTemp = /temp|°|celsius|fahrenheit|\bair\b|^t\b|^t(?:mean|avg|ave|min|max)\b|^[cf]$/u;
const isGround = /\b(?:ground|soil)\b/u;
/** Temperatures that are none of the air: how it feels, when it would be damp, those of a heap. */
const isNoTemp =
  /\b(?:dew|dewpoint|feels|apparent|wind ?chill|wet ?bulb|heat ?index|water|sea|core|cent(?:re|er)|middle|edge|side|heap|probe)\b/u;
const isHighest = /max|high/u;
const isLowest = /min|low/u;
const isWind = /\bwind\b/u;
/** Where it blows from, and how it blows for a moment. */
const isNoWind = /dir|gust|bearing|chill|max/u;
const isRain = /rain|precip/u;
const isNoRain = /prob|chance|hours|duration/u;
const isSun = /\b(?:sun|solar|radiation|irradiance|global)\b/u;
const isNoSun = /hours|duration|rise|set\b|minutes/u;

const speeds: readonly (readonly [RegExp, Unit])[] = [
  [/km\s*\/\s*h|kmh|kph/u, 'kmPerH'],
  [/m\s*\/\s*s|\bms-1\b/u, 'mPerS'],
  [/mph|mi\s*\/\s*h/u, 'mph'],
  [/knots?|\bkn\b|\bkts?\b/u, 'knot'],
];
const depths: readonly (readonly [RegExp, Unit])[] = [
  [/mm\b/u, 'mm'],
  [/\bcm\b/u, 'cm'],
  [/inch|\bin\b|″|"/u, 'in'],
];
const suns: readonly (readonly [RegExp, SunUnit])[] = [
  [/mj/u, 'MJPerM2'],
  [/\bw\b|w\s*\/\s*m|watt/u, 'WPerM2'],
];
const perHour = /\/\s*h\b|per hour/u;
const perDay = /\/\s*d(?:ay)?\b|per day/u;

function unitIn<Found>(name: string, units: readonly (readonly [RegExp, Found])[]): Found | undefined {
  return units.find(([words]) => words.test(name))?.[1];
}

function kindOf(name: string): WeatherKind | undefined {
  if (/humid|^rh\b/u.test(name)) return 'humidity';
  if (isWind.test(name)) return isNoWind.test(name) ? undefined : 'wind';
  if (isRain.test(name)) return isNoRain.test(name) ? undefined : 'rain';
  if (isSun.test(name)) return isNoSun.test(name) ? undefined : 'sun';
  if (isNoTemp.test(name) || !(isTemp.test(name) || isGround.test(name))) return undefined;
  if (isGround.test(name)) return 'ground';
  return isHighest.test(name) ? 'highest' : isLowest.test(name) ? 'lowest' : 'mean';
}

function unitOf(name: string, kind: WeatherKind): WeatherColumn['unit'] {
  switch (kind) {
    case 'humidity':
      return undefined;
    case 'wind':
      return unitIn(name, speeds);
    case 'rain':
      return unitIn(name, depths);
    case 'sun':
      return unitIn(name, suns);
    default:
      return temperatureUnitIn(name);
  }
}

/** The columns of a header; undefined where it has no day or no temperature of the air, and so is none. Of two of one kind the first counts. */
export function weatherColumnsIn(cells: readonly string[]): WeatherColumns | undefined {
  const names = plainNames(cells);
  const when = timeColumns(names);
  if (when === undefined) return undefined;
  const columns: WeatherColumn[] = [];
  for (const [index, plain] of names.entries()) {
    const name = plain.replaceAll('_', ' ');
    const kind = index === when.date || index === when.time ? undefined : kindOf(name);
    if (kind === undefined || columns.some((one) => one.kind === kind)) continue;
    const unit = unitOf(name, kind);
    const per = perHour.test(name) ? 'hour' : perDay.test(name) ? 'day' : undefined;
    columns.push({
      index,
      name: shownName(cells[index] ?? ''),
      kind,
      ...(unit !== undefined && { unit }),
      ...(per !== undefined && (kind === 'rain' || kind === 'sun') && { per }),
    });
  }
  const has = (kind: WeatherKind): boolean => columns.some((one) => one.kind === kind);
  if (!has('mean') && !(has('lowest') && has('highest'))) return undefined;
  const known = [when.date, when.time, ...columns.map(({ index }) => index)];
  return {
    when,
    columns,
    aside: cells.filter((cell, index) => !known.includes(index) && cell.trim() !== '').map(shownName),
  };
}
