import type { Entered, Entry, LayerPut } from '@loamwright/daybook';
import { likely, measureById, type Quantity } from '@loamwright/science';
import { allUnits, unitTable } from '@loamwright/units';
import type { Place } from '@loamwright/words';
import { measured } from './measured.ts';
import { mass } from './saying.ts';

/** An amount as the person gave it: "9 buckets", "148 °F", "a lot". */
export function typedAmount(entered: Entered): Place {
  const { amount, unit, words } = entered;
  if (amount === undefined || unit === undefined) return words ?? String(amount ?? '');
  return measureById(unit) === undefined ? `${amount} ${symbolOf(unit)}` : measured(unit, amount);
}

/** Some devices keep the id of a unit (`degC`) in place of what was typed. */
function symbolOf(unit: string): string {
  const known = allUnits.find((id) => id === unit);
  return known === undefined ? unit : unitTable[known].symbol;
}

/** A mass as the person gave it, in buckets or bales; else in kilograms or pounds. */
export function massAsTyped(entry: Entry, pointer: string, mass_kg: Quantity): Place {
  const entered = entry.entered?.[pointer];
  return entered === undefined ? mass(mass_kg) : typedAmount(entered);
}

/** How much of each material some layers hold, in the order in which they were laid. */
export function stuffOf(entry: Entry, layers: readonly LayerPut[]): readonly { material: string; amount: Place }[] {
  const byMaterial = new Map<string, Total>();
  for (const [i, { material, mass_kg }] of layers.entries()) {
    const entered = entry.entered?.[`/layers/${i}/mass_kg`];
    const total = byMaterial.get(material);
    byMaterial.set(material, {
      mass_kg: (total?.mass_kg ?? 0) + likely(mass_kg),
      entered: total === undefined ? entered : added(total.entered, entered),
    });
  }
  return [...byMaterial].map(([material, { mass_kg, entered }]) => ({
    material,
    amount: entered === undefined ? mass(mass_kg) : typedAmount(entered),
  }));
}

interface Total {
  readonly mass_kg: number;
  readonly entered: Entered | undefined;
}

/** Amounts in one measure add up; others can only be added as masses. */
function added(a: Entered | undefined, b: Entered | undefined): Entered | undefined {
  if (a?.amount === undefined || b?.amount === undefined || a.unit !== b.unit) return undefined;
  return { amount: Math.round((a.amount + b.amount) * 100) / 100, unit: a.unit };
}
