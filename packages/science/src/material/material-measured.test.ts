import sourceTable from '@loamwright/reference/sources.json' with { type: 'json' };
import { describe, expect, it } from 'vitest';
import type { Outcome } from '../catalogue/index.ts';
import { createDraws, type Estimate, narrow, percent, positive } from '../estimate/index.ts';
import { materialCalculations } from './calculations.ts';
import {
  type Finding,
  type MaterialMeasured,
  type MaterialMeasuredInput,
  materialMeasured,
} from './material-measured.ts';
import { densityFromBucket, moistureFromDryDown, moistureFromSqueeze } from './measured.ts';
import { knownMaterial } from './properties.ts';

const needs = { draws: createDraws() };
function value<Value>(outcome: Outcome<Value>): Value {
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}
function run(input: MaterialMeasuredInput): MaterialMeasured {
  return value(materialMeasured.run(input, needs));
}
function finding(input: MaterialMeasuredInput, property: Finding['property']): Finding {
  const found = run(input).findings.find((one) => one.property === property);
  if (found === undefined) throw new Error(`no finding on ${property}`);
  return found;
}
const published = (id: string) => knownMaterial(id)?.quantities ?? {};

describe('a material as it was found', () => {
  it('joins a squeeze with what is published of it', () => {
    const found = finding({ material: 'kitchen-scraps', squeeze: 'drops' }, 'moisture_pctWet');
    const before = published('kitchen-scraps').moisture_pctWet as Estimate;
    expect(found.before).toEqual(before);
    expect(found.believed).toEqual(narrow(before, moistureFromSqueeze('drops', 'pasty'), percent));
    expect(found.agrees).toBe(true);
  });

  it('takes a squeeze and a dry-down as two measurements', () => {
    const dryDown = { method: 'microwave', wet_g: 100, dry_g: 45 } as const;
    const { measured } = finding({ material: 'finished-compost', squeeze: 'holds', dryDown }, 'moisture_pctWet');
    const dried = value(moistureFromDryDown(dryDown, ''));
    expect(measured).toEqual(narrow(moistureFromSqueeze('holds', 'fine'), dried, percent));
    expect(measured.p90 - measured.p10).toBeLessThan(dried.p90 - dried.p10);
  });

  it('says when damp straw is another stuff than the published one, and believes what is described', () => {
    const dryDown = { method: 'oven', wet_g: 100, dry_g: 35 } as const;
    const found = finding({ material: 'straw', dryDown }, 'moisture_pctWet');
    expect(found.agrees).toBe(false);
    const described = { moisture_pctWet: { p10: 45, p50: 60, p90: 72 } };
    const own = finding({ material: 'straw', described, dryDown }, 'moisture_pctWet');
    expect(own.before).toEqual(described.moisture_pctWet);
    expect(own.agrees).toBe(true);
    expect((own.believed as Estimate).p50).toBeGreaterThan((found.believed as Estimate).p50);
  });

  // O8: 20 L, 1 kg empty, 10 kg full is 450 kg/m3 (Cooperband and Zabaleta).
  it('takes a bucket as loose, or as pressed down', () => {
    const bucket = { full_kg: 10, empty_kg: 1, volume_L: 20 };
    const loose = finding({ material: 'coffee-grounds', bucket }, 'densityLoose_kgPerM3AsIs');
    expect(loose.measured.p50).toBeCloseTo(450, 9);
    expect(loose.measured).toEqual(value(densityFromBucket(bucket, '')));
    const packed = finding(
      { material: 'coffee-grounds', bucket: { ...bucket, packed: true } },
      'densityPacked_kgPerM3AsIs',
    );
    expect(packed.measured).toEqual(loose.measured);
  });

  it('makes of a bucket that settled the density pressed down, from its own or the published loose one', () => {
    const bucket = { full_kg: 2, empty_kg: 1, volume_L: 20 };
    const settling = { filled_cm: 30, settled_cm: 24 };
    const weighed = finding({ material: 'autumn-leaves', bucket, settling }, 'densityPacked_kgPerM3AsIs');
    expect(weighed.measured.p50).toBeCloseTo(50 / 0.8, 9);
    const alone = finding({ material: 'autumn-leaves', settling }, 'densityPacked_kgPerM3AsIs');
    expect(alone.measured.p50).toBeCloseTo(
      (published('autumn-leaves').densityLoose_kgPerM3AsIs as Estimate).p50 / 0.8,
      9,
    );
    expect(alone.believed).toEqual(
      narrow(published('autumn-leaves').densityPacked_kgPerM3AsIs ?? 0, alone.measured, positive),
    );
  });

  it('knows the size of a bucket by the name of its measure', () => {
    const bucket = { full_kg: 10, empty_kg: 1, measure: 'bucket-20l' };
    const { measured } = finding({ material: 'soil', bucket }, 'densityLoose_kgPerM3AsIs');
    expect(measured.p50).toBeCloseTo(450, 9);
  });

  it('leaves alone what is certain', () => {
    const dryDown = { method: 'oven', wet_g: 100, dry_g: 1 } as const;
    expect(finding({ material: 'water', dryDown }, 'moisture_pctWet')).toMatchObject({ before: 100, believed: 100 });
  });

  it.each([
    ['no check', { material: 'straw' }, { code: 'missing', path: 'squeeze' }],
    ['no such material', { material: 'strow', squeeze: 'dusty' }, { code: 'unknown-material', path: 'material' }],
    [
      'a bucket of no size',
      { material: 'straw', bucket: { full_kg: 3, empty_kg: 1 } },
      { code: 'missing', path: 'bucket.volume_L' },
    ],
    [
      'a bucket of an unknown measure',
      { material: 'straw', bucket: { full_kg: 3, empty_kg: 1, measure: 'barow' } },
      { code: 'unknown-measure', path: 'bucket.measure', wanted: expect.stringMatching(/^barrow, /) },
    ],
    [
      'a bucket lighter than empty',
      { material: 'straw', bucket: { full_kg: 1, empty_kg: 3, volume_L: 20 } },
      { code: 'too-small', path: 'bucket.full_kg' },
    ],
    [
      'a sample that gained',
      { material: 'straw', dryDown: { method: 'oven', wet_g: 10, dry_g: 11 } },
      { code: 'too-big', path: 'dryDown.dry_g' },
    ],
  ] as const)('refuses %s', (_what, input, problem) => {
    expect(materialMeasured.run(input, needs)).toMatchObject({ ok: false, problems: [problem] });
  });
});

