import { existsSync } from 'node:fs';
import { quarryLane } from '@loamwright/demo';
import { good, type Outcome } from '@loamwright/science';
import { Temporal } from 'temporal-polyfill';
import { withKeeping } from './book.ts';
import type { Session } from './session.ts';

/** One invented year of many; the same everywhere. */
const SEED = 1;
const YEAR_DAYS = 365;

/** Lays the invented year of Quarry Lane, which ended yesterday, into the demo's own daybook, where that is not there yet. */
export async function makeDemo(session: Session): Promise<Outcome<Session>> {
  if (existsSync(session.folder.daybook)) return good(session);
  const today = Temporal.Instant.fromEpochMilliseconds(session.now().getTime())
    .toZonedDateTimeISO(session.zone)
    .toPlainDate();
  const entries = quarryLane({ startDay: today.subtract({ days: YEAR_DAYS }).toString(), seed: SEED });
  return withKeeping(session, async (keeping) => {
    await keeping.keep(entries);
    return good(session);
  });
}
