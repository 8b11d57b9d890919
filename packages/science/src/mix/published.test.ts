import examples from '@loamwright/reference/mix-examples.json' with { type: 'json' };
import { describe, expect, it } from 'vitest';
import {
  carbonFromRatio_pctDry,
  carbonToNitrogenOfMix_ratio,
  dryMass_kg,
  impliedCarbonFits,
  moistureOfMix_pctWet,
  moistureOfSample_pctWet,
  nitrogenFromRatio_pctDry,
  nitrogenToReach,
  type Stuff,
  secondForCarbonToNitrogen_kg,
  secondForMoisture_kg,
  twoUnknowns_kg,
  type Unweighed,
  waterToReach_kg,
} from './balance.ts';
import { expectPublished } from './testing/published.ts';

const water: Unweighed = { moisture_pctWet: 100, carbon_pctDry: 0, nitrogen_pctDry: 0 };
const withRatio = (stuff: { moisture_pctWet: number; nitrogen_pctDry: number; ratio: number }): Unweighed => ({
  moisture_pctWet: stuff.moisture_pctWet,
  carbon_pctDry: carbonFromRatio_pctDry(stuff.nitrogen_pctDry, stuff.ratio),
  nitrogen_pctDry: stuff.nitrogen_pctDry,
});
const fromCarbon = (moisture_pctWet: number, carbon_pctDry: number, ratio: number): Unweighed => ({
  moisture_pctWet,
  carbon_pctDry,
  nitrogen_pctDry: nitrogenFromRatio_pctDry(carbon_pctDry, ratio),
});

describe('moisture', () => {
  it('O1: of a sample of grass (Cornell moisture text)', () => {
    const { container_g, wetWithContainer_g, dryWithContainer_g } = examples.O1.inputs;
    const found = moistureOfSample_pctWet({
      wet: wetWithContainer_g - container_g,
      dry: dryWithContainer_g - container_g,
    });
    expectPublished(examples.O1, 'moisture_pctWet', found);
  });

  it('O2: leaves that bring grass to 60 % (Cornell moisture text)', () => {
    const { grass_kg, grass, leaves, goal_pctWet } = examples.O2.inputs;
    const found = secondForMoisture_kg({ first: { ...grass, wet_kg: grass_kg }, second: leaves, goal_pctWet });
    expectPublished(examples.O2, 'leaves_kg', found);
  });

  it('a goal that does not lie between the two can’t be reached', () => {
    const first = { wet_kg: 1, moisture_pctWet: 70 };
    expect(secondForMoisture_kg({ first, second: { moisture_pctWet: 60 }, goal_pctWet: 55 })).toBeUndefined();
    expect(secondForMoisture_kg({ first, second: { moisture_pctWet: 55 }, goal_pctWet: 55 })).toBeUndefined();
  });

  it('O9: of a straw sample (Victoria DEPI 2015)', () => {
    const { wet_g, dry_g } = examples.O9.inputs;
    expectPublished(examples.O9, 'moisture_pctWet', moistureOfSample_pctWet({ wet: wet_g, dry: dry_g }));
  });

  it('O11: half the mass and 65 → 50 % is 400 t of water gone (Transform Compost Systems 2012)', () => {
    const { before_t, before_pctWet, after_t, after_pctWet } = examples.O11.inputs;
    const dryBefore = dryMass_kg({ wet_kg: before_t, moisture_pctWet: before_pctWet });
    const dryAfter = dryMass_kg({ wet_kg: after_t, moisture_pctWet: after_pctWet });
    expectPublished(examples.O11, 'dryBefore_t', dryBefore);
    expectPublished(examples.O11, 'dryAfter_t', dryAfter);
    expectPublished(examples.O11, 'waterBefore_t', before_t - dryBefore);
    expectPublished(examples.O11, 'waterAfter_t', after_t - dryAfter);
    const waterLost_t = before_t - dryBefore - (after_t - dryAfter);
    expectPublished(examples.O11, 'waterLost_t', waterLost_t);
    expectPublished(examples.O11, 'dryLost_pct', 100 * (1 - dryAfter / dryBefore));
    expectPublished(examples.O11, 'waterLost_pct', (100 * waterLost_t) / (before_t - dryBefore));
  });
});

