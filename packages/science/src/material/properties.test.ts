import spreadTable from '@loamwright/reference/spreads.json' with { type: 'json' };
import { describe, expect, it } from 'vitest';
import { createDraws, type Estimate, insideScale, isEstimate, summarise, valueAt } from '../estimate/index.ts';
import { allMaterials, propertyIds } from './material.ts';
import {
  carbon_pctDry,
  carbonDraws_pctDry,
  type KnownMaterial,
  knownMaterial,
  nitrogenDraws_pctDry,
  propertyDraws,
  scaleOf,
  spreadFor,
} from './properties.ts';
import { type FeedstockRow, feedstockRows, numberIn } from './testing/rows.ts';

function known(id: string): KnownMaterial {
  const material = knownMaterial(id);
  if (material === undefined) throw new Error(`no material ${id}`);
  return material;
}

describe("a material's property", () => {
  // Low-typical-high read as 5th, 50th and 95th percentile: straw C:N 80 (48-150), Jenkins and BC 1998.
  it('takes a published range as its 5th, 50th and 95th percentile', () => {
    const ratio = known('straw').quantities.carbonToNitrogen_ratio ?? Number.NaN;
    for (const [share, value] of [
      [0.05, 48],
      [0.5, 80],
      [0.95, 150],
    ] as const) {
      expect(valueAt(ratio, scaleOf.carbonToNitrogen_ratio, share)).toBeCloseTo(value, 8);
    }
  });

  it('takes the documented spread of its kind where a value stands alone', () => {
    const ratio = known('apple-pomace').quantities.carbonToNitrogen_ratio ?? Number.NaN;
    const high = valueAt(ratio, scaleOf.carbonToNitrogen_ratio, 0.95);
    expect(Math.log(high / 48)).toBeCloseTo(spreadFor('carbonToNitrogen_ratio', 48, 'carbon-rich'), 8);
  });

  it('is a plain number only where it has no spread at all', () => {
    const plain = allMaterials.flatMap(({ id }) =>
      propertyIds
        .filter((property) => {
          const quantity = known(id).quantities[property];
          return quantity !== undefined && !isEstimate(quantity);
        })
        .map((property) => `${id}/${property}`),
    );
    expect(plain).toEqual([
      'water/moisture_pctWet',
      'water/densityLoose_kgPerM3AsIs',
      'water/densityPacked_kgPerM3AsIs',
    ]);
  });

  it('never leaves its scale in any draw of any material', () => {
    const draws = createDraws();
    for (const { id } of allMaterials) {
      for (const property of propertyIds) {
        if (id === 'water') continue;
        for (const value of propertyDraws(draws, known(id), property) ?? []) {
          expect(insideScale(value, scaleOf[property]), `${id}/${property} ${value}`).toBe(true);
        }
      }
    }
  });

  it('has the same draws wherever it is asked for', () => {
    const first = propertyDraws(createDraws(), known('straw'), 'moisture_pctWet');
    const again = propertyDraws(createDraws(), { ...known('straw') }, 'moisture_pctWet');
    expect(again).toEqual(first);
  });
});

describe('carbon and nitrogen', () => {
  const draws = createDraws();

  // Cornell, Estimating Carbon Content: carbon % = volatile solids % / 1.8.
  it('carbon is volatile solids over 1.8, draw by draw and as an estimate', () => {
    const cardboard = known('corrugated-cardboard');
    expect((carbon_pctDry(cardboard) as Estimate).p50).toBeCloseTo(94 / 1.8, 10);
    const middle = summarise(carbonDraws_pctDry(draws, cardboard) ?? []).p50;
    expect(Math.abs(middle - 94 / 1.8)).toBeLessThan(0.1);
  });

  // The handbook's sawdust example (BC 1998: 0.43 % N, C:N 475) holds twice the carbon it can; Jenkins prints 0.11 % N.
  it('nitrogen of sawdust comes from its carbon, not from the printed pair', () => {
    const nitrogen = summarise(nitrogenDraws_pctDry(draws, known('sawdust')) ?? []);
    expect(nitrogen.p50).toBeGreaterThan(0.09);
    expect(nitrogen.p50).toBeLessThan(0.14);
  });

  // Urine is 15 to 18 % nitrogen of dry matter (Gotaas 1956 in Jenkins, Table 3.2): the one stuff with less carbon than nitrogen.
  it('nitrogen of urine stays what is printed', () => {
    const nitrogen = summarise(nitrogenDraws_pctDry(draws, known('urine')) ?? []);
    expect(nitrogen.p50).toBeGreaterThan(15);
    expect(nitrogen.p50).toBeLessThan(18);
  });

  it.each(['water', 'soil', 'wood-ash', 'charcoal'])('%s counts for neither', (id) => {
    expect(carbon_pctDry(known(id))).toBe(0);
    expect(new Set(carbonDraws_pctDry(draws, known(id)))).toEqual(new Set([0]));
    expect(new Set(nitrogenDraws_pctDry(draws, known(id)))).toEqual(new Set([0]));
  });

  it('are unknown where volatile solids are', () => {
    const bare: KnownMaterial = { id: 'bare', class: 'carbon-rich', carbonCounts: true, quantities: {} };
    expect(carbon_pctDry(bare)).toBeUndefined();
    expect(nitrogenDraws_pctDry(draws, bare)).toBeUndefined();
  });
});

