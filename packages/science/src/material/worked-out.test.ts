import { describe, expect, it } from 'vitest';
import { materialById, type PropertyId } from './material.ts';
import { feedstockRows, numberIn } from './testing/rows.ts';

/** Figures that no source prints: each is worked out again here from the ones it rests on. */

const rows = feedstockRows();
const printed = (row: string, column: string): number => {
  const found = rows.get(row);
  return (found === undefined ? undefined : numberIn(found, column)) ?? Number.NaN;
};
const typical = (id: string, property: PropertyId): number => materialById(id)?.values[property]?.typical ?? Number.NaN;
const figures = (value: number, count: number): number => Number(value.toPrecision(count));

const PHOSPHORUS_PER_P2O5 = 0.4364;
const POTASSIUM_PER_K2O = 0.8301;
const VOLATILE_PER_CARBON = 1.8;
const PROTEIN_PER_NITROGEN = 6.25;

describe('phosphorus and potassium', () => {
  // P2O5 x 0.4364 and K2O x 0.8301 are exact stoichiometry.
  it.each([
    ['straw', '277'],
    ['oat-straw', '276'],
    ['hay-grass', '265'],
    ['hay-legume', '264'],
    ['seaweed', '267'],
    ['rabbit-droppings', '235'],
    ['poultry-litter', 'R17'],
    ['seed-meal', '261'],
  ])('of %s keep their proportion to nitrogen in row %s', (id, row) => {
    const nitrogen = (printed(row, 'nitrogenLow_pctAsIs') + printed(row, 'nitrogenHigh_pctAsIs')) / 2;
    const scale = typical(id, 'nitrogen_pctDry') / nitrogen;
    const phosphorus = printed(row, 'phosphateLow_pctAsIs') * PHOSPHORUS_PER_P2O5 * scale;
    const potassium = printed(row, 'potashLow_pctAsIs') * POTASSIUM_PER_K2O * scale;
    expect(typical(id, 'phosphorus_pctDry')).toBe(figures(phosphorus, 2));
    expect(typical(id, 'potassium_pctDry')).toBe(figures(potassium, 2));
  });

  it.each([
    ['wheat-straw', '277', 10],
    ['salt-hay', '302', 12],
    ['pumpkins', '298', 92],
    ['green-maize', '284', 76],
    ['cocoa-shells', '282', 8],
    ['peanut-shells', '296', 8],
    ['eggshells', '288', 0],
    ['seashells', '273', 0],
  ])('of %s are those of row %s as it is, at %d %% water', (id, row, moisture_pctWet) => {
    const dry = 1 - moisture_pctWet / 100;
    const phosphorus = (printed(row, 'phosphateLow_pctAsIs') * PHOSPHORUS_PER_P2O5) / dry;
    const potassium = (printed(row, 'potashLow_pctAsIs') * POTASSIUM_PER_K2O) / dry;
    expect(typical(id, 'phosphorus_pctDry') / phosphorus).toBeCloseTo(1, 1);
    expect(typical(id, 'potassium_pctDry') / potassium).toBeCloseTo(1, 1);
  });
});