describe('C:N', () => {
  it('O3: leaves that bring grass to 30:1 leave it too wet (Cornell C/N page)', () => {
    const { grass_kg, grass, leaves, goal_ratio } = examples.O3.inputs;
    const first = { ...grass, wet_kg: grass_kg };
    const leaves_kg = secondForCarbonToNitrogen_kg({ first, second: leaves, goal_ratio });
    expectPublished(examples.O3, 'grass_ratio', grass.carbon_pctDry / grass.nitrogen_pctDry);
    expectPublished(examples.O3, 'leaves_ratio', leaves.carbon_pctDry / leaves.nitrogen_pctDry);
    expectPublished(examples.O3, 'leaves_kg', leaves_kg);
    const mix = [first, { ...leaves, wet_kg: leaves_kg ?? Number.NaN }];
    expectPublished(examples.O3, 'moisture_pctWet', moistureOfMix_pctWet(mix));
    expect(carbonToNitrogenOfMix_ratio(mix)).toBeCloseTo(goal_ratio, 9);
  });

  it('O4: the C:N of the mix that reaches the moisture goal (Cornell C/N page)', () => {
    const { grass_kg, grass, leaves_kg, leaves } = examples.O4.inputs;
    const mix = [
      { ...grass, wet_kg: grass_kg },
      { ...leaves, wet_kg: leaves_kg },
    ];
    expectPublished(examples.O4, 'ratio', carbonToNitrogenOfMix_ratio(mix));
    expectPublished(examples.O4, 'moisture_pctWet', moistureOfMix_pctWet(mix));
  });

  it('O5: vegetable waste and sawdust; a right C:N that is too wet to use', () => {
    const { waste_kg, waste, sawdust, goal_ratio } = examples.O5.inputs;
    const first = { ...waste, wet_kg: waste_kg };
    const sawdust_kg = secondForCarbonToNitrogen_kg({ first, second: sawdust, goal_ratio });
    expectPublished(examples.O5, 'sawdust_kg', sawdust_kg);
    const mix: readonly Stuff[] = [first, { ...sawdust, wet_kg: sawdust_kg ?? Number.NaN }];
    const element = (of: (stuff: Stuff) => number): number =>
      mix.reduce((total, stuff) => total + (dryMass_kg(stuff) * of(stuff)) / 100, 0);
    expectPublished(
      examples.O5,
      'carbon_kg',
      element((stuff) => stuff.carbon_pctDry),
    );
    expectPublished(
      examples.O5,
      'nitrogen_kg',
      element((stuff) => stuff.nitrogen_pctDry),
    );
    expectPublished(examples.O5, 'moisture_pctWet', moistureOfMix_pctWet(mix));
  });

  it('O6: hay, scraps and coffee grounds, given as they are', () => {
    const parts: readonly Stuff[] = examples.O6.inputs.parts.map((part) => ({
      wet_kg: part.mass_lb,
      moisture_pctWet: 0,
      carbon_pctDry: part.carbon_pctAsIs,
      nitrogen_pctDry: part.nitrogen_pctAsIs,
    }));
    const element = (of: (stuff: Stuff) => number): number =>
      parts.reduce((total, stuff) => total + (dryMass_kg(stuff) * of(stuff)) / 100, 0);
    expectPublished(
      examples.O6,
      'carbon_lb',
      element((stuff) => stuff.carbon_pctDry),
    );
    expectPublished(
      examples.O6,
      'nitrogen_lb',
      element((stuff) => stuff.nitrogen_pctDry),
    );
    expectPublished(examples.O6, 'ratio', carbonToNitrogenOfMix_ratio(parts));
  });

  it('O7: nitrogen for a tonne of rice straw (Japanese soil-making note)', () => {
    const { straw_kg, carbon_pctAsIs, nitrogen_pctAsIs, goal_ratio, cyanamideNitrogen_pctAsIs } = examples.O7.inputs;
    const nitrogen = nitrogenToReach({
      carbon: (straw_kg * carbon_pctAsIs) / 100,
      nitrogen: (straw_kg * nitrogen_pctAsIs) / 100,
      goal_ratio,
    });
    expectPublished(examples.O7, 'nitrogen_kg', nitrogen);
    expectPublished(examples.O7, 'cyanamide_kg', (nitrogen * 100) / cyanamideNitrogen_pctAsIs);
  });

  it('form 10: manure and water for leaves, both at once (Cornell, simultaneous solution)', () => {
    const { leaves_kg, leaves, manure, goal_pctWet, goal_ratio } = examples.form10.inputs;
    const known = [{ ...leaves, wet_kg: leaves_kg }];
    const found = twoUnknowns_kg({ known, second: manure, third: water, goal_pctWet, goal_ratio });
    expectPublished(examples.form10, 'manure_kg', found?.second_kg);
    expectPublished(examples.form10, 'water_kg', found?.third_kg);
    const mix = [
      ...known,
      { ...manure, wet_kg: found?.second_kg ?? Number.NaN },
      { ...water, wet_kg: found?.third_kg ?? Number.NaN },
    ];
    expect(moistureOfMix_pctWet(mix)).toBeCloseTo(goal_pctWet, 9);
    expect(carbonToNitrogenOfMix_ratio(mix)).toBeCloseTo(goal_ratio, 9);
  });

  it('form 10: two unknowns that pull the same way can’t do it', () => {
    const { leaves_kg, leaves, goal_pctWet, goal_ratio } = examples.form10.inputs;
    const known = [{ ...leaves, wet_kg: leaves_kg }];
    const straw = fromCarbon(12, 48, 80);
    expect(twoUnknowns_kg({ known, second: straw, third: leaves, goal_pctWet, goal_ratio })).toBeUndefined();
  });
});

