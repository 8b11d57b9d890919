import type { Holding } from '@loamwright/daybook';
import { bad, good, type Outcome, type TypedReading } from '@loamwright/science';
import type { Jotting } from '../../book.ts';
import { looksLikeTemperature } from '../../grammar/measurement.ts';
import type { Names } from '../../grammar/names.ts';
import type { WhenRead } from '../../grammar/when.ts';
import type { Session } from '../../session.ts';
import { acts } from './act.ts';
import { logBay } from './bay.ts';
import type { LogOptions } from './options.ts';
import { readReading } from './reading.ts';
import { logStock } from './stock.ts';

/** What is to be logged: of what, in which words, on which ground. */
export interface LogAsked {
  /** `stock`, `bay`, `note`, or the heap that is meant. */
  readonly of: 'stock' | 'bay' | 'note' | { readonly heap: string };
  readonly typed: readonly string[];
  readonly options: LogOptions;
  readonly when: WhenRead;
  readonly holding: Holding;
  readonly names: Names;
  readonly session: Session;
}

/** What was read, ready to be written down. */
export interface LogRead {
  readonly jottings: readonly Jotting[];
  /** A temperature, and what it is held against before it is believed. */
  readonly temperature?: TypedReading | undefined;
}

/** Reads what is to be logged; writes nothing. Problems: those of each kind, and `act-unknown`. */
export function readLog(asked: LogAsked): Outcome<LogRead> {
  const { of, typed } = asked;
  switch (of) {
    case 'stock': {
      const jottings = logStock(asked);
      return jottings.ok ? good({ jottings: jottings.value }) : jottings;
    }
    case 'bay':
      return one(logBay(asked));
    case 'note': {
      const text = typed.join(' ').trim();
      if (text === '') return bad({ code: 'note-empty', path: 'note', found: '', wanted: '' });
      return good({ jottings: [{ kind: 'note', body: { text }, about: [], when: asked.when }] });
    }
    default:
      return readHeapLog(of.heap, asked);
  }
}

function readHeapLog(heap: string, asked: LogAsked): Outcome<LogRead> {
  const [first, ...rest] = asked.typed;
  const act = first !== undefined && Object.hasOwn(acts, first) ? acts[first] : undefined;
  if (act !== undefined) return one(act({ ...asked, heap, rest }));
  if (first !== undefined && (!looksLikeTemperature(first) || rest.length > 0)) {
    const found = asked.typed.join(' ').slice(0, 60);
    return bad({ code: 'act-unknown', path: 'log', found, wanted: Object.keys(acts).join(', ') });
  }
  const state = asked.holding.heaps.get(heap);
  if (state === undefined) return bad({ code: 'no-such-heap', path: '', found: heap, wanted: '' });
  const read = readReading(first, asked.options, state, asked.when, asked.session);
  if (!read.ok) return read;
  const { body, entered, typed } = read.value;
  const about = [{ type: 'heap', id: heap }];
  return good({ jottings: [{ kind: 'reading', body, about, when: asked.when, entered }], temperature: typed });
}

function one(jotting: Outcome<Jotting>): Outcome<LogRead> {
  return jotting.ok ? good({ jottings: [jotting.value] }) : jotting;
}
