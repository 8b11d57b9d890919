import table from '@loamwright/reference/liming.json' with { type: 'json' };
import { convert } from '@loamwright/units';
import { z } from 'zod';
import { type Calculation, type Citation, good, type Needs, type Outcome } from '../catalogue/index.ts';
import { type CautionId, cautionIds, inOrder } from '../caution/index.ts';
import {
  between,
  drawsOf,
  type Estimate,
  estimateSchema,
  fromPublished,
  type PublishedRange,
  percent,
  percentQuantity,
  type Quantity,
  summarise,
} from '../estimate/index.ts';
import { mixParameters } from '../mix/parameters.ts';
import { type AshSalt, ashPotash_pct, ashSalt, type TestedAsh } from './ash.ts';
import { type Crop, cropById } from './crops.ts';
import { bedBounds } from './slips.ts';

export const textureIds = ['sandy-loam', 'loam', 'clay-loam'] as const;
export type TextureId = (typeof textureIds)[number];

/** Ground limestone; or wood ash, which acts faster and brings potassium, salt and boron. */
export const limeStuffs = ['limestone', 'wood-ash'] as const;

export interface LimeRateInput extends TestedAsh {
  /** Of the soil, in water; left out, nobody tested. */
  readonly pH?: number | undefined;
  readonly target_pH?: number | undefined;
  readonly texture?: TextureId | undefined;
  /** A lab's buffer reading, which goes before texture. */
  readonly buffer?: { readonly method: 'sikora' | 'mehlich'; readonly pH: number } | undefined;
  readonly stuff: (typeof limeStuffs)[number];
  /** Its lime value: calcium carbonate equivalent, %. */
  readonly equivalent_pct?: Quantity | undefined;
  readonly area_m2: number;
  /** Crops that are to grow there, by their ids. */
  readonly crops?: readonly string[] | undefined;
}

export const limeVerdicts = ['none', 'test-first', 'give'] as const;
export const limeNotes = ['ash-ceiling', 'ash-untested', 'ash-not-here', 'split', 'texture-guessed'] as const;

/** Lime value and potassium (K₂O) of the ash, %; from low to high in print where nobody tested. */
export interface AshFigures {
  readonly equivalent_pct: Estimate;
  readonly equivalentTested: boolean;
  readonly potash_pctAsIs: Estimate;
  readonly potashTested: boolean;
}

export interface LimeRate {
  readonly verdict: (typeof limeVerdicts)[number];
  /** By which published way. */
  readonly by: 'chart' | 'sikora' | 'mehlich' | 'none';
  /** Ground limestone that the soil wants in all, on each square metre. */
  readonly limestone_kgPerM2: Estimate;
  /** The stuff itself, this year, on each square metre and on the whole. */
  readonly stuff_kgPerM2: Estimate;
  readonly stuff_kg: Estimate;
  readonly dressings: number;
  /** Potassium (K₂O) that ash brings. */
  readonly potash_kg?: Estimate | undefined;
  /** Whose lime value and potassium were reckoned with, and what untested ash has. */
  readonly ash?: AshFigures | undefined;
  /** How much saltier it makes the soil. */
  readonly salt?: AshSalt | undefined;
  /** The most ash in a year. */
  readonly ashCeiling_kgPerM2?: { readonly low: number; readonly high: number } | undefined;
  readonly notes: readonly (typeof limeNotes)[number][];
  readonly cautions: readonly CautionId[];
}

interface Row {
  readonly pH: number;
  readonly lbPer100Ft2: readonly number[];
}

interface Parameters {
  readonly byPH: Citation & { readonly to_pH: number; readonly rows: readonly Row[] };
  readonly sikora: Citation & {
    readonly to_pH: readonly number[];
    readonly rows: readonly { readonly buffer_pH: number; readonly tonPerAcre: readonly number[] }[];
  };
  readonly mehlich: Citation & { readonly acidity_per_pH: number; readonly top_pH: number };
  readonly split: readonly { readonly above_lbPer100Ft2: number; readonly dressings: number }[];
  readonly splitSource: Citation;
  readonly byEquivalent: Citation;
  readonly ash: {
    readonly equivalent_pct: Citation & PublishedRange;
    readonly potash_pct: Citation & PublishedRange;
    readonly most_lbPer1000Ft2: Citation & { readonly low: number; readonly high: number };
    readonly noneFrom_pH: Citation & { readonly value: number };
    readonly avoid: Citation & { readonly crops: readonly string[] };
    readonly salt: Citation;
    readonly saltTrial: Citation;
    readonly apart_months: Citation & { readonly value: number };
  };
}

