import { convert } from '@loamwright/units';
import { z } from 'zod';
import { type Calculation, good } from '../catalogue/index.ts';
import { type CautionId, cautionIds, inOrder } from '../caution/index.ts';
import { citationsOf, heapLimits_degC, plausible } from './bands.ts';
import { type Candidate, type Slip, slips, slipsOf, type TemperatureUnit } from './slip.ts';

/** A reading as it was typed, and what it can be held against. */
export interface TypedReading {
  readonly value: number;
  readonly unit: TemperatureUnit;
  /** False where the unit was taken from the setting, not typed. */
  readonly unitTyped?: boolean | undefined;
  readonly last_degC?: number | undefined;
  /** Days since that last reading in the same place. */
  readonly last_daysAgo?: number | undefined;
  /** Whether the heap was turned, watered or fed since. */
  readonly workedSince?: boolean | undefined;
  readonly air_degC?: number | undefined;
}

/** What is odd about a reading; the message `reading.odd.CODE`. */
export type OddCode = 'too-hot' | 'too-cold' | 'fell-fast' | 'rose-fast' | 'below-air';

/** Something that may have happened; the message `reading.suggest.CODE`. */
export interface Suggestion {
  readonly code: Slip | 'probe-not-settled';
  /** What may have been meant; absent where only a second look can tell. */
  readonly suggested?:
    | { readonly value: number; readonly unit: TemperatureUnit; readonly temp_degC: number }
    | undefined;
  readonly why: OddCode;
}

/** Whether to ask before a reading is kept. It is never refused: the grower may say that it stands. */
export interface Plausibility {
  readonly temp_degC: number;
  readonly odd: readonly OddCode[];
  readonly suggestions: readonly Suggestion[];
  readonly cautions: readonly CautionId[];
}

const MOST_SUGGESTIONS = 3;
/** A reading of more than this long ago says little about today’s. */
const LAST_COUNTS_DAYS = 7;

/** What is odd about a temperature; empty for one that any heap may have. */
function oddities(temp_degC: number, typed: TypedReading): readonly OddCode[] {
  const odd: OddCode[] = [];
  if (temp_degC > plausible.hottest_degC) odd.push('too-hot');
  if (temp_degC < plausible.coldest_degC) odd.push('too-cold');
  const last = lastOf(typed);
  if (last !== undefined) {
    const change = temp_degC - last.temp_degC;
    if (change > plausible.fastestRise_KPerDay * last.days) odd.push('rose-fast');
    if (typed.workedSince !== true && -change > plausible.fastestFall_KPerDay * last.days) odd.push('fell-fast');
  }
  if (typed.air_degC !== undefined && typed.air_degC - temp_degC > plausible.belowAir_K) odd.push('below-air');
  return odd;
}

/** The last reading, if it counts; two readings within a day may differ by as much as in a whole day. */
function lastOf(typed: TypedReading): { readonly temp_degC: number; readonly days: number } | undefined {
  const { last_degC, last_daysAgo = 1 } = typed;
  if (last_degC === undefined || last_daysAgo > LAST_COUNTS_DAYS) return undefined;
  return { temp_degC: last_degC, days: Math.max(1, last_daysAgo) };
}

function suggestionsFor(typed: TypedReading, odd: readonly OddCode[]): readonly Suggestion[] {
  const [why] = odd;
  if (why === undefined) return [];
  const expected_degC = lastOf(typed)?.temp_degC ?? (plausible.usualLow_degC + plausible.usualHigh_degC) / 2;
  const fitting = slipsOf(typed.value, typed.unit).filter((candidate) => fits(candidate, typed));
  const nearest = slips.flatMap((slip) => {
    const [best] = fitting
      .filter((candidate) => candidate.slip === slip)
      .sort((a, b) => Math.abs(a.temp_degC - expected_degC) - Math.abs(b.temp_degC - expected_degC));
    return best === undefined ? [] : [best];
  });
  const chosen = distinct(nearest).map(({ slip, value, unit, temp_degC }) => ({
    code: slip,
    suggested: { value, unit, temp_degC },
    why,
  }));
  const ordered = typed.unitTyped === true ? unitLast(chosen) : chosen;
  const cold = why === 'fell-fast' || why === 'below-air' || why === 'too-cold';
  const second: readonly Suggestion[] = cold ? [{ code: 'probe-not-settled', why }] : [];
  return [...ordered.slice(0, MOST_SUGGESTIONS - second.length), ...second];
}

