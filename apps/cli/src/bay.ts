import { baySize } from '@loamwright/advisor';
import type { Holding } from '@loamwright/daybook';
import { bad, good, type Outcome } from '@loamwright/science';
import { type BaySize, readBaySize } from './grammar/measurement.ts';
import type { Session } from './session.ts';
import { subjectNamed } from './subject.ts';

/** A bay that was named or measured. */
export interface BayMeant {
  /** Its id, where it is written down. */
  readonly id?: string | undefined;
  /** Its inside, where that is known. */
  readonly size?: BaySize | undefined;
}

/** A bay by its name, or by its inside (`1.2x1.2x1m`). Problems: `bay-unreadable`, `which-bay`. */
export function bayMeant(typed: string, holding: Holding, session: Session): Outcome<BayMeant> {
  const size = readBaySize(typed, session.speaker.system);
  if (size !== undefined) return good({ size });
  const id = subjectNamed(holding, 'bay', typed);
  if (!id.ok) {
    const looksMeasured = /^\s*\d/u.test(typed);
    return looksMeasured ? bad({ code: 'bay-unreadable', path: '--bay', found: typed.slice(0, 60), wanted: '' }) : id;
  }
  return good({ id: id.value, size: baySize(holding, id.value) });
}
