import examples from '@loamwright/reference/mix-examples.json' with { type: 'json' };
import { convert } from '@loamwright/units';
import { describe, expect, it } from 'vitest';
import { carbonFromAsh_pctDry } from './balance.ts';
import { degradable_shareOfVolatile, ligninOnVolatile_pctVolatile } from './degradable.ts';
import { heat_MJ, likelyFate } from './fate.ts';
import { coneVolume_m3, halfRoundHeight_m, halfRoundVolume_m3, heightInBay_m } from './geometry.ts';
import {
  densityOfBucket_kgPerM3AsIs,
  freeAirSpace_pctVolume,
  settledFreeAirSpace_pctVolume,
  wettedDensity_kgPerM3AsIs,
} from './porosity.ts';
import { poured } from './portion.ts';
import { ripeDry_kg } from './salts.ts';
import { expectPublished } from './testing/published.ts';

describe('bulk density and air space', () => {
  it('O8: a weighed bucket (Cooperband and Zabaleta)', () => {
    const found = densityOfBucket_kgPerM3AsIs(examples.O8.inputs);
    expectPublished(examples.O8, 'density_kgPerM3AsIs', found);
    expectPublished(examples.O8, 'density_lbPerYd3', convert(found, 'kgPerM3', 'lbPerYd3'));
  });

  it('a bucket of 5 US gal: its factors (Washington State University)', () => {
    const { bucket_lb, bucket_gal } = examples.bucketFactors.inputs;
    const found = densityOfBucket_kgPerM3AsIs({
      full_kg: convert(bucket_lb, 'lb', 'kg'),
      empty_kg: 0,
      volume_L: convert(bucket_gal, 'gal', 'L'),
    });
    expectPublished(examples.bucketFactors, 'density_kgPerM3AsIs', found);
    expectPublished(examples.bucketFactors, 'density_lbPerYd3', convert(found, 'kgPerM3', 'lbPerYd3'));
    expect(densityOfBucket_kgPerM3AsIs({ full_kg: 10, empty_kg: 0, volume_L: 20 })).toBe(50 * 10);
  });

  it('pressed-down chips have lost a fifth of their volume and that much air (Briggs 1994, Table 7-2A)', () => {
    const { inputs, expected, tolerance } = examples.chipsCompacted;
    inputs.loose_kgPerM3.forEach((loose, i) => {
      const compacted = inputs.compacted_kgPerM3[i] ?? Number.NaN;
      expect(compacted / loose).toBeGreaterThanOrEqual(expected.low - tolerance.low);
      expect(compacted / loose).toBeLessThanOrEqual(expected.high + tolerance.high);
      // The air space of the compacted chips by their density is that of the loose ones settled to as much volume.
      const dry = { moisture_pctWet: 0, volatileSolids_pctDry: 99 };
      const before = freeAirSpace_pctVolume({ ...dry, density_kgPerM3AsIs: loose });
      const after = freeAirSpace_pctVolume({ ...dry, density_kgPerM3AsIs: compacted });
      expect(settledFreeAirSpace_pctVolume(before, loose / compacted)).toBeCloseTo(after, 9);
    });
  });

  it('chips wetted at the same volume (Briggs 1994, Table 7-2A)', () => {
    const { inputs, expected, tolerance } = examples.chipsWetted;
    inputs.rows.forEach(([dry = Number.NaN, moisture = Number.NaN], i) => {
      const found = wettedDensity_kgPerM3AsIs(dry, moisture);
      expect(Math.abs(found - (expected.wet_kgPerM3[i] ?? Number.NaN))).toBeLessThanOrEqual(tolerance.wet_kgPerM3);
    });
  });

  it('free air space at 450 kg/m³ by three forms that differ (Van Ginkel 1999; EN 13041; Haug 1993; Agnew 2003)', () => {
    const { inputs, expected, tolerance } = examples.freeAirSpace450;
    const { density_kgPerM3AsIs: density, moisture_pctWet, volatileSolids_pctDry } = inputs;
    expectPublished(examples.freeAirSpace450, 'threePhase', freeAirSpace_pctVolume(inputs));
    const en13041 = { water_kgPerM3: 1000, organic_kgPerM3: 1550, ash_kgPerM3: 2650 };
    expectPublished(examples.freeAirSpace450, 'en13041', freeAirSpace_pctVolume(inputs, en13041));
    const volatile = volatileSolids_pctDry / 100;
    const dry = 1 - moisture_pctWet / 100;
    const solidGravity = 1 / (volatile / 1 + (1 - volatile) / 2.5);
    const haug = 100 * (1 - (density * dry) / (1000 * solidGravity) - (density * (1 - dry)) / 1000);
    expectPublished(examples.freeAirSpace450, 'haug', haug);
    expectPublished(examples.freeAirSpace450, 'linear', 100 - 0.09 * density);
    // The program's own form lies within Haug's and the others' spread of about 5 points, its soft edge.
    expect(Math.abs(freeAirSpace_pctVolume(inputs) - haug)).toBeLessThan(6);
    expect(Math.abs(expected.threePhase - expected.en13041)).toBeLessThan(tolerance.threePhase + 0.2);
  });

  it('free air space falls with density (three-phase, worked out)', () => {
    const { inputs, expected, tolerance } = examples.freeAirSpaceByDensity;
    inputs.densities_kgPerM3AsIs.forEach((density_kgPerM3AsIs, i) => {
      const found = freeAirSpace_pctVolume({ ...inputs, density_kgPerM3AsIs });
      const wanted = expected.freeAirSpace_pctVolume[i] ?? Number.NaN;
      expect(Math.abs(found - wanted)).toBeLessThanOrEqual(tolerance.freeAirSpace_pctVolume);
    });
  });

  it('settling takes air, not stuff (Richard, Inadequate Porosity)', () => {
    const { before_pctVolume, remaining_share } = examples.settled.inputs;
    const after = settledFreeAirSpace_pctVolume(before_pctVolume, remaining_share);
    expectPublished(examples.settled, 'after_pctVolume', after);
    expectPublished(examples.settled, 'diffusion_pct', 100 * (after / before_pctVolume) ** 2);
  });
});