describe('O12: breeder manure and sawdust (BC Agricultural Composting Handbook 1998, Appendix A)', () => {
  const { manure_kg, manure, sawdust, sawdustCarbon_pctDry } = examples.O12.inputs;
  const first: Stuff = { ...withRatio(manure), wet_kg: manure_kg };
  const printedSawdust = withRatio(sawdust);

  it('the printed arithmetic', () => {
    const for25 = secondForCarbonToNitrogen_kg({ first, second: printedSawdust, goal_ratio: 25 });
    const for30 = secondForCarbonToNitrogen_kg({ first, second: printedSawdust, goal_ratio: 30 });
    expectPublished(examples.O12, 'sawdustFor25_kg', for25);
    expectPublished(examples.O12, 'sawdustFor30_kg', for30);
    const mix = [first, { ...printedSawdust, wet_kg: for30 ?? Number.NaN }];
    expectPublished(examples.O12, 'moisture_pctWet', moistureOfMix_pctWet(mix));
    const wet_kg = manure_kg + (for30 ?? Number.NaN);
    const dry_kg = mix.reduce((total, stuff) => total + dryMass_kg(stuff), 0);
    expectPublished(examples.O12, 'waterTo60_kg', waterToReach_kg({ wet_kg, dry_kg, goal_pctWet: 60 }));
    expectPublished(examples.O12, 'waterTo55_kg', waterToReach_kg({ wet_kg, dry_kg, goal_pctWet: 55 }));
  });

  it('the trap: the printed pair is unmatched, and with real carbon it takes four times the sawdust', () => {
    expectPublished(examples.O12, 'impliedCarbon_pctDry', printedSawdust.carbon_pctDry);
    expect(impliedCarbonFits(printedSawdust.carbon_pctDry)).toBe(false);
    const real: Unweighed = { ...printedSawdust, carbon_pctDry: sawdustCarbon_pctDry };
    const for30 = examples.O12.expected.sawdustFor30_kg;
    expectPublished(
      examples.O12,
      'realRatioOfThe30Mix',
      carbonToNitrogenOfMix_ratio([first, { ...real, wet_kg: for30 }]),
    );
    const matched = fromCarbon(sawdust.moisture_pctWet, sawdustCarbon_pctDry, sawdust.ratio);
    expectPublished(examples.O12, 'matchedNitrogen_pctDry', matched.nitrogen_pctDry);
    const needed = secondForCarbonToNitrogen_kg({ first, second: matched, goal_ratio: 30 });
    expectPublished(examples.O12, 'matchedSawdustFor30_kg', needed);
  });

  it('other unmatched pairs are caught', () => {
    const { nitrogen_pctDry, ratio } = examples.impliedCarbon.inputs;
    const implied = carbonFromRatio_pctDry(nitrogen_pctDry, ratio);
    expectPublished(examples.impliedCarbon, 'carbon_pctDry', implied);
    expect([implied, 69, 540, 15.6].map(impliedCarbonFits)).toEqual([false, false, false, false]);
    expect([48, 25, 60].map(impliedCarbonFits)).toEqual([true, true, true]);
  });
});

