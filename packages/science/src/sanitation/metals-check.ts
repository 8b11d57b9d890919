import { z } from 'zod';
import { type Calculation, type Citation, cited, good, type Outcome } from '../catalogue/index.ts';
import { sanitationParameters } from './parameters.ts';

/** The trace elements that compost rules limit. */
export const metalIds = [
  'arsenic',
  'cadmium',
  'copper',
  'lead',
  'mercury',
  'molybdenum',
  'nickel',
  'selenium',
  'zinc',
] as const;
export type MetalId = (typeof metalIds)[number];

export interface MetalsInput {
  /** What a laboratory found, mg in each kg of dry compost. */
  readonly found_mgPerKgDry: Readonly<Partial<Record<MetalId, number | undefined>>>;
}

/** A list of limits, and what stands against it. */
export interface MetalsVerdict extends Citation {
  readonly list: string;
  readonly verdict: 'met' | 'over' | 'cannot-be-shown';
  readonly over: readonly { readonly metal: MetalId; readonly found: number; readonly limit: number }[];
  /** Limited by the list and not in the analysis. */
  readonly missing: readonly MetalId[];
}

export interface MetalsCheck {
  readonly lists: readonly MetalsVerdict[];
}

function run({ found_mgPerKgDry }: MetalsInput): Outcome<MetalsCheck> {
  return good({
    lists: sanitationParameters.metals.map(({ id, limits_mgPerKgDry: limits, ...citation }) => {
      const limited = metalIds.filter((metal) => limits[metal] !== undefined);
      const over = limited.flatMap((metal) => {
        const found = found_mgPerKgDry[metal];
        const limit = limits[metal];
        return found === undefined || limit === undefined || found <= limit ? [] : [{ metal, found, limit }];
      });
      const missing = limited.filter((metal) => found_mgPerKgDry[metal] === undefined);
      const verdict = over.length > 0 ? 'over' : missing.length > 0 ? 'cannot-be-shown' : 'met';
      return { list: id, verdict, over, missing, ...cited(citation) };
    }),
  });
}

const amount = z.number().min(0).max(1e6);

/** An analysis of trace elements against the lists of limits. */
export const metalsCheck: Calculation<MetalsInput, MetalsCheck> = {
  id: 'metals-check',
  title: 'Metals of a compost against lists of limits',
  summary:
    'Takes a laboratory’s analysis of trace elements, in mg for each kg of dry compost, and says for each published list of limits whether it holds, what is over, and what was not analysed.',
  input: z.strictObject({
    found_mgPerKgDry: z.strictObject({
      arsenic: amount.optional(),
      cadmium: amount.optional(),
      copper: amount.optional(),
      lead: amount.optional(),
      mercury: amount.optional(),
      molybdenum: amount.optional(),
      nickel: amount.optional(),
      selenium: amount.optional(),
      zinc: amount.optional(),
    }),
  }),
  output: z.strictObject({
    lists: z.array(
      z.strictObject({
        list: z.string(),
        verdict: z.enum(['met', 'over', 'cannot-be-shown']),
        over: z.array(z.strictObject({ metal: z.enum(metalIds), found: z.number(), limit: z.number() })),
        missing: z.array(z.enum(metalIds)),
        source: z.string(),
        place: z.string(),
        mark: z.enum(['seen', 'memory', 'derived']),
      }),
    ),
  }),
  sources: sanitationParameters.metals,
  cautions: ['local-rules'],
  example: {
    found_mgPerKgDry: {
      arsenic: 12,
      cadmium: 1.1,
      copper: 320,
      lead: 160,
      mercury: 0.3,
      nickel: 40,
      selenium: 1.5,
      zinc: 900,
    },
  },
  run,
};
