import { laid, stuffed } from '@loamwright/advisor';
import type { Holding } from '@loamwright/daybook';
import type { Ingredient, MixInput, MixSolution } from '@loamwright/science';
import type { OwnMeasures } from '../device/settings.ts';
import type { Bins } from './draft.ts';

/** The mix as it is laid: so much of what was said to be at the bins, each as surely as it was said; without its water. */
export function mixLaid(bins: Bins, { use, fetch }: MixSolution, ownSizes: OwnMeasures, holding: Holding): MixInput {
  const used = use.flatMap(({ stock, measure, count }): readonly Ingredient[] => {
    const item = bins.items[stock];
    if (item === undefined || count <= 0) return [];
    return [{ ...stuffed(item.material, [], holding), amount: laid(item.amount, measure, count) }];
  });
  const fetched = fetch.map(({ material, measure, count }): Ingredient => ({ material, amount: { measure, count } }));
  return { ingredients: [...used, ...fetched], ownSizes };
}