describe('published shortcuts that are wrong are not reproduced', () => {
  it('averaging C:N by weight (extension algebra, second hand)', () => {
    const { inputs, expected } = examples.shortcutAveragedRatio;
    const straw = {
      ...fromCarbon(inputs.strawMoisture_pctWet, inputs.strawCarbon_pctDry, inputs.strawRatio),
      wet_kg: inputs.straw_kg,
    };
    const mixWith = (ratio: number): number | undefined =>
      carbonToNitrogenOfMix_ratio([
        { ...fromCarbon(inputs.litterMoisture_pctWet, inputs.litterCarbon_pctDry, ratio), wet_kg: inputs.litter_kg },
        straw,
      ]);
    expectPublished(examples.shortcutAveragedRatio, 'ratioWithLitter7_5', mixWith(7.5));
    expectPublished(examples.shortcutAveragedRatio, 'ratioWithLitter14', mixWith(14));
    expect(mixWith(7.5)).toBeLessThan(expected.wrong / 2);
  });

  it('averaging C:N by parts', () => {
    const { inputs, expected } = examples.shortcutAveragedParts;
    const grass = withRatio(inputs.grass);
    const leaves = withRatio(inputs.leaves);
    const byMass = carbonToNitrogenOfMix_ratio([
      { ...grass, wet_kg: 2 },
      { ...leaves, wet_kg: 1 },
    ]);
    const byVolume = carbonToNitrogenOfMix_ratio([
      { ...grass, wet_kg: 2 * inputs.grass.density_kgPerM3AsIs },
      { ...leaves, wet_kg: inputs.leaves.density_kgPerM3AsIs },
    ]);
    expectPublished(examples.shortcutAveragedParts, 'byMass', byMass);
    expectPublished(examples.shortcutAveragedParts, 'byVolume', byVolume);
    expect(byVolume).toBeLessThan(expected.wrong - 5);
  });

  it('reading 66:1 as one pound of nitrogen in 66 pounds of stuff (Solomon 1993)', () => {
    const { inputs, expected } = examples.shortcutPoundsOfMaterial;
    const straw = {
      ...fromCarbon(inputs.strawMoisture_pctWet, inputs.strawCarbon_pctDry, inputs.strawRatio),
      wet_kg: inputs.straw_lb,
    };
    const manure = fromCarbon(inputs.manureMoisture_pctWet, inputs.manureCarbon_pctDry, inputs.manureRatio);
    const ratio = carbonToNitrogenOfMix_ratio([straw, { ...manure, wet_kg: inputs.manure_lb }]);
    expectPublished(examples.shortcutPoundsOfMaterial, 'ratio', ratio);
    expect(ratio).toBeGreaterThan(expected.wrong + 10);
    expectPublished(
      examples.shortcutPoundsOfMaterial,
      'manureFor25_lb',
      secondForCarbonToNitrogen_kg({ first: straw, second: manure, goal_ratio: 25 }),
    );
  });

  it('a blanket dose of urea on sawdust (Solomon 1993)', () => {
    const { inputs, expected } = examples.shortcutBlanketUrea;
    const carbon =
      (dryMass_kg({ wet_kg: inputs.sawdust_lb, moisture_pctWet: inputs.moisture_pctWet }) * inputs.carbon_pctDry) / 100;
    const nitrogen = carbon / inputs.ratio;
    const ureaShare = inputs.ureaNitrogen_pctAsIs / 100;
    expectPublished(examples.shortcutBlanketUrea, 'carbon_lb', carbon);
    const urea = nitrogenToReach({ carbon, nitrogen, goal_ratio: inputs.goal_ratio }) / ureaShare;
    expectPublished(examples.shortcutBlanketUrea, 'urea_lb', urea);
    expectPublished(examples.shortcutBlanketUrea, 'blanketRatio', carbon / (nitrogen + inputs.blanket_lb * ureaShare));
    expect(urea).toBeLessThan(inputs.blanket_lb / 5);
    expect(expected.blanketRatio).toBeLessThan(inputs.goal_ratio);
  });
});

