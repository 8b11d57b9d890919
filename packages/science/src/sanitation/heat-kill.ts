import { z } from 'zod';
import { type Calculation, good, type Outcome } from '../catalogue/index.ts';
import { likely, percentQuantity, type Quantity } from '../estimate/index.ts';
import { sanitationParameters } from './parameters.ts';

export interface HeatKillInput {
  /** How long at which temperature, in any order. */
  readonly held: readonly { readonly temp_degC: number; readonly hours: number }[];
  readonly moisture_pctWet?: Quantity | undefined;
}

export interface HeatKill {
  /** By the formula alone: tenths left, as a power of ten. */
  readonly formula_logs: number;
  /** What may be credited: half below 60 °C, nothing below 50 °C or when dry, and no more than was ever measured. */
  readonly credited_logs: number;
  /** The formula goes beyond what was measured: "at least" is all that can be told. */
  readonly beyondMeasured: boolean;
  readonly tooDry: boolean;
}

const { kill } = sanitationParameters;
const MIN_PER_H = 60;

/**
 * Minutes to one tenth at a temperature, between the measured ones on a straight line of their logarithms. Below the
 * coolest nothing is credited; above the hottest it is taken as at the hottest, which is on the safe side.
 */
function decimal_min(temp_degC: number): number {
  const { points } = kill;
  const hottest = points.at(-1);
  const above = points.findIndex((point) => point.temp_degC > temp_degC);
  if (hottest === undefined || above === 0) return Number.POSITIVE_INFINITY;
  const high = points[above];
  const low = points[above - 1];
  if (high === undefined || low === undefined) return hottest.decimal_min;
  const share = (temp_degC - low.temp_degC) / (high.temp_degC - low.temp_degC);
  return low.decimal_min * (high.decimal_min / low.decimal_min) ** share;
}

function run({ held, moisture_pctWet }: HeatKillInput): Outcome<HeatKill> {
  const tooDry = moisture_pctWet !== undefined && likely(moisture_pctWet) < kill.leastMoisture_pctWet.value;
  let formula = 0;
  let credited = 0;
  for (const { temp_degC, hours } of held) {
    const logs = (hours * MIN_PER_H) / decimal_min(temp_degC);
    formula += logs;
    credited += temp_degC < kill.tougher.below_degC ? logs * kill.tougher.share : logs;
  }
  return good({
    formula_logs: formula,
    credited_logs: tooDry ? 0 : Math.min(kill.most_logs.value, credited),
    beyondMeasured: formula > kill.most_logs.value,
    tooDry,
  });
}

/** What heat does to one germ, by the laboratory: for information. */
export const heatKill: Calculation<HeatKillInput, HeatKill> = {
  id: 'heat-kill',
  title: 'What heat does to E. coli O157:H7, by the laboratory',
  summary:
    'Adds up, over hours at a temperature, how far one dangerous germ falls by published times to one tenth in moist cow-manure compost. It is for information: the curves have tails, cells warmed slowly are tougher, and no rule credits such a sum. Told never beyond seven tenfold steps.',
  input: z.strictObject({
    held: z
      .array(z.strictObject({ temp_degC: z.number().min(-40).max(110), hours: z.number().min(0).max(10_000) }))
      .min(1)
      .max(5000),
    moisture_pctWet: percentQuantity('Water, % of wet mass.').optional(),
  }),
  output: z.strictObject({
    formula_logs: z.number().min(0),
    credited_logs: z.number().min(0),
    beyondMeasured: z.boolean(),
    tooDry: z.boolean(),
  }),
  sources: [kill, kill.most_logs, kill.tougher, kill.leastMoisture_pctWet],
  cautions: ['manure-pathogens', 'local-rules'],
  example: { held: [{ temp_degC: 55, hours: 24 }], moisture_pctWet: 55 },
  run,
};
