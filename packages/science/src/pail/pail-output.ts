import { z } from 'zod';
import { type CautionId, cautionIds } from '../caution/index.ts';
import { type Estimate, estimateSchema } from '../estimate/index.ts';
import { type Permitted, permittedShape } from '../mix/ingredient.ts';
import { type Ahead, aheadSchema } from './ahead.ts';
import { type AsFed, asFedSchema, type BinLayer, type BinNow, binLayerSchema, binNowSchema } from './bin.ts';
import { type Safety, safetySchema } from './claims.ts';
import { type DryOption, dryOptionSchema } from './cover.ts';
import { type LaidLine, laidLineSchema, type Short, shortSchema } from './lay.ts';
import { type BinMend, binMendSchema } from './mend.ts';
import { type NoteCode, noteCodes } from './notes.ts';
import { type PracticeId, practiceIds } from './parameters.ts';
import { type Room, roomSchema } from './room.ts';
import { type Stop, stopSchema } from './stop.ts';

/**
 * What to do: `cover` it with dry stuff; `tip-in`, it needs none; `fetch-dry`, it needs some and none is on hand;
 * `start-next`, this bin has had its last pail;
 * `mend-first`, the bin wants dry stuff forked through it before it is fed again; `store`, it is frozen and only keeps;
 * `mix-and-cap`, it thaws.
 */
export const pailDecisions = [
  'cover',
  'tip-in',
  'fetch-dry',
  'start-next',
  'mend-first',
  'store',
  'mix-and-cap',
] as const;
export type PailDecision = (typeof pailDecisions)[number];

/** A line of the pail, weighed. */
export interface PailLine extends Permitted {
  readonly wet_kg: Estimate;
  readonly volume_m3: Estimate;
}

/** How thick a cap of leaves or finished compost is laid, m. */
export interface Cap {
  readonly low_m: number;
  readonly high_m: number;
}

/** What goes with a pail, and the bin after it. */
export interface PailCover {
  readonly decision: PailDecision;
  readonly pail: readonly PailLine[];
  /** What to lay with it, of what is on hand; empty where nothing is needed. */
  readonly lay: readonly LaidLine[];
  /** Dry stuff that is still missing for the better aim. */
  readonly short?: Short | undefined;
  /** Water to pour on, whole litres. */
  readonly water_L: number;
  /** The pail with its dry stuff and water. */
  readonly laid: AsFed;
  /** Each dry material alone, whether the bin wants it or not. */
  readonly options: readonly DryOption[];
  readonly mend?: BinMend | undefined;
  /** Only where it thaws or stings. */
  readonly cap?: Cap | undefined;
  /** What lies in the bin, from the first layer on. */
  readonly layers: readonly BinLayer[];
  /** Everything that ever went in; absent where nothing is known of what lies in the bin. */
  readonly asFed?: AsFed | undefined;
  /** Absent where nobody knows how full the bin is. */
  readonly now?: BinNow | undefined;
  /** Only when a bay was given. */
  readonly room?: Room | undefined;
  readonly stop: Stop;
  readonly safety: Safety;
  readonly ahead?: Ahead | undefined;
  readonly practice: readonly PracticeId[];
  readonly notes: readonly NoteCode[];
  readonly cautions: readonly CautionId[];
}

export const pailCoverSchema: z.ZodType<PailCover> = z.strictObject({
  decision: z.enum(pailDecisions),
  pail: z.array(
    z.strictObject({
      ...permittedShape,
      wet_kg: estimateSchema('Wet mass, kg.'),
      volume_m3: estimateSchema('Volume as it lay, m³.'),
    }),
  ),
  lay: z.array(laidLineSchema),
  short: shortSchema.optional(),
  water_L: z.number().min(0),
  laid: asFedSchema,
  options: z.array(dryOptionSchema),
  mend: binMendSchema.optional(),
  cap: z.strictObject({ low_m: z.number(), high_m: z.number() }).optional(),
  layers: z.array(binLayerSchema),
  asFed: asFedSchema.optional(),
  now: binNowSchema.optional(),
  room: roomSchema.optional(),
  stop: stopSchema,
  safety: safetySchema,
  ahead: aheadSchema.optional(),
  practice: z.array(z.enum(practiceIds)),
  notes: z.array(z.enum(noteCodes)),
  cautions: z.array(z.enum(cautionIds)),
});
