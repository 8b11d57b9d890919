import { compostOf, heapLeft, heapSpread, leftSaying, spreadsOf } from '@loamwright/advisor';
import type { Holding } from '@loamwright/daybook';
import { bad, good, type Outcome } from '@loamwright/science';
import type { Saying } from '@loamwright/words';
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
  readonly there?: string | undefined;
  readonly measure?: string | undefined;
  readonly byNeed?: boolean | undefined;
  readonly mulch?: boolean | undefined;
  readonly keep?: boolean | undefined;
  readonly when?: string | undefined;
}

/**
 * `loamwright spread --heap NAME`: a heap shared among beds in whole measures, by area or by need; with `--keep`, written down as
 * spread. What there is (`--there`) is counted as it is reckoned to yield, or as its record leaves of a heap that was partly taken;
 * without `--share` all of it goes, without `--over` all beds take part.
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
  const share = readWhole(options.share, '--share');
  const there = readWhole(options.there, '--there');
  const problems = allOf(id, counted, share, there, ...beds);
  if (problems.length > 0 || !id.ok || !counted.ok || !share.ok || !there.ok) return bad(...problems);
  const heap = holding.heaps.get(id.value);
  if (heap === undefined) throw new RangeError('a heap was named');
  const ownSizes = session.settings.measures_L;
  const moment = momentOf(session);
  const asking = { measure: counted.value, ownSizes, now: moment.now, needs: moment.needs };
  const left = heapLeft(heap, holding, asking);
  const likely = left === undefined ? undefined : Math.max(1, Math.round(left.count));
  const measures = there.value ?? (likely === undefined ? share.value : Math.max(likely, share.value ?? 0));
  if (measures === undefined) return bad({ code: 'missing', path: '--share', found: '', wanted: '4' });
  const carried = share.value ?? measures;
  const asked = {
    heap,
    beds: beds.flatMap((bed) => (bed.ok ? (holding.beds.get(bed.value) ?? []) : [])),
    by: options.byNeed === true ? ('need' as const) : ('area' as const),
    measure: counted.value,
    measures,
    carried,
    ownSizes,
    workedIn: options.mulch !== true,
  };
  const found = heapSpread(asked, holding, moment);
  if (!found.ok) return found;
  if (options.keep === true) {
    if (found.value.shares.length === 0) return bad({ code: 'nothing-wanted', path: 'beds', found: '0', wanted: '' });
    const when = readPast(options.when ?? 'now', session.now(), session.zone);
    if (!when.ok) return when;
    return recorded(
      session,
      spreadsOf(asked, found.value.shares).map(({ bed, body, entered }) => ({
        kind: 'spread',
        body,
        entered,
        about: [{ type: 'bed', id: bed }],
        when: when.value,
      })),
    );
  }
  const { speaker, terminal } = session;
  const unripe: readonly Saying[] = compostOf(heap) === 'unfinished-compost' ? [{ key: 'sharePage.unripe' }] : [];
  const some = leftSaying(heap, holding, asking);
  const { against, stays, answer, shares } = found.value;
  const notes = shares.flatMap(({ tooMuch }) => (tooMuch === null ? [] : [tooMuch]));
  return good({
    value: { measures, ...found.value },
    text: [
      page(terminal.columns, ...[...against, answer].map((said): [string] => [speaker.tell(said)])),
      page(
        terminal.columns,
        ...[...stays, ...(some === null ? [] : [some]), ...unripe, ...notes].map((said): [string] => [
          speaker.tell(said),
        ]),
      ),
      cautionText(['legionella', 'dust-spores', 'manure-pathogens'], speaker, terminal.columns),
    ]
      .filter((block) => block !== '')
      .join('\n\n'),
  });
}

/** Problems: `number-unreadable`; `out-of-bounds` for what is no whole number from 1. */
function readWhole(typed: string | undefined, path: string): Outcome<number | undefined> {
  if (typed === undefined) return good(undefined);
  const read = readFigure(typed, path);
  if (!read.ok) return read;
  return typeof read.value === 'number' && Number.isInteger(read.value) && read.value >= 1
    ? good(read.value)
    : bad({ code: 'out-of-bounds', path, found: typed.slice(0, 40), wanted: 'a whole number from 1' });
}
