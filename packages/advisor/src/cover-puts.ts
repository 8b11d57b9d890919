import type { LayerPut } from '@loamwright/daybook';
import { bad, good, type Outcome, type PailCover, type PailCoverInput } from '@loamwright/science';
import { layerPut, type Weighing } from './put.ts';

/**
 * What covers a pail, weighed as layers for the daybook.
 *
 * @param isTaken whether a material is taken out of what lies in store.
 */
export function coverPuts(
  { lay }: PailCover,
  { dry }: PailCoverInput,
  isTaken: (material: string) => boolean,
  weighing: Weighing,
): Outcome<readonly LayerPut[]> {
  const puts = lay.map(({ material, measure, count }) => {
    const doubtful = dry?.find((one) => one.material === material)?.doubtful;
    return layerPut({ material, doubtful, amount: { measure, count } }, isTaken(material), weighing);
  });
  const problems = puts.flatMap((put) => (put.ok ? [] : put.problems));
  if (problems.length > 0) return bad(...problems);
  return good(puts.flatMap((put) => (put.ok ? [{ ...put.value, part: 'cover' as const }] : [])));
}
