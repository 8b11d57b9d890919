import type { Holding } from '@loamwright/daybook';
import type { Alternative } from '@loamwright/science';
import type { Saying } from '@loamwright/words';
import { sensible } from './balance-report.ts';
import { countedOf } from './measured.ts';
import { say, sayOf } from './saying.ts';

/** What is less is lost in the doubt of the figures: a tenth, or five hundredths of the nitrogen or the volume. */
const TELLING_TIMES = 1.1;
const TELLING_POINTS = 5;
/** One sentence holds so many drawbacks, the weightiest first. */
const MOST_COSTS = 2;

/** What another answer gains and what it costs, in one sentence: never a gain alone where there is a cost to tell. */
export function tradeOffWords(other: Alternative, holding: Holding): Saying {
  const { heat_times, nitrogenAtRiskMore_pctNitrogen } = other.tradeOff;
  const gain = { heat: sensible(heat_times), points: Math.round(-nitrogenAtRiskMore_pctNitrogen) };
  const costs = costsOf(other, holding).slice(0, MOST_COSTS);
  const cost = costs.length > 0 ? say('advisor.mix.but', { costs }) : say('advisor.mix.but-nothing');
  return sayOf('advisor.mix.other', other.aim, { ...gain, cost });
}

/** The drawbacks worth telling, the weightiest first. */
function costsOf({ fetch, tradeOff }: Alternative, holding: Holding): readonly Saying[] {
  const { heat_times, nitrogenAtRiskMore_pctNitrogen, nitrogenKept_times, mass_times, airLess_pctVolume } = tradeOff;
  const when = (holds: boolean, cost: () => Saying): readonly Saying[] => (holds ? [cost()] : []);
  return [
    ...when(fetch.length > 0, () =>
      say('advisor.mix.cost.fetch', { stuff: fetch.map((one) => countedOf(holding, one)) }),
    ),
    ...when(tradeOff.standsLess, () => say('advisor.mix.cost.fair')),
    ...when(nitrogenAtRiskMore_pctNitrogen >= TELLING_POINTS, () =>
      say('advisor.mix.cost.nitrogen', { points: Math.round(nitrogenAtRiskMore_pctNitrogen) }),
    ),
    ...when(heat_times <= 1 / TELLING_TIMES, () => say('advisor.mix.cost.heat', { times: sensible(heat_times) })),
    ...when(nitrogenKept_times <= 1 / TELLING_TIMES, () =>
      say('advisor.mix.cost.holds-less', { times: sensible(nitrogenKept_times) }),
    ),
    ...when(mass_times >= TELLING_TIMES, () => say('advisor.mix.cost.mass', { times: sensible(mass_times) })),
    ...when(airLess_pctVolume >= TELLING_POINTS, () =>
      say('advisor.mix.cost.air', { points: Math.round(airLess_pctVolume) }),
    ),
  ];
}
