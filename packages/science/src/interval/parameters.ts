import table from '@loamwright/reference/harvest-rules.json' with { type: 'json' };
import type { Citation } from '../catalogue/index.ts';

/** Whose rule, guidance or list it is; its name in words is the message `interval.rule.ID`. */
export const harvestRuleIds = [
  'us-organic',
  'us-produce-safety',
  'canada-organic',
  'uk-guidance',
  'leafy-greens-buyers',
] as const;
export type HarvestRuleId = (typeof harvestRuleIds)[number];

/** How the part that is eaten meets the soil. Splash counts as touching wherever a rule speaks of soil particles. */
export const contactIds = ['touches', 'splash', 'clear', 'not-eaten'] as const;
export type ContactId = (typeof contactIds)[number];

/** How the law looks on what was put on. */
export const treatmentIds = ['untreated', 'treated', 'plant', 'barred'] as const;
export type TreatmentId = (typeof treatmentIds)[number];

/** What a rule asks: days to wait; no figure (it leaves them open); or nothing, as it doesn't speak of it. */
export type Wait = Citation &
  (
    | { readonly days: number; readonly noFigure?: undefined; readonly notMeant?: undefined }
    | { readonly days?: undefined; readonly noFigure: true; readonly notMeant?: undefined }
    | { readonly days?: undefined; readonly noFigure?: undefined; readonly notMeant: true }
  );

export interface HarvestRule {
  readonly id: HarvestRuleId;
  readonly country: string;
  readonly standing:
    | 'law-for-organic-sales'
    | 'law-for-sales'
    | 'standard-for-organic-sales'
    | 'guidance-for-growers'
    | 'private-list';
  readonly validFrom: string;
  /** When the text, or the memory of it, was last gone through. */
  readonly checked: string;
  /** The day from which it counts: that of the working in, which must have been, or that of the spreading. */
  readonly countedFrom: 'worked-in' | 'spread';
  /** Days that must lie between the spreading and the sowing as well. */
  readonly beforePlanting_days?: Citation & { readonly days: number };
  readonly untreated: Readonly<Record<ContactId, Wait>>;
  readonly treated: Wait;
  readonly plant: Wait;
  /** What may not be put on leaves that stand. */
  readonly onLeaves: Citation & { readonly barred: readonly TreatmentId[] };
}

/** The rules with their paragraphs, from `reference/harvest-rules.json`. */
export const harvestRules: readonly HarvestRule[] = table.rules as readonly unknown[] as readonly HarvestRule[];

/** Raw manure is worked in within so many days. */
export const workInWithin_days: Citation & { readonly value: number } = table.workInWithin_days as Citation & {
  readonly value: number;
};
