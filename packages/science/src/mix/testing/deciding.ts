import { likely, type Quantity, valueAt } from '../../estimate/index.ts';
import { knownMaterial } from '../../material/index.ts';
import { allMaterials, type Material, materialById, type PropertyId } from '../../material/material.ts';
import { scaleOf } from '../../material/properties.ts';
import { bandTable } from '../bands.ts';

/** The figures of a material that make the C:N and the moisture of a mix laid by volume. */
const figures = [
  'carbonToNitrogen_ratio',
  'moisture_pctWet',
  'densityLoose_kgPerM3AsIs',
  'volatileSolids_pctDry',
] as const satisfies readonly PropertyId[];
type FigureId = (typeof figures)[number];
type Figures = Readonly<Record<FigureId, number>>;

interface Part {
  readonly figures: Figures;
  readonly volume: number;
}
interface Made {
  readonly carbonToNitrogen_ratio: number;
  readonly moisture_pctWet: number;
}

const { carbonToNitrogen_ratio: ratioGoal, moisture_pctWet: moistureGoal } = bandTable.goals;
const RATIO_AIM = middle(ratioGoal.preferred);
const MOISTURE_AIM_PCT = middle(moistureGoal.preferred);
/** Volumes are tried in eighths, up to fifty of the partner to one. */
const STEPS = 400;

function middle({ low = 0, high = 0 }: { readonly low?: number | undefined; readonly high?: number | undefined }) {
  return (low + high) / 2;
}

function quantityOf(id: string, property: FigureId): Quantity {
  return knownMaterial(id)?.quantities[property] ?? Number.NaN;
}

function typicalOf(id: string): Figures {
  const of = (property: FigureId): number => likely(quantityOf(id, property));
  return {
    carbonToNitrogen_ratio: of('carbonToNitrogen_ratio'),
    moisture_pctWet: of('moisture_pctWet'),
    densityLoose_kgPerM3AsIs: of('densityLoose_kgPerM3AsIs'),
    volatileSolids_pctDry: of('volatileSolids_pctDry'),
  };
}

function masses(parts: readonly Part[]): { readonly wet: number; readonly dry: number; readonly ratio: number } {
  const each = parts.map(({ figures: of, volume }) => {
    const wet = of.densityLoose_kgPerM3AsIs * volume;
    const dry = wet * (1 - of.moisture_pctWet / 100);
    const carbon = dry * of.volatileSolids_pctDry;
    return { wet, dry, carbon, nitrogen: carbon / of.carbonToNitrogen_ratio };
  });
  const sum = (of: (one: (typeof each)[number]) => number): number => each.reduce((all, one) => all + of(one), 0);
  return {
    wet: sum(({ wet }) => wet),
    dry: sum(({ dry }) => dry),
    ratio: sum((o) => o.carbon) / sum((o) => o.nitrogen),
  };
}

function made(parts: readonly Part[], water: number): Made {
  const { wet, dry, ratio } = masses(parts);
  return { carbonToNitrogen_ratio: ratio, moisture_pctWet: 100 * (1 - dry / (wet + water)) };
}

function verdicts({ carbonToNitrogen_ratio, moisture_pctWet }: Made): string {
  const of = (
    value: number,
    band: { readonly low?: number | undefined; readonly high?: number | undefined },
  ): string => (value < (band.low ?? 0) ? 'low' : value > (band.high ?? Number.POSITIVE_INFINITY) ? 'high' : 'in');
  return `${of(carbonToNitrogen_ratio, ratioGoal.reasonable)} ${of(moisture_pctWet, moistureGoal.reasonable)}`;
}

/**
 * Whether a figure of a material decides an answer: laid by volume with as much straw (or, if itself rich in carbon,
 * grass clippings) as brings the C:N to the middle of the preferred band, and water where it is too dry, the mix
 * comes to lie on another side of the reasonable band of C:N or moisture when that figure alone goes to its 5th or 95th
 * percentile.
 */
function decides(id: string, property: FigureId): boolean {
  const typical = typicalOf(id);
  const partner = typicalOf(typical.carbonToNitrogen_ratio < RATIO_AIM ? 'straw' : 'grass-clippings');
  const partsOf = (own: Figures, volume: number): readonly Part[] => [
    { figures: own, volume: 1 },
    { figures: partner, volume },
  ];
  const miss = (volume: number): number => Math.abs(Math.log(masses(partsOf(typical, volume)).ratio / RATIO_AIM));
  const volumes = Array.from({ length: STEPS }, (_, eighths) => eighths / 8);
  const volume = volumes.reduce((best, one) => (miss(one) < miss(best) ? one : best), 0);
  const { wet, dry } = masses(partsOf(typical, volume));
  const water = Math.max(0, dry / (1 - MOISTURE_AIM_PCT / 100) - wet);
  const now = verdicts(made(partsOf(typical, volume), water));
  return [0.05, 0.95].some((share) => {
    const end = valueAt(quantityOf(id, property), scaleOf[property], share);
    return verdicts(made(partsOf({ ...typical, [property]: end }, volume), water)) !== now;
  });
}

/** The figures that decide an answer, `ID/PROPERTY`, of those whose material's row meets a condition. */
export function deciding(where: (material: Material, property: FigureId) => boolean): readonly string[] {
  return allMaterials
    .filter(({ values, carbonCounts }) => carbonCounts && figures.every((property) => values[property] !== undefined))
    .flatMap((material) => figures.map((property) => ({ material, property })))
    .filter(({ material, property }) => where(material, property) && decides(material.id, property))
    .map(({ material, property }) => `${material.id}/${property}`);
}

/** The mark of a figure, `ID/PROPERTY`, and its note. */
export function markOf(figure: string): { readonly mark: string | undefined; readonly note: string | undefined } {
  const [id = '', property = ''] = figure.split('/');
  const value = materialById(id)?.values[property as PropertyId];
  return { mark: value?.mark, note: value?.note };
}
