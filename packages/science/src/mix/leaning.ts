import type { Milp, MilpRow, MilpVariable } from '../solver/index.ts';
import { spareNitrogen_kg, worseFate } from './fate.ts';
import { mixParameters } from './parameters.ts';
import type { Portion } from './portion.ts';
import { type Choice, mixProgramme, stepVariable, type Wanted } from './programme.ts';

/** What another answer is sought for. */
export const aims = ['hottest', 'keeps-nitrogen'] as const;
export type Aim = (typeof aims)[number];

/** Where another answer starts from. */
export interface Leaning {
  readonly aim: Aim;
  /** What the first answer holds, by which gains are measured. */
  readonly first: Portion;
  /** What each choice is made of: two lots of straw are no other stuff. */
  readonly kinds: readonly string[];
  /** Steps of the answers from which this one must differ, in the order of the choices; a missing one is 0. */
  readonly apartFrom: readonly (readonly number[])[];
  /** Choices from this index on are not on hand. */
  readonly fetchedFrom: number;
}

const { alternatives } = mixParameters;
const AT_RISK = 'nitrogen_at_risk';

/**
 * The programme of a mix, leaning towards an aim and away from other answers. To its objective come
 *
 *   − heatWeight · (carbon that rots / the first answer's)      for the hottest, or
 *   + nitrogenWeight · (nitrogen at risk / the first answer's nitrogen)      to keep nitrogen,
 *   + fetchWeight · (share of the wanted volume that is fetched)
 *
 * and as hard rows, that at least a third of the dry mass is other stuff than in each of those answers, and
 * that no more than a third of the wanted volume is fetched.
 */
export function leaningProgramme(choices: readonly Choice[], wanted: Wanted, leaning: Leaning): Milp {
  const plain = mixProgramme(choices, wanted, true);
  const costs = new Map(choices.map((choice, i) => [stepVariable(i), leaningCost(choice, i, wanted, leaning)]));
  const apart = leaning.apartFrom.map((theirs, k) =>
    apartRows({ choices, kinds: leaning.kinds, theirs, name: `apart${k}` }),
  );
  const risk = leaning.aim === 'keeps-nitrogen' ? riskRows(choices, leaning) : [];
  return {
    variables: [
      ...plain.variables.map((variable) => ({ ...variable, cost: variable.cost + (costs.get(variable.name) ?? 0) })),
      ...(risk.length > 0 ? [continuous(AT_RISK, alternatives.nitrogenWeight.value)] : []),
      ...apart.flatMap(({ variables }) => variables),
    ],
    rows: [...plain.rows, ...risk, ...fetchRow(choices, wanted, leaning), ...apart.flatMap(({ rows }) => rows)],
    gap: alternatives.gap.value,
  };
}

function leaningCost({ step }: Choice, i: number, wanted: Wanted, { aim, first, fetchedFrom }: Leaning): number {
  const heat =
    aim === 'hottest' ? (alternatives.heatWeight.value * step.degradableCarbon_kg) / first.degradableCarbon_kg : 0;
  return (i >= fetchedFrom ? alternatives.fetchWeight.value * shareOf(step, wanted) : 0) - heat;
}

/** Share of the wanted volume that a step fills. */
function shareOf(step: Portion, { packing_share, volume_m3 }: Wanted): number {
  return (packing_share * step.volume_m3) / volume_m3;
}

function fetchRow(choices: readonly Choice[], wanted: Wanted, { fetchedFrom }: Leaning): readonly MilpRow[] {
  if (choices.length === fetchedFrom) return [];
  const shares = choices.map(({ step }, i): [string, number] => [
    stepVariable(i),
    i >= fetchedFrom ? shareOf(step, wanted) : 0,
  ]);
  return [
    {
      name: 'fetched_row',
      coefficients: Object.fromEntries(shares),
      lower: Number.NEGATIVE_INFINITY,
      upper: alternatives.mostFetched_share.value,
    },
  ];
}

