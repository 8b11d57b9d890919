import { z } from 'zod';
import { bad, type Calculation, good, type Outcome } from '../catalogue/index.ts';
import {
  type Estimate,
  estimateSchema,
  isEstimate,
  likely,
  narrow,
  positiveQuantity,
  type Quantity,
  type Scale,
  valueAt,
} from '../estimate/index.ts';
import type { SqueezeGrade } from '../heap/observed.ts';
import { type Material, materialAt, type PropertyId, propertyIds } from './material.ts';
import { allMeasures, measureById } from './measure.ts';
import {
  type DryDown,
  densityFromBucket,
  densityOnceSettled,
  measuringSources,
  moistureFromDryDown,
  moistureFromSqueeze,
  type Settling,
  settledShare,
  squeezeGrades,
  type WeighedBucket,
} from './measured.ts';
import { nearest } from './nearest.ts';
import { type OwnQuantities, ownQuantitiesSchema, withOwn } from './own.ts';
import { type KnownMaterial, knownMaterial, scaleOf } from './properties.ts';

/** A bucket on the scale: its size told in litres, or by the id of a measure. */
export interface BucketCheck extends Omit<WeighedBucket, 'volume_L'> {
  readonly volume_L?: Quantity | undefined;
  readonly measure?: string | undefined;
  /** Pressed down rather than lying loose. */
  readonly packed?: boolean | undefined;
}

/** One-minute checks of a material. */
export interface MaterialMeasuredInput {
  readonly material: string;
  /** What the grower already knows of it, in place of what is published. */
  readonly described?: OwnQuantities | undefined;
  readonly squeeze?: SqueezeGrade | undefined;
  readonly dryDown?: DryDown | undefined;
  readonly bucket?: BucketCheck | undefined;
  readonly settling?: Settling | undefined;
}

/** What a check says of one property, and what is believed after it. */
export interface Finding {
  readonly property: PropertyId;
  /** What was believed before: described by the grower, or published. */
  readonly before?: Quantity | undefined;
  readonly measured: Estimate;
  /** Both together, by Bayes' rule. */
  readonly believed: Quantity;
  /**
   * Whether the measurement lies where nineteen in twenty of such stuff lie. Where it does not, this stuff is
   * of another kind (straw that lay in the rain): describe it, so that the published figure no longer counts.
   */
  readonly agrees: boolean;
}

export interface MaterialMeasured {
  readonly material: string;
  readonly findings: readonly Finding[];
}

/** Weights, heights and steps of a scale as a person can read them; outside of these, figures overflow. */
const readable = z.number().min(1e-6).max(1e6);
const quantitySchema: z.ZodType<Quantity> = z.union([z.number(), estimateSchema('An estimate.')]);

const dryDownSchema: z.ZodType<DryDown> = z.strictObject({
  method: z.enum(['oven', 'microwave']),
  wet_g: readable,
  dry_g: readable,
  container_g: z.number().min(0).max(1e6).optional(),
  scaleStep_g: readable.optional(),
});

const bucketSchema: z.ZodType<BucketCheck> = z.strictObject({
  full_kg: readable,
  empty_kg: z.number().min(0).max(1e6),
  volume_L: positiveQuantity('Litres it holds to the rim.').optional(),
  measure: z.string().min(1).optional().meta({ description: 'The id of a measure, in place of litres.' }),
  packed: z.boolean().optional().meta({ description: 'Pressed down rather than lying loose.' }),
  scaleStep_kg: readable.optional(),
});

const settlingSchema: z.ZodType<Settling> = z.strictObject({
  filled_cm: readable,
  settled_cm: readable,
  readTo_cm: readable.optional(),
});

export const materialMeasured: Calculation<MaterialMeasuredInput, MaterialMeasured> = {
  id: 'material-measured',
  title: 'A material as you found it',
  summary:
    'From a squeeze, a sample dried down, a weighed bucket or a bucket shaken down: moisture and density of your own stuff, joined by Bayes’ rule with what is published or what you described. It also says when your stuff is so far off that the published figure should no longer count.',
  input: z.strictObject({
    material: z.string().min(1).meta({ description: 'The id of the material, or of the one yours is most like.' }),
    described: ownQuantitiesSchema.optional(),
    squeeze: z.enum(squeezeGrades).optional(),
    dryDown: dryDownSchema.optional(),
    bucket: bucketSchema.optional(),
    settling: settlingSchema.optional(),
  }),
  output: z.strictObject({
    material: z.string(),
    findings: z.array(
      z.strictObject({
        property: z.enum(propertyIds),
        before: quantitySchema.optional(),
        measured: estimateSchema('What the check says.'),
        believed: quantitySchema,
        agrees: z.boolean(),
      }),
    ),
  }),
  sources: measuringSources,
  cautions: [],
  example: {
    material: 'straw',
    squeeze: 'crumbles',
    bucket: { full_kg: 3.2, empty_kg: 1, measure: 'bucket-20l' },
  },
  run: (input): Outcome<MaterialMeasured> => {
    const published = materialAt(input.material, 'material');
    if (!published.ok) return published;
    const known = withOwn(knownOf(published.value), { id: input.material, described: input.described });
    const measured = measuredOf(input, published.value, known);
    if (!measured.ok) return measured;
    return good({
      material: input.material,
      findings: measured.value.map(([property, estimate]) => findingOf(property, estimate, known)),
    });
  },
};

