import { describe, expect, it } from 'vitest';
import { createDraws } from '../../estimate/index.ts';
import { charBlend } from './char-blend.ts';
import type { CharBlend, CharBlendInput } from './char-blend-io.ts';

const needs = { draws: createDraws() };

function answer(input: CharBlendInput): CharBlend {
  const outcome = charBlend.run(input, needs);
  if (!outcome.ok) throw new RangeError(JSON.stringify(outcome.problems));
  return outcome.value;
}

const bed = { area_m2: 10, depth_m: 0.2 };

describe('charcoal on a bed', () => {
  // Arithmetic that anyone can redo: a fifth of 20 cm is 40 L/m2, at 200, 250 and 320 kg/m3 80, 100 and 128 t/ha.
  it.each([
    [200, 80],
    [250, 100],
    [320, 128],
  ])(
    'a fifth by volume of 20 cm at %d kg/m3 is %d t/ha, above the 30 to 70 of trials',
    (density_kgPerM3Dry, tPerHa) => {
      const found = answer({ charcoal_L: 400, bed, density_kgPerM3Dry });
      expect(found.dose.rate_tPerHa?.p50).toBeCloseTo(tPerHa, 9);
      expect(found.dose.cover_LPerM2?.p50).toBeCloseTo(40, 9);
      expect(found.dose.share_pctVolume.p50).toBeCloseTo(20, 9);
      expect(found.darkEarth.rate_tPerHa?.p50).toBeCloseTo(tPerHa, 9);
      expect(found.stands).toBe('above');
    },
  );

  // Edeh, Mašek, Buss 2020: best in coarse soil at 30 to 70 t/ha; at 250 kg/m3 6 to 14 % of 20 cm.
  it('Edeh, Mašek, Buss 2020: 30 to 70 t/ha at 250 kg/m3 are 6 to 14 % of 20 cm', () => {
    const { best } = answer({ bed, density_kgPerM3Dry: 250 });
    expect(best.least.rate_tPerHa?.p50).toBeCloseTo(30, 9);
    expect(best.least.share_pctVolume.p50).toBeCloseTo(6, 9);
    expect(best.most.rate_tPerHa?.p50).toBeCloseTo(70, 9);
    expect(best.most.share_pctVolume.p50).toBeCloseTo(14, 9);
  });

  // A columnist's 1 to 5 kg/m2 (no source): 10 to 50 t/ha, 4 to 20 L/m2 at 250 kg/m3, 2 to 10 % of 20 cm.
  it('1 to 5 kg on a square metre are 4 to 20 L and 2 to 10 %', () => {
    const { begin, stands } = answer({ bed, density_kgPerM3Dry: 250 });
    expect(stands).toBe('unasked');
    expect([begin.least.cover_LPerM2?.p50, begin.most.cover_LPerM2?.p50]).toEqual([
      expect.closeTo(4, 9),
      expect.closeTo(20, 9),
    ]);
    expect([begin.least.rate_tPerHa?.p50, begin.most.rate_tPerHa?.p50]).toEqual([
      expect.closeTo(10, 9),
      expect.closeTo(50, 9),
    ]);
    expect([begin.least.share_pctVolume.p50, begin.most.share_pctVolume.p50]).toEqual([
      expect.closeTo(2, 9),
      expect.closeTo(10, 9),
    ]);
  });

  // Guo 2020: 0.1 % of the mass of a plough layer of about 2,000 t/ha is 2 t/ha. 15 cm of clay at 1.33 are 1,995 t.
  it('Guo 2020: 2 t/ha is 0.1 % of the mass of 15 cm', () => {
    const { dose } = answer({
      charcoal_L: 8,
      bed: { area_m2: 10, depth_m: 0.15 },
      soil: 'clay',
      density_kgPerM3Dry: 250,
    });
    expect(dose.rate_tPerHa?.p50).toBeCloseTo(2, 9);
    expect(dose.share_pctSoilMass?.p50).toBeCloseTo(0.1, 2);
  });

  // Guo 2020: keep the pH of the soil under 7.5.
  it('none at pH 7.5, a warning from 7, a test where nobody knows', () => {
    expect(answer({ charcoal_L: 40, bed, pH: 7.5 }).stands).toBe('not-here');
    expect(answer({ charcoal_L: 40, bed, pH: 7.2 }).notes).toContain('nearly-too-sweet');
    expect(answer({ charcoal_L: 40, bed }).notes).toContain('test-pH');
  });
});

describe('charging', () => {
  // Common practice: 3 to 10 g of nitrogen for a kilogram, or as much compost by volume. Fresh urine is commonly held to carry
  // 5 to 9 g of nitrogen in a litre; the program's comes out of its table of materials.
  it('40 L at 250 kg/m3 take 30 to 100 g of nitrogen, 3 to 20 L of urine, or 40 L of compost', () => {
    const { charge } = answer({ charcoal_L: 40, bed, density_kgPerM3Dry: 250 });
    expect(charge.nitrogen_g.p10).toBeGreaterThan(30);
    expect(charge.nitrogen_g.p90).toBeLessThan(100);
    expect(charge.urine_L.p10).toBeGreaterThan(3);
    expect(charge.urine_L.p90).toBeLessThan(20);
    expect(charge.nitrogen_g.p50 / charge.urine_L.p50).toBeGreaterThan(5);
    expect(charge.nitrogen_g.p50 / charge.urine_L.p50).toBeLessThan(9);
    expect(charge.compost_L.p50).toBe(40);
    expect(charge.weeks).toEqual({ low: 2, high: 4 });
  });

  it('warns of raw charcoal only', () => {
    expect(answer({ charcoal_L: 40, bed }).notes).toContain('uncharged');
    expect(answer({ charcoal_L: 40, bed, isCharged: true }).notes).not.toContain('uncharged');
  });
});

describe('charcoal in a mix', () => {
  // Common practice: up to a fifth of a mix.
  it('10 L in 100 L are a tenth, within practice; 30 L are above it', () => {
    const tenth = answer({ charcoal_L: 10, mix_L: 100 });
    expect(tenth).toMatchObject({ stands: 'within', dose: { share_pctVolume: { p50: 10 } } });
    expect(tenth.dose.rate_tPerHa).toBeUndefined();
    expect(answer({ charcoal_L: 30, mix_L: 100 }).stands).toBe('above');
  });

  it('refuses more charcoal than the layer holds', () => {
    const outcome = charBlend.run({ charcoal_L: 5000, bed }, needs);
    expect(outcome).toMatchObject({
      ok: false,
      problems: [{ code: 'too-big', path: 'charcoal_L', wanted: '≤ 2000 L' }],
    });
  });

  it('wants a bed or a mix, one of them', () => {
    expect(charBlend.input.safeParse({ charcoal_L: 4 }).success).toBe(false);
    expect(charBlend.input.safeParse({ charcoal_L: 4, mix_L: 9, bed }).success).toBe(false);
  });
});
