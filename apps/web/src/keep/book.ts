import {
  type About,
  type Attachment,
  attachmentsOf,
  type Bodies,
  type Draft,
  draftOf,
  type Entered,
  type Entry,
  fold,
  type Holding,
  type Keeping,
  KeepingError,
  type KindId,
  seal,
} from '@loamwright/daybook';
import type { Problem } from '@loamwright/science';
import { v7 } from 'uuid';
import { type Happened, now, zone } from './time.ts';

/** What is written: one thing that happened, before the device's chain numbers and seals it. */
export type ToWrite = {
  readonly [Id in KindId]: {
    /** Made beforehand where something else is about it. */
    readonly id?: string | undefined;
    readonly kind: Id;
    readonly about: readonly About[];
    readonly body: Bodies[Id];
    readonly happened: Happened;
    /** Amounts as they were given, by JSON Pointer into the body. */
    readonly entered?: Readonly<Record<string, Entered>> | undefined;
    readonly amends?: string | undefined;
    readonly withdraws?: string | undefined;
  };
}[KindId];

/** Who writes, into which holding, on which device. */
export interface Writer {
  readonly holding: string;
  readonly device: string;
  readonly by: string;
}

/** What a page sees of the daybook at one moment. */
export interface Leaf {
  /** In order of arrival. */
  readonly entries: readonly Entry[];
  readonly holding: Holding;
  /** Why the browser keeps nothing here; null where it does. */
  readonly refused: string | null;
}

/** An open daybook: what is in it, and the ways to add to it. */
export interface Book {
  leaf(): Leaf;
  subscribe(listener: () => void): () => void;
  /**
   * Writes what happened, with the pictures that it shows. Rejects with {@link NotWritten} and leaves everything as it
   * was when it can't.
   */
  write(writer: Writer, things: readonly ToWrite[], attachments?: readonly Attachment[]): Promise<readonly Entry[]>;
  /** Does something to the keeping that may add to it, such as bringing a file in. */
  change<Result>(work: (keeping: Keeping) => Promise<Result>): Promise<Result>;
  /** Reads the keeping, as for a copy. Rejects with {@link NotWritten} where the browser keeps nothing. */
  look<Result>(work: (keeping: Keeping) => Promise<Result>): Promise<Result>;
  close(): Promise<void>;
}

/** What was written down could not be kept; nothing of it is. */
export class NotWritten extends Error {
  override readonly name: string = 'NotWritten';
  readonly reason: 'refused' | 'full' | 'busy' | 'closed' | 'not-valid' | 'failed';
  readonly problems: readonly Problem[];
  constructor(reason: NotWritten['reason'], problems: readonly Problem[], options?: ErrorOptions) {
    super(reason, options);
    this.reason = reason;
    this.problems = problems;
  }
}

/** Someone else refused, such as the computer or a file; it passes through as it is. */
export class Refused extends Error {
  override readonly name: string = 'Refused';
}

/** A daybook on a keeping. Other tabs on the same keeping are told of every change, and theirs are read. */
export async function openBook(name: string, keeping: Keeping): Promise<Book> {
  const entries: Entry[] = [];
  let position = 0;
  let leaf: Leaf = { entries: [], holding: fold([]), refused: null };
  const listeners = new Set<() => void>();
  const others = new BroadcastChannel(`loamwright.${name}`);
  let reading: Promise<void> = Promise.resolve();

  /** Reads what has arrived since; calls wait for one another, so that nothing is read twice. */
  const refresh = (): Promise<void> => {
    reading = reading.then(readOn, readOn);
    return reading;
  };
  const readOn = async (): Promise<void> => {
    const page = await keeping.read({ after: position });
    if (page.entries.length === 0) return;
    position = page.position;
    entries.push(...page.entries);
    leaf = { entries: [...entries], holding: fold(entries, { now: now() }), refused: null };
    for (const listener of listeners) listener();
  };
  const changed = async (): Promise<void> => {
    await refresh();
    others.postMessage('changed');
  };
  others.addEventListener('message', () => {
    // The next change here reads on from the same place, so a failed reading loses nothing.
    refresh().catch(() => undefined);
  });
  await refresh();

  return {
    leaf: () => leaf,
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    write: async (writer, things, attachments = []) => {
      const drafts = things.map((thing) => draftFor(writer, thing));
      const written = await asNotWritten(async () => {
        try {
          // Before the lines that show them: a line without its picture would be worse than a picture without a line.
          for (const { hash, bytes, mediaType } of attachments) await keeping.attach(hash, bytes, mediaType);
          return await keeping.write(writer.device, (tip) => seal(tip, drafts));
        } catch (error) {
          await letGoOfUnwanted(keeping, attachments);
          throw error;
        }
      });
      await changed();
      return written;
    },
    change: async (work) => {
      try {
        return await asNotWritten(() => work(keeping));
      } finally {
        // What was kept before it failed is kept all the same.
        await changed();
      }
    },
    look: (work) => work(keeping),
    close: async () => {
      others.close();
      listeners.clear();
      await keeping.close();
    },
  };
}

/** A book where the browser refuses to keep one: it is empty, and says so to whoever writes. */
export function refusedBook(why: string): Book {
  const refuse = (): Promise<never> => Promise.reject(new NotWritten('refused', []));
  const leaf: Leaf = { entries: [], holding: fold([]), refused: why };
  return {
    leaf: () => leaf,
    subscribe: () => () => undefined,
    write: refuse,
    change: refuse,
    look: refuse,
    close: () => Promise.resolve(),
  };
}

/** What no line shows would only take room. On a full device this may fail too; then it is overwritten at the next try. */
async function letGoOfUnwanted(keeping: Keeping, attachments: readonly Attachment[]): Promise<void> {
  if (attachments.length === 0) return;
  try {
    const wanted = new Set(attachmentsOf((await keeping.read()).entries).wanted);
    for (const { hash } of attachments) if (!wanted.has(hash)) await keeping.detach(hash);
  } catch (error) {
    // The reason why nothing was written is the one to be told.
    if (!(error instanceof KeepingError)) throw error;
  }
}

function draftFor(writer: Writer, thing: ToWrite): Draft {
  const { id = v7(), kind, about, body, happened, entered, amends, withdraws } = thing;
  const drafted = draftOf(
    kind,
    {
      ...writer,
      id,
      about,
      happened: happened.instant,
      precision: happened.precision,
      zone: zone(),
      written: now(),
      ...(entered === undefined ? {} : { entered }),
      ...(amends === undefined ? {} : { amends }),
      ...(withdraws === undefined ? {} : { withdraws }),
    },
    body,
  );
  if (!drafted.ok) throw new NotWritten('not-valid', drafted.problems);
  return drafted.value;
}

async function asNotWritten<Result>(work: () => Promise<Result>): Promise<Result> {
  try {
    return await work();
  } catch (error) {
    if (error instanceof KeepingError && (error.code === 'full' || error.code === 'busy' || error.code === 'closed')) {
      throw new NotWritten(error.code, [], { cause: error });
    }
    throw error instanceof NotWritten || error instanceof Refused
      ? error
      : new NotWritten('failed', [], { cause: error });
  }
}
