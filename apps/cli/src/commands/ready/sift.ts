import { siftReport } from '@loamwright/advisor';
import {
  bad,
  check,
  createDraws,
  good,
  type Outcome,
  type SiftingInput,
  siftingTime,
  siftUses,
} from '@loamwright/science';
import type { Answer } from '../../answer.ts';
import { allOf, readOneOf } from '../../blend.ts';
import { readMeasurement } from '../../grammar/measurement.ts';
import type { Session } from '../../session.ts';
import { page } from '../../text.ts';
import { cautionText } from '../heap.ts';

/** `loamwright sift`: hours at the sieve, and whether it is worth it. */
export function sift(typed: string, options: { readonly for?: string | undefined }, session: Session): Outcome<Answer> {
  const { speaker, terminal } = session;
  const volume = readMeasurement(typed, 'liquid', 'volume', speaker.system);
  const use = options.for === undefined ? good(undefined) : readOneOf(options.for, siftUses, '--for');
  if (!volume.ok || !use.ok) return bad(...allOf(volume, use));
  const input = check<SiftingInput>(siftingTime.input, {
    volume_m3: volume.value.si,
    ...(use.value !== undefined && { use: use.value }),
  });
  if (!input.ok) return bad(...input.problems.map((one) => ({ ...one, path: 'volume' })));
  const found = siftingTime.run(input.value, { draws: createDraws() });
  if (!found.ok) return found;
  const said = siftReport(input.value, found.value).map((one): [string] => [speaker.tell(one)]);
  return good({
    value: { input: input.value, ...found.value },
    text: [page(terminal.columns, ...said), cautionText(found.value.cautions, speaker, terminal.columns)].join('\n\n'),
  });
}