/** The nitrogen at risk is the larger of its two balances. */
function riskRows(choices: readonly Choice[], { first }: Leaning): readonly MilpRow[] {
  return (['early', 'late'] as const).map((balance) => ({
    name: `${AT_RISK}_${balance}`,
    coefficients: {
      ...Object.fromEntries(
        choices.map(({ step }, i) => [stepVariable(i), spareNitrogen_kg(step, worseFate)[balance] / first.nitrogen_kg]),
      ),
      [AT_RISK]: -1,
    },
    lower: Number.NEGATIVE_INFINITY,
    upper: 0,
  }));
}

/**
 * Dry mass that two answers have in common is Σ min(ours, theirs) over the kinds of stuff. For each kind that
 * they use, a switch chooses which of the two is the least; the sum is held under two thirds of either dry mass.
 */
function apartRows({
  choices,
  kinds,
  theirs,
  name,
}: {
  readonly choices: readonly Choice[];
  readonly kinds: readonly string[];
  readonly theirs: readonly number[];
  readonly name: string;
}): { readonly variables: readonly MilpVariable[]; readonly rows: readonly MilpRow[] } {
  const shared = [...new Set(kinds)].flatMap((kind) => sharedOf(kind, choices, kinds, theirs));
  const theirDry_kg = shared.reduce((sum, { their_kg }) => sum + their_kg, 0);
  const common = (i: number): string => `${name}_common${i}`;
  const above = (i: number): string => `${name}_above${i}`;
  const kept = 1 - alternatives.apart_share.value;
  const allCommon = Object.fromEntries(shared.map((_, i) => [common(i), 1]));
  const least = Number.NEGATIVE_INFINITY;
  return {
    variables: shared.flatMap(({ spare_kg }, i) => [
      continuous(common(i), 0),
      ...(spare_kg > 0 ? [{ name: above(i), cost: 0, lower: 0, upper: 1, integer: true }] : []),
    ]),
    rows: [
      ...shared.flatMap(({ ours_kg, their_kg, spare_kg }, i): readonly MilpRow[] => {
        const under = {
          name: `${common(i)}_ours`,
          coefficients: { ...ours_kg, [common(i)]: -1, ...(spare_kg > 0 ? { [above(i)]: -spare_kg } : {}) },
          lower: least,
          upper: 0,
        };
        const over = {
          name: `${common(i)}_theirs`,
          coefficients: { [above(i)]: their_kg, [common(i)]: -1 },
          lower: least,
          upper: 0,
        };
        return spare_kg > 0 ? [under, over] : [under];
      }),
      { name: `${name}_of_theirs`, coefficients: allCommon, lower: least, upper: kept * theirDry_kg },
      {
        name: `${name}_of_ours`,
        coefficients: {
          ...allCommon,
          ...Object.fromEntries(choices.map(({ step }, i) => [stepVariable(i), -kept * step.dry_kg])),
        },
        lower: least,
        upper: 0,
      },
    ],
  };
}

/** A kind of stuff that another answer uses: dry mass by step, theirs, and how much more than theirs there is. */
interface Shared {
  readonly ours_kg: Readonly<Record<string, number>>;
  readonly their_kg: number;
  readonly spare_kg: number;
}

function sharedOf(
  kind: string,
  choices: readonly Choice[],
  kinds: readonly string[],
  theirs: readonly number[],
): readonly Shared[] {
  const lots = choices.flatMap(({ step, highest }, i) =>
    kinds[i] === kind ? [{ i, dry_kg: step.dry_kg, highest, their: theirs[i] ?? 0 }] : [],
  );
  const their_kg = lots.reduce((sum, { dry_kg, their }) => sum + dry_kg * their, 0);
  const most_kg = lots.reduce((sum, { dry_kg, highest }) => sum + dry_kg * highest, 0);
  if (their_kg <= 0) return [];
  const ours_kg = Object.fromEntries(lots.map(({ i, dry_kg }) => [stepVariable(i), dry_kg]));
  return [{ ours_kg, their_kg, spare_kg: Math.max(0, most_kg - their_kg) }];
}

function continuous(name: string, cost: number): MilpVariable {
  return { name, cost, lower: 0, upper: Number.POSITIVE_INFINITY, integer: false };
}
