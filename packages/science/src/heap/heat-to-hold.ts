import table from '@loamwright/reference/heat-to-hold.json' with { type: 'json' };
import { convert } from '@loamwright/units';
import { z } from 'zod';
import { bad, type Calculation, type Citation, good, type Needs, type Outcome } from '../catalogue/index.ts';
import { type CautionId, inOrder } from '../caution/index.ts';
import {
  type Chance,
  chance,
  chanceSchema,
  type Draws,
  drawsOf,
  type Estimate,
  estimateSchema,
  fraction,
  fromPublished,
  positive,
  summarise,
} from '../estimate/index.ts';
import { type Box, ballOf, boxShape, type HeatShape, heatToHold_WPerM3, timesToHold } from './heat-shape.ts';

export interface HeatToHoldInput {
  /** The inside of a bin, or only a volume, which is then taken as round as can be. */
  readonly size: Box | { readonly volume_m3: number };
  /** Whether all sides and the top are insulated already. */
  readonly insulated?: boolean | undefined;
  /**
   * Mean temperature of the coldest weeks, °C; -5 when left out. As mild as a cool week of spring or autumn (10 °C) or
   * milder, it is no winter's: then only the weather given is judged.
   */
  readonly air_degC?: number | undefined;
  /** Temperature the core is to hold, °C; 55 when left out. */
  readonly core_degC?: number | undefined;
}

/** What a size comes to: good the year round, good with straw walls, good from spring to autumn, good so with straw walls, or never. */
export const sizeDecisions = [
  'winter',
  'insulate',
  'three-seasons',
  'insulate-for-three-seasons',
  'too-small',
] as const;
export type SizeDecision = (typeof sizeDecisions)[number];

/** Something to bear in mind; the message `size.note.ID`. */
export const sizeNotes = ['nine-cubic-feet', 'frozen-store', 'mix-first', 'sizes-disagree'] as const;
export type SizeNoteId = (typeof sizeNotes)[number];

/** One way to keep the heat in. */
export interface KeepsHeat {
  /** Heat that must be made and stay in the stuff, W per m³. */
  readonly heat_WPerM3: Estimate;
  /** In how many draws a good mix still makes as much after its first two weeks, besides what the air carries off. */
  readonly holds: Chance;
  /** Whether so many draws are enough in that season. */
  readonly does: boolean;
  /** The volume from which on enough draws hold, in the same shape, m³. */
  readonly enough_m3: number;
}

export interface SizeInSeason {
  /** `three-seasons` too where only the weather given is judged, being no winter's. */
  readonly season: 'three-seasons' | 'winter';
  readonly air_degC: number;
  /** How far the core is to be above the air. */
  readonly span_K: number;
  readonly bare: KeepsHeat;
  readonly insulated: KeepsHeat;
}

export interface HeatToHold {
  readonly decision: SizeDecision;
  readonly volume_m3: number;
  readonly seasons: readonly SizeInSeason[];
  /** Heat a good mix makes after its first two weeks, W per m³, of which the air carries off a part. */
  readonly made_WPerM3: Estimate;
  readonly notes: readonly SizeNoteId[];
  readonly cautions: readonly CautionId[];
}

const keepsHeat: z.ZodType<KeepsHeat> = z.strictObject({
  heat_WPerM3: estimateSchema('Heat to make and keep in the stuff, W per m³.'),
  holds: chanceSchema,
  does: z.boolean().meta({ description: 'Whether so many draws are enough in that season.' }),
  enough_m3: z.number().meta({ description: 'Volume of this shape from which on enough draws hold, m³.' }),
});

const output: z.ZodType<HeatToHold> = z.strictObject({
  decision: z.enum(sizeDecisions),
  volume_m3: z.number(),
  seasons: z.array(
    z.strictObject({
      season: z.enum(['three-seasons', 'winter']),
      air_degC: z.number(),
      span_K: z.number(),
      bare: keepsHeat,
      insulated: keepsHeat,
    }),
  ),
  made_WPerM3: estimateSchema('Heat a good mix makes after two weeks, W per m³.'),
  notes: z.array(z.enum(sizeNotes)),
  cautions: z.array(z.enum(['fire', 'local-rules'])),
});