/** Two slips that come to the same reading are one question: the likelier asks it. */
function distinct(candidates: readonly Candidate[]): readonly Candidate[] {
  const same = (a: Candidate, b: Candidate): boolean => a.value === b.value && a.unit === b.unit;
  return candidates.filter((one, i) => candidates.findIndex((other) => same(one, other)) === i);
}

/** What may have been meant must itself be a reading that nobody would ask about. */
function fits({ temp_degC }: Candidate, typed: TypedReading): boolean {
  if (oddities(temp_degC, typed).length > 0) return false;
  return lastOf(typed) !== undefined || (temp_degC >= plausible.usualLow_degC && temp_degC <= plausible.usualHigh_degC);
}

/** Who typed the unit is less likely to have meant the other. */
function unitLast(suggestions: readonly Suggestion[]): readonly Suggestion[] {
  const unit = suggestions.filter(({ code }) => code === 'unit-swapped');
  return [...suggestions.filter(({ code }) => code !== 'unit-swapped'), ...unit];
}

/** What is odd about a reading as typed, and what may have been meant. Pure; never refuses. */
export function plausibilityOf(typed: TypedReading): Plausibility {
  const temp_degC = convert(typed.value, typed.unit, 'degC');
  const odd = oddities(temp_degC, typed);
  return {
    temp_degC,
    odd,
    suggestions: suggestionsFor(typed, odd),
    // Whatever else is odd: who is in danger must not be told of a slip of the finger alone.
    cautions: inOrder(temp_degC >= heapLimits_degC.fire ? ['fire'] : []),
  };
}

const unit: z.ZodType<TemperatureUnit> = z.enum(['degC', 'degF']);
const oddCode: z.ZodType<OddCode> = z.enum(['too-hot', 'too-cold', 'fell-fast', 'rose-fast', 'below-air']);

const input: z.ZodType<TypedReading> = z.strictObject({
  value: z.number().meta({ description: 'The number as typed' }),
  unit,
  unitTyped: z.boolean().optional(),
  last_degC: z.number().optional().meta({ description: 'Last reading in the same place, °C' }),
  last_daysAgo: z.number().gt(0).optional(),
  workedSince: z.boolean().optional().meta({ description: 'Turned, watered or fed since the last reading' }),
  air_degC: z.number().optional(),
});

const output: z.ZodType<Plausibility> = z.strictObject({
  temp_degC: z.number(),
  odd: z.array(oddCode),
  suggestions: z
    .array(
      z.strictObject({
        code: z.enum([...slips, 'probe-not-settled']),
        suggested: z.strictObject({ value: z.number(), unit, temp_degC: z.number() }).optional(),
        why: oddCode,
      }),
    )
    .max(MOST_SUGGESTIONS),
  cautions: z.array(z.enum(cautionIds as readonly [CautionId, ...CautionId[]])),
});

/** Whether a typed reading wants a second look. */
export const readingPlausibility: Calculation<TypedReading, Plausibility> = {
  id: 'reading-plausibility',
  title: 'Whether a reading wants a second look',
  summary:
    'Holds a typed temperature against what heaps do, the last reading and the air, and asks about an odd one: ' +
    'digits or units swapped, a point or a digit missed, a probe that had not settled. It never refuses: the reading stands if the grower says so.',
  input,
  output,
  sources: citationsOf('plausible'),
  cautions: ['fire'],
  example: { value: 315, unit: 'degF', last_degC: 56.1, last_daysAgo: 1 },
  run: (typed) => good(plausibilityOf(typed)),
};