describe('shapes', () => {
  it('O10: half-round heaps on an acre (New Jersey DEP 1994, Appendix A)', () => {
    const { height_ft, aisle_ft, acre_ft2 } = examples.O10.inputs;
    const length_ft = acre_ft2 / (2 * height_ft + aisle_ft);
    const volume_m3 = halfRoundVolume_m3({
      height_m: convert(height_ft, 'ft', 'm'),
      length_m: convert(length_ft, 'ft', 'm'),
    });
    expectPublished(examples.O10, 'volume_yd3', convert(volume_m3, 'm3', 'yd3'));
    expect(convert(halfRoundHeight_m(volume_m3, convert(length_ft, 'ft', 'm')), 'm', 'ft')).toBeCloseTo(height_ft, 9);
  });

  it('a bay of 3 × 3 ft holds 0.76 m³ at 3 ft (Oregon Metro); a cone is a third of its cylinder', () => {
    const side_m = convert(3, 'ft', 'm');
    expect(convert(heightInBay_m(0.7646, { width_m: side_m, depth_m: side_m }), 'm', 'ft')).toBeCloseTo(3, 3);
    expect(coneVolume_m3({ height_m: 3, radius_m: 1 })).toBeCloseTo(Math.PI, 12);
  });
});

describe('carbon that rots', () => {
  it('carbon is volatile solids over 1.8 (Adams et al. 1951): 10 % ash is 50 % carbon', () => {
    expect(carbonFromAsh_pctDry(10)).toBeCloseTo(50, 12);
  });

  it('the share that rots falls with lignin (Chandler 1980; values of Tchobanoglous 1993)', () => {
    const { inputs, expected, tolerance } = examples.degradable;
    inputs.lignin_pctVolatile.forEach((lignin, i) => {
      const found = degradable_shareOfVolatile(lignin);
      expect(Math.abs(found - (expected.share[i] ?? Number.NaN))).toBeLessThanOrEqual(tolerance.share);
    });
    expect(degradable_shareOfVolatile(60)).toBe(0.05);
    expect(ligninOnVolatile_pctVolatile(9, 90)).toBe(10);
  });

  it('ash stays: 15 to 30 % of it halves the dry mass (ash balance, worked out)', () => {
    const { dry_kg, ashBefore_pctDry, volatileLost_pct } = examples.ashBalance.inputs;
    const volatileSolids_kg = dry_kg * (1 - ashBefore_pctDry / 100);
    const degradableCarbon_kg = carbonFromAsh_pctDry(ashBefore_pctDry) * (dry_kg / 100) * (volatileLost_pct / 100);
    const after_kg = ripeDry_kg({ ...poured(0), dry_kg, volatileSolids_kg, degradableCarbon_kg });
    expectPublished(examples.ashBalance, 'dryAfter_kg', after_kg);
    expectPublished(examples.ashBalance, 'ashAfter_pctDry', (ashBefore_pctDry * dry_kg) / after_kg);
  });

  it('cellulose gives 16.6 MJ to the kilogram at 14 MJ for each kg of oxygen (Scott and Djurisic 2008)', () => {
    const degradableCarbon_kg = examples.cellulose.inputs.carbon_kg;
    expectPublished(examples.cellulose, 'heat_MJ', heat_MJ({ ...poured(0), degradableCarbon_kg }, likelyFate));
  });
});
