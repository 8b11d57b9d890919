import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Garden, garden } from '../testing/garden.ts';
import { readHeapShape } from './heap-shape.ts';
import { readCover, readStanding } from './standing.ts';

describe('the sides of a heap', () => {
  it.each([
    ['box', '1.2x1m', { form: 'box', width_m: 1.2, depth_m: 1, height_m: 1 }],
    ['box', '1.2 x 1.1 x 0.9', { form: 'box', width_m: 1.2, depth_m: 1.1, height_m: 0.9 }],
    ['dome', '160x100cm', { form: 'dome', diameter_m: 1.6, height_m: 1 }],
    ['cone', '2x1m', { form: 'cone', diameter_m: 2, height_m: 1 }],
    ['long', '1.5x1.2x6m', { form: 'long', width_m: 1.5, height_m: 1.2, length_m: 6 }],
    ['drum', '0.6x0.9m', { form: 'drum', diameter_m: 0.6, length_m: 0.9 }],
    ['trench', '0.5x0.4x3m', { form: 'trench', width_m: 0.5, depth_m: 0.4, length_m: 3 }],
  ] as const)('%s %s', (form, text, shape) => {
    expect(readHeapShape(form, text, '--x', 'metric')).toEqual({ ok: true, value: shape });
  });

  it('takes feet from who counts in feet: a foot is 0.3048 m (NIST SP 811, B.8)', () => {
    const read = readHeapShape('box', '4x4', '--bay', 'us');
    expect(read.ok && read.value.form === 'box' && read.value.width_m).toBeCloseTo(4 * 0.3048, 12);
  });

  it.each([
    ['box', '1.2m'],
    ['box', '1x1x1x1m'],
    ['dome', '1x1x1m'],
    ['long', '1x1m'],
    ['drum', ''],
    ['trench', '0x1x1m'],
    ['cone', '1e9x1m'],
    ['box', '__proto__'],
  ] as const)('%s %j is asked again with what would do', (form, text) => {
    expect(readHeapShape(form, text, '--x', 'metric')).toMatchObject({
      ok: false,
      problems: [{ code: 'heap-shape-unreadable', path: '--x', found: text }],
    });
  });
});

describe('how a heap stands', () => {
  it.each([
    ['straw bales', 'strawBales'],
    ['Pallets', 'pallet'],
    ['boards', 'timber'],
    ['wire', 'none'],
  ])('walls of %s', (walls, id) => {
    expect(readStanding({ walls }, 'metric')).toEqual({ ok: true, value: { walls: id } });
  });

  it('tells all that is wrong at once, with the words there are', () => {
    expect(readStanding({ walls: 'gold', cover: 'x', shelter: 'y' }, 'metric')).toMatchObject({
      problems: [
        { path: '--walls', wanted: 'none, pallet, timber, block, plastic, straw-bales, insulated' },
        { path: '--cover', wanted: 'open, lid, fleece, tarpaulin, carpet, compost, straw' },
        { path: '--shelter', wanted: 'sheltered, open' },
      ],
    });
  });

  it('a blanket may say how deep it lies; an inch is 2.54 cm (NIST SP 811, B.8)', () => {
    expect(readCover('straw:30cm', '--cover', 'metric')).toEqual({
      ok: true,
      value: { cover: 'straw', coverDepth_m: 0.3 },
    });
    const inches = readCover('compost:6', '--cover', 'us');
    expect(inches.ok && inches.value.coverDepth_m).toBeCloseTo(6 * 0.0254, 12);
  });

  it.each([
    ['tarpaulin:5cm', 'not-one-of'],
    ['straw:deep', 'measurement-unreadable'],
    ['straw:', 'measurement-unreadable'],
    ['straw:5m', 'out-of-bounds'],
    ['straw:1mm', 'out-of-bounds'],
  ])('%s is asked again with what would do', (text, code) => {
    expect(readCover(text, '--cover', 'metric')).toMatchObject({ ok: false, problems: [{ code, found: text }] });
  });

  it('what would do is told as the reader types it', () => {
    const wanted = (text: string, system: 'metric' | 'us') => {
      const read = readCover(text, '--cover', system);
      return read.ok ? '' : read.problems[0]?.wanted;
    };
    expect(wanted('straw:5m', 'metric')).toBe('2cm … 100cm');
    expect(wanted('straw:90', 'us')).toBe('1in … 39in');
    expect(wanted('lid:3', 'us')).toBe('compost:6in, straw:8in');
  });

  it('any text is a cover or a problem', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 80 }), (text) => {
        const read = readCover(text, '--cover', 'metric');
        expect(
          read.ok || ['not-one-of', 'measurement-unreadable', 'out-of-bounds'].includes(read.problems[0]?.code ?? ''),
        ).toBe(true);
      }),
    );
  });
});

