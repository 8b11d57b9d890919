import { bad, good, type Outcome, type Problem } from '@loamwright/science';
import { maxDepth, maxEntry_bytes } from '../limits.ts';
import type { JsonValue } from './entry.ts';

/** Keys that reach into a JavaScript object's prototype. No fact needs them. */
const forbiddenKeys: ReadonlySet<string> = new Set(['__proto__', 'constructor', 'prototype']);

/** Half of a surrogate pair alone: no character, and nothing that UTF-8 can carry (RFC 8785 section 3.2.2.2). */
const loneSurrogate = /\p{Surrogate}/u;

interface Step {
  readonly value: unknown;
  readonly path: string;
  readonly depth: number;
}

function problem(code: string, path: string, found: string, wanted: string): Problem {
  return { code, path, found, wanted };
}

/**
 * Whether a value from outside is plain JSON within the daybook's limits: no lone surrogates,
 * no number that isn't finite, no prototype keys, at most `maxDepth` deep. A key whose value is
 * undefined counts as absent. Works without recursion and stops at the first fault, so that a
 * hostile value costs no more than reading it once.
 */
export function plainJson(value: unknown): Outcome<JsonValue> {
  const steps: Step[] = [{ value, path: '', depth: 0 }];
  let cost = 0;
  for (let step = steps.pop(); step !== undefined; step = steps.pop()) {
    const fault = step.depth > maxDepth ? tooDeep(step) : faultAt(step, steps);
    if (fault !== undefined) return bad(fault);
    cost += 1 + (typeof step.value === 'string' ? step.value.length : 0);
    // What is still waiting counts too: a wide list must not be walked first and refused afterwards.
    if (cost + steps.length > maxEntry_bytes) return bad(tooLarge(cost + steps.length));
  }
  return good(value as JsonValue);
}

/** The problem of an entry beyond `maxEntry_bytes`. */
export function tooLarge(size_bytes: number): Problem {
  return problem('too-large', '', `${size_bytes} bytes or more`, `at most ${maxEntry_bytes} bytes`);
}

function tooDeep(step: Step): Problem {
  return problem('too-deep', shortened(step.path), `more than ${maxDepth} levels`, `at most ${maxDepth} levels`);
}

function faultAt({ value, path, depth }: Step, steps: Step[]): Problem | undefined {
  switch (typeof value) {
    case 'boolean':
      return undefined;
    case 'number':
      return Number.isFinite(value)
        ? undefined
        : problem('not-json', shortened(path), String(value), 'a finite number');
    case 'string':
      return loneSurrogate.test(value)
        ? problem('not-json', shortened(path), 'half of a character (a lone surrogate)', 'whole characters')
        : undefined;
    case 'object':
      if (value === null) return undefined;
      return Array.isArray(value) ? listFault(value, path, depth, steps) : objectFault(value, path, depth, steps);
    default:
      return problem(
        'not-json',
        shortened(path),
        typeof value,
        'text, a number, true, false, null, a list or an object',
      );
  }
}

function listFault(list: readonly unknown[], path: string, depth: number, steps: Step[]): Problem | undefined {
  if (list.length > maxEntry_bytes) return tooLarge(list.length);
  for (let i = list.length - 1; i >= 0; i--) steps.push({ value: list[i], path: `${path}[${i}]`, depth: depth + 1 });
  return undefined;
}

function objectFault(value: object, path: string, depth: number, steps: Step[]): Problem | undefined {
  const prototype: unknown = Object.getPrototypeOf(value);
  // A root prototype, of this realm or another's: classes (dates, maps) are not JSON.
  if (prototype !== null && Object.getPrototypeOf(prototype) !== null)
    return problem('not-json', shortened(path), 'an object of a class', 'a plain object');
  for (const [key, inner] of Object.entries(value)) {
    const at = path === '' ? key : `${path}.${key}`;
    if (forbiddenKeys.has(key) || loneSurrogate.test(key))
      return problem(
        'forbidden-key',
        shortened(path),
        key.slice(0, 60),
        'a key of whole characters that is no prototype key',
      );
    if (inner !== undefined) steps.push({ value: inner, path: at, depth: depth + 1 });
    if (steps.length > maxEntry_bytes) return tooLarge(steps.length);
  }
  return undefined;
}

/** A hostile path can be as long as its keys: show its beginning. */
function shortened(path: string): string {
  return path.length > 120 ? `${path.slice(0, 120)}…` : path;
}
