import table from '@loamwright/reference/beliefs.json' with { type: 'json' };
import type { Citation } from '../catalogue/citation.ts';

/** What growers commonly hold, by name; the answer to it is the message `belief.ID.says`. */
export type BeliefId = keyof typeof table;

/** What has been published of it: speaks against it, bears part of it out, or there is nothing. */
export type Finding = 'against' | 'partly' | 'unknown';

/** How well founded that is: several measurements or a rule, one or two, a single case, practice only. */
export type Evidence = 'strong' | 'fair' | 'weak' | 'none';

/** What a question is about. */
export type BeliefTopic =
  | 'mixing'
  | 'size'
  | 'nitrogen'
  | 'wetting'
  | 'turning'
  | 'smell'
  | 'starter'
  | 'winter'
  | 'acidity'
  | 'raw-manure'
  | 'sanitation'
  | 'bed'
  | 'tea'
  | 'worms';

/** A belief with what was published of it. */
export interface Belief {
  readonly id: BeliefId;
  readonly finding: Finding;
  readonly evidence: Evidence;
  /** What calls it up: any one of these. */
  readonly when: {
    readonly topics?: readonly BeliefTopic[] | undefined;
    /** Any of these materials; with `alone`, only where there is nothing else. */
    readonly materials?: readonly string[] | undefined;
    readonly alone?: boolean | undefined;
    /** A heap smaller than this, m³. */
    readonly below_m3?: number | undefined;
  };
  readonly sources: readonly Citation[];
}

/** Every belief the program meets by name, in the order in which they are told where several apply. */
export const beliefs: readonly Belief[] = (Object.entries(table) as [BeliefId, Omit<Belief, 'id'>][]).map(
  ([id, belief]) => ({ id, ...belief }),
);

/** What a question is about, as far as it is known. */
export interface BeliefQuestion {
  /** Ids of the materials, as the program's own table has them. */
  readonly materials?: readonly string[] | undefined;
  /** The size of the heap, m³. */
  readonly volume_m3?: number | undefined;
  readonly topics?: readonly BeliefTopic[] | undefined;
}

/** The beliefs that a question may rest on, in the table's order; none where nothing calls one up. */
export function beliefsFor({ materials = [], volume_m3, topics = [] }: BeliefQuestion): readonly BeliefId[] {
  return beliefs.filter(({ when }) => isAbout(when) || isOf(when) || isSmall(when)).map(({ id }) => id);

  function isAbout(when: Belief['when']): boolean {
    return topics.some((topic) => when.topics?.includes(topic));
  }

  function isOf({ materials: named, alone }: Belief['when']): boolean {
    if (named === undefined || materials.length === 0) return false;
    return alone === true ? materials.every((id) => named.includes(id)) : materials.some((id) => named.includes(id));
  }

  function isSmall({ below_m3 }: Belief['when']): boolean {
    return below_m3 !== undefined && volume_m3 !== undefined && volume_m3 < below_m3;
  }
}