describe('what is done to a heap', () => {
  let home: Garden;
  beforeAll(() => {
    home = garden();
  });
  afterAll(() => home.remove());
  const acts = async (...options: string[]): Promise<unknown> => {
    const { value } = await home.json(['heap', 'run', 'straw=1bale', '--members', '8', '--days', '12', ...options]);
    return (value as { input: { acts: unknown } }).input.acts;
  };

  it('is read by the day, in the order of days, whatever the order it was said in', async () => {
    expect(
      await acts(
        '--cover',
        'lid',
        '--turn',
        '9.5:rough',
        '--turn',
        '6',
        '--water-on',
        '8:20L:top',
        '--water-on',
        '2: 5 L',
        '--cover-on',
        '10:straw',
        '--add',
        '5:mixed: grass=2barrows; straw=half a bale',
      ),
    ).toMatchObject([
      { at_day: 2, act: 'water', water_L: 5 },
      {
        at_day: 5,
        act: 'add',
        mixed: true,
        mix: { ingredients: [{ material: 'grass-clippings' }, { material: 'straw' }] },
      },
      { at_day: 6, act: 'turn' },
      { at_day: 8, act: 'water', water_L: 20, where: 'top' },
      { at_day: 9.5, act: 'turn', care: 'rough' },
      { at_day: 10, act: 'stand', cover: 'straw' },
    ]);
  });

  it('is turned into another bay or form, told as the first is: walls as said, else as the place has them', async () => {
    await home.run(['log', 'bay', 'Left bay', '1.2x1.1x1.3m', '--wall', 'boards', '--units', 'metric']);
    const box = { form: 'box', width_m: 1.5, depth_m: 1.5, height_m: 1 };
    // A foot is 0.3048 m (NIST SP 811, B.8).
    const fiveFeet_m: unknown = expect.closeTo(5 * 0.3048, 12);
    const told = await acts(
      ...['--walls', 'pallet', '--units', 'metric'],
      ...['--turn', '2:bay=1.5x1.5m', '--turn', '4:rough:dome=1.6x1', '--turn', '6: bay = left bay'],
      ...['--turn', '8:walls=straw-bales:bay=5x5ft', '--turn', '10:walls=none:thorough'],
    );
    expect(told).toEqual([
      { at_day: 2, act: 'turn', into: box },
      { at_day: 4, act: 'turn', care: 'rough', into: { form: 'dome', diameter_m: 1.6, height_m: 1 } },
      { at_day: 4, act: 'stand', walls: 'none' },
      { at_day: 6, act: 'turn', into: { form: 'box', width_m: 1.2, depth_m: 1.1, height_m: 1.3 } },
      { at_day: 6, act: 'stand', walls: 'timber' },
      { at_day: 8, act: 'turn', into: { ...box, width_m: fiveFeet_m, depth_m: fiveFeet_m } },
      { at_day: 8, act: 'stand', walls: 'strawBales' },
      { at_day: 10, act: 'turn', care: 'thorough' },
      { at_day: 10, act: 'stand', walls: 'none' },
    ]);
  });

  it('a cover that changes says nothing of walls and shelter, which stay as they were', async () => {
    expect(await acts('--walls', 'pallet', '--shelter', 'open', '--cover-on', '3:carpet')).toEqual([
      { at_day: 3, act: 'stand', cover: 'carpet' },
    ]);
  });
});
