import type { Bed, Bodies, Entered, Heap, Holding } from '@loamwright/daybook';
import { bad, bedBudget, good, type Outcome, type OwnSizes, type PutOn, shareOut } from '@loamwright/science';
import type { Saying } from '@loamwright/words';
import { compostOf } from './bed-records.ts';
import { type BedMoment, bedArea_m2, bedReckoned } from './bed-report.ts';
import { measureVolume_m3 } from './measure-volume.ts';
import { measured } from './measured.ts';
import { depth, say } from './saying.ts';

/** Thinner than a millimetre no layer can be told. */
const DUSTING_M = 0.001;

/** A heap that is to be shared among beds, in whole measures. */
export interface HeapSpreadAsked {
  readonly heap: Heap;
  readonly beds: readonly Bed[];
  readonly by: 'area' | 'need';
  /** Id of the measure it is carried in, how many there are in the heap, and how many of them go on beds. */
  readonly measure: string;
  readonly measures: number;
  readonly carried: number;
  readonly ownSizes?: OwnSizes | undefined;
  readonly workedIn: boolean;
}

/** What a bed gets of it. */
export interface BedShare {
  readonly bed: string;
  readonly count: number;
  readonly volume_m3: number;
  readonly depth_m: number;
  readonly said: Saying;
  /** Said where it is more than the bed wants. */
  readonly tooMuch: Saying | null;
}

export interface HeapSpread {
  readonly answer: Saying;
  readonly shares: readonly BedShare[];
}

/**
 * Shares a heap, or part of it, among beds by their area or by the nitrogen that each is short of. Problems: `heap-gone`;
 * `out-of-bounds` where more is carried than there is; `nothing-named` without beds;
 * `nothing-wanted` where by need no bed is short, those of measures.
 */
export function heapSpread(asked: HeapSpreadAsked, holding: Holding, moment: BedMoment): Outcome<HeapSpread> {
  const { beds, by, measure, measures, carried, heap } = asked;
  if (heap.phase === 'gone') return bad({ code: 'heap-gone', path: 'heap', found: heap.name, wanted: '' });
  if (carried > measures)
    return bad({ code: 'out-of-bounds', path: 'carried', found: String(carried), wanted: `at most ${measures}` });
  if (beds.length === 0) return bad({ code: 'nothing-named', path: 'beds', found: '', wanted: '' });
  const each_m3 = measureVolume_m3(measure, asked.ownSizes, moment.needs);
  if (!each_m3.ok) return each_m3;
  const shared = shareOut.run(
    {
      measures: carried,
      by,
      beds: beds.map((bed) => {
        const want = bedReckoned(bed, holding, moment)?.budget.elements.nitrogen.short_kg.p50;
        return { name: bed.setUp.body.name, area_m2: bedArea_m2(bed), ...(want !== undefined && { want }) };
      }),
    },
    moment.needs,
  );
  if (!shared.ok) return shared;
  const shares = beds.flatMap((bed, i): readonly BedShare[] => {
    const count = shared.value.beds[i]?.count ?? 0;
    if (count === 0) return [];
    const volume_m3 = count * each_m3.value;
    const depth_m = volume_m3 / bedArea_m2(bed);
    const name = bed.setUp.body.name;
    const put: PutOn = {
      material: compostOf(heap),
      amount: { volume_m3 },
      placed: asked.workedIn ? 'dug-in' : 'mulched',
    };
    return [
      {
        bed: bed.id,
        count,
        volume_m3,
        depth_m,
        said:
          depth_m < DUSTING_M
            ? say('beds.share.dusting', { amount: measured(measure, count), bed: name })
            : say('beds.share', { amount: measured(measure, count), bed: name, depth: depth(depth_m) }),
        tooMuch: isTooMuch(bed, put, holding, moment) ? say('beds.share.too-much', { bed: name }) : null,
      },
    ];
  });
  return good({ answer: say('share.answer', { beds: shares.map(({ said }) => said) }), shares });
}

/** More than twice the nitrogen it wants, or any on soil that has far too much phosphorus. */
function isTooMuch(bed: Bed, put: PutOn, holding: Holding, moment: BedMoment): boolean {
  const before = bedReckoned(bed, holding, moment);
  if (before === undefined) return false;
  const { soilTest } = before.input;
  if (soilTest?.phosphorusClass === 'excessive' || soilTest?.phosphorusClass === 'high') return true;
  const after = bedBudget.run({ ...before.input, put: [...(before.input.put ?? []), put] }, moment.needs);
  return after.ok && after.value.elements.nitrogen.stands === 'over';
}

/**
 * The entries that write such a sharing down, one for each bed in the order given: each takes its part of what still lies in the heap
 * then, so that the last one of a whole heap takes all that is left, and what is not carried stays.
 */
export function spreadsOf(
  { heap, workedIn, measure, measures }: HeapSpreadAsked,
  shares: readonly BedShare[],
): readonly {
  readonly bed: string;
  readonly body: Bodies['spread'];
  readonly entered: Readonly<Record<string, Entered>>;
}[] {
  let left = measures;
  return shares.map(({ bed, count, volume_m3 }) => {
    const share = count / left;
    left -= count;
    return {
      bed,
      body: { of: { type: 'heap', id: heap.id, share }, volume_m3, workedIn },
      entered: { '/volume_m3': { amount: count, unit: measure } },
    };
  });
}
