import table from '@loamwright/reference/rule-sets.json' with { type: 'json' };
import type { Citation } from '../catalogue/index.ts';

/** Rule sets for compost, looser and stricter; the name of each is the message `sanitation.rule.ID`. */
export const ruleIds = [
  'us-organic-turned',
  'us-organic-static',
  'us-organic-5021',
  'us-produce-turned',
  'us-produce-static',
  'us-sludge-turned',
  'us-sludge-static',
  'us-sludge-older-turned',
  'us-sludge-lesser',
  'california-turned',
  'california-static',
  'eu-fertiliser',
  'eu-processed-manure',
  'germany-2012',
  'germany-pasteurised',
  'germany-1998',
  'germany-1998-closed',
  'france-turned',
  'france-static',
  'uk-catering-turned',
  'uk-standard',
  'canada-turned',
  'canada-static',
] as const;
export type RuleId = (typeof ruleIds)[number];

/**
 * How a heap is kept: turned over; standing with air led in by pipes, slots or a blower; in a closed vessel or drum;
 * neither turned nor aired.
 */
export const heapMethods = ['turned', 'aerated-static', 'in-vessel', 'unturned'] as const;
export type HeapMethod = (typeof heapMethods)[number];

/** How the days must lie: one after the other; apart as may be; held, so that a break leaves it open; or not said. */
export type DaysRun = 'together' | 'apart' | 'maintained' | 'unsaid';

/** One way through a rule: so many days at so much. */
export interface Door {
  readonly least_degC: number;
  /** Above it a day does not count. */
  readonly most_degC?: number | undefined;
  readonly days: number;
  readonly run: DaysRun;
}

export interface RuleSet extends Citation {
  readonly id: RuleId;
  readonly country: string;
  readonly standing: string;
  readonly validFrom: string;
  /** When the text, or the memory of it, was last gone through. */
  readonly checked: string;
  readonly methods: readonly HeapMethod[];
  readonly ofAnimalMatterOnly: boolean;
  /** Any one of them will do. */
  readonly doors: readonly Door[];
  /** Turnings, which count on a day at heat, between the first and the last of those days, or whenever. */
  readonly turns?: Citation & {
    readonly count: number;
    readonly when: 'hot' | 'within' | 'any';
    readonly apart_days?: number | undefined;
  };
  /** Of the mix, when it was built. */
  readonly carbonToNitrogen?: Citation & { readonly low: number; readonly high: number };
  readonly allMaterial?: Citation;
  readonly moisture?: Citation & { readonly least_pctWet: number };
  readonly curing?: Citation & { readonly below_degC: number };
  readonly weeks?: Citation & { readonly least: number };
  /** With `orMore` its own degree counts as well. */
  readonly peak?: Citation & { readonly above_degC: number; readonly hours: number; readonly orMore?: boolean };
}

type Figure = Citation & { readonly value: number };

/** How long worms must have worked, as a task force had it. */
export const wormKinds = ['outdoor', 'indoor', 'wedge', 'continuous'] as const;
export type WormKind = (typeof wormKinds)[number];

export interface SanitationParameters {
  readonly rules: readonly RuleSet[];
  readonly worms: Citation & {
    readonly moisture: Citation & { readonly low_pctWet: number; readonly high_pctWet: number };
    readonly feedEvery_days: Citation & { readonly most: number };
    readonly kinds: readonly { readonly id: WormKind; readonly days: number }[];
    readonly guidance: Citation;
  };
  readonly heatTime: {
    readonly solids_pct: number;
    readonly least_degC: number;
    readonly slope_perDegC: number;
    readonly thick: Citation & { readonly days_at0: number };
    readonly thin: Citation & { readonly days_at0: number };
    readonly floors_s: {
      readonly bulk: Figure;
      readonly smallWarmed: Figure;
      readonly thinShort: Figure & { readonly below: number };
      readonly thinLong: Figure;
    };
    readonly notForCompost: Citation;
  };
  readonly kill: Citation & {
    readonly organism: string;
    readonly points: readonly { readonly temp_degC: number; readonly decimal_min: number }[];
    readonly most_logs: Figure;
    readonly tougher: Citation & { readonly below_degC: number; readonly share: number };
    readonly leastMoisture_pctWet: Figure;
  };
  /** At this a heap is turned before it burns. */
  readonly turnAt_degC: Figure;
  readonly shell: {
    readonly shell_m: Citation & { readonly low: number; readonly typical: number; readonly high: number };
    readonly mixing: Citation;
    readonly geometry: Citation;
  };
  readonly metals: readonly (Citation & {
    readonly id: string;
    readonly limits_mgPerKgDry: Readonly<Record<string, number>>;
  })[];
}

/** The rule sets and what stands beside them, from `reference/rule-sets.json`. */
export const sanitationParameters: SanitationParameters = table as unknown as SanitationParameters;