describe('what growers asked', () => {
  it('leaves for a heap of grass (worked out in the question bank)', () => {
    const { inputs, expected, tolerance } = examples.grassAndLeaves;
    inputs.leaves_kg.forEach((wet_kg, i) => {
      const mix: readonly Stuff[] = [
        {
          ...fromCarbon(inputs.grassMoisture_pctWet, inputs.grassCarbon_pctDry, inputs.grassRatio),
          wet_kg: inputs.grass_kg,
        },
        { ...fromCarbon(inputs.leavesMoisture_pctWet, inputs.leavesCarbon_pctDry, inputs.leavesRatio), wet_kg },
      ];
      const moisture = moistureOfMix_pctWet(mix) ?? Number.NaN;
      const ratio = carbonToNitrogenOfMix_ratio(mix) ?? Number.NaN;
      expect(Math.abs(moisture - (expected.moisture_pctWet[i] ?? Number.NaN))).toBeLessThanOrEqual(
        tolerance.moisture_pctWet,
      );
      expect(Math.abs(ratio - (expected.ratio[i] ?? Number.NaN))).toBeLessThanOrEqual(tolerance.ratio);
    });
  });

  it('leaves for a month of coffee grounds (worked out in the question bank)', () => {
    const { inputs } = examples.coffeeAndLeaves;
    const leaves_kg = secondForCarbonToNitrogen_kg({
      first: {
        ...fromCarbon(inputs.groundsMoisture_pctWet, inputs.groundsCarbon_pctDry, inputs.groundsRatio),
        wet_kg: inputs.grounds_kg,
      },
      second: fromCarbon(inputs.leavesMoisture_pctWet, inputs.leavesCarbon_pctDry, inputs.leavesRatio),
      goal_ratio: inputs.goal_ratio,
    });
    expectPublished(examples.coffeeAndLeaves, 'leaves_kg', leaves_kg);
  });

  it('nitrogen for a cubic yard of green chips (worked out in the question bank)', () => {
    const { inputs } = examples.chipsNitrogen;
    const wet_kg = inputs.volume_m3 * inputs.density_kgPerM3AsIs;
    const carbon = (dryMass_kg({ wet_kg, moisture_pctWet: inputs.moisture_pctWet }) * inputs.carbon_pctDry) / 100;
    const nitrogen = carbon / inputs.ratio;
    expectPublished(examples.chipsNitrogen, 'carbon_kg', carbon);
    expectPublished(examples.chipsNitrogen, 'nitrogenTo60_kg', nitrogenToReach({ carbon, nitrogen, goal_ratio: 60 }));
    expectPublished(examples.chipsNitrogen, 'nitrogenTo30_kg', nitrogenToReach({ carbon, nitrogen, goal_ratio: 30 }));
  });
});
