import { droppingsReport } from '@loamwright/advisor';
import {
  bad,
  check,
  createDraws,
  type DroppingsInput,
  droppings,
  dungAnimals,
  good,
  likely,
  type Outcome,
} from '@loamwright/science';
import type { Answer } from '../../answer.ts';
import { allOf, readFigure, readOneOf } from '../../blend.ts';
import type { Session } from '../../session.ts';
import { page } from '../../text.ts';
import { cautionText } from '../heap.ts';

const USUAL_DAYS = '30';

/** `loamwright bed droppings`: how much animals leave behind, and what is in it. */
export function bedDroppings(
  typed: string,
  named: string,
  options: { readonly days?: string | undefined },
  session: Session,
): Outcome<Answer> {
  const count = readFigure(typed, 'count');
  const animal = readOneOf(named.replace(/s$/u, ''), dungAnimals, 'animal');
  const days = readFigure(options.days ?? USUAL_DAYS, '--days');
  if (!count.ok || !animal.ok || !days.ok) return bad(...allOf(count, animal, days));
  const input = check<DroppingsInput>(droppings.input, {
    animal: animal.value,
    count: likely(count.value),
    days: likely(days.value),
  });
  if (!input.ok) return input;
  const found = droppings.run(input.value, { draws: createDraws() });
  if (!found.ok) return found;
  const { speaker, terminal } = session;
  const said = droppingsReport(input.value, found.value).map((one): [string] => [speaker.tell(one)]);
  return good({
    value: { input: input.value, ...found.value },
    text: [page(terminal.columns, ...said), cautionText(droppings.cautions, speaker, terminal.columns)].join('\n\n'),
  });
}
