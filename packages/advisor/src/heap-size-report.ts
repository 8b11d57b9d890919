import type { CautionId, HeapSize } from '@loamwright/science';
import type { Saying } from '@loamwright/words';
import { bulk, height, say, sayOf, temperature } from './saying.ts';

/** The smallest heap that does, for three shares of the heaps that a mix may turn out to be. */
export interface SizesFound {
  /** Enough in half of them. */
  readonly likely: HeapSize;
  /** Enough in one of four, and in three of four. */
  readonly small: HeapSize;
  readonly large: HeapSize;
}

/** What it was to do. */
export interface SizeAsked {
  readonly above_degC: number;
  readonly days: number;
  /** Of so many. */
  readonly followed_days: number;
}

/** The smallest heap of a mix that gets hot, in sentences. */
export interface HeapSizeReport {
  readonly answer: Saying;
  readonly reasons: readonly Saying[];
  readonly notes: readonly Saying[];
  readonly cautions: readonly CautionId[];
}

/** The smallest heap of a mix that gets hot, in words. */
export function heapSizeReport({ likely, small, large }: SizesFound, asked: SizeAsked): HeapSizeReport {
  const tried = new Map([...small.tried, ...likely.tried, ...large.tried].map((one) => [one.volume_m3, one]));
  const sizes = [...tried.values()].sort((a, b) => a.volume_m3 - b.volume_m3);
  const places = { above: temperature(asked.above_degC), days: asked.days, followed: asked.followed_days };
  return {
    answer: answerWords({ likely, small, large }, places),
    reasons:
      likely.volume_m3 === undefined
        ? []
        : [
            say('twin.size.means'),
            say('twin.size.all'),
            ...sizes.map(({ volume_m3, holds }) =>
              say('twin.size.tried', { volume: bulk(volume_m3), chance: { chance: holds } }),
            ),
          ],
    notes: likely.notes.map((note) => sayOf('twin.note', note, { start: temperature(likely.start_degC) })),
    cautions: likely.cautions,
  };
}

function answerWords({ likely, small, large }: SizesFound, places: NonNullable<Saying['places']>): Saying {
  const { volume_m3, side_m } = likely;
  if (volume_m3 === undefined || side_m === undefined) {
    const largest = likely.tried.at(-1);
    if (largest === undefined) throw new RangeError('a size was tried');
    return say('twin.size.none', {
      ...places,
      largest: bulk(largest.volume_m3),
      chance: { chance: largest.holds },
    });
  }
  const low = bulk(small.volume_m3 ?? volume_m3);
  return say('twin.size.answer', {
    ...places,
    volume: bulk(volume_m3),
    side: height(side_m),
    range:
      large.volume_m3 === undefined
        ? say('twin.size.range.open', { low })
        : say('twin.size.range', { low, high: bulk(large.volume_m3) }),
  });
}