const parameters = table as unknown as Parameters;
const { ash, byPH, mehlich, sikora } = parameters;

const KG_PER_M2_PER_LB_PER_100FT2 = convert(1, 'lb', 'kg') / convert(100, 'ft2', 'm2');
/** A short ton is 2,000 pounds (NIST SP 811). */
const KG_PER_M2_PER_TON_PER_ACRE = convert(2000, 'lb', 'kg') / convert(1, 'acre', 'm2');

/** Between two points on a straight line; beyond the ends, the end. */
function onLine(points: readonly (readonly [x: number, y: number])[], x: number): number {
  const sorted = points.toSorted((a, b) => a[0] - b[0]);
  const [first] = sorted;
  const last = sorted.at(-1);
  if (first === undefined || last === undefined) throw new RangeError('a line has points');
  if (x <= first[0]) return first[1];
  if (x >= last[0]) return last[1];
  const above = sorted.findIndex(([at]) => at >= x);
  const [x1, y1] = sorted[above] ?? last;
  const [x0, y0] = sorted[above - 1] ?? first;
  return y0 + ((y1 - y0) * (x - x0)) / (x1 - x0);
}

/** Ground limestone that a soil of this texture wants to reach a pH, by the chart: what it wants to 6.5 less what the target does. */
function byChart(texture: TextureId, pH: number, target_pH: number): number {
  const column = textureIds.indexOf(texture);
  const points = byPH.rows.map(({ pH: at, lbPer100Ft2 }) => [at, lbPer100Ft2[column] ?? 0] as const);
  return Math.max(0, onLine(points, pH) - onLine(points, target_pH)) * KG_PER_M2_PER_LB_PER_100FT2;
}

/** Sikora buffer, Oregon's table of 2025. */
function bySikora(buffer_pH: number, target_pH: number): number {
  const atTargets = sikora.to_pH.map(
    (to, i) =>
      [
        to,
        onLine(
          sikora.rows.map((row) => [row.buffer_pH, row.tonPerAcre[i] ?? 0] as const),
          buffer_pH,
        ),
      ] as const,
  );
  return onLine(atTargets, target_pH) * KG_PER_M2_PER_TON_PER_ACRE;
}

/** Mehlich buffer, North Carolina's formula. */
function byMehlich(buffer_pH: number, pH: number, target_pH: number): number {
  const acidity = Math.max(0, mehlich.top_pH - buffer_pH) * mehlich.acidity_per_pH;
  return ((acidity * (target_pH - pH)) / (mehlich.top_pH - pH)) * KG_PER_M2_PER_TON_PER_ACRE;
}

