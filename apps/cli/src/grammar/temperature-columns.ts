import type { LogPoint } from '@loamwright/science';
import { zoneOf } from './stamp.ts';

/** A column of temperatures. */
export interface TempColumn {
  readonly index: number;
  readonly name: string;
  /** Left out, the hot middle. */
  readonly point?: LogPoint | undefined;
  readonly unit?: 'degC' | 'degF' | undefined;
}

/** What stands in which column. */
export interface Columns extends TimeColumns {
  readonly temps: readonly TempColumn[];
  readonly turned?: number | undefined;
  readonly aside: readonly string[];
  /** How many columns are known. */
  readonly known: number;
}

const isDate = /^(?:date|day|timestamp|when)\b/u;
const isTime = /^(?:time|clock|hour)\b/u;
const offset = /\b(?:gmt|utc)\s*([+-]\d{1,2}(?::?\d{2})?)?/u;
const isTurned = /^turn(?:ed|s|ing|ings)?\b/u;
/** Of the air around: no temperature of the heap. */
const isAir = /\b(?:air|ambient|outdoors?|weather)\b/u;
const isTemp = /temp|°|\bdeg(?:rees?)?\b|celsius|fahrenheit|^[cf]$/u;
const celsius = /°\s*c\b|\bdeg(?:rees?)?\s*c\b|celsius|\(\s*c\s*\)|[\s_]c$|^c$/u;
const fahrenheit = /°\s*f\b|\bdeg(?:rees?)?\s*f\b|fahrenheit|\(\s*f\s*\)|[\s_]f$|^f$/u;
const pointWords: readonly (readonly [RegExp, LogPoint])[] = [
  [/\b(?:core|cent(?:re|er))\b/u, 'core'],
  [/\b(?:middle|mid)\b/u, 'middle'],
  [/\b(?:edge|side)\b/u, 'edge'],
  [/\btop\b/u, 'top'],
  [/\b(?:bottom|base|foot)\b/u, 'bottom'],
];

/** Where a row says when it was. */
export interface TimeColumns {
  readonly date: number;
  readonly time?: number | undefined;
  /** An offset that the column of times says it is told in. */
  readonly zone?: string | undefined;
}

/** Names of columns as they are looked at. */
export function plainNames(cells: readonly string[]): readonly string[] {
  return cells.map((cell) => cell.normalize('NFC').trim().toLowerCase().replaceAll('º', '°').slice(0, 80));
}

/** The columns of days and of times; undefined where there are none. */
export function timeColumns(names: readonly string[]): TimeColumns | undefined {
  const spaced = names.map((name) => name.replaceAll('_', ' '));
  const [day, clock] = [isDate, isTime].map((of) => spaced.findIndex((name) => of.test(name)));
  const date = day !== undefined && day >= 0 ? day : (clock ?? -1);
  if (date < 0) return undefined;
  const time = day !== undefined && day >= 0 && clock !== undefined && clock >= 0 ? clock : undefined;
  const zone = offset.exec(`${names[date]} ${time === undefined ? '' : names[time]}`);
  return {
    date,
    ...(time !== undefined && { time }),
    ...(zone !== null && { zone: zone[1] === undefined ? 'UTC' : zoneOf(zone[1]) }),
  };
}

/** The scale of temperatures that the name of a column says. */
export function temperatureUnitIn(name: string): TempColumn['unit'] {
  return celsius.test(name) ? 'degC' : fahrenheit.test(name) ? 'degF' : undefined;
}

/** The columns of a header; undefined where it has no day or no temperature, and so is none. */
export function columnsIn(cells: readonly string[]): Columns | undefined {
  const names = plainNames(cells);
  const when = timeColumns(names);
  if (when === undefined) return undefined;
  const spaced = names.map((name) => name.replaceAll('_', ' '));
  const turned = spaced.findIndex((name) => isTurned.test(name));
  const taken = [when.date, when.time, turned];
  const temps = spaced.flatMap((name, index): readonly TempColumn[] => {
    if (taken.includes(index)) return [];
    const point = pointWords.find(([words]) => words.test(name))?.[1];
    if (isAir.test(name) || (point === undefined && !isTemp.test(name))) return [];
    const unit = temperatureUnitIn(name);
    return [
      { index, name: cells[index] ?? '', ...(point !== undefined && { point }), ...(unit !== undefined && { unit }) },
    ];
  });
  if (temps.length === 0) return undefined;
  const known = [...taken.filter((index) => index !== undefined && index >= 0), ...temps.map(({ index }) => index)];
  return {
    ...when,
    temps,
    ...(turned >= 0 && { turned }),
    aside: cells.filter((cell, index) => !known.includes(index) && cell.trim() !== '').map(shownName),
    known: known.length,
  };
}

/** A name as it may be shown: what steers a terminal is no part of it. */
export function shownName(name: string): string {
  return name
    .replace(/\p{Cc}/gu, ' ')
    .trim()
    .slice(0, 60);
}
