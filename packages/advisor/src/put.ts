import type { Holding, LayerPut } from '@loamwright/daybook';
import {
  type Amount,
  bad,
  type Draws,
  type Estimate,
  good,
  materialById,
  type Outcome,
  type OwnSizes,
  type Quantity,
  type Sized,
  sizeAmount,
  summarise,
} from '@loamwright/science';
import { believedOf } from './own-stuff.ts';

/** A material and an amount of it. */
export interface Some {
  readonly material: string;
  readonly amount: Amount;
  /** Ids of doubtful inputs that are in it. */
  readonly doubtful?: readonly string[] | undefined;
}

/** An amount of a material, weighed. */
export interface Weighed {
  readonly mass_kg: Quantity;
  readonly volume_m3: Quantity;
}

/** What weighing wants to know besides. */
export interface Weighing {
  readonly holding: Holding;
  readonly ownSizes?: OwnSizes | undefined;
  readonly draws: Draws;
}

/**
 * Sizes an amount draw by draw, by what is published, said and measured of the material.
 * Problems: `weigh-it` for an own material that is like none, and those of sizing.
 */
export function sized({ material, amount }: Some, { holding, ownSizes, draws }: Weighing): Outcome<Sized> {
  const known = believedOf(material, holding);
  if (known === undefined) return bad({ code: 'weigh-it', path: material, found: material, wanted: '' });
  return sizeAmount(amount, { draws, material: known, name: material, ownSizes, path: material });
}

/** Weighs an amount with its spread. */
export function weighed(some: Some, weighing: Weighing): Outcome<Weighed> {
  const all = sized(some, weighing);
  if (!all.ok) return all;
  return good({
    mass_kg: quantityOf(summarise(all.value.mass_kg)),
    volume_m3: quantityOf(summarise(all.value.volume_m3)),
  });
}

/** What has no spread is a plain number. */
function quantityOf(estimate: Estimate): Quantity {
  return estimate.p10 === estimate.p90 ? estimate.p50 : estimate;
}

/** Stuff that heat must make safe. */
const riskyCautions: ReadonlySet<string> = new Set(['manure-pathogens', 'rats-flies', 'diseased-plants']);

/** Whether a material counts as raw: manure, scraps, what may be sick. An unknown one does. */
export function isRaw(material: string, holding: Holding): boolean {
  const own = holding.materials.get(material)?.described?.body;
  if (own?.raw !== undefined) return own.raw;
  return materialById(own?.like ?? material)?.cautions.some((id) => riskyCautions.has(id)) ?? true;
}

/** An amount of a material as a layer of a heap, taken from what lies in store or not. */
export function layerPut(some: Some, fromStock: boolean, weighing: Weighing): Outcome<LayerPut> {
  const { material, doubtful = [] } = some;
  const one = weighed(some, weighing);
  if (!one.ok) return one;
  const raw = doubtful.length > 0 || isRaw(material, weighing.holding);
  return good({ material, ...one.value, raw, ...(fromStock && { from: { type: 'stock' as const } }) });
}

/** Whether the daybook says that some of a material lies in store. */
export function isInStore(material: string, holding: Holding): boolean {
  return (holding.stock.get(material)?.mass_kg ?? 0) > 0;
}
