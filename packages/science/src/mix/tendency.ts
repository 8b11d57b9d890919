import type { WeighedMix } from './mix-input.ts';
import { mixParameters, type TendencyRow } from './parameters.ts';

/** Which ingredients pull a heap's pH down or up at first. No number: nothing sound is published for garden mixes. */
export interface PHTendency {
  readonly acid: readonly string[];
  readonly alkaline: readonly string[];
}

type Weighed = WeighedMix['ingredients'][number];

function tendencyOf({ published }: Weighed): TendencyRow['tendency'] | undefined {
  return mixParameters.pH.find(({ material }) => material === published.id)?.tendency;
}

function materialsOf(some: readonly Weighed[]): readonly string[] {
  return [...new Set(some.map(({ given }) => given.material))];
}

export function pHTendencyOf({ ingredients }: WeighedMix): PHTendency {
  const pulling = (tendency: TendencyRow['tendency']): readonly string[] =>
    materialsOf(ingredients.filter((one) => tendencyOf(one) === tendency));
  return { acid: pulling('acid'), alkaline: pulling('alkaline') };
}

/**
 * The acid ingredients of a mix that may start sour: together half of its wet mass or more, in half of
 * the draws (pH under 6 together with more than 40 °C all but stops rotting: Sundberg 2005).
 */
export function souringOf({ ingredients, total }: WeighedMix): readonly string[] {
  const acid = ingredients.filter((one) => tendencyOf(one) === 'acid');
  const sour = total.filter(({ wet_kg }, i) => {
    const acid_kg = acid.reduce((sum, { portions }) => sum + (portions[i]?.wet_kg ?? 0), 0);
    return acid_kg >= mixParameters.sourStart_shareOfWet.value * wet_kg;
  });
  return 2 * sour.length >= total.length ? materialsOf(acid) : [];
}
