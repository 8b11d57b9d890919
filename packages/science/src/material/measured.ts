import table from '@loamwright/reference/measures.json' with { type: 'json' };
import { bad, type Cites, good, type Outcome } from '../catalogue/index.ts';
import {
  type Estimate,
  fraction,
  fromLine,
  fromPublished,
  isEstimate,
  likely,
  percent,
  positive,
  type Quantity,
  toLine,
  withSpread,
} from '../estimate/index.ts';
import type { SqueezeGrade } from '../heap/observed.ts';
import type { Particle } from './material.ts';
import { fillTimes } from './measure.ts';

const checks = table.checks;

/** These rows say in a note what other tables say in a place. */
const placed = ({ source, note, mark }: Omit<Cites, 'place'> & { readonly note: string }): Cites => ({
  source,
  place: note,
  mark,
});

/** What the scale of the squeeze rests on. */
export const squeezeSources: readonly Cites[] = [...checks.squeeze, checks.squeezeOfCoarse].map(placed);

/** What all the checks rest on. */
export const measuringSources: readonly Cites[] = [
  ...squeezeSources,
  ...checks.dryDown.map(placed),
  { source: 'cornell-moisture', place: 'M = 100 (wet - dry) / wet', mark: 'seen' },
  { source: 'cooperband-zabaleta-bucket', place: '20 L, 9 kg is 450 kg/m3', mark: 'seen' },
  { source: 'cornell-inadequate-porosity', place: 'solids and water do not compress', mark: 'seen' },
];

/** How a handful squeezed hard may feel, wettest first. */
export const squeezeGrades: readonly SqueezeGrade[] = ['streams', 'drops', 'holds', 'crumbles', 'dusty'];

/**
 * Moisture, % of wet mass, by the squeeze of a hand: the trade scale (common practice, no source), widened to
 * hold Krogmann's (eXtension: like a wrung-out sponge is 45 to 70 %); `reference/measures.json`, checks.
 * For stuff that no hand can press to a ball (straw, chips, card) the same grade says half as much.
 */
export function moistureFromSqueeze(grade: SqueezeGrade, particle?: Particle): Estimate {
  const row = checks.squeeze.find(({ id }) => id === grade);
  if (row === undefined) throw new RangeError(`reference/measures.json has no squeeze grade ${grade}`);
  const felt = fromPublished(row.moisture_pctWet, percent);
  const says = particle === undefined || !squeezeSaysLittle(particle);
  return says ? felt : widened(felt, checks.squeezeOfCoarse.widened_times);
}

/** Whether stuff is too coarse for the scale of the squeeze. */
export function squeezeSaysLittle(particle: Particle): boolean {
  return checks.squeezeOfCoarse.particles.includes(particle);
}

/** How wet stuff is said to be. */
export const wetnessIds = ['dry', 'damp', 'wet'] as const;
export type Wetness = (typeof wetnessIds)[number];

/** Moisture, % of wet mass, of stuff that is said to be dry, damp or wet (common practice, no source). */
export function moistureWhenSaid(wetness: Wetness): Estimate {
  const row = checks.wetness.find(({ id }) => id === wetness);
  if (row === undefined) throw new RangeError(`reference/measures.json has no wetness ${wetness}`);
  return fromPublished(row.moisture_pctWet, percent);
}

function widened({ p10, p50, p90 }: Estimate, times: number): Estimate {
  const middle = toLine(p50, percent);
  const at = (value: number): number => fromLine(middle + times * (toLine(value, percent) - middle), percent);
  return { p10: at(p10), p50, p90: at(p90) };
}

/** A moisture that may as well be any says nothing. */
const MOST_POINTS = 100;

/** A sample weighed before and after drying. */
export interface DryDown {
  readonly method: 'oven' | 'microwave';
  readonly wet_g: number;
  readonly dry_g: number;
  /** The container, when it stood on the scale both times. */
  readonly container_g?: number | undefined;
  /** The scale's smallest step; 1 g unless told. */
  readonly scaleStep_g?: number | undefined;
}

/**
 * Moisture of a dried sample, % of wet mass: M = 100 (wet − dry) / wet (Cornell), with the error of the
 * method (microwave 1 to 3 points: Victoria DEPI 2015) and of the scale. It is the moisture of the sample:
 * take it from several places. What lies nearer to an end than can be told counts as half of that. Problems:
 * `too-small`, `too-big` where the weights can't be, or the scale can't tell the sample from nothing.
 */
export function moistureFromDryDown(dryDown: DryDown, path: string): Outcome<Estimate> {
  const { method, wet_g, dry_g, container_g = 0, scaleStep_g = checks.scaleStep_g.value } = dryDown;
  if (dry_g <= container_g) return refuse('too-small', `${path}.dry_g`, dry_g, `> ${container_g}, the container`);
  if (dry_g >= wet_g) return refuse('too-big', `${path}.dry_g`, dry_g, `< ${wet_g}, the weight before drying`);
  const wet = wet_g - container_g;
  const dry = dry_g - container_g;
  const { within_points } = checks.dryDown.find(({ id }) => id === method) ?? { within_points: Number.NaN };
  const ofScale_points = (100 / wet) * roundingHalf(scaleStep_g) * Math.hypot(1, dry / wet);
  const half_points = Math.hypot(within_points, ofScale_points);
  if (half_points >= MOST_POINTS) {
    return refuse('too-small', `${path}.wet_g`, wet_g, `a sample that a scale to ${scaleStep_g} g can tell`);
  }
  const moisture_pctWet = Math.min(Math.max((100 * (wet - dry)) / wet, half_points / 2), 100 - half_points / 2);
  return good(withSpread(moisture_pctWet, (100 * half_points) / (moisture_pctWet * (100 - moisture_pctWet)), percent));
}

