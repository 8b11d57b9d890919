import { heapSpread, heapYieldInput, spreadsOf } from '@loamwright/advisor';
import type { Holding } from '@loamwright/daybook';
import { bad, createDraws, good, type Outcome, yieldEstimate } from '@loamwright/science';
import type { Answer } from '../../answer.ts';
import { allOf, readFigure, readMeasure } from '../../blend.ts';
import { readPast } from '../../grammar/when.ts';
import { namesOf } from '../../holding.ts';
import { recorded } from '../../recorded.ts';
import type { Session } from '../../session.ts';
import { subjectNamed } from '../../subject.ts';
import { page } from '../../text.ts';
import { momentOf } from '../bed/show.ts';
import { cautionText } from '../heap.ts';

export interface SpreadHeapOptions {
  readonly over?: readonly string[] | undefined;
  readonly share?: string | undefined;
  readonly measure?: string | undefined;
  readonly byNeed?: boolean | undefined;
  readonly mulch?: boolean | undefined;
  readonly keep?: boolean | undefined;
  readonly when?: string | undefined;
}

/**
 * `loamwright spread --heap NAME`: a heap shared among beds in whole measures, by area or by need; with `--keep`, written down as
 * spread. Without `--share` it is counted as it is reckoned to yield; without `--over` all beds take part.
 */
export async function spreadHeap(
  name: string,
  options: SpreadHeapOptions,
  holding: Holding,
  session: Session,
): Promise<Outcome<Answer>> {
  const id = subjectNamed(holding, 'heap', name);
  const counted = readMeasure(options.measure, 'barrow', namesOf(session, holding));
  const beds = (options.over ?? [...holding.beds.keys()]).map((one) => subjectNamed(holding, 'bed', one));
  const typed = options.share === undefined ? good(undefined) : readFigure(options.share, '--share');
  const problems = allOf(id, counted, typed, ...beds);
  if (problems.length > 0 || !id.ok || !counted.ok || !typed.ok) return bad(...problems);
  const heap = holding.heaps.get(id.value);
  if (heap === undefined) throw new RangeError('a heap was named');
  const ownSizes = session.settings.measures_L;
  const moment = momentOf(session);
  const known = heapYieldInput(heap, holding, moment.now);
  const reckoned =
    known === undefined
      ? undefined
      : yieldEstimate.run({ ...known, measure: counted.value, ownSizes }, { draws: createDraws() });
  const measures =
    typeof typed.value === 'number'
      ? typed.value
      : reckoned?.ok === true
        ? Math.round(reckoned.value.count.p50)
        : undefined;
  if (measures === undefined || !Number.isInteger(measures) || measures < 1)
    return bad({ code: 'number-unreadable', path: '--share', found: options.share ?? '', wanted: '' });
  const asked = {
    heap,
    beds: beds.flatMap((bed) => (bed.ok ? (holding.beds.get(bed.value) ?? []) : [])),
    by: options.byNeed === true ? ('need' as const) : ('area' as const),
    measure: counted.value,
    measures,
    ownSizes,
    workedIn: options.mulch !== true,
  };
  const found = heapSpread(asked, holding, moment);
  if (!found.ok) return found;
  if (options.keep === true) {
    const when = readPast(options.when ?? 'now', session.now(), session.zone);
    if (!when.ok) return when;
    return recorded(
      session,
      spreadsOf(asked, found.value.shares).map(({ bed, body }) => ({
        kind: 'spread',
        body,
        about: [{ type: 'bed', id: bed }],
        when: when.value,
      })),
    );
  }
  const { speaker, terminal } = session;
  const notes = found.value.shares.flatMap(({ tooMuch }) => (tooMuch === null ? [] : [tooMuch]));
  return good({
    value: { measures, ...found.value },
    text: [
      page(terminal.columns, [speaker.tell(found.value.answer)]),
      page(terminal.columns, ...notes.map((said): [string] => [speaker.tell(said)])),
      cautionText(['legionella', 'dust-spores', 'manure-pathogens'], speaker, terminal.columns),
    ]
      .filter((block) => block !== '')
      .join('\n\n'),
  });
}
