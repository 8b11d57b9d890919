import { existsSync, mkdirSync } from 'node:fs';
import {
  type About,
  type Bodies,
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
import { bad, good, type Outcome } from '@loamwright/science';
import { openSqliteKeeping } from '@loamwright/store/sqlite';
import type { WhenRead } from './grammar/when.ts';
import { deviceOf, type Session } from './session.ts';

/** Something to be written down. */
export interface Jotting<Id extends KindId = KindId> {
  readonly kind: Id;
  readonly body: Bodies[Id];
  readonly about: readonly About[];
  readonly when: WhenRead;
  readonly entered?: Readonly<Record<string, Entered>> | undefined;
  readonly amends?: string | undefined;
  readonly withdraws?: string | undefined;
}

/**
 * Opens the session's daybook for one piece of work and closes it again. What the daybook's file can't do comes back as
 * a problem: `damaged`, `busy`, `full`, `other-holding`, `folder-unusable` and their like.
 */
export async function withKeeping<Value>(
  session: Session,
  work: (keeping: Keeping) => Promise<Outcome<Value>>,
): Promise<Outcome<Value>> {
  let keeping: Keeping | undefined;
  try {
    mkdirSync(session.folder.path, { recursive: true, mode: 0o700 });
    keeping = await openSqliteKeeping(session.folder.daybook);
    return await work(keeping);
  } catch (error) {
    return bad(keepingProblem(error, session.folder.daybook));
  } finally {
    await keeping?.close();
  }
}

function keepingProblem(error: unknown, path: string): { code: string; path: string; found: string; wanted: string } {
  const found = error instanceof Error ? error.message : String(error);
  return { code: error instanceof KeepingError ? error.code : 'folder-unusable', path, found, wanted: '' };
}

/** Every entry kept, in order of arrival, and what they add up to. */
export interface Book {
  readonly entries: readonly Entry[];
  readonly holding: Holding;
}

/** Reads the daybook. One that has not been begun is empty, and is not begun by looking at it. */
export async function readBook(session: Session): Promise<Outcome<Book>> {
  const entries = await readEntries(session);
  if (!entries.ok) return entries;
  return good({ entries: entries.value, holding: fold(entries.value, { now: session.now().toISOString() }) });
}

async function readEntries(session: Session): Promise<Outcome<readonly Entry[]>> {
  if (!existsSync(session.folder.daybook)) return good([]);
  return withKeeping(session, async (keeping) => good((await keeping.read()).entries));
}

/** Writes entries down, all or none, and gives them back sealed. */
export async function writeDown(session: Session, jottings: readonly Jotting[]): Promise<Outcome<readonly Entry[]>> {
  return withKeeping(session, async (keeping) => {
    const known = deviceOf(
      session,
      (await keeping.tips()).map((tip) => tip.device),
    );
    if (!known.ok) return known;
    const device = known.value;
    const holding = (await keeping.holding()) ?? session.newId();
    const drafts = jottings.map((jotting) =>
      draftOf(jotting.kind, headerOf(session, { device, holding }, jotting), jotting.body),
    );
    const problems = drafts.flatMap((draft) => (draft.ok ? [] : draft.problems));
    if (problems.length > 0) return bad(...problems);
    const ready = drafts.flatMap((draft) => (draft.ok ? [draft.value] : []));
    return good(await keeping.write(device, (tip) => seal(tip, ready)));
  });
}

function headerOf(
  session: Session,
  who: { device: string; holding: string },
  jotting: Jotting,
): Parameters<typeof draftOf>[1] {
  const { when, about, entered, amends, withdraws } = jotting;
  return {
    id: session.newId(),
    ...who,
    by: session.settings.by ?? 'keeper',
    happened: when.happened,
    zone: session.zone,
    precision: when.precision,
    written: session.now().toISOString(),
    about,
    ...(entered !== undefined && { entered }),
    ...(amends !== undefined && { amends }),
    ...(withdraws !== undefined && { withdraws }),
  };
}
