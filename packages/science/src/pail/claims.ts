import { z } from 'zod';
import type { CautionId } from '../caution/index.ts';
import type { Resolved } from '../mix/ingredient.ts';

/** What might have been said of the bin before this feeding. */
export const claimIds = ['finished', 'hot-days', 'sanitised', 'weed-free'] as const;
export type ClaimId = (typeof claimIds)[number];

/** Why it can't be said any longer; the words are the message `pail.claim.because.REASON`. */
export const claimReasons = ['still-fed', 'new-stuff-unheated', 'risky-stuff-added', 'weeds-added'] as const;
export type ClaimReason = (typeof claimReasons)[number];

export interface LostClaim {
  readonly claim: ClaimId;
  readonly because: ClaimReason;
  /** The stuff of this pail that it is about; empty for any. */
  readonly materials: readonly string[];
}

/** What this feeding does to the record of safety. */
export interface Safety {
  /** True where something raw or risky went in: the days of any rule count from now. */
  readonly clockRestarts: boolean;
  /** What restarts it. */
  readonly risky: readonly string[];
  readonly lost: readonly LostClaim[];
}

export const safetySchema: z.ZodType<Safety> = z.strictObject({
  clockRestarts: z.boolean(),
  risky: z.array(z.string()),
  lost: z.array(
    z.strictObject({ claim: z.enum(claimIds), because: z.enum(claimReasons), materials: z.array(z.string()) }),
  ),
});

/** Cautions of stuff that heat must make safe: manure, sick plants, food scraps. */
const riskyCautions: readonly CautionId[] = ['manure-pathogens', 'diseased-plants', 'rats-flies'];
const weedCautions: readonly CautionId[] = ['seeding-weeds'];

/**
 * A bin that is still being fed is not finished, and what goes in now has seen none of the heat before it. The clock
 * restarts with the last raw or risky addition, as the daybook keeps it.
 */
export function safetyAfter(pail: readonly Resolved[]): Safety {
  const withAny = (ids: readonly CautionId[]): readonly string[] =>
    pail.filter(({ cautions }) => cautions.some((id) => ids.includes(id))).map(({ given }) => given.material);
  const risky = [
    ...new Set([
      ...withAny(riskyCautions),
      ...pail.filter(({ permitted }) => permitted.permit === 'only-hot').map(({ given }) => given.material),
    ]),
  ];
  const weeds = withAny(weedCautions);
  return {
    clockRestarts: risky.length > 0,
    risky,
    lost: [
      { claim: 'finished', because: 'still-fed', materials: [] },
      { claim: 'hot-days', because: 'new-stuff-unheated', materials: [] },
      ...(risky.length > 0
        ? [{ claim: 'sanitised', because: 'risky-stuff-added', materials: risky } as const]
        : [{ claim: 'sanitised', because: 'new-stuff-unheated', materials: [] } as const]),
      ...(weeds.length > 0 ? [{ claim: 'weed-free', because: 'weeds-added', materials: weeds } as const] : []),
    ],
  };
}
