import { z } from 'zod';
import { type Calculation, good, type Outcome } from '../catalogue/index.ts';
import { inputParameters } from './parameters.ts';

/** How hurt the leaves of the suspect pots are, from none to severe. */
export const hurtIds = ['none', 'slight', 'moderate', 'severe'] as const;
export type HurtId = (typeof hurtIds)[number];

export interface BeanTestInput {
  readonly pots: number;
  readonly controls: number;
  readonly hurt: HurtId;
  /** Whether the pots of potting mix alone grew as they should. */
  readonly controlsNormal: boolean;
  readonly weeks: number;
  /** Parts of the suspect stuff to one of potting mix. */
  readonly suspectParts?: number | undefined;
}

export const beanVerdicts = ['clear', 'contaminated', 'perhaps', 'void', 'too-soon'] as const;
/**
 * Clear; contaminated; perhaps, where only few pots or too strong a mix were used; void, where the controls were hurt as
 * well; too soon to tell.
 */
export type BeanVerdict = (typeof beanVerdicts)[number];

export interface BeanTest {
  readonly verdict: BeanVerdict;
  readonly fewPots: boolean;
  readonly tooStrong: boolean;
  /** How it is done, for the steps. */
  readonly how: {
    readonly pots: { readonly low: number; readonly high: number };
    readonly pot_m: { readonly low: number; readonly high: number };
    readonly suspectParts: number;
    readonly seeds: number;
    readonly weeks: { readonly low: number; readonly high: number };
  };
}

const { beanTest } = inputParameters;
const span = ({ low, high }: { readonly low: number; readonly high: number }) => ({ low, high });
const spanSchema = z.strictObject({ low: z.number(), high: z.number() });

function run(input: BeanTestInput): Outcome<BeanTest> {
  const fewPots = input.pots < beanTest.pots.low || input.controls < beanTest.leastControls.value;
  const tooStrong = (input.suspectParts ?? beanTest.suspectParts.value) > beanTest.suspectParts.value;
  return good({
    verdict: verdictOf(input, fewPots, tooStrong),
    fewPots,
    tooStrong,
    how: {
      pots: span(beanTest.pots),
      pot_m: span(beanTest.pot_m),
      suspectParts: beanTest.suspectParts.value,
      seeds: beanTest.seeds.value,
      weeks: span(beanTest.weeks),
    },
  });
}

function verdictOf({ hurt, controlsNormal, weeks }: BeanTestInput, fewPots: boolean, tooStrong: boolean): BeanVerdict {
  if (!controlsNormal) return 'void';
  if (hurt === 'none') {
    if (weeks < beanTest.weeks.low) return 'too-soon';
    return fewPots ? 'perhaps' : 'clear';
  }
  // Salt, unripe stuff or too strong a mix hurt a little as well; clear cupping in many pots is the weed-killer's.
  return tooStrong || (fewPots && hurt === 'slight') ? 'perhaps' : 'contaminated';
}

/** The test with beans for weed-killers that pass through heaps and animals. */
export const beanTestCalculation: Calculation<BeanTestInput, BeanTest> = {
  id: 'bean-test',
  title: 'The test with beans for lasting weed-killers',
  summary:
    'Peas or beans grown in the suspect stuff beside controls show aminopyralid, clopyralid or picloram, which neither heat nor time clears: cupped leaves and twisted stems in the suspect pots, none in the controls. It tells what such a test shows, and how it is done. It shows presence, not which one or how much.',
  input: z.strictObject({
    pots: z.number().min(1).max(1000),
    controls: z.number().min(0).max(1000),
    hurt: z.enum(hurtIds),
    controlsNormal: z.boolean(),
    weeks: z.number().min(0).max(52),
    suspectParts: z.number().min(0.1).max(100).optional(),
  }),
  output: z.strictObject({
    verdict: z.enum(beanVerdicts),
    fewPots: z.boolean(),
    tooStrong: z.boolean(),
    how: z.strictObject({
      pots: spanSchema,
      pot_m: spanSchema,
      suspectParts: z.number(),
      seeds: z.number(),
      weeks: spanSchema,
    }),
  }),
  sources: [beanTest.pots, beanTest.pot_m, beanTest.suspectParts, beanTest.seeds, beanTest.weeks, beanTest.strong],
  cautions: ['herbicide-carryover'],
  example: { pots: 4, controls: 3, hurt: 'moderate', controlsNormal: true, weeks: 3 },
  run,
};
