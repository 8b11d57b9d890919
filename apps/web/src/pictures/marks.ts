import { convert } from '@loamwright/units';
import type { Speaker } from '@loamwright/words';

/** Marks at the side: each foot, or each quarter of a metre. */
export function marksFor(speaker: Speaker, height_m: number): readonly { height_m: number; text: string }[] {
  const step_m = speaker.system === 'us' ? convert(1, 'ft', 'm') : QUARTER_M;
  const steps = Math.floor(height_m / step_m + HAIR);
  return Array.from({ length: steps + 1 }, (_, i) => ({
    height_m: i * step_m,
    text: i === 0 ? '0' : speaker.likely(i * step_m, 'm', 'length'),
  }));
}

const QUARTER_M = 0.25;
/** Four feet kept in metres are still four marks. */
const HAIR = 1e-6;