describe('C:N where only nitrogen is published', () => {
  // Carbon = volatile solids / 1.8 (Adams et al. 1951); nitrogen as it is over the dry share.
  it.each([
    ['salt-hay', '302', 12],
    ['peanut-shells', '296', 8],
    ['green-maize', '284', 76],
    ['pumpkins', '298', 92],
    ['citrus-peel', '309', 87],
    ['feathers', '289', 0],
    ['hair', '292', 0],
    ['hoof-and-horn', '293', 0],
    ['bone-meal', '258', 0],
    ['bagged-manure', '369', 25],
  ])('%s: from row %s at %d %% water', (id, row, moisture_pctWet) => {
    const nitrogen_pctDry = printed(row, 'nitrogenLow_pctAsIs') / (1 - moisture_pctWet / 100);
    expectRatio(id, nitrogen_pctDry);
  });

  it.each([
    ['salad-leaves', '86'],
    ['goat-droppings', '229'],
    ['nettles', 'R43'],
    ['brewers-grains', 'R39'],
    ['sheep-manure-straw', 'R52'],
    ['pig-manure-straw', 'R51'],
    ['goat-bedding', 'R74'],
  ])('%s: from the nitrogen of dry matter in row %s', (id, row) => {
    expectRatio(id, printed(row, 'nitrogen_pctDry'));
  });

  it('goat bedding: its ends from those of the nitrogen', () => {
    const carbon_pctDry = typical('goat-bedding', 'volatileSolids_pctDry') / VOLATILE_PER_CARBON;
    const { low, high } = materialById('goat-bedding')?.values.carbonToNitrogen_ratio ?? {};
    expect(low).toBe(figures(carbon_pctDry / printed('R75', 'nitrogenHigh_pctDry'), 2));
    expect(high).toBe(figures(carbon_pctDry / printed('R75', 'nitrogenLow_pctDry'), 2));
  });

  // Protein, % of dry matter: eelgrass leaves, Phillips 1984; sea lettuce, Guiry after Indergaard and Minsaas 1991.
  it.each([
    ['eelgrass', [20.3, 8.1]],
    ['sea-lettuce', [25, 15]],
  ])('%s: from protein', (id, proteins_pctDry) => {
    const carbon_pctDry = typical(id, 'volatileSolids_pctDry') / VOLATILE_PER_CARBON;
    const ends = proteins_pctDry.map((protein_pctDry) => carbon_pctDry / (protein_pctDry / PROTEIN_PER_NITROGEN));
    const { low, typical: middle, high } = materialById(id)?.values.carbonToNitrogen_ratio ?? {};
    expect([low, high]).toEqual(ends.map((end) => figures(end, 2)));
    expect(middle).toBe(figures(Math.sqrt((ends[0] ?? Number.NaN) * (ends[1] ?? Number.NaN)), 2));
  });

  it('wool: from the middle of its nitrogen', () => {
    expectRatio('wool', (printed('R41', 'nitrogenLow_pctDry') + printed('R41', 'nitrogenHigh_pctDry')) / 2);
  });

  // ECN Phyllis record 2633 (Cortez et al. 1996): protein 2.5 % of dry matter.
  it('sweet chestnut leaves: from protein', () => {
    expectRatio('sweet-chestnut-leaves', 2.5 / PROTEIN_PER_NITROGEN);
  });

  function expectRatio(id: string, nitrogen_pctDry: number): void {
    const carbon_pctDry = typical(id, 'volatileSolids_pctDry') / VOLATILE_PER_CARBON;
    // The table rounds to two figures (one place after the point below ten): within 2.5 %.
    expect(Math.abs(typical(id, 'carbonToNitrogen_ratio') / (carbon_pctDry / nitrogen_pctDry) - 1)).toBeLessThan(0.025);
  }
});

describe('middles of sources that disagree', () => {
  it.each([
    ['maple-leaves', 'carbonToNitrogen_ratio', '203', '196', 'carbonToNitrogen_ratio'],
    ['brassica-plants', 'carbonToNitrogen_ratio', '63', '116', 'carbonToNitrogen_ratio'],
    ['root-vegetables', 'carbonToNitrogen_ratio', '119', '120', 'carbonToNitrogen_ratio'],
    ['farmyard-manure', 'carbonToNitrogen_ratio', '71', '155', 'carbonToNitrogen_ratio'],
    ['horse-manure-shavings', 'moisture_pctWet', 'R44', '134', 'moisture_pctWet'],
    ['wood-shavings', 'densityLoose_kgPerM3AsIs', 'R37', 'R02', 'density_kgPerM3AsIs'],
    ['straw', 'moisture_pctWet', '138', '137', 'moisture_pctWet'],
    ['hedge-chippings', 'moisture_pctWet', '357', 'R72', 'moisture_pctWet'],
  ] as const)('%s %s lies in the middle of rows %s and %s', (id, property, one, other, column) => {
    expect(typical(id, property)).toBe((printed(one, column) + printed(other, column)) / 2);
  });
});

