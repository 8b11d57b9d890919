import { type CuringCheck, type LimitRead, limitOf, maturityParameters, sourceOf } from '@loamwright/science';
import type { Saying } from '@loamwright/words';
import { say, sayOf, temperature } from './saying.ts';

/** The answer of `curing-check` in sentences. */
export interface RipeReport {
  readonly answer: Saying;
  /** The one test to do next; null where none is missing. */
  readonly next: Saying | null;
  /** What speaks against it, and each limit. */
  readonly notes: readonly Saying[];
  readonly noGerms: Saying;
}

/**
 * Whether compost is ripe, in sentences.
 *
 * @param age_days of the oldest stuff in the heap, where it is a heap: what tests find ripe within days is doubted
 */
export function ripeReport(found: CuringCheck, age_days?: number): RipeReport {
  const { state, firm, signs, limits, california, californiaLacks, flaskClass, next, how } = found;
  const quantities = [...new Set(limits.map(({ quantity }) => quantity))];
  return {
    answer: isDoubtful(found, age_days)
      ? say('ripe.doubted', { days: Math.max(0, Math.floor(age_days ?? 0)) })
      : sayOf('ripe.state', state),
    notes: [
      ...(firm ? [] : [say('ripe.soft')]),
      ...signs.map((sign) => sayOf('ripe.sign', sign, { limit: temperature(maturityParameters.reheats_degC.value) })),
      ...(flaskClass === undefined ? [] : [say('ripe.flask', { class: flaskClass })]),
      ...quantities.map((quantity) =>
        say('ripe.read', {
          quantity: sayOf('ripe.quantity', quantity),
          verdicts: limits.filter((one) => one.quantity === quantity).map(verdictWords),
        }),
      ),
      ...(california === undefined ? [] : [say('ripe.california', { rating: sayOf('ripe.rating', california) })]),
      ...(california === undefined && limits.length > 0
        ? [say('ripe.california.lacks', { lacks: californiaLacks.map((scheme) => sayOf('ripe.lack', scheme)) })]
        : []),
    ],
    next:
      next === undefined
        ? null
        : sayOf('ripe.next', next, { seeds: how.seeds, low: how.days.low, high: how.days.high }),
    noGerms: say('ripe.no-germs'),
  };
}

/** Whether tests find ripe what is too young to be: a slip of the pen, or another heap's compost was tried. */
function isDoubtful({ state }: CuringCheck, age_days: number | undefined): boolean {
  return state === 'ripe' && age_days !== undefined && age_days < maturityParameters.youngest_days.value;
}

function verdictWords({ limit, rating }: LimitRead): Saying {
  const row = limitOf(limit);
  return say('ripe.verdict', { rating: sayOf('ripe.rating', rating), who: sourceOf(row).author ?? row.source });
}