/** A thimble holds more. */
const LEAST_BUCKET_L = 0.001;

/** Quartz and most stone weigh about 2650 kg/m³ without a pore (from memory); whatever weighs more is a slip. */
const MOST_DENSITY_KG_PER_M3 = 2650;

/** A bucket of the stuff on a scale. */
export interface WeighedBucket {
  readonly full_kg: number;
  readonly empty_kg: number;
  /** What it holds to the rim, litres. */
  readonly volume_L: Quantity;
  /** The scale's smallest step; 0.1 kg unless told. */
  readonly scaleStep_kg?: number | undefined;
}

/**
 * Bulk density from a weighed bucket filled level, kg/m³ as it lies: mass over volume, with what is not known
 * of the bucket, how level it was (`reference/measures.json`, fills) and how fine the scale reads; independent
 * errors add in quadrature on the logarithm. Problem: `too-small` for a bucket that weighs no more than empty, as far as the scale can tell, and
 * for one that holds nothing.
 */
export function densityFromBucket(bucket: WeighedBucket, path: string): Outcome<Estimate> {
  const { full_kg, empty_kg, volume_L, scaleStep_kg = checks.scaleStep_kg.value } = bucket;
  const mass_kg = full_kg - empty_kg;
  if (mass_kg <= roundingHalf(scaleStep_kg)) {
    return refuse('too-small', `${path}.full_kg`, full_kg, `> ${empty_kg}, the empty bucket`);
  }
  const { p10: least_L } = asEstimate(volume_L);
  if (least_L < LEAST_BUCKET_L) return refuse('too-small', `${path}.volume_L`, least_L, `≥ ${LEAST_BUCKET_L}`);
  const density_kgPerM3 = (LITRES_PER_M3 * mass_kg) / likely(volume_L);
  if (density_kgPerM3 > MOST_DENSITY_KG_PER_M3) {
    const most_kg = (MOST_DENSITY_KG_PER_M3 * likely(volume_L)) / LITRES_PER_M3 + empty_kg;
    return refuse('too-big', `${path}.full_kg`, full_kg, `≤ ${Math.round(most_kg)}: solid stone is no heavier`);
  }
  const weighed = withSpread(mass_kg, (roundingHalf(scaleStep_kg) * Math.SQRT2) / mass_kg, positive);
  const volume = timesOnLine(asEstimate(volume_L), asEstimate(fillTimes.level));
  const density = overOnLine(weighed, volume);
  return good({
    p10: LITRES_PER_M3 * density.p10,
    p50: LITRES_PER_M3 * density.p50,
    p90: LITRES_PER_M3 * density.p90,
  });
}

/** A bucket of loose stuff before and after it is dropped or shaken down. */
export interface Settling {
  readonly filled_cm: number;
  readonly settled_cm: number;
  /** How well the heights are read, nine times in ten; 0.5 cm unless told. */
  readonly readTo_cm?: number | undefined;
}

/**
 * The share of its loose volume that stuff still fills once it has settled, 0 to 1. What sank less than can be
 * read counts as half of that. Problem: `too-big` for stuff that rose.
 */
export function settledShare(settling: Settling, path: string): Outcome<Estimate> {
  const { filled_cm, settled_cm, readTo_cm = checks.readTo_cm.value } = settling;
  if (settled_cm > filled_cm) {
    return refuse('too-big', `${path}.settled_cm`, settled_cm, `≤ ${filled_cm}, the height before`);
  }
  if (readTo_cm >= filled_cm) return refuse('too-big', `${path}.readTo_cm`, readTo_cm, `< ${filled_cm}`);
  const share = Math.min(settled_cm, filled_cm - readTo_cm / 2) / filled_cm;
  const half = share * Math.hypot(readTo_cm / filled_cm, readTo_cm / (share * filled_cm));
  return good(withSpread(share, half / (share * (1 - share)), fraction));
}

/** Density once settled: the solids and the water stay, the volume shrinks (Richard, Inadequate Porosity, Cornell). */
export function densityOnceSettled(loose_kgPerM3AsIs: Quantity, settled_share: Quantity): Estimate {
  return overOnLine(asEstimate(loose_kgPerM3AsIs), asEstimate(settled_share));
}

const LITRES_PER_M3 = 1000;

/** A value rounded to a step lies anywhere within half of it, so nine times in ten within 0.45. */
function roundingHalf(step: number): number {
  return 0.45 * step;
}

function asEstimate(quantity: Quantity): Estimate {
  return isEstimate(quantity) ? quantity : { p10: quantity, p50: quantity, p90: quantity };
}

function timesOnLine(a: Estimate, b: Estimate): Estimate {
  const p50 = a.p50 * b.p50;
  return {
    p10: p50 * Math.exp(-Math.hypot(Math.log(a.p50 / a.p10), Math.log(b.p50 / b.p10))),
    p50,
    p90: p50 * Math.exp(Math.hypot(Math.log(a.p90 / a.p50), Math.log(b.p90 / b.p50))),
  };
}

function overOnLine(a: Estimate, b: Estimate): Estimate {
  return timesOnLine(a, { p10: 1 / b.p90, p50: 1 / b.p50, p90: 1 / b.p10 });
}

function refuse(code: string, path: string, found: number, wanted: string): Outcome<never> {
  return bad({ code, path, found: String(found), wanted });
}