describe('middles on the line of a quantity', () => {
  // A ratio or a density: the geometric mean. A percentage: the mean of the logits.
  it('leaves lying loose: between the lowest print and that of Massachusetts', () => {
    const middle = Math.sqrt(printed('142', 'densityLow_kgPerM3AsIs') * printed('353', 'density_kgPerM3AsIs'));
    expect(typical('autumn-leaves', 'densityLoose_kgPerM3AsIs')).toBe(figures(middle, 3));
  });

  it('rags lying loose: between two prints for textiles', () => {
    const middle = Math.sqrt(printed('R85', 'density_kgPerM3AsIs') * printed('R88', 'density_kgPerM3AsIs'));
    expect(typical('cotton-rags', 'densityLoose_kgPerM3AsIs')).toBe(figures(middle, 2));
  });

  it('wood shavings: between air-dry chips and planer-mill shavings', () => {
    const logit = (pct: number): number => Math.log(pct / (100 - pct));
    const mean = (logit(printed('365', 'moisture_pctWet')) + logit(printed('358', 'moisture_pctWet'))) / 2;
    expect(typical('wood-shavings', 'moisture_pctWet')).toBe(figures(100 / (1 + Math.exp(-mean)), 3));
  });

  it('poultry litter: between 110 farms and what nitrogen as it is makes', () => {
    const carbon_pctDry = typical('poultry-litter', 'volatileSolids_pctDry') / VOLATILE_PER_CARBON;
    const dry_share = 1 - printed('R54', 'moisture_pctWet') / 100;
    const low = carbon_pctDry / (printed('R17', 'nitrogenLow_pctAsIs') / dry_share);
    expect(materialById('poultry-litter')?.values.carbonToNitrogen_ratio?.low).toBe(figures(low, 2));
    const middle = Math.sqrt(low * printed('R76', 'carbonToNitrogen_ratio'));
    expect(typical('poultry-litter', 'carbonToNitrogen_ratio')).toBe(figures(middle, 2));
  });
});

describe('moisture', () => {
  it('of wood chips is the mean of four fresh lots', () => {
    const lots = ['R70', 'R71', '357', 'R72'].map((row) => printed(row, 'moisture_pctWet'));
    expect(typical('wood-chips', 'moisture_pctWet')).toBe(figures(lots.reduce((all, lot) => all + lot, 0) / 4, 3));
  });

  // Afzal 2010 prints percent of dry mass: 51 and 16.5 under a tarpaulin, 59 and 160 uncovered.
  it.each([
    ['R70', 'moisture_pctWet', 51],
    ['R70', 'moistureLow_pctWet', 16.5],
    ['R71', 'moisture_pctWet', 59],
    ['R71', 'moistureHigh_pctWet', 160],
  ])('row %s %s is %d %% of dry mass', (row, column, pctDry) => {
    expect(printed(row, column)).toBe(figures(100 / (1 + 100 / pctDry), 3));
  });

  // Droppings and straw in equal dry mass: common practice, no source.
  it('of rabbit bedding lies between droppings with straw, and goat litter', () => {
    const wet = (id: string): number => 1 / (1 - typical(id, 'moisture_pctWet') / 100);
    const dryish = 100 * (1 - 2 / (wet('rabbit-droppings') + wet('straw')));
    const bedding = materialById('rabbit-bedding')?.values.moisture_pctWet;
    expect(bedding?.low).toBe(figures(dryish, 2));
    expect(bedding?.typical).toBe(((bedding?.low ?? Number.NaN) + printed('R74', 'moisture_pctWet')) / 2);
  });
});

describe('nitrogen from carbon and C:N', () => {
  it.each(['hen-manure', 'poultry-litter'])('%s', (id) => {
    const carbon_pctDry = typical(id, 'volatileSolids_pctDry') / VOLATILE_PER_CARBON;
    const nitrogen = carbon_pctDry / typical(id, 'carbonToNitrogen_ratio');
    // The table rounds to a tenth.
    expect(Math.abs(typical(id, 'nitrogen_pctDry') - nitrogen)).toBeLessThan(0.06);
  });
});

