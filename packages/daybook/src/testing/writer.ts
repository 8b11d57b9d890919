import { draftOf } from '../draft.ts';
import type { About, Draft, Entry, Precision } from '../entry/entry.ts';
import { seal } from '../entry/seal.ts';
import { type Bodies, type KindId, kinds } from '../kinds/registry.ts';
import { minutesIn2026, testId } from './ids.ts';

/** What a test may set on an entry; the rest is filled in. */
export interface WriterOptions {
  readonly id?: string | undefined;
  readonly happened?: string | undefined;
  readonly written?: string | undefined;
  readonly precision?: Precision | undefined;
  readonly about?: readonly About[] | undefined;
  readonly entered?: Draft['entered'];
  readonly amends?: string | undefined;
  readonly withdraws?: string | undefined;
}

/** A device that writes valid entries of the invented holding Quarry Lane, one minute after another. */
export interface Writer {
  /** All that it has written. */
  readonly entries: readonly Entry[];
  /** Writes an entry of a known kind about `subject`. Throws when it is not valid: a test must not go on with that. */
  write<Id extends KindId>(kind: Id, subject: string | null, body: Bodies[Id], options?: WriterOptions): Entry;
  /** Takes an entry back. */
  withdraw(id: string, options?: WriterOptions): Entry;
  /** Seals any draft, also one of a kind that this version doesn't know. */
  seal(draft: Omit<Draft, 'device'>): Entry;
}

let writers = 0;

export function testWriter(device = 'phone', holding = 'quarry-lane'): Writer {
  const series = ++writers;
  const entries: Entry[] = [];
  const add = (draft: Draft): Entry => {
    const [entry] = seal(entries.at(-1) ?? null, [draft]);
    if (entry === undefined) throw new Error('one draft seals to one entry');
    entries.push(entry);
    return entry;
  };
  const write: Writer['write'] = (kind, subject, body, options = {}) => {
    const number = entries.length + 1;
    const happened = options.happened ?? minutesIn2026(number);
    const type = kinds[kind].subject;
    const about = type === null || subject === null ? [] : [{ type, id: subject }];
    const draft = draftOf(
      kind,
      {
        id: options.id ?? testId(number, series),
        holding,
        device,
        by: 'ada',
        happened,
        zone: 'Europe/London',
        precision: options.precision ?? 'minute',
        written: happened,
        about: options.about ?? about,
        entered: options.entered,
        amends: options.amends,
        withdraws: options.withdraws,
      },
      body,
    );
    if (!draft.ok) throw new Error(`not a valid draft: ${JSON.stringify(draft.problems)}`);
    // A clock that is wrong is told of by the fold; what is written here would not be let through.
    return add({ ...draft.value, written: options.written ?? happened });
  };
  return {
    entries,
    write,
    withdraw: (withdraws, options = {}) => write('withdrawal', null, {}, { ...options, withdraws }),
    seal: (draft) => add({ ...draft, device }),
  };
}
