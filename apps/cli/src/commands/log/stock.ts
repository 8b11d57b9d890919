import { weighed } from '@loamwright/advisor';
import type { Bodies, Entered, Holding, StockOutReason } from '@loamwright/daybook';
import { bad, good, type Outcome } from '@loamwright/science';
import type { Jotting } from '../../book.ts';
import { readIngredients } from '../../grammar/ingredient.ts';
import type { Names } from '../../grammar/names.ts';
import type { WhenRead } from '../../grammar/when.ts';
import { weighingOf } from '../../put.ts';
import type { Session } from '../../session.ts';
import type { LogOptions } from './options.ts';

const reasons: readonly StockOutReason[] = ['used', 'given', 'sold', 'spoiled', 'counted'];

/** What `log stock` is asked. */
export interface StockAsked {
  readonly typed: readonly string[];
  readonly options: LogOptions;
  readonly when: WhenRead;
  readonly holding: Holding;
  readonly names: Names;
  readonly session: Session;
}

/** `log stock straw=3bales`: what came in; with `--out`, what left the store other than into a heap or onto a bed. */
export function logStock({ typed, options, when, holding, names, session }: StockAsked): Outcome<readonly Jotting[]> {
  if (typed.length === 0) return bad({ code: 'nothing-named', path: 'stock', found: '', wanted: '' });
  const why = reasons.find((reason) => reason === options.out);
  if (options.out !== undefined && why === undefined) {
    return bad({ code: 'not-one-of', path: '--out', found: options.out.slice(0, 40), wanted: reasons.join(', ') });
  }
  const ingredients = readIngredients(typed, names);
  if (!ingredients.ok) return ingredients;
  const jottings: Jotting[] = [];
  for (const ingredient of ingredients.value) {
    const amount = weighed(ingredient, weighingOf(holding, session));
    if (!amount.ok) return amount;
    const about = [{ type: 'material', id: ingredient.material }];
    const entered: Record<string, Entered> = { '/mass_kg': ingredient.entered };
    const more = options.note === undefined ? {} : { note: options.note };
    if (why !== undefined) {
      jottings.push({ kind: 'stock-out', about, when, entered, body: { ...amount.value, why, ...more } });
    } else {
      const body: Bodies['stock-in'] = {
        ...amount.value,
        ...(options.from !== undefined && { supplier: options.from }),
        ...more,
      };
      jottings.push({ kind: 'stock-in', about, when, entered, body });
    }
  }
  return good(jottings);
}
