import { z } from 'zod';
import { between, narrow, type Quantity, quantityOn } from '../estimate/index.ts';
import { type PropertyId, propertyIds } from './material.ts';
import { type KnownMaterial, scaleOf } from './properties.ts';
import { materialBounds } from './slips.ts';

/** Properties as a grower knows them; only those that are known. */
export type OwnQuantities = Readonly<Partial<Record<PropertyId, Quantity>>>;

/** What a grower adds to a material: a correction of a published one, or a material of their own. */
export interface OwnMaterial {
  /** The id of the published material it corrects, or a new id. */
  readonly id: string;
  /** Values that take the place of the published ones ("my straw is 60 % water, it lay in the rain"). */
  readonly described?: OwnQuantities | undefined;
  /** Measurements with their error, which narrow what was believed ("a bucket weighed 4 to 5 kg"). */
  readonly measured?: OwnQuantities | undefined;
}

const quantitiesShape = Object.fromEntries(propertyIds.map((property) => [property, quantityOf(property).optional()]));

function quantityOf(property: PropertyId): z.ZodType<Quantity> {
  const quantity = quantityOn(scaleOf[property], property);
  const bounds = materialBounds[property];
  return bounds === undefined ? quantity : between(quantity, bounds.least, bounds.most);
}

/** Checks properties that come from outside, each on its own scale and within the bounds of a slip. */
export const ownQuantitiesSchema: z.ZodType<OwnQuantities> = z.strictObject(quantitiesShape);

export const ownMaterialSchema: z.ZodType<OwnMaterial> = z.strictObject({
  id: z.string().min(1),
  described: ownQuantitiesSchema.optional(),
  measured: ownQuantitiesSchema.optional(),
});

/**
 * A grower's own material or correction laid over what is published of it or of the nearest material.
 * Described values replace; measured ones narrow by Bayes' rule on the property's scale, and stand
 * alone where nothing was known.
 */
export function withOwn(base: KnownMaterial, own: OwnMaterial): KnownMaterial {
  const quantities: Partial<Record<PropertyId, Quantity>> = { ...base.quantities };
  for (const property of propertyIds) {
    const described = own.described?.[property];
    if (described !== undefined) quantities[property] = described;
    const measured = own.measured?.[property];
    if (measured === undefined) continue;
    const prior = quantities[property];
    quantities[property] = prior === undefined ? measured : narrow(prior, measured, scaleOf[property]);
  }
  return { ...base, id: own.id, quantities };
}