describe('the documented spreads', () => {
  const rows = [...feedstockRows().values()].filter((row) => /^\d+$/.test(row['row_id'] ?? ''));
  const logit = (percent: number): number => Math.log(percent / (100 - percent));

  interface Range {
    readonly row: FeedstockRow;
    readonly low: number;
    readonly high: number;
  }

  /** Each printed range once per material: sources that reprint one another count once. A range from 0 has no width on the line. */
  function ranges(column: string): readonly Range[] {
    const seen = new Set<string>();
    return rows.flatMap((row) => {
      const low = numberIn(row, column.replace('*', 'Low'));
      const high = numberIn(row, column.replace('*', 'High'));
      const key = `${row['material_key']} ${low} ${high}`;
      if (low === undefined || high === undefined || low === 0 || low >= high || seen.has(key)) return [];
      seen.add(key);
      return [{ row, low, high }];
    });
  }

  function quantile(values: readonly number[], share: number): number {
    const sorted = [...values].sort((a, b) => a - b);
    const at = (sorted.length - 1) * share;
    const below = sorted[Math.floor(at)] ?? Number.NaN;
    return below + (at - Math.floor(at)) * ((sorted[Math.ceil(at)] ?? Number.NaN) - below);
  }

  const ofClass = (name: string) => (range: Range) => name === 'any' || range.row['class'] === name;
  const light = ({ low, high }: Range) => Math.sqrt(low * high) < spreadTable.lightBelow_kgPerM3AsIs;
  const dense = (range: Range) => !light(range);

  it.each([
    ['carbonToNitrogen_ratio', 'nitrogen-rich', 'carbonToNitrogen*_ratio', Math.log, 0.5, ofClass('nitrogen-rich')],
    ['carbonToNitrogen_ratio', 'carbon-rich', 'carbonToNitrogen*_ratio', Math.log, 0.5, ofClass('carbon-rich')],
    ['carbonToNitrogen_ratio', 'bulking', 'carbonToNitrogen*_ratio', Math.log, 0.5, ofClass('bulking')],
    ['carbonToNitrogen_ratio', 'any', 'carbonToNitrogen*_ratio', Math.log, 0.5, ofClass('any')],
    ['moisture_pctWet', 'any', 'moisture*_pctWet', logit, 0.75, ofClass('any')],
    ['densityLoose_kgPerM3AsIs', 'light', 'density*_kgPerM3AsIs', Math.log, 0.75, light],
    ['densityPacked_kgPerM3AsIs', 'dense', 'density*_kgPerM3AsIs', Math.log, 0.5, dense],
    ['nitrogen_pctDry', 'any', 'nitrogen*_pctDry', logit, 0.5, ofClass('any')],
    ['phosphorus_pctDry', 'any', 'nitrogen*_pctDry', logit, 0.75, ofClass('any')],
    ['potassium_pctDry', 'any', 'nitrogen*_pctDry', logit, 0.75, ofClass('any')],
  ] as const)(
    '%s of %s stuff follows from the rows that print a range',
    (property, when, column, line, share, keep) => {
      const halves = ranges(column)
        .filter(keep)
        .map(({ low, high }) => (line(high) - line(low)) / 2);
      const found = spreadTable.spreads[property].find((spread) => spread.when === when);
      expect(found).toMatchObject({
        rows: halves.length,
        halfWidth_onLine: Number(quantile(halves, share).toPrecision(2)),
      });
    },
  );
});
