import {
  type About,
  type Bodies,
  type Draft,
  draftOf,
  type Entered,
  type Entry,
  type KindId,
  kinds,
  type Precision,
  seal,
} from '@loamwright/daybook';
import type { Random } from './random.ts';
import { instantAt, sinceEpoch_ms, zone } from './time.ts';

/** Something that happened at Quarry Lane, before it has an id. */
export interface Happening<Id extends KindId = KindId> {
  /** A name by which another happening can amend or withdraw it. */
  readonly key?: string | undefined;
  readonly day: number;
  /** Minutes after midnight. */
  readonly minutes: number;
  readonly precision?: Precision | undefined;
  readonly kind: Id;
  /** Id of the subject; none for a kind that may be about anything. */
  readonly subject?: string | undefined;
  readonly body: Bodies[Id];
  readonly entered?: Readonly<Record<string, Entered>> | undefined;
  readonly amends?: string | undefined;
  readonly withdraws?: string | undefined;
  /** Minutes until it was written down. */
  readonly writtenAfter_min?: number | undefined;
}

/** Collects what happened, in any order, and writes it down as one device's entries. */
export interface Notebook {
  put<Id extends KindId>(happening: Happening<Id>): void;
  entries(): readonly Entry[];
}

interface Heading {
  readonly startDay: string;
  readonly holding: string;
  readonly device: string;
  readonly by: string;
  readonly random: Random;
}

const SOON_MIN = 4;

export function openNotebook(heading: Heading): Notebook {
  const happenings: Happening[] = [];
  return {
    put: (happening) => {
      happenings.push(happening as Happening);
    },
    entries: () => write(heading, happenings),
  };
}

interface Timed {
  readonly happening: Happening;
  readonly happened: string;
  readonly written: string;
}

function write(heading: Heading, happenings: readonly Happening[]): readonly Entry[] {
  const timed = happenings.map((happening): Timed => {
    const { day, minutes, writtenAfter_min = SOON_MIN } = happening;
    return {
      happening,
      happened: instantAt(heading.startDay, day, minutes),
      written: instantAt(heading.startDay, day, minutes + writtenAfter_min),
    };
  });
  // A sort keeps the order of equals, so one evening's entries stay as they were put.
  timed.sort((a, b) => sinceEpoch_ms(a.written) - sinceEpoch_ms(b.written));
  const idByKey = new Map<string, string>();
  const drafts = timed.map((one): Draft => {
    const id = idAt(sinceEpoch_ms(one.written), heading.random);
    if (one.happening.key !== undefined) idByKey.set(one.happening.key, id);
    return draft(heading, one, id, idByKey);
  });
  return seal(null, drafts);
}

function draft(heading: Heading, one: Timed, id: string, idByKey: ReadonlyMap<string, string>): Draft {
  const { kind, subject, body, entered, amends, withdraws, precision = 'minute' } = one.happening;
  const type = kinds[kind].subject;
  const about: readonly About[] = type === null || subject === undefined ? [] : [{ type, id: subject }];
  const { holding, device, by } = heading;
  const header = { id, holding, device, by, happened: one.happened, zone, precision, written: one.written, about };
  const made = draftOf(kind, { ...header, entered, amends: idOf(amends), withdraws: idOf(withdraws) }, body);
  if (!made.ok) throw new Error(`${kind} on day ${one.happening.day}: ${JSON.stringify(made.problems)}`);
  return made.value;

  function idOf(key: string | undefined): string | undefined {
    if (key === undefined) return undefined;
    const known = idByKey.get(key);
    if (known === undefined) throw new Error(`${key} was not written before it was corrected`);
    return known;
  }
}

/** An id with the form of a UUIDv7 (RFC 9562 section 5.7): its time is that of writing, its random bits are the seed's. */
function idAt(written_ms: number, random: Random): string {
  const time = written_ms.toString(16).padStart(12, '0');
  const hex = (digits: number): string => random.bits().toString(16).padStart(8, '0').slice(0, digits);
  const variant = (8 + (random.bits() % 4)).toString(16);
  return `${time.slice(0, 8)}-${time.slice(8)}-7${hex(3)}-${variant}${hex(3)}-${hex(8)}${hex(4)}`;
}
