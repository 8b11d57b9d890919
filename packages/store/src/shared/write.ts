import { continues, type Entry, KeepingError, type Tip } from '@loamwright/daybook';
import { holdingOf } from './batch.ts';

/** What `write` hands over: new entries for the device whose last entry is `tip`. */
export type Compose = (tip: Tip | null) => readonly Entry[];

/** An error of the caller's `compose`, on its way out through a transaction that must be undone first. */
class ComposeError extends Error {
  override readonly name: string = 'ComposeError';
}

/** Runs `work`; what a `compose` inside it threw comes out unchanged (rule K12). */
export async function passingComposeErrors<Result>(work: () => Promise<Result>): Promise<Result> {
  try {
    return await work();
  } catch (error) {
    throw error instanceof ComposeError ? error.cause : error;
  }
}

/** What a keeping knows when it lets `compose` write. */
export interface WriteGround {
  readonly device: string;
  readonly tip: Tip | null;
  readonly holding: string | null;
}

/**
 * Lets the caller compose the device's next entries and checks that they continue its chain (rule K11).
 * @throws ComposeError with the caller's error as its cause
 * @throws KeepingError `broken-chain` or `other-holding`
 */
export function composed(ground: WriteGround, compose: Compose): readonly Entry[] {
  let entries: readonly Entry[];
  try {
    entries = compose(ground.tip);
  } catch (error) {
    throw new ComposeError('compose failed', { cause: error });
  }
  const checked = continues(ground.device, ground.tip, entries);
  if (!checked.ok) {
    const [problem] = checked.problems;
    throw new KeepingError(
      'broken-chain',
      `the new entries don't continue the chain of "${ground.device}" at ${problem?.path}: ${problem?.found} instead of ${problem?.wanted}; nothing was written`,
    );
  }
  holdingOf(entries, ground.holding);
  return entries;
}

/** Refuses, as `id-taken`, an id that this daybook already has: a new entry needs a new one (rule K11). */
export function guardFresh(entries: readonly Entry[], isKept: (id: string) => boolean): void {
  const used = entries.find((entry) => isKept(entry.id));
  if (used === undefined) return;
  throw new KeepingError('id-taken', `the id ${used.id} is already that of another entry; nothing was written`);
}
