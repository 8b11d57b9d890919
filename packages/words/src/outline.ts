import type { Speaker } from './speaker.ts';

const STEP = '  ';

/**
 * Any data as an indented outline for people: one fact a line, an estimate as its middle with its range, a chance in
 * words. For answers of calculations that have no report of their own.
 */
export function outline(value: unknown, speaker: Speaker): string {
  return linesOf(value, speaker, '').join('\n');
}

function linesOf(value: unknown, speaker: Speaker, indent: string): readonly string[] {
  const short = inOneLine(value, speaker);
  if (short !== undefined) return [indent + short];
  if (Array.isArray(value)) return value.flatMap((item) => itemLines(item, speaker, indent));
  return Object.entries(value as object).flatMap(([name, inner]) => {
    const text = inOneLine(inner, speaker);
    return text === undefined
      ? [`${indent}${name}:`, ...linesOf(inner, speaker, indent + STEP)]
      : [`${indent}${name}: ${text}`];
  });
}

/** A list's item: its first line is marked, the others stand under it. */
function itemLines(item: unknown, speaker: Speaker, indent: string): readonly string[] {
  const [first = '', ...rest] = linesOf(item, speaker, indent + STEP);
  return [`${indent}- ${first.trimStart()}`, ...rest];
}

function inOneLine(value: unknown, speaker: Speaker): string | undefined {
  if (typeof value === 'number') return speaker.figure(value);
  if (typeof value === 'string' || typeof value === 'boolean' || value === null) return String(value);
  if (typeof value !== 'object') return '';
  if (isEstimateLike(value)) {
    return `${speaker.figure(value.p50)} (${speaker.figure(value.p10)}–${speaker.figure(value.p90)})`;
  }
  if (isChanceLike(value)) return speaker.chance(value.met, value.of);
  return Object.keys(value).length === 0 ? '–' : undefined;
}

function isEstimateLike(value: object): value is { p10: number; p50: number; p90: number } {
  return 'p10' in value && 'p50' in value && 'p90' in value && Object.keys(value).length === 3;
}

function isChanceLike(value: object): value is { met: number; of: number } {
  return 'met' in value && 'of' in value && Object.keys(value).length === 2;
}
