import type { Entry } from '@loamwright/daybook';
import { quarryLane, quarryLaneDays } from '@loamwright/demo';

const DAY_MS = 86_400_000;
const SEED = 1;

/** The made-up garden's year, which ends today. */
export function quarryLaneUntilToday(): readonly Entry[] {
  const startDay = new Date(Date.now() - quarryLaneDays * DAY_MS).toISOString().slice(0, 10);
  return quarryLane({ startDay, seed: SEED });
}