function knownOf({ id }: Material): KnownMaterial {
  const known = knownMaterial(id);
  if (known === undefined) throw new RangeError(`${id} is listed but not known`);
  return known;
}

type Measured = readonly (readonly [PropertyId, Estimate])[];

function measuredOf(input: MaterialMeasuredInput, { particle }: Material, known: KnownMaterial): Outcome<Measured> {
  const { squeeze, dryDown, bucket, settling } = input;
  const dried = dryDown === undefined ? undefined : moistureFromDryDown(dryDown, 'dryDown');
  const weighed = bucket === undefined ? undefined : weigh(bucket);
  const settled = settling === undefined ? undefined : settledShare(settling, 'settling');
  for (const one of [dried, weighed, settled]) if (one?.ok === false) return one;
  const moisture = together('moisture_pctWet', [
    squeeze === undefined ? undefined : moistureFromSqueeze(squeeze, particle),
    dried?.ok === true ? dried.value : undefined,
  ]);
  const density = weighed?.ok === true ? weighed.value : undefined;
  const loose = bucket?.packed === true ? undefined : density;
  const looseBefore = loose ?? known.quantities.densityLoose_kgPerM3AsIs;
  if (settled !== undefined && looseBefore !== undefined && likely(looseBefore) <= 0) {
    return bad({ code: 'out-of-bounds', path: 'described.densityLoose_kgPerM3AsIs', found: '0', wanted: '> 0' });
  }
  const packed = together('densityPacked_kgPerM3AsIs', [
    bucket?.packed === true ? density : undefined,
    settled?.ok === true && looseBefore !== undefined ? densityOnceSettled(looseBefore, settled.value) : undefined,
  ]);
  const found: Measured = [
    ...whereFound('moisture_pctWet', moisture),
    ...whereFound('densityLoose_kgPerM3AsIs', loose),
    ...whereFound('densityPacked_kgPerM3AsIs', packed),
  ];
  if (found.length > 0) return good(found);
  return bad({ code: 'missing', path: 'squeeze', found: '', wanted: 'squeeze, dryDown, bucket or settling' });
}

function whereFound(property: PropertyId, estimate: Estimate | undefined): Measured {
  return estimate === undefined ? [] : [[property, estimate]];
}

/** Two checks of one property are two measurements of it. */
function together(property: PropertyId, checks: readonly (Estimate | undefined)[]): Estimate | undefined {
  return checks.reduce((one, other) => {
    if (one === undefined || other === undefined) return one ?? other;
    const both = narrow(one, other, scaleOf[property]);
    return isEstimate(both) ? both : one;
  }, undefined);
}

function weigh(bucket: BucketCheck): Outcome<Estimate> {
  const { measure } = bucket;
  const volume_L = bucket.volume_L ?? (measure === undefined ? undefined : measureById(measure)?.volume_L);
  if (volume_L !== undefined) return densityFromBucket({ ...bucket, volume_L }, 'bucket');
  if (measure === undefined) {
    return bad({ code: 'missing', path: 'bucket.volume_L', found: '', wanted: 'the litres it holds, or a measure' });
  }
  return bad({ code: 'unknown-measure', path: 'bucket.measure', found: measure, wanted: nearestMeasures(measure) });
}

function nearestMeasures(typed: string): string {
  return nearest(
    typed,
    allMeasures.map(({ id }) => id),
  ).join(', ');
}

function findingOf(property: PropertyId, measured: Estimate, known: KnownMaterial): Finding {
  const before = known.quantities[property];
  const scale = scaleOf[property];
  if (before === undefined) return { property, measured, believed: measured, agrees: true };
  return {
    property,
    before,
    measured,
    believed: narrow(before, measured, scale),
    agrees: agree(before, measured, scale),
  };
}

const OUTSIDE_SHARE = 0.025;

function agree(before: Quantity, measured: Estimate, scale: Scale): boolean {
  if (!isEstimate(before)) return measured.p10 <= before && before <= measured.p90;
  const found = likely(measured);
  return valueAt(before, scale, OUTSIDE_SHARE) <= found && found <= valueAt(before, scale, 1 - OUTSIDE_SHARE);
}