/** Between what sizes a heap can be; what passes them is a slip of the pen. */
export const heapBounds: Citation & {
  readonly leastSide_m: number;
  readonly mostSide_m: number;
  readonly mostHeight_m: number;
  readonly most_m3: number;
} = table.bounds as Citation & typeof table.bounds;
const { leastSide_m, mostSide_m, mostHeight_m, most_m3 } = heapBounds;
const side = z.number().min(leastSide_m).max(mostSide_m);

/** The size of a heap or a bin, as a box or a volume. */
export const heapSizeSchema: z.ZodType<HeatToHoldInput['size']> = z.union([
  z
    .strictObject({ width_m: side, depth_m: side, height_m: z.number().min(leastSide_m).max(mostHeight_m) })
    .refine(({ width_m, depth_m, height_m }) => width_m * depth_m * height_m <= most_m3, {
      params: { wanted: `at most ${most_m3} m³` },
    }),
  z.strictObject({
    volume_m3: z
      .number()
      .min(leastSide_m ** 3)
      .max(most_m3),
  }),
]);

const input: z.ZodType<HeatToHoldInput> = z.strictObject({
  size: heapSizeSchema,
  insulated: z.boolean().optional().meta({ description: 'Whether sides and top are insulated already.' }),
  air_degC: z
    .number()
    .min(-60)
    .max(60)
    .optional()
    .meta({ description: 'Mean of the coldest weeks, °C; from 10 on only that weather is judged.' }),
  core_degC: z.number().min(0).max(80).optional().meta({ description: 'What the core is to hold, °C.' }),
});

interface Made {
  readonly conductivity_WPerMK: Float64Array;
  /** Heat made that the air does not carry off. */
  readonly kept_WPerM3: Float64Array;
}

function madeIn(draws: Draws): Made {
  const carried = drawsOf(draws, 'heap/airCarries_share', fromPublished(table.airCarries_share, fraction), fraction);
  const made = drawsOf(draws, 'heap/lastingHeat_WPerM3', lasting, positive);
  return {
    conductivity_WPerMK: drawsOf(
      draws,
      'heap/conductivity_WPerMK',
      fromPublished(table.conductivity_WPerMK, positive),
      positive,
    ),
    kept_WPerM3: made.map((heat, i) => heat * (1 - (carried[i] ?? 0))),
  };
}

const lasting = fromPublished(table.lastingHeat_WPerM3, positive);

interface Stands {
  readonly shape: HeatShape;
  readonly volume_m3: number;
  readonly span_K: number;
  readonly surface_WPerM2K: number;
  /** Share of the draws that must hold. */
  readonly enough_share: number;
}

function keeps(stands: Stands, made: Made): KeepsHeat {
  const { shape, volume_m3, span_K, surface_WPerM2K, enough_share } = stands;
  const draws = Array.from(made.kept_WPerM3, (kept_WPerM3, i) => ({
    conductivity_WPerMK: made.conductivity_WPerMK[i] ?? Number.NaN,
    surface_WPerM2K,
    kept_WPerM3,
  }));
  const heat = draws.map((keeping) => heatToHold_WPerM3(shape, span_K, keeping));
  const times = draws.map((keeping) => timesToHold(shape, span_K, keeping.kept_WPerM3, keeping)).sort((a, b) => a - b);
  const enough = times[Math.ceil(enough_share * times.length) - 1] ?? Number.NaN;
  return {
    heat_WPerM3: summarise(heat),
    holds: chance(times, (factor) => factor <= 1),
    does: enough <= 1,
    enough_m3: volume_m3 * enough ** 3,
  };
}

