import type { Holding } from '@loamwright/daybook';
import {
  type CautionId,
  type ColdAmount,
  type ColdCause,
  heapLimits_degC,
  heapTriggers,
  type NotHeating,
  type NotHeatingInput,
} from '@loamwright/science';
import { isMessageKey, type Place, type Saying } from '@loamwright/words';
import { materialName } from './names.ts';
import { bulk, liquid, mass, say, sayOf, smallMass, temperature } from './saying.ts';

/** Why a heap stays cold, as sentences. */
export interface ColdReport {
  readonly answer: Saying;
  /** The other causes and what speaks for the first. */
  readonly why: readonly Saying[];
  /** At most three things to look at. */
  readonly checks: readonly Saying[];
  /** Whether one cause is likely enough to act on. */
  readonly decides: boolean;
  /** The one act, with its amount. */
  readonly act: Saying;
  /** What else is to be known of it before it goes on a bed. */
  readonly notes: readonly Saying[];
  readonly evidence: Saying | null;
  readonly cautions: readonly CautionId[];
}

/** Why a heap stays cold, in words. */
export function coldReport(asked: NotHeatingInput, found: NotHeating, holding: Holding): ColdReport {
  const [first, ...others] = found.causes;
  return {
    answer: sayOf('cold.answer', found.decision, {
      temp: temperature(asked.temp_degC ?? heapLimits_degC.curing),
      ...(first !== undefined && { cause: sayOf('cold.cause', first.cause), odds: odds(first) }),
    }),
    why: first === undefined ? [] : [...reasonsOf(first), ...alsoOf(others)],
    checks: found.checks.map((check) => sayOf('cold.check', check)),
    decides: found.decision === 'act',
    act: actWords(asked, found, holding),
    notes: notesOf(found),
    evidence: first === undefined ? null : say('cold.evidence'),
    cautions: found.cautions,
  };
}

function reasonsOf({ reasons }: ColdCause): readonly Saying[] {
  if (reasons.length === 0) return [];
  return [say('cold.reasons', { reasons: reasons.map((id) => sayOf('cold.reason', id)) })];
}

function alsoOf(others: readonly ColdCause[]): readonly Saying[] {
  if (others.length === 0) return [];
  const causes = others.map((one) => say('cold.one', { cause: sayOf('cold.cause', one.cause), odds: odds(one) }));
  return [say('cold.also', { causes })];
}

function notesOf({ act, notes, ofSmallest_share = 1 }: NotHeating): readonly Saying[] {
  const places = {
    percent: Math.round(100 * ofSmallest_share),
    least: bulk(heapTriggers.smallestHeap_m3),
    hot: temperature(heapLimits_degC.sanitisingDay),
    curing: temperature(heapLimits_degC.curing),
  };
  return [
    ...notes.map((id) => sayOf('cold.note', id, places)),
    ...(act === 'leave-to-cure' ? [say('cold.note.spent', places)] : []),
  ];
}

function odds({ share }: ColdCause): Saying {
  return say('cold.odds', { tenths: Math.min(9, Math.round(10 * share)) });
}

function actWords(asked: NotHeatingInput, { act, amount }: NotHeating, holding: Holding): Saying {
  const perCubicMetre = amount === undefined || amount.per === 'cubic-metre';
  const key =
    act === 'leave-to-cure'
      ? `${act}${cureBy(asked)}`
      : perCubicMetre && isMessageKey(`cold.act.${act}.per`)
        ? `${act}.per`
        : act;
  return sayOf('cold.act', key, { curing: temperature(heapLimits_degC.curing), ...amountPlaces(amount, holding) });
}

/** What is left to do with a spent heap, by what was said: nobody wets what is moist, or turns again what a turn did not warm. */
function cureBy({ squeeze, sinceTurn_days = 0, temp_degC }: NotHeatingInput): '' | '.dry' | '.moist' | '.turned' {
  if (squeeze === 'dusty' || squeeze === 'crumbles') return '.dry';
  if (temp_degC !== undefined && sinceTurn_days > heapTriggers.reachedWithin_days) return '.turned';
  return squeeze === undefined ? '' : '.moist';
}

function amountPlaces(amount: ColdAmount | undefined, holding: Holding): Readonly<Record<string, Place>> {
  if (amount === undefined) return {};
  const { water_L, mass_kg, nitrogen_kg, material, enough_m3 } = amount;
  return {
    ...(water_L !== undefined && { water: liquid(water_L), range: { ...liquid(water_L), asRange: true } }),
    ...(mass_kg !== undefined && { mass: mass(mass_kg), range: { ...mass(mass_kg), asRange: true } }),
    ...(nitrogen_kg !== undefined && { nitrogen: smallMass(nitrogen_kg) }),
    ...(material !== undefined && { material: materialName(holding, material) }),
    ...(enough_m3 !== undefined && { enough: bulk(enough_m3) }),
  };
}
