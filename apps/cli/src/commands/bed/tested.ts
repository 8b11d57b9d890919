import type { Bodies } from '@loamwright/daybook';
import { bad, good, likely, type Outcome, type SoilFigure } from '@loamwright/science';
import type { Answer } from '../../answer.ts';
import { allOf, readFigure } from '../../blend.ts';
import type { Session } from '../../session.ts';
import { subjectNamed } from '../../subject.ts';
import { written } from './write.ts';

/** What a soil test says besides phosphorus and potassium. */
export interface BedTestedOptions {
  readonly ph?: string | undefined;
  readonly om?: string | undefined;
  readonly lab?: string | undefined;
  readonly when?: string | undefined;
}

/** A soil test written down for a bed, with phosphorus and potassium as the lab prints them. */
export function bedTested(
  name: string,
  figures: readonly SoilFigure[],
  { ph, om, lab, when: typed }: BedTestedOptions,
  session: Session,
): Promise<Outcome<Answer>> {
  return written({ when: typed }, session, ({ holding, when }) => {
    const bed = subjectNamed(holding, 'bed', name);
    const pH = readWithin(ph, '--ph', LEAST_PH, MOST_PH);
    const organic = readWithin(om, '--om', 0, 100);
    if (!bed.ok || !pH.ok || !organic.ok) return bad(...allOf(bed, pH, organic));
    if (figures.length === 0 && pH.value === undefined && organic.value === undefined)
      return bad({ code: 'nothing-named', path: 'bed test', found: '', wanted: '' });
    const body: Bodies['soil-tested'] = {
      ...(pH.value !== undefined && { pH: pH.value }),
      ...(organic.value !== undefined && { organicMatter_pctDry: organic.value }),
      ...(figures.length > 0 && { figures }),
      ...(lab !== undefined && { laboratory: lab }),
    };
    return good([{ kind: 'soil-tested', body, about: [{ type: 'bed', id: bed.value }], when }]);
  });
}

/** No soil is sourer or sweeter. */
const LEAST_PH = 2;
const MOST_PH = 12;

/** Problems: `number-unreadable`, `out-of-bounds`. */
function readWithin(typed: string | undefined, path: string, least: number, most: number): Outcome<number | undefined> {
  if (typed === undefined) return good(undefined);
  const read = readFigure(typed, path);
  if (!read.ok) return read;
  const value = likely(read.value);
  return value >= least && value <= most
    ? good(value)
    : bad({ code: 'out-of-bounds', path, found: String(value), wanted: `${least} to ${most}` });
}
