import type { Problem } from '@loamwright/science';
import type { BringReport } from '../bring.ts';
import { maxProblems } from '../exchange/limits.ts';

/** The first line of an answer: what has become of the message. All that it counts is durable by then. */
export interface TookLine {
  readonly type: 'took';
  readonly v: 1;
  /** Entries that were new. */
  readonly kept: number;
  /** Entries that were there already. */
  readonly there: number;
  /** Attachments that were new. */
  readonly attached: number;
  /** What was left out, and why. */
  readonly problems: readonly Problem[];
}

export function tookLine({ kept, there, attached, problems }: BringReport): TookLine {
  return { type: 'took', v: 1, kept, there, attached, problems: problems.slice(0, maxProblems) };
}

/** Reads the first line of an answer; null where it is none. A line that tells of no fault is as good as one that does. */
export function readTook(value: unknown): TookLine | null {
  const line = record(value);
  if (line['type'] !== 'took' || line['v'] !== 1) return null;
  const { problems } = line;
  return {
    type: 'took',
    v: 1,
    kept: count(line['kept']),
    there: count(line['there']),
    attached: count(line['attached']),
    problems: Array.isArray(problems) ? problems.slice(0, maxProblems).map(problemIn) : [],
  };
}

function problemIn(value: unknown): Problem {
  const { code, path, found, wanted } = record(value);
  return { code: text(code), path: text(path), found: text(found), wanted: text(wanted) };
}

function record(value: unknown): Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null ? (value as Readonly<Record<string, unknown>>) : {};
}

function text(value: unknown): string {
  return typeof value === 'string' ? value.slice(0, 200) : '';
}

function count(value: unknown): number {
  return typeof value === 'number' && Number.isSafeInteger(value) && value > 0 ? value : 0;
}
