import type { Smell, Squeeze } from '@loamwright/daybook';
import { bad, good, type Outcome, type Problem } from '@loamwright/science';
import type { UnitSystem } from '@loamwright/units';
import { type Measured, readMeasurement } from './measurement.ts';

const squeezes: readonly Squeeze[] = ['streams', 'drops', 'holds', 'crumbles', 'dusty'];
const smells: readonly Smell[] = ['none', 'earthy', 'ammonia', 'sour', 'rotten', 'musty', 'smoke'];

/** What a person saw, felt and smelt of a heap, as typed. */
export interface SeenTyped {
  readonly squeeze?: string | undefined;
  readonly smell?: string | undefined;
  readonly height?: string | undefined;
}

export interface Seen {
  readonly squeeze?: Squeeze | undefined;
  readonly smell?: Smell | undefined;
  readonly height?: Measured | undefined;
}

/** Reads a squeeze, a smell and a height. All problems come back at once: `squeeze-unknown`, `not-one-of`, `measurement-unreadable`. */
export function readSeen(typed: SeenTyped, system: UnitSystem): Outcome<Seen> {
  const squeeze = readSqueeze(typed.squeeze);
  const smell = oneOf(typed.smell, smells, '--smell');
  const height =
    typed.height === undefined ? good(undefined) : readMeasurement(typed.height, 'depth', '--height', system);
  if (squeeze.ok && smell.ok && height.ok) {
    return good({ squeeze: squeeze.value, smell: smell.value, height: height.value });
  }
  return bad(...[squeeze, smell, height].flatMap((one): readonly Problem[] => (one.ok ? [] : one.problems)));
}

/** What a squeezed handful showed. "Wet" is what it was taken for, not what was seen. Problem: `squeeze-unknown`. */
export function readSqueeze(text: string | undefined): Outcome<Squeeze | undefined> {
  const read = oneOf(text, squeezes, '--squeeze');
  return read.ok ? read : bad(...read.problems.map((problem) => ({ ...problem, code: 'squeeze-unknown' })));
}

/** One of some words, whatever its case. Problem: `not-one-of`. */
export function oneOf<Word extends string>(
  text: string | undefined,
  words: readonly Word[],
  path: string,
): Outcome<Word | undefined> {
  if (text === undefined) return good(undefined);
  const word = words.find((known) => known === text.toLowerCase());
  return word === undefined
    ? bad({ code: 'not-one-of', path, found: text.slice(0, 40), wanted: words.join(', ') })
    : good(word);
}
