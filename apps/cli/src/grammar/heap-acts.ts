import { stuffed } from '@loamwright/advisor';
import type { Holding } from '@loamwright/daybook';
import type { ToldAct } from '@loamwright/science';
import { bad, good, type Outcome, type Problem } from '@loamwright/science';
import type { UnitSystem } from '@loamwright/units';
import { readIngredients } from './ingredient.ts';
import { readMeasurement } from './measurement.ts';
import type { Names } from './names.ts';
import { readCover } from './standing.ts';

/** What is done to a heap, as typed; each may be said again and again. */
export interface ActOptions {
  readonly turn?: readonly string[] | undefined;
  readonly waterOn?: readonly string[] | undefined;
  readonly coverOn?: readonly string[] | undefined;
  readonly add?: readonly string[] | undefined;
}

/** An act, and what it was typed with. */
export interface ActRead {
  readonly act: ToldAct;
  readonly path: string;
}

interface Around {
  readonly names: Names;
  readonly holding: Holding;
  readonly system: UnitSystem;
}

const LONGEST = 60;
const LITRES_PER_M3 = 1000;
const dayThen = /^\s*(\d{1,4}(?:[.,]\d{1,3})?)\s*(?::(.*))?$/su;

interface DayRead {
  readonly at_day: number;
  readonly rest: string | undefined;
}

/** Acts by their options. All problems come back at once: `day-unreadable`, `not-one-of`, and those of water and stuff. */
export function readActs(options: ActOptions, around: Around): Outcome<readonly ActRead[]> {
  const read: readonly Outcome<ActRead>[] = [
    ...(options.turn ?? []).map((text) => at('--turn', readTurn(text))),
    ...(options.waterOn ?? []).map((text) => at('--water-on', readWatering(text, around.system))),
    ...(options.coverOn ?? []).map((text) => at('--cover-on', readCovering(text, around.system))),
    ...(options.add ?? []).map((text) => at('--add', readAdding(text, around))),
  ];
  const problems: readonly Problem[] = read.flatMap((one) => (one.ok ? [] : one.problems));
  return problems.length > 0 ? bad(...problems) : good(read.flatMap((one) => (one.ok ? [one.value] : [])));
}

function at(path: string, act: Outcome<ToldAct>): Outcome<ActRead> {
  return act.ok ? good({ act: act.value, path }) : act;
}

/** The day that it begins with, and what stands after the colon. */
function readDay(text: string, path: string, wanted: string): Outcome<DayRead> {
  const match = dayThen.exec(text);
  if (match === null) return bad({ code: 'day-unreadable', path, found: text.slice(0, LONGEST), wanted });
  return good({ at_day: Number((match[1] ?? '').replace(',', '.')), rest: match[2]?.trim() });
}

/** `6`, `6:rough`. */
function readTurn(text: string): Outcome<ToldAct> {
  const day = readDay(text, '--turn', '6, 6:rough');
  if (!day.ok) return day;
  const { at_day, rest } = day.value;
  if (rest === undefined) return good({ at_day, act: 'turn' });
  if (rest === 'rough' || rest === 'thorough') return good({ at_day, act: 'turn', care: rest });
  return bad({ code: 'not-one-of', path: '--turn', found: rest.slice(0, LONGEST), wanted: 'rough, thorough' });
}

/** `8:20L`, `8:20L:top`. */
function readWatering(text: string, system: UnitSystem): Outcome<ToldAct> {
  const wanted = '8:20L, 8:20L:top';
  const day = readDay(text, '--water-on', wanted);
  if (!day.ok) return day;
  const { at_day, rest } = day.value;
  if (rest === undefined || rest === '')
    return bad({ code: 'day-unreadable', path: '--water-on', found: text.slice(0, LONGEST), wanted });
  const [amount = '', where, ...more] = rest.split(':').map((part) => part.trim());
  const water = readMeasurement(amount, 'liquid', '--water-on', system);
  if (!water.ok) return water;
  if (more.length > 0 || (where !== undefined && where !== 'top' && where !== 'through')) {
    const found = [where, ...more].join(':').slice(0, LONGEST);
    return bad({ code: 'not-one-of', path: '--water-on', found, wanted: 'top, through' });
  }
  return good({
    at_day,
    act: 'water',
    water_L: LITRES_PER_M3 * water.value.si,
    ...(where !== undefined && { where }),
  });
}

/** `10:straw`, `10:straw:30cm`. */
function readCovering(text: string, system: UnitSystem): Outcome<ToldAct> {
  const day = readDay(text, '--cover-on', '10:straw, 10:straw:30cm, 10:open');
  if (!day.ok) return day;
  const { at_day, rest = '' } = day.value;
  const cover = readCover(rest, '--cover-on', system);
  return cover.ok ? good({ at_day, act: 'stand', ...cover.value }) : cover;
}

/** `5: grass=2barrows; straw=1bale`, `5:mixed: grass=2barrows`. */
function readAdding(text: string, { names, holding }: Around): Outcome<ToldAct> {
  const wanted = '5: grass=2barrows; straw=1bale, 5:mixed: grass=2barrows';
  const day = readDay(text, '--add', wanted);
  if (!day.ok) return day;
  const { at_day, rest = '' } = day.value;
  const mixed = /^mixed\s*:/u.exec(rest);
  const typed = rest
    .slice(mixed?.[0].length ?? 0)
    .split(';')
    .map((part) => part.trim())
    .filter((part) => part !== '');
  if (typed.length === 0) return bad({ code: 'day-unreadable', path: '--add', found: text.slice(0, LONGEST), wanted });
  const stuff = readIngredients(typed, names);
  if (!stuff.ok) return stuff;
  const ingredients = stuff.value.map(({ material, doubtful, amount }) => ({
    ...stuffed(material, doubtful, holding),
    amount,
  }));
  return good({ at_day, act: 'add', mix: { ingredients }, ...(mixed !== null && { mixed: true }) });
}