interface Wanted {
  readonly by: LimeRate['by'];
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

function wanted({ pH, target_pH = byPH.to_pH, texture, buffer }: LimeRateInput): Wanted {
  const exactly = (by: LimeRate['by'], value: number): Wanted => ({ by, low: value, likely: value, high: value });
  if (pH === undefined || pH >= target_pH) return exactly('none', 0);
  if (buffer?.method === 'sikora') return exactly('sikora', bySikora(buffer.pH, target_pH));
  if (buffer?.method === 'mehlich' && target_pH < mehlich.top_pH)
    return exactly('mehlich', byMehlich(buffer.pH, pH, target_pH));
  if (texture !== undefined) return exactly('chart', byChart(texture, pH, target_pH));
  const [low = 0, likely = 0, high = 0] = textureIds.map((id) => byChart(id, pH, target_pH));
  return { by: 'chart', low, likely, high };
}

function run(input: LimeRateInput, { draws }: Needs): Outcome<LimeRate> {
  const { stuff, area_m2, pH } = input;
  const isAsh = stuff === 'wood-ash';
  const crops = (input.crops ?? []).flatMap((id): readonly Crop[] => {
    const crop = cropById(id);
    return crop === undefined ? [] : [crop];
  });
  const barred = crops.some(({ id }) => ash.avoid.crops.some((one) => id.startsWith(one)));
  const none = pH !== undefined && isAsh && pH >= ash.noneFrom_pH.value;
  const asked = barred || none ? { by: 'none' as const, low: 0, likely: 0, high: 0 } : wanted(input);
  const limestone = between3(asked, draws.shares('soil/texture'));
  const equivalent = drawsOf(
    draws,
    `${stuff}/equivalent_pct`,
    input.equivalent_pct ?? (isAsh ? fromPublished(ash.equivalent_pct, percent) : PURE_PCT),
    percent,
  );
  const all = limestone.map((kg, i) => (kg * PURE_PCT) / (equivalent[i] ?? Number.NaN));
  const ceiling = ashCeiling_kgPerM2();
  // The ceiling is a range since ashes differ: the high end is for ash that was tested to be weak enough.
  const most = input.equivalent_pct === undefined ? ceiling.low : ceiling.high;
  const capped = isAsh ? all.map((kg) => Math.min(most, kg)) : all;
  const lb = summarise(limestone).p50 / KG_PER_M2_PER_LB_PER_100FT2;
  const dressings = isAsh ? 1 : (parameters.split.find(({ above_lbPer100Ft2: above }) => lb > above)?.dressings ?? 1);
  const potash = ashPotash_pct(input, draws);
  return good({
    verdict: verdictOf(pH, summarise(all).p50, barred),
    by: asked.by,
    limestone_kgPerM2: summarise(limestone),
    stuff_kgPerM2: summarise(capped),
    stuff_kg: summarise(capped.map((kg) => kg * area_m2)),
    dressings,
    ...(isAsh && {
      potash_kg: summarise(capped.map((kg, i) => (kg * area_m2 * (potash[i] ?? Number.NaN)) / PURE_PCT)),
      ash: {
        equivalent_pct: summarise(equivalent),
        equivalentTested: input.equivalent_pct !== undefined,
        potash_pctAsIs: summarise(potash),
        potashTested: (input.potash_pctAsIs ?? input.potassium_pctAsIs) !== undefined,
      },
      salt: ashSalt(capped, potash, draws),
      ashCeiling_kgPerM2: ceiling,
    }),
    notes: [
      ...(barred ? (['ash-not-here'] as const) : []),
      ...(isAsh && summarise(all).p50 > most ? (['ash-ceiling'] as const) : []),
      ...(isAsh && input.equivalent_pct === undefined && summarise(all).p90 > most ? (['ash-untested'] as const) : []),
      ...(dressings > 1 ? (['split'] as const) : []),
      ...(asked.by === 'chart' && input.texture === undefined ? (['texture-guessed'] as const) : []),
    ],
    cautions: inOrder([
      ...(isAsh ? (['ash-caustic', 'ash-live-coals', 'treated-wood', 'salt'] as const) : []),
      'local-rules',
    ]),
  });
}

const PURE_PCT = 100;
/** No ash is richer than pure potassium carbonate: 68 % K₂O, 56 % K. */
const PUREST_POTASH_PCT = 68;
const PUREST_POTASSIUM_PCT = 56;

/** The most ash in a year, by the strength of the ash. */
function ashCeiling_kgPerM2(): { readonly low: number; readonly high: number } {
  const perM2 = (lb: number): number => convert(lb, 'lb', 'kg') / convert(1000, 'ft2', 'm2');
  return { low: perM2(ash.most_lbPer1000Ft2.low), high: perM2(ash.most_lbPer1000Ft2.high) };
}

function verdictOf(pH: number | undefined, likely: number, barred: boolean): LimeRate['verdict'] {
  if (barred) return 'none';
  if (pH === undefined) return 'test-first';
  return likely > 0 ? 'give' : 'none';
}

/** Between the lightest and the heaviest texture, where nobody said which it is: half the draws on either side of loam. */
function between3({ low, likely, high }: Wanted, shares: Float64Array): Float64Array {
  return shares.map((share) =>
    share < 0.5 ? low + 2 * share * (likely - low) : likely + (2 * share - 1) * (high - likely),
  );
}

/** How much lime or ash a bed wants. */
export const limeRate: Calculation<LimeRateInput, LimeRate> = {
  id: 'lime-rate',
  title: 'Lime or ash for a bed',
  summary:
    'From the pH of the soil and its texture, or from a lab’s buffer reading: how much ground limestone it wants to reach a pH, in how many dressings; or how much wood ash, whose lime value runs from 8 to 90 %, by its test where there is one, never above the yearly ceiling that boron and salt set (its low end where nobody tested the ash), and how much saltier it makes the soil; none where the pH is 6.5 or more or for crops that like it sour. Without a pH it asks for a test.',
  input: z
    .strictObject({
      pH: z.number().min(2).max(11).optional().meta({ description: 'Of the soil, in water.' }),
      target_pH: z.number().min(5).max(7.2).optional(),
      texture: z.enum(textureIds).optional(),
      buffer: z.strictObject({ method: z.enum(['sikora', 'mehlich']), pH: z.number().min(4).max(8) }).optional(),
      stuff: z.enum(limeStuffs),
      equivalent_pct: percentQuantity('Lime value, calcium carbonate equivalent, %.')
        .refine((value) => (typeof value === 'number' ? value : value.p10) >= 1, { params: { wanted: 'at least 1' } })
        .optional(),
      potash_pctAsIs: between(
        percentQuantity('Tested potassium of the ash, K₂O, % as it is.'),
        0,
        PUREST_POTASH_PCT,
      ).optional(),
      potassium_pctAsIs: between(
        percentQuantity('The same as the element K, % as it is; one of the two.'),
        0,
        PUREST_POTASSIUM_PCT,
      ).optional(),
      area_m2: z.number().min(bedBounds.area_m2.least).max(bedBounds.area_m2.most),
      crops: z.array(z.string().min(1)).max(40).optional(),
    })
    .refine(
      ({ potash_pctAsIs, potassium_pctAsIs }) => potash_pctAsIs === undefined || potassium_pctAsIs === undefined,
      {
        path: ['potassium_pctAsIs'],
        params: { wanted: 'K₂O or K, one of them' },
      },
    )
    .refine(
      ({ stuff, potash_pctAsIs, potassium_pctAsIs }) =>
        stuff === 'wood-ash' || (potash_pctAsIs ?? potassium_pctAsIs) === undefined,
      { path: ['stuff'], params: { wanted: 'wood-ash, where potassium was tested' } },
    ),
  output: z.strictObject({
    verdict: z.enum(limeVerdicts),
    by: z.enum(['chart', 'sikora', 'mehlich', 'none']),
    limestone_kgPerM2: estimateSchema('Ground limestone wanted in all.'),
    stuff_kgPerM2: estimateSchema('The stuff itself, this year.'),
    stuff_kg: estimateSchema('The same on the whole bed.'),
    dressings: z.number(),
    potash_kg: estimateSchema('Potassium that ash brings, K₂O.').optional(),
    ash: z
      .strictObject({
        equivalent_pct: estimateSchema('Lime value reckoned with.'),
        equivalentTested: z.boolean(),
        potash_pctAsIs: estimateSchema('Potassium reckoned with, K₂O.'),
        potashTested: z.boolean(),
      })
      .optional(),
    salt: z
      .strictObject({
        mixed_dSPerM: estimateSchema('Rise in salts, worked in: conductivity of a saturated extract.'),
        onTop_dSPerM: estimateSchema('The same in the top 2 cm, raked in no deeper.'),
      })
      .optional(),
    ashCeiling_kgPerM2: z.strictObject({ low: z.number(), high: z.number() }).optional(),
    notes: z.array(z.enum(limeNotes)),
    cautions: z.array(z.enum(cautionIds as readonly [CautionId, ...CautionId[]])),
  }),
  sources: [
    byPH,
    sikora,
    mehlich,
    parameters.splitSource,
    parameters.byEquivalent,
    ash.equivalent_pct,
    ash.potash_pct,
    ash.most_lbPer1000Ft2,
    ash.noneFrom_pH,
    ash.avoid,
    ash.salt,
    mixParameters.potassiumSalts_SCm2PerMol,
    ash.saltTrial,
    ash.apart_months,
  ],
  cautions: ['ash-caustic', 'ash-live-coals', 'treated-wood', 'salt', 'local-rules'],
  example: { pH: 5.5, texture: 'loam', stuff: 'limestone', area_m2: 12 },
  run,
};
