import type { Holding } from '@loamwright/daybook';
import type { CautionId, ProductRate, ShareOut, SpreadDepth, SpreadDepthInput, SpreadRate } from '@loamwright/science';
import type { Saying } from '@loamwright/words';
import { twoDigits } from './blend-words.ts';
import { inHalves, measured } from './measured.ts';
import { materialName, someOf } from './names.ts';
import { area, bulk, depth, mass, say, sayOf, smallMass } from './saying.ts';

/** How much goes on a bed, in sentences. */
export interface SpreadReport {
  readonly answer: Saying;
  readonly stops: Saying;
  readonly notes: readonly Saying[];
  readonly alone: readonly Saying[];
  readonly cautions: readonly CautionId[];
}

/** The answer of `spread-rate` in sentences. */
export function spreadReport(found: SpreadRate, holding: Holding): SpreadReport {
  const laid = found.products.filter(({ count }) => count > 0);
  const some = ({ material, measure, count }: ProductRate): Saying =>
    someOf(holding, material, measured(measure, count));
  const places = { area: area(found.after.area_m2), stuff: laid.map(some) };
  return {
    answer: say(laid.length > 0 ? 'spread.answer.put' : 'spread.answer.nothing', places),
    stops: sayOf('spread.stops', stopsKey(found), { years: found.phosphorusLimit_years ?? 0 }),
    notes: [
      ...(isMuchShort(found) ? [say('spread.short', { short: smallMass(found.short_kg) })] : []),
      ...(found.worth === undefined ? [] : [worthWords(found.worth)]),
      ...(found.after.untested.includes('phosphorus') ? [say('spread.test')] : []),
      ...laid.map((one) =>
        say('spread.depth', {
          stuff: materialName(holding, one.material),
          depth: depth(one.depth_m),
          mass: mass(one.mass_kg),
        }),
      ),
    ],
    alone: found.products.map((one) => aloneWords(one, holding)),
    cautions: found.cautions,
  };
}

/** Soil with far too much phosphorus bears none at all. */
function stopsKey({ stops, phosphorusLimit_years }: SpreadRate): string {
  return stops === 'phosphorus' && phosphorusLimit_years === 0 ? 'phosphorus-none' : stops;
}

/** More than a tenth of what is wanted. */
function isMuchShort({ short_kg, after }: SpreadRate): boolean {
  return short_kg.p50 > 0.1 * after.elements.nitrogen.need_kg.p50;
}

function worthWords(worth: NonNullable<SpreadRate['worth']>): Saying {
  const { likely, low, high } = twoDigits(worth);
  return say('spread.worth', { worth: likely, low, high });
}

function aloneWords({ material, measure, alone }: ProductRate, holding: Holding): Saying {
  const limits = alone
    .toSorted((a, b) => a.count - b.count)
    .map(({ limit, count }) => sayOf('spread.alone', limit, { amount: measured(measure, inHalves(count)) }));
  return say('spread.alone', { stuff: materialName(holding, material), limits });
}

/** A layer over a bed, in sentences. */
export function layerReport(asked: SpreadDepthInput, found: SpreadDepth, holding: Holding): readonly Saying[] {
  const years = twoDigits(found.phosphorus_years);
  return [
    say('layer.answer', {
      depth: depth(asked.depth_m),
      area: area(asked.area_m2),
      volume: bulk(found.volume_m3),
      amount: measured(found.measure, inHalves(found.count.p50)),
      stuff: materialName(holding, asked.material),
      mass: mass(found.mass_kg),
    }),
    say('layer.settles'),
    say('layer.phosphorus', {
      phosphate: say('spread.unit.perHa', { kg: String(Number(found.phosphate_kgPerHa.p50.toPrecision(2))) }),
      years: years.likely,
      low: years.low,
      high: years.high,
    }),
    say('layer.more', { nitrogen: mass(found.nitrogen_kg), potash: mass(found.potash_kg) }),
  ];
}

/** A heap shared among beds. */
export function shareReport({ beds }: ShareOut, measure: string): Saying {
  return say('share.answer', {
    beds: beds.map(({ name, count }) => say('share.bed', { amount: measured(measure, count), bed: name })),
  });
}
