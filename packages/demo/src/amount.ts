import type { Entered } from '@loamwright/daybook';
import {
  createDraws,
  type Draws,
  type Estimate,
  knownMaterial,
  positive,
  sizeAmount,
  summarise,
  withSpread,
} from '@loamwright/science';

/** So many of a measure of some material, as the grower says it and as the program keeps it. */
export interface Portion {
  readonly material: string;
  readonly mass_kg: Estimate;
  readonly volume_m3: Estimate;
  readonly entered: Entered;
}

/** The draws of every amount: the same for the same name, so they are made once. */
export const draws: Draws = createDraws();
const each = new Map<string, Pick<Portion, 'mass_kg' | 'volume_m3'>>();

/** One of a measure, worked out as the program would, and kept: it is asked for hundreds of times. */
function oneOf(material: string, measure: string): Pick<Portion, 'mass_kg' | 'volume_m3'> {
  const key = `${material} ${measure}`;
  const known = each.get(key);
  if (known !== undefined) return known;
  const stuff = knownMaterial(material);
  if (stuff === undefined) throw new RangeError(`no material ${material}`);
  const sized = sizeAmount({ measure, count: 1 }, { draws, material: stuff, name: key, path: key });
  if (!sized.ok) throw new RangeError(JSON.stringify(sized.problems));
  const made = { mass_kg: summarise(sized.value.mass_kg), volume_m3: summarise(sized.value.volume_m3) };
  each.set(key, made);
  return made;
}

/** So many of a measure. */
export function portion(material: string, count: number, measure: string): Portion {
  const one = oneOf(material, measure);
  return {
    material,
    mass_kg: times(one.mass_kg, count),
    volume_m3: times(one.volume_m3, count),
    entered: { amount: count, unit: measure },
  };
}

/** How many of a measure weigh a mass, to the nearest half. */
export function halvesOf(material: string, mass_kg: number, measure: string): number {
  return Math.round((2 * mass_kg) / oneOf(material, measure).mass_kg.p50) / 2;
}

/** How many whole ones of a measure a mass fills. */
export function wholesOf(material: string, mass_kg: number, measure: string): number {
  return Math.floor(mass_kg / oneOf(material, measure).mass_kg.p50);
}

export function times({ p10, p50, p90 }: Estimate, factor: number): Estimate {
  return { p10: p10 * factor, p50: p50 * factor, p90: p90 * factor };
}

/** A figure guessed by eye: within a quarter, nine times in ten. */
export function guessed(likely: number): Estimate {
  return withSpread(likely, Math.log(1.25), positive);
}
