import type { SiftingInput, SiftingTime } from '@loamwright/science';
import type { Saying } from '@loamwright/words';
import { bulk, say, sayOf } from './saying.ts';

/** Hours at the sieve, in sentences. */
export function siftReport(asked: SiftingInput, found: SiftingTime): readonly Saying[] {
  const { handSieve_h: hand, slopedScreen_h: slope } = found;
  return [
    sayOf('sift.answer', found.verdict, {
      volume: bulk(asked.volume_m3),
      low: plain(Math.min(hand.p10, slope.p10)),
      high: plain(Math.max(hand.p90, slope.p90)),
    }),
    say('sift.ways', {
      hand: plain(hand.p10),
      handMost: plain(hand.p90),
      slope: plain(slope.p10),
      slopeMost: plain(slope.p90),
    }),
    say('sift.how', { mesh: found.mesh_mm }),
  ];
}

function plain(hours: number): string {
  return String(Number(hours.toPrecision(2)));
}
