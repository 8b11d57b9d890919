import type { Bed, Bodies, Entered, Heap, Holding } from '@loamwright/daybook';
import {
  bad,
  bedBudget,
  type ClassId,
  good,
  type Outcome,
  type OwnSizes,
  type PutOn,
  type ShareBed,
  shareOut,
  spreadLimits,
} from '@loamwright/science';
import type { Saying } from '@loamwright/words';
import { type BedMoment, bedArea_m2, bedReckoned, bedTested } from './bed-report.ts';
import { measureVolume_m3 } from './measure-volume.ts';
import { measured } from './measured.ts';
import { heapStuff } from './own-compost.ts';
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
  /** Said where it is more nitrogen than the bed wants. */
  readonly tooMuch: Saying | null;
}

export interface HeapSpread {
  /** What speaks against a bed: to be said before the answer. */
  readonly against: readonly Saying[];
  readonly answer: Saying;
  /** Why no more of it goes, and what stays in the heap. */
  readonly stays: readonly Saying[];
  readonly shares: readonly BedShare[];
}

/**
 * Shares a heap, or part of it, among beds by their area or by the nitrogen that each is short of. By need no bed gets more than it
 * bears: none on soil whose test has phosphorus above the optimum, and elsewhere as much as the limits of `spread-rate` let on; the rest
 * stays in the heap. Problems: `heap-gone`; `out-of-bounds` where more is carried than there is; `nothing-named` without beds;
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
  const bearings = beds.map((bed) => bearingOf(bed, asked, holding, moment));
  const isAgainst = bearings.some(({ rich }) => rich !== undefined);
  const shared = shareOut.run(
    {
      measures: carried,
      by,
      beds: bearings.map(
        ({ name, area_m2, short_kg, most }): ShareBed => ({
          name,
          area_m2,
          ...(by === 'need' && { want: short_kg, most }),
        }),
      ),
    },
    moment.needs,
  );
  const against = bearings.flatMap(({ name, rich }) =>
    rich === undefined ? [] : [say(`share.rich.${by}`, { bed: name, class: say(`soil.class.${rich}`) })],
  );
  if (!shared.ok) {
    const isRefused = isAgainst && shared.problems.every(({ code }) => code === 'nothing-wanted');
    return isRefused ? good({ against, answer: say('share.none'), stays: [], shares: [] }) : shared;
  }
  const shares = beds.flatMap((bed, i): readonly BedShare[] => {
    const count = shared.value.beds[i]?.count ?? 0;
    if (count === 0) return [];
    const volume_m3 = count * each_m3.value;
    const depth_m = volume_m3 / bedArea_m2(bed);
    const name = bed.setUp.body.name;
    const put: PutOn = {
      ...heapStuff(heap, heap.layers, holding),
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
  const { left } = shared.value;
  return good({
    against,
    answer: shares.length === 0 ? say('share.none') : say('share.answer', { beds: shares.map(({ said }) => said) }),
    stays:
      left === 0
        ? []
        : [
            ...bearings.flatMap(({ stops }) => stops ?? []),
            ...(shares.length === 0 ? [] : [say('share.left', { amount: measured(measure, left) })]),
          ],
    shares,
  });
}

/** What a bed would take of a heap. */
interface Bearing {
  readonly name: string;
  readonly area_m2: number;
  /** Nitrogen it is short of this season. */
  readonly short_kg: number;
  /** Whole measures of the heap that it bears at most. */
  readonly most: number;
  /** What stops more, where anything is wanted. */
  readonly stops?: readonly Saying[] | undefined;
  /** How its phosphorus stands by its test, where that forbids more. */
  readonly rich?: ClassId | undefined;
}

function bearingOf(
  bed: Bed,
  { heap, measure, ownSizes, workedIn }: HeapSpreadAsked,
  holding: Holding,
  moment: BedMoment,
): Bearing {
  const rich = richIn(bed, holding, moment);
  const named = { name: bed.setUp.body.name, area_m2: bedArea_m2(bed), short_kg: 0, most: 0 };
  if (rich !== undefined) return { ...named, rich };
  const reckoned = bedReckoned(bed, holding, moment);
  const short_kg = reckoned?.budget.elements.nitrogen.short_kg.p50 ?? 0;
  if (reckoned === undefined || short_kg <= 0) return named;
  const product = {
    ...heapStuff(heap, heap.layers, holding),
    placed: workedIn ? ('dug-in' as const) : ('mulched' as const),
    measure,
  };
  const limits = spreadLimits({ ...reckoned.input, ownSizes }, product, moment.needs);
  if (!limits.ok) return named;
  const { alone, stops } = limits.value;
  const counts = alone.map(({ limit, count }) => (limit === 'nitrogen' ? Math.round(count) : Math.floor(count)));
  const most = Math.min(MOST_MEASURES, ...counts);
  const isSmall = most === 0 && alone.every(({ count }) => count > 0);
  const isUntested = reckoned.input.soilTest?.phosphorusClass === undefined;
  return {
    ...named,
    short_kg,
    most,
    stops: [
      say(stops === 'phosphorus' && isUntested ? 'share.stops.phosphorus.untested' : `share.stops.${stops}`, {
        bed: named.name,
      }),
      ...(isSmall ? [say('share.small', { bed: named.name })] : []),
    ],
  };
}

/** As many as `share-out` takes. */
const MOST_MEASURES = 100_000;

/** The class of a bed's phosphorus by its test, where it is above the optimum: nothing that brings more is wanted then. */
function richIn(bed: Bed, holding: Holding, moment: BedMoment): ClassId | undefined {
  const { phosphorusClass } = bedTested(bed, holding, moment);
  return phosphorusClass === 'excessive' || phosphorusClass === 'high' ? phosphorusClass : undefined;
}

/** More than twice the nitrogen it wants. */
function isTooMuch(bed: Bed, put: PutOn, holding: Holding, moment: BedMoment): boolean {
  const before = bedReckoned(bed, holding, moment);
  if (before === undefined) return false;
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