describe('densities', () => {
  it('hen manure: the printed 470 kg/m3 at 46 %, wetted to 65 %', () => {
    const dry = printed('129', 'density_kgPerM3AsIs') * (100 - printed('129', 'moisture_pctWet'));
    const wetted = dry / (100 - typical('hen-manure', 'moisture_pctWet'));
    expect(typical('hen-manure', 'densityLoose_kgPerM3AsIs')).toBe(figures(wetted, 3));
  });

  // Rutgers FS537: 60 to 70 lb of manure and bedding a day fill 2 to 3 cubic feet; 16.0185 kg/m3 to the lb/ft3 (NIST SP 811).
  it.each([
    ['densityLow_kgPerM3AsIs', 60, 3],
    ['density_kgPerM3AsIs', 65, 2.5],
    ['densityHigh_kgPerM3AsIs', 70, 2],
  ])('row R73 %s is %d lb in %d cubic feet', (column, pounds, cubicFeet) => {
    expect(printed('R73', column)).toBe(Math.round((16.0185 * pounds) / cubicFeet));
  });

  // Dry mass stays: density x dry share / dry share once wetted (the rule of Briggs 1994, Table 7-2A).
  it.each([
    ['spoiled-hay', 'densityLoose_kgPerM3AsIs', 'hay-grass', 12, 45],
    ['spoiled-hay', 'densityPacked_kgPerM3AsIs', 'straw', 12, 45],
    ['rotted-sawdust', 'densityLoose_kgPerM3AsIs', 'sawdust', 39, 60],
    ['rotted-sawdust', 'densityPacked_kgPerM3AsIs', 'sawdust', 39, 60],
  ] as const)('%s %s is that of %s, wetted from %d to %d %%', (id, property, of, from_pctWet, to_pctWet) => {
    const wetted = (typical(of, property) * (100 - from_pctWet)) / (100 - to_pctWet);
    expect(typical(id, property)).toBe(figures(wetted, 3));
  });

  // Briggs 1994: chips 1.26 to 1.28 times as dense pressed.
  it.each(['hedge-chippings', 'softwood-bark', 'sawdust', 'maize-cobs'])(
    '%s pressed is 1.27 times as dense as loose',
    (id) => {
      const loose = typical(id, 'densityLoose_kgPerM3AsIs');
      expect(typical(id, 'densityPacked_kgPerM3AsIs')).toBe(Math.round(1.27 * loose));
    },
  );
});

describe('beddings', () => {
  // One 60 kg goat: ASAE D384.1 (2003) per 1000 kg live mass and day, from memory: solids 13, P 0.11, K 0.31 kg;
  // volatile solids of sheep, 84 %; 0.5 kg of straw a day is common practice, no source.
  it('goat bedding but for its nitrogen follows from droppings and straw', () => {
    const straw_kg = 0.5 * (1 - typical('straw', 'moisture_pctWet') / 100);
    const dung_kg = 13 * 0.06;
    const dry_kg = dung_kg + straw_kg;
    const strawVolatile_kg = (straw_kg * typical('straw', 'volatileSolids_pctDry')) / 100;
    const volatile_kg = dung_kg * 0.84 + strawVolatile_kg;
    const phosphorus_kg = 0.11 * 0.06 + (straw_kg * typical('straw', 'phosphorus_pctDry')) / 100;
    const potassium_kg = 0.31 * 0.06 + (straw_kg * typical('straw', 'potassium_pctDry')) / 100;
    const ofDry = (kg: number): number => figures((100 * kg) / dry_kg, 2);
    expect(typical('goat-bedding', 'volatileSolids_pctDry')).toBe(ofDry(volatile_kg));
    expect(typical('goat-bedding', 'phosphorus_pctDry')).toBe(ofDry(phosphorus_kg));
    expect(typical('goat-bedding', 'potassium_pctDry')).toBe(ofDry(potassium_kg));
  });

  // Droppings and straw in equal dry mass, a quarter of the droppings' nitrogen lost: common practice, no source.
  it('rabbit bedding follows from droppings and straw', () => {
    const halfOf = (property: PropertyId): number =>
      (typical('rabbit-droppings', property) + typical('straw', property)) / 2;
    const nitrogenOf = (id: string): number =>
      typical(id, 'volatileSolids_pctDry') / VOLATILE_PER_CARBON / typical(id, 'carbonToNitrogen_ratio');
    const nitrogen = (0.75 * nitrogenOf('rabbit-droppings') + nitrogenOf('straw')) / 2;
    expect(typical('rabbit-bedding', 'volatileSolids_pctDry')).toBe(Math.round(halfOf('volatileSolids_pctDry')));
    expect(typical('rabbit-bedding', 'carbonToNitrogen_ratio')).toBe(
      Math.round(halfOf('volatileSolids_pctDry') / VOLATILE_PER_CARBON / nitrogen),
    );
    expect(typical('rabbit-bedding', 'phosphorus_pctDry')).toBe(figures(halfOf('phosphorus_pctDry'), 2));
    expect(typical('rabbit-bedding', 'potassium_pctDry')).toBe(figures(halfOf('potassium_pctDry'), 2));
  });
});

describe('volatile solids turned back from a printed pair', () => {
  it.each([
    ['urine', '84'],
    ['blood-meal', '18'],
  ])('%s: so that the printed nitrogen of row %s comes out', (id, row) => {
    const carbon = printed(row, 'nitrogen_pctDry') * printed(row, 'carbonToNitrogen_ratio');
    expect(typical(id, 'volatileSolids_pctDry')).toBe(Math.round(carbon * VOLATILE_PER_CARBON));
  });
});
