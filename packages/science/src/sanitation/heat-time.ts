import { z } from 'zod';
import { type Calculation, good, type Outcome } from '../catalogue/index.ts';
import { sanitationParameters } from './parameters.ts';

export interface HeatTimeInput {
  readonly temp_degC: number;
  /** Solids of the stuff, % of wet mass: at least 7 is thick. */
  readonly solids_pctWet: number;
  /** Small particles warmed by gas or another liquid. */
  readonly smallWarmed?: boolean | undefined;
}

/** Which paragraph of the rule it fell under. */
export const heatTimeCases = ['A', 'B', 'C', 'D', 'none'] as const;

export interface HeatTime {
  readonly paragraph: (typeof heatTimeCases)[number];
  /** How long it must be held; absent below 50 °C, where no time is enough. */
  readonly hold_d?: number | undefined;
  /** What the equation gives by itself, before the least time of the paragraph. */
  readonly equation_d?: number | undefined;
  readonly leastHolds: boolean;
}

const { heatTime } = sanitationParameters;
const S_PER_DAY = 86_400;

function run({ temp_degC, solids_pctWet, smallWarmed = false }: HeatTimeInput): Outcome<HeatTime> {
  if (temp_degC < heatTime.least_degC) return good({ paragraph: 'none', leastHolds: false });
  const days = (at0: number): number => at0 / 10 ** (heatTime.slope_perDegC * temp_degC);
  const { bulk, smallWarmed: small, thinShort, thinLong } = heatTime.floors_s;
  const told = (paragraph: HeatTime['paragraph'], equation_d: number, floor_s: number): Outcome<HeatTime> => {
    const floor_d = floor_s / S_PER_DAY;
    return good({ paragraph, equation_d, hold_d: Math.max(equation_d, floor_d), leastHolds: equation_d < floor_d });
  };
  const thick_d = days(heatTime.thick.days_at0);
  if (solids_pctWet >= heatTime.solids_pct)
    return smallWarmed ? told('B', thick_d, small.value) : told('A', thick_d, bulk.value);
  const short_s = Math.max(thick_d * S_PER_DAY, thinShort.value);
  if (short_s < thinShort.below) return told('C', thick_d, thinShort.value);
  return told('D', days(heatTime.thin.days_at0), thinLong.value);
}

/** The time and temperature equation of the sludge rule: for information, never a verdict on a heap. */
export const heatTimeCalculation: Calculation<HeatTimeInput, HeatTime> = {
  id: 'heat-time',
  title: 'Heat and time by the sludge rule’s equation',
  summary:
    'How long stuff must be held at a temperature by the equation of the US sludge rule, with the least time of each of its paragraphs. It is for information: one state’s copy leaves composting out of it, and it never overrules a rule for compost that was missed.',
  input: z.strictObject({
    temp_degC: z.number().min(-20).max(110).meta({ description: 'Temperature held, °C' }),
    solids_pctWet: z.number().min(0.1).max(100).meta({ description: 'Solids, % of wet mass' }),
    smallWarmed: z.boolean().optional(),
  }),
  output: z.strictObject({
    paragraph: z.enum(heatTimeCases),
    hold_d: z.number().min(0).optional(),
    equation_d: z.number().min(0).optional(),
    leastHolds: z.boolean(),
  }),
  sources: [heatTime.thick, heatTime.thin, ...Object.values(heatTime.floors_s), heatTime.notForCompost],
  cautions: ['local-rules'],
  example: { temp_degC: 55, solids_pctWet: 40 },
  run,
};
