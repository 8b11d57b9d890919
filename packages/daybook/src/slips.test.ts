import { describe, expect, it } from 'vitest';
import { type DraftHeader, draftOf } from './draft.ts';
import { seal } from './entry/seal.ts';
import { fold } from './fold/fold.ts';
import { isAhead } from './slips.ts';
import { testId } from './testing/index.ts';

const WRITTEN = '2026-03-10T12:00:00.000Z';
const header = (type: string, happened: string = WRITTEN): DraftHeader => ({
  id: testId(1),
  holding: testId(2),
  device: testId(3),
  by: 'keeper',
  happened,
  zone: 'Europe/London',
  precision: 'day',
  written: WRITTEN,
  about: [{ type, id: 'straw' }],
});
const material = header('material');

describe('a draft', () => {
  it.each(['2099-01-01T12:00:00.000Z', '2026-03-11T12:00:00.001Z'])('dated %s lies ahead', (happened) => {
    expect(draftOf('turned', header('heap', happened), {})).toMatchObject({
      ok: false,
      problems: [{ code: 'when-ahead', path: 'happened', found: happened }],
    });
  });

  it('may be a day ahead of the clock that wrote it, and any time behind', () => {
    expect(draftOf('turned', header('heap', '2026-03-11T12:00:00.000Z'), {}).ok).toBe(true);
    expect(draftOf('turned', header('heap', '2019-05-01T12:00:00.000Z'), {}).ok).toBe(true);
  });

  it('pours no more than a tank on wheels', () => {
    expect(draftOf('watered', header('heap'), { volume_L: 20_000 }).ok).toBe(true);
    expect(draftOf('watered', header('heap'), { volume_L: 50_000 })).toMatchObject({
      ok: false,
      problems: [{ code: 'water-beyond', found: '50000', wanted: '20000' }],
    });
  });

  it.each([
    ['bed-set-up', { name: 'Kale', area_m2: 0.0001 }, 'area-beyond', '0.0001', '0.01 to 100000'],
    ['bed-set-up', { name: 'Kale', area_m2: 1e7 }, 'area-beyond', '10000000', '0.01 to 100000'],
    [
      'bed-set-up',
      { name: 'Kale', area_m2: { p10: 0.001, p50: 2, p90: 4 } },
      'area-beyond',
      '0.001 to 4',
      '0.01 to 100000',
    ],
    ['bed-set-up', { name: 'Kale', area_m2: 12, depth_m: 40 }, 'depth-beyond', '40', '0.02 to 2'],
    ['sown', { crop: 'kale', area_m2: 1e7 }, 'area-beyond', '10000000', '0.01 to 100000'],
  ] as const)('%s has no bed of %o', (kind, body, code, found, wanted) => {
    expect(draftOf(kind, header('bed'), body)).toMatchObject({ ok: false, problems: [{ code, found, wanted }] });
  });

  it('has beds from a pot to ten hectares, worked to two metres', () => {
    for (const area_m2 of [0.01, 12, 100_000])
      expect(draftOf('bed-set-up', header('bed'), { name: 'Kale', area_m2, depth_m: 2 }).ok).toBe(true);
  });

  it.each([
    [{ carbonToNitrogen: 1e9 }, 'carbonToNitrogen'],
    [{ carbonToNitrogen: { p10: 0.4, p50: 20, p90: 40 } }, 'carbonToNitrogen'],
    [{ nitrogen_pctDry: 80 }, 'nitrogen_pctDry'],
    [{ density_kgPerM3AsIs: 20_000 }, 'density_kgPerM3AsIs'],
    [{ densityPacked_kgPerM3AsIs: 0.5 }, 'densityPacked_kgPerM3AsIs'],
  ])('describes and measures no stuff with %o', (figures, path) => {
    const refused = { ok: false, problems: [{ code: 'figure-beyond', path: `body.${path}` }] };
    expect(draftOf('material-described', material, { name: 'Straw', ...figures })).toMatchObject(refused);
    expect(draftOf('material-measured', material, figures)).toMatchObject(refused);
  });
});

describe('an entry that came from elsewhere', () => {
  it('is kept and told, and its figure pointed out', () => {
    const draft = draftOf('material-described', material, { name: 'Straw', carbonToNitrogen: 80 });
    if (!draft.ok) throw new Error('not drafted');
    const entries = seal(null, [{ ...draft.value, body: { name: 'Straw', carbonToNitrogen: 1e9 } }]);
    const { warnings, materials, unread } = fold(entries);
    expect(unread).toEqual([]);
    expect([...materials.keys()]).toEqual(['straw']);
    expect(warnings).toEqual([{ code: 'beyond-belief', entry: testId(1), against: '1000000000' }]);
  });
});

it('what lies ahead is told from what clocks differ by', () => {
  expect(isAhead('2026-03-11T12:00:00.000Z', WRITTEN)).toBe(false);
  expect(isAhead('2026-03-11T12:00:00.001Z', WRITTEN)).toBe(true);
});
