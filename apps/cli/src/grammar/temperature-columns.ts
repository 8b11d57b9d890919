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
export interface Columns {
  readonly date: number;
  readonly time?: number | undefined;
  readonly temps: readonly TempColumn[];
  readonly turned?: number | undefined;
  /** An offset that the column of times says it is told in. */
  readonly zone?: string | undefined;
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

/** The columns of a header; undefined where it has no day or no temperature, and so is none. */
export function columnsIn(cells: readonly string[]): Columns | undefined {
  const names = cells.map((cell) => cell.normalize('NFC').trim().toLowerCase().replaceAll('º', '°').slice(0, 80));
  const spaced = names.map((name) => name.replaceAll('_', ' '));
  const found = (of: RegExp): number => spaced.findIndex((name) => of.test(name));
  const [day, clock] = [found(isDate), found(isTime)];
  const date = day >= 0 ? day : clock;
  const time = day >= 0 && clock >= 0 ? clock : undefined;
  const turned = found(isTurned);
  const taken = [date, time, turned];
  const temps = spaced.flatMap((name, index): readonly TempColumn[] => {
    if (taken.includes(index)) return [];
    const point = pointWords.find(([words]) => words.test(name))?.[1];
    if (isAir.test(name) || (point === undefined && !isTemp.test(name))) return [];
    const unit = celsius.test(name) ? 'degC' : fahrenheit.test(name) ? 'degF' : undefined;
    return [
      { index, name: cells[index] ?? '', ...(point !== undefined && { point }), ...(unit !== undefined && { unit }) },
    ];
  });
  if (date < 0 || temps.length === 0) return undefined;
  const known = [...taken.filter((index) => index !== undefined && index >= 0), ...temps.map(({ index }) => index)];
  const zone = offset.exec(`${names[date]} ${time === undefined ? '' : names[time]}`);
  return {
    date,
    temps,
    ...(time !== undefined && { time }),
    ...(turned >= 0 && { turned }),
    ...(zone !== null && { zone: zone[1] === undefined ? 'UTC' : zoneOf(zone[1]) }),
    aside: cells.filter((cell, index) => !known.includes(index) && cell.trim() !== '').map(shown),
    known: known.length,
  };
}

/** A name as it may be shown: what steers a terminal is no part of it. */
function shown(name: string): string {
  return name
    .replace(/\p{Cc}/gu, ' ')
    .trim()
    .slice(0, 60);
}
