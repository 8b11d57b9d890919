import {
  type Conflict,
  compareText,
  type ExchangeMessage,
  type HeldOfDevice,
  type Run,
  type Side,
  type Stretch,
} from '@loamwright/daybook';
import { bad, good, type Outcome, type Problem } from '@loamwright/science';
import { maxItems } from './limits.ts';

/** A give as it came: what is in it has still to be checked one by one (`readGive`). */
export interface RawGive {
  readonly type: 'give';
  readonly v: 1;
  readonly holding: string;
  readonly entries: readonly unknown[];
  readonly attachments: readonly unknown[];
  readonly last: boolean;
}

/** A message whose form is sound. */
export type ReadMessage = Exclude<ExchangeMessage, { readonly type: 'give' }> | RawGive;

const name = /^[a-z0-9](?:[a-z0-9-]{0,62}[a-z0-9])?$/u;
const hash = /^[0-9a-f]{64}$/u;
const uuid = /^[0-9a-f-]{36}$/u;

/**
 * Reads a message that comes from outside. Stops at its first fault and looks at nothing twice, so
 * that a hostile one costs no more than reading it (rule X14). Never throws.
 *
 * Problems: `exchange-no-message`, `exchange-newer`, `exchange-other-holding`, `exchange-too-many`.
 */
export function readMessage(input: unknown, holding: string): Outcome<ReadMessage> {
  try {
    return good(readAs(input, holding));
  } catch (error) {
    if (error instanceof Fault) return bad(error.problem);
    throw error;
  }
}

/** The first fault of a message, on its way out. */
class Fault extends Error {
  override readonly name: string = 'Fault';
  readonly problem: Problem;
  constructor(problem: Problem) {
    super(problem.code);
    this.problem = problem;
  }
}

function fault(path: string, found: unknown, wanted: string): Fault {
  return new Fault({ code: 'exchange-no-message', path, found: shown(found), wanted });
}

/** What stood there, in few letters and without walking through it. */
function shown(value: unknown): string {
  if (value === undefined) return 'nothing';
  if (typeof value === 'string') return value.length > 60 ? `${value.slice(0, 60)}…` : value;
  if (Array.isArray(value)) return `a list of ${value.length}`;
  return typeof value === 'object' && value !== null ? 'an object' : String(value);
}

function readAs(input: unknown, holding: string): ReadMessage {
  const message = object(input, '');
  const { type } = message;
  if (type !== 'offer' && type !== 'ask' && type !== 'give') throw fault('type', type, 'offer, ask or give');
  if (message['v'] !== 1) {
    if (typeof message['v'] === 'number' && message['v'] > 1)
      throw new Fault({ code: 'exchange-newer', path: 'v', found: String(message['v']), wanted: '1' });
    throw fault('v', message['v'], '1');
  }
  const of = text(message['holding'], 'holding', name, 'the name of a holding');
  if (of !== holding) throw new Fault({ code: 'exchange-other-holding', path: 'holding', found: of, wanted: holding });
  const count = counter();
  const head = { v: 1, holding } as const;
  switch (type) {
    case 'offer':
      return {
        type,
        ...head,
        held: heldIn(message['held'], count),
        conflicts: conflictsIn(message['conflicts'], count),
      };
    case 'ask':
      return {
        type,
        ...head,
        stretches: list(message['stretches'], 'stretches', count).map(stretchIn),
        attachments: list(message['attachments'], 'attachments', count).map((value, i) =>
          sum(value, `attachments[${i}]`),
        ),
      };
    case 'give': {
      const { last } = message;
      if (typeof last !== 'boolean') throw fault('last', last, 'true or false');
      return {
        type,
        ...head,
        entries: list(message['entries'], 'entries', count),
        attachments: list(message['attachments'], 'attachments', count),
        last,
      };
    }
  }
}

/** Counts what a message lists, and stops before the lists are walked through. */
type Counter = (more: number, path: string) => void;

function counter(): Counter {
  let items = 0;
  return (more, path) => {
    items += more;
    if (items > maxItems)
      throw new Fault({ code: 'exchange-too-many', path, found: `${items} or more`, wanted: `at most ${maxItems}` });
  };
}

function heldIn(value: unknown, count: Counter): readonly HeldOfDevice[] {
  let above = '';
  return list(value, 'held', count).map((item, i) => {
    const path = `held[${i}]`;
    const of = object(item, path);
    const device = text(of['device'], `${path}.device`, name, 'the name of a device');
    if (compareText(device, above) <= 0) throw fault(`${path}.device`, device, 'devices in order, each once');
    above = device;
    return {
      device,
      runs: runsIn(of['runs'], `${path}.runs`, count),
      sides: sidesIn(of['sides'], `${path}.sides`, count),
    };
  });
}

function runsIn(value: unknown, path: string, count: Counter): readonly Run[] {
  let above = 0;
  return list(value, path, count).map((item, i) => {
    const at = `${path}[${i}]`;
    const run = object(item, at);
    const from = number(run['from'], `${at}.from`);
    const to = number(run['to'], `${at}.to`);
    if (from <= above || to < from) throw fault(at, `${from}–${to}`, 'runs from low to high that don’t overlap');
    above = to;
    return { from, to, sum: sum(run['sum'], `${at}.sum`) };
  });
}

function sidesIn(value: unknown, path: string, count: Counter): readonly Side[] {
  return list(value, path, count).map((item, i) => {
    const at = `${path}[${i}]`;
    const side = object(item, at);
    return { n: number(side['n'], `${at}.n`), id: id(side['id'], `${at}.id`), sum: sum(side['sum'], `${at}.sum`) };
  });
}

function conflictsIn(value: unknown, count: Counter): readonly Conflict[] {
  return list(value, 'conflicts', count).map((item, i) => {
    const at = `conflicts[${i}]`;
    const conflict = object(item, at);
    const sums = list(conflict['sums'], `${at}.sums`, count).map((one, j) => sum(one, `${at}.sums[${j}]`));
    return { id: id(conflict['id'], `${at}.id`), sums };
  });
}

function stretchIn(value: unknown, i: number): Stretch {
  const at = `stretches[${i}]`;
  const stretch = object(value, at);
  const from = number(stretch['from'], `${at}.from`);
  const to = number(stretch['to'], `${at}.to`);
  if (to < from) throw fault(at, `${from}–${to}`, 'a stretch from low to high');
  return { device: text(stretch['device'], `${at}.device`, name, 'the name of a device'), from, to };
}

function object(value: unknown, path: string): Readonly<Record<string, unknown>> {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) throw fault(path, value, 'an object');
  return value as Readonly<Record<string, unknown>>;
}

function list(value: unknown, path: string, count: Counter): readonly unknown[] {
  if (!Array.isArray(value)) throw fault(path, value, 'a list');
  count(value.length, path);
  return value;
}

function text(value: unknown, path: string, form: RegExp, wanted: string): string {
  if (typeof value !== 'string' || !form.test(value)) throw fault(path, value, wanted);
  return value;
}

function id(value: unknown, path: string): string {
  return text(value, path, uuid, 'the id of an entry');
}

function sum(value: unknown, path: string): string {
  return text(value, path, hash, '64 lower-case hex digits (SHA-256)');
}

function number(value: unknown, path: string): number {
  if (typeof value !== 'number' || !Number.isSafeInteger(value) || value < 1)
    throw fault(path, value, 'a whole number from 1 to 2^53 − 1');
  return value;
}