function run(asked: HeatToHoldInput, { draws }: Needs): Outcome<HeatToHold> {
  const core_degC = asked.core_degC ?? table.core_degC.value;
  const coldest_degC = asked.air_degC ?? table.winterAir_degC.value;
  const mildest_degC = Math.max(coldest_degC, table.threeSeasonsAir_degC.value);
  if (core_degC <= mildest_degC) {
    const wanted = `> ${mildest_degC}`;
    return bad({ code: 'too-small', path: 'core_degC', found: String(core_degC), wanted });
  }
  const { size } = asked;
  const volume_m3 = 'volume_m3' in size ? size.volume_m3 : size.width_m * size.depth_m * size.height_m;
  const shape = 'volume_m3' in size ? ballOf(volume_m3) : boxShape(size);
  const made = madeIn(draws);
  const inSeason = (season: SizeInSeason['season'], air_degC: number): SizeInSeason => {
    const span_K = core_degC - air_degC;
    const enough_share = table.enough[season].value;
    const walls = (surface_WPerM2K: number): KeepsHeat =>
      keeps({ shape, volume_m3, span_K, surface_WPerM2K, enough_share }, made);
    return {
      season,
      air_degC,
      span_K,
      bare: walls(table.bareSurface_WPerM2K.value),
      insulated: walls(table.insulatedSurface_WPerM2K.value),
    };
  };
  const mild = inSeason('three-seasons', mildest_degC);
  const winter = coldest_degC < mildest_degC ? inSeason('winter', coldest_degC) : undefined;
  const decision = decide({ mild, winter, insulated: asked.insulated === true });
  const notes: SizeNoteId[] = [];
  if (isSlip(volume_m3)) notes.push('nine-cubic-feet');
  if (decision !== 'winter' && coldest_degC <= table.frost_degC.value) notes.push('frozen-store');
  notes.push('mix-first', 'sizes-disagree');
  return good({
    decision,
    volume_m3,
    seasons: winter === undefined ? [mild] : [mild, winter],
    made_WPerM3: lasting,
    notes,
    cautions: inOrder(['fire', 'local-rules']),
  });
}

interface Decided {
  readonly mild: SizeInSeason;
  readonly winter: SizeInSeason | undefined;
  readonly insulated: boolean;
}

function decide({ mild, winter, insulated }: Decided): SizeDecision {
  const now = insulated ? 'insulated' : 'bare';
  if (winter?.[now].does === true) return 'winter';
  if (!insulated && winter?.insulated.does === true) return 'insulate';
  if (mild[now].does) return 'three-seasons';
  if (!insulated && mild.insulated.does) return 'insulate-for-three-seasons';
  return 'too-small';
}

function isSlip(volume_m3: number): boolean {
  const printed_m3 = convert(table.slip.volume_ft3, 'ft3', 'm3');
  return Math.abs(volume_m3 - printed_m3) <= table.slip.within_share * printed_m3;
}

/** Whether a heap of a size can stay hot. */
export const heatToHold: Calculation<HeatToHoldInput, HeatToHold> = {
  id: 'heat-to-hold',
  title: 'Heat a heap must make to stay hot',
  summary:
    'How much heat each cubic metre must make for the core to stay hot in cool and in cold weather, bare and with thick straw ' +
    'walls, beside what a good mix still makes after its first two weeks; and from that whether the size does for three ' +
    'seasons, for winter, with insulation, or not. Size alone heats no poor mix.',
  input,
  output,
  sources: [
    { source: 'carslaw-jaeger-1959', place: 'heat made evenly in a ball, and between walls', mark: 'memory' },
    ...[
      table.conductivity_WPerMK,
      table.bareSurface_WPerM2K,
      table.insulatedSurface_WPerM2K,
      table.airCarries_share,
      table.lastingHeat_WPerM3,
      table.enough['three-seasons'],
      table.enough.winter,
      table.oxygenHeat_MJPerKg,
      table.core_degC,
      table.threeSeasonsAir_degC,
      table.winterAir_degC,
      table.slip,
      table.bounds,
      ...table.alsoRead,
    ],
  ],
  cautions: ['fire', 'local-rules'],
  example: { size: { width_m: 1.2, depth_m: 1.2, height_m: 1.2 }, air_degC: -5 },
  run,
};