describe('the calculations about materials', () => {
  it.each(materialCalculations)('$id runs its example, fits its own schema and cites known sources', (calculation) => {
    const answer = calculation.reckon(calculation.example, needs);
    expect(answer).toMatchObject({ ok: true });
    expect(calculation.inputSchema()).toMatchObject({ type: 'object' });
    expect(calculation.outputSchema()).toMatchObject({ type: 'object' });
    expect(calculation.sources.length).toBeGreaterThan(0);
    for (const { source } of calculation.sources) expect(Object.keys(sourceTable)).toContain(source);
  });

  it('moisture-from-squeeze says when the hand says little', () => {
    const squeeze = materialCalculations.find(({ id }) => id === 'moisture-from-squeeze');
    expect(squeeze?.reckon({ squeeze: 'holds', material: 'wood-chips' }, needs)).toMatchObject({
      value: { saysLittle: true, moisture_pctWet: { p50: 55 } },
    });
    expect(squeeze?.reckon({ squeeze: 'holds', material: 'finished-compost' }, needs)).toMatchObject({
      value: { saysLittle: false },
    });
    expect(squeeze?.reckon({ squeeze: 'soggy' }, needs)).toMatchObject({ problems: [{ code: 'not-one-of' }] });
    expect(squeeze?.reckon({ squeeze: 'holds', material: 'moon' }, needs)).toMatchObject({
      problems: [{ code: 'unknown-material' }],
    });
  });
});
