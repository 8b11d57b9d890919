import { stuffed } from '@loamwright/advisor';
import type { Holding } from '@loamwright/daybook';
import { bad, good, type HeapWallId, type Outcome, type Problem, type ToldAct } from '@loamwright/science';
import type { UnitSystem } from '@loamwright/units';
import { type PlaceRead, readPlace, wallsOf } from './heap-place.ts';
import { heapForms } from './heap-shape.ts';
import { readIngredients } from './ingredient.ts';
import { readMeasurement } from './measurement.ts';
import type { Names } from './names.ts';
import { readCover, readWalls } from './standing.ts';

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

/** Acts by their options. All problems come back at once: `day-unreadable`, `not-one-of`, and those of places, water and stuff. */
export function readActs(options: ActOptions, around: Around): Outcome<readonly ActRead[]> {
  const read: readonly Outcome<readonly ActRead[]>[] = [
    ...(options.turn ?? []).map((text) => readTurn(text, around)),
    ...(options.waterOn ?? []).map((text) => at('--water-on', readWatering(text, around.system))),
    ...(options.coverOn ?? []).map((text) => at('--cover-on', readCovering(text, around.system))),
    ...(options.add ?? []).map((text) => at('--add', readAdding(text, around))),
  ];
  const problems: readonly Problem[] = read.flatMap((one) => (one.ok ? [] : one.problems));
  return problems.length > 0 ? bad(...problems) : good(read.flatMap((one) => (one.ok ? one.value : [])));
}

function at(path: string, act: Outcome<ToldAct>): Outcome<readonly ActRead[]> {
  return act.ok ? good([{ act: act.value, path }]) : act;
}

/** The day that it begins with, and what stands after the colon. */
function readDay(text: string, path: string, wanted: string): Outcome<DayRead> {
  const match = dayThen.exec(text);
  if (match === null) return bad({ code: 'day-unreadable', path, found: text.slice(0, LONGEST), wanted });
  return good({ at_day: Number((match[1] ?? '').replace(',', '.')), rest: match[2]?.trim() });
}

const TURN = '--turn';
const cares = ['rough', 'thorough'] as const;
const places = ['bay', ...heapForms] as const;
const partsOfTurn = [...cares, ...places.map((form) => `${form}=…`), 'walls=…'].join(', ');

/** What a turn is told with, each once at the most. */
interface TurnRead {
  readonly care?: (typeof cares)[number];
  readonly into?: PlaceRead;
  readonly walls?: HeapWallId;
}

/** `6`, `6:rough`, `6:bay=1.5x1.5m`, `6:rough:dome=1.6x1m`, `6:bay=1.5x1.5m:walls=straw-bales`; a change of walls is an act of its own. */
function readTurn(text: string, around: Around): Outcome<readonly ActRead[]> {
  const day = readDay(text, TURN, '6, 6:rough, 6:bay=1.5x1.5m');
  if (!day.ok) return day;
  const { at_day, rest } = day.value;
  let turn: TurnRead = {};
  for (const part of rest === undefined ? [] : rest.split(':')) {
    const read = readTurnPart(part.trim(), around);
    if (!read.ok) return read;
    if (Object.keys(read.value).some((key) => key in turn)) return bad(noTurnPart(part));
    turn = { ...turn, ...read.value };
  }
  const { care, into } = turn;
  const walls = turn.walls ?? (into === undefined ? undefined : wallsOf(into, around.holding));
  const acts: readonly ToldAct[] = [
    { at_day, act: 'turn', ...(care !== undefined && { care }), ...(into !== undefined && { into: into.shape }) },
    ...(walls === undefined ? [] : [{ at_day, act: 'stand' as const, walls }]),
  ];
  return good(acts.map((act) => ({ act, path: TURN })));
}

function readTurnPart(part: string, around: Around): Outcome<TurnRead> {
  const care = cares.find((one) => one === part);
  if (care !== undefined) return good({ care });
  const [, name = '', told = ''] = /^([a-z]+)\s*=\s*(.+)$/su.exec(part) ?? [];
  if (name === 'walls') {
    const walls = readWalls(told, TURN);
    return walls.ok ? good({ walls: walls.value }) : walls;
  }
  const form = places.find((one) => one === name);
  if (form === undefined) return bad(noTurnPart(part));
  const into = readPlace({ form, text: told, path: TURN }, around);
  return into.ok ? good({ into: into.value }) : into;
}

function noTurnPart(part: string): Problem {
  return { code: 'not-one-of', path: TURN, found: part.slice(0, LONGEST), wanted: partsOfTurn };
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
