import type { Entered } from '@loamwright/daybook';
import { type Amount, bad, doubtfulInputs, good, type Outcome, type Problem } from '@loamwright/science';
import { readAmount } from './amount.ts';
import type { Names } from './names.ts';

/** A material and an amount of it, as typed. */
export interface IngredientRead {
  readonly material: string;
  readonly doubtful: readonly string[];
  readonly amount: Amount;
  readonly entered: Entered;
}

const LONGEST = 80;

/**
 * Reads `straw=9buckets`, `"goat bedding=half a barrow"`, and `green-weeds+seeding-weeds=1bag` for stuff with something
 * doubtful in it. All problems come back at once: `ingredient-unreadable`, `unknown-material`, `not-for-heaps`,
 * `doubtful-alone`, `not-one-of`, and those of amounts.
 */
export function readIngredients(typed: readonly string[], names: Names): Outcome<readonly IngredientRead[]> {
  const read = typed.map((text) => readIngredient(text, names));
  const problems: readonly Problem[] = read.flatMap((one) => (one.ok ? [] : one.problems));
  return problems.length > 0 ? bad(...problems) : good(read.flatMap((one) => (one.ok ? [one.value] : [])));
}

function readIngredient(text: string, names: Names): Outcome<IngredientRead> {
  const at = text.indexOf('=');
  const name = text.slice(0, Math.max(at, 0)).trim();
  if (name === '') return bad({ code: 'ingredient-unreadable', path: '', found: text.slice(0, LONGEST), wanted: '' });
  const [stuff = '', ...doubts] = name.split('+').map((part) => part.trim());
  const material = names.material(stuff);
  const doubtful = readDoubts(doubts, name, names);
  const amount = readAmount(text.slice(at + 1), stuff, names);
  const problems = [
    ...('nearest' in material ? [unknown(stuff, material.nearest, text.slice(0, LONGEST), names)] : []),
    ...problemsOf(doubtful),
    ...problemsOf(amount),
  ];
  if (problems.length > 0 || 'nearest' in material || !doubtful.ok || !amount.ok) return bad(...problems);
  return good({ material: material.id, doubtful: doubtful.value, ...amount.value });
}

function problemsOf(outcome: Outcome<unknown>): readonly Problem[] {
  return outcome.ok ? [] : outcome.problems;
}

/** What may never go on a heap is known by name too, so that it is not taken for a slip of the pen. */
function unknown(name: string, nearest: readonly string[], text: string, names: Names): Problem {
  const found = names.doubtful(name);
  const doubt = 'id' in found ? doubtfulInputs.find(({ id }) => id === found.id) : undefined;
  if (doubt === undefined) return { code: 'unknown-material', path: text, found: name, wanted: nearest.join(', ') };
  const code = doubt.permit === 'never' ? 'not-for-heaps' : 'doubtful-alone';
  return { code, path: text, found: doubt.id, wanted: doubt.permitReason };
}

function readDoubts(doubts: readonly string[], path: string, names: Names): Outcome<readonly string[]> {
  const found = doubts.map((doubt) => ({ doubt, found: names.doubtful(doubt) }));
  const strange = found.find((one) => 'nearest' in one.found);
  if (strange !== undefined && 'nearest' in strange.found) {
    return bad({ code: 'not-one-of', path, found: strange.doubt, wanted: strange.found.nearest.join(', ') });
  }
  return good(found.flatMap((one) => ('id' in one.found ? [one.found.id] : [])));
}
