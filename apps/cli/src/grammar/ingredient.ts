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
 * doubtful in it. All problems come back at once: `ingredient-unreadable`, `not-one-of`, those of amounts, and
 * those of {@link materialNamed}.
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
  const material = materialNamed(stuff, text.slice(0, LONGEST), names);
  const doubtful = readDoubts(doubts, name, names);
  const amount = readAmount(text.slice(at + 1), stuff, names);
  const problems = [...problemsOf(material), ...problemsOf(doubtful), ...problemsOf(amount)];
  if (problems.length > 0 || !material.ok || !doubtful.ok || !amount.ok) return bad(...problems);
  return good({ material: material.value, doubtful: doubtful.value, ...amount.value });
}

/**
 * The id of the material that is meant. Problems: `unknown-material`, `which-material`; and for what should not go on a
 * heap `not-for-heaps` or `doubtful-alone`, so that it is not taken for a slip of the pen.
 *
 * @param path what was typed as a whole, for problems.
 */
export function materialNamed(typed: string, path: string, names: Names): Outcome<string> {
  const found = names.material(typed);
  switch (found.is) {
    case 'material':
      return good(found.id);
    case 'which':
      return bad({ code: 'which-material', path, found: typed, wanted: listed(found.ids, names) });
    case 'doubtful':
      return bad(doubted(found.id, path));
    case 'unknown':
      return bad({ code: 'unknown-material', path, found: typed.slice(0, LONGEST), wanted: listed(found.near, names) });
  }
}

function listed(ids: readonly string[], names: Names): string {
  return ids.map((id) => names.materialName(id)).join(', ');
}

function doubted(id: string, path: string): Problem {
  const doubt = doubtfulInputs.find((one) => one.id === id);
  if (doubt === undefined) throw new RangeError(`${id} is no doubtful input`);
  const code = doubt.permit === 'never' ? 'not-for-heaps' : 'doubtful-alone';
  return { code, path, found: doubt.id, wanted: doubt.permitReason };
}

function problemsOf(outcome: Outcome<unknown>): readonly Problem[] {
  return outcome.ok ? [] : outcome.problems;
}

function readDoubts(doubts: readonly string[], path: string, names: Names): Outcome<readonly string[]> {
  const found = doubts.map((doubt) => ({ doubt, found: names.doubtful(doubt) }));
  const strange = found.find((one) => 'nearest' in one.found);
  if (strange !== undefined && 'nearest' in strange.found) {
    return bad({ code: 'not-one-of', path, found: strange.doubt, wanted: strange.found.nearest.join(', ') });
  }
  return good(found.flatMap((one) => ('id' in one.found ? [one.found.id] : [])));
}
