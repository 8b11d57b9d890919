import { describe, expect, it } from 'vitest';
import { listed } from '../catalogue/index.ts';
import { createDraws } from '../estimate/index.ts';
import type { Ingredient } from '../mix/ingredient.ts';
import { pailCover } from './pail-cover.ts';
import type { FedLayer } from './pail-input.ts';
import { covered } from './testing/pails.ts';

const needs = { draws: createDraws() };

const scraps = (count: number): Ingredient => ({ material: 'kitchen-scraps', amount: { measure: 'pail', count } });
const bay = { width_m: 1, depth_m: 1, height_m: 1 };

/** Scraps with their leaves, so many pails at each age. */
function fed(pails: number, ages_days: readonly number[]): readonly FedLayer[] {
  return ages_days.flatMap((age_days): readonly FedLayer[] => [
    { ...scraps(pails), age_days },
    { material: 'autumn-leaves', amount: { measure: 'bucket-20l', count: pails }, age_days },
  ]);
}

describe('what goes with a pail', () => {
  it('knows what to say when nothing is known but the pail', () => {
    const found = covered({ pail: [scraps(1)] });
    expect(found.decision).toBe('cover');
    expect(found.lay[0]).toMatchObject({ material: 'straw', measure: 'bucket-20l' });
    expect(found.options.map(({ material }) => material)).toEqual([
      'straw',
      'autumn-leaves',
      'wood-shavings',
      'corrugated-cardboard',
    ]);
    expect(found.now).toBeUndefined();
    expect(found.asFed).toBeUndefined();
    expect(found.room).toBeUndefined();
  });

  it('tells what to fetch when nothing dry is on hand, or nothing that dries', () => {
    for (const dry of [[], [{ material: 'grass-clippings' }]]) {
      const found = covered({ pail: [scraps(1)], dry });
      expect(found.decision).toBe('fetch-dry');
      expect(found.lay).toEqual([]);
      expect(found.short).toMatchObject({ material: 'straw', measure: 'bucket-20l', count: 1 });
    }
  });

  it('lays what there is and says what is still missing', () => {
    const dry = [{ material: 'autumn-leaves', amount: { measure: 'bucket-20l', count: 1 } }];
    const { decision, lay, short, options } = covered({ pail: [scraps(6)], dry });
    expect(decision).toBe('cover');
    expect(lay).toMatchObject([{ material: 'autumn-leaves', count: 1 }]);
    expect(short?.material).toBe('autumn-leaves');
    expect(short?.count).toBeGreaterThan(1);
    expect(options[0]?.enough?.met).toBeLessThan(10);
  });

  it('goes on to the next dry material where the first runs out', () => {
    const dry = [
      { material: 'autumn-leaves', amount: { measure: 'bucket-20l', count: 1 } },
      { material: 'straw', amount: { measure: 'straw-bale', count: 2 } },
    ];
    const { lay, short } = covered({ pail: [scraps(6)], dry });
    expect(lay.map(({ material }) => material)).toEqual(['autumn-leaves', 'straw']);
    expect(lay[1]?.measure).toBe('bucket-20l');
    expect(short).toBeUndefined();
  });

  it('asks for no dry stuff with dry stuff, but for water', () => {
    const found = covered({ pail: [{ material: 'straw', amount: { measure: 'barrow', count: 1 } }] });
    expect(found.decision).toBe('tip-in');
    expect(found.lay).toEqual([]);
    expect(found.water_L).toBeGreaterThan(0);
    expect(found.notes).toContain('slow-for-its-carbon');
  });

  it('pours no water on frozen or thawing stuff', () => {
    const pail = [{ material: 'straw', amount: { measure: 'barrow', count: 1 } }];
    for (const state of ['frozen', 'thawing'] as const) expect(covered({ pail, state }).water_L).toBe(0);
  });
});

describe('the bin', () => {
  it('has layers that shrink with their age, and frost stops the shrinking', () => {
    const { layers } = covered({ pail: [scraps(1)], layers: fed(2, [60, 20]) });
    const [old, , young] = layers;
    expect(old?.left.volume_share.p50).toBeLessThan(young?.left.volume_share.p50 ?? 0);
    const frozen = covered({ pail: [scraps(1)], layers: fed(2, [60]), frozenFor_days: 60, state: 'frozen' });
    expect(frozen.layers[0]?.left.volume_share.p50).toBe(1);
  });

  it('stands as high as was measured', () => {
    const { now } = covered({ pail: [scraps(1)], layers: fed(2, [60]), bay, height_m: 0.6 });
    expect(now?.height_m?.p50).toBeGreaterThan(0.6);
    expect(now?.height_m?.p50).toBeLessThan(0.65);
  });

  it('whose content nobody knows has a height and room, but no figures', () => {
    const found = covered({ pail: [scraps(1)], bay, height_m: 0.5 });
    expect(found.now?.height_m?.p50).toBeGreaterThan(0.5);
    expect(found.now?.stuff).toBeUndefined();
    expect(found.asFed).toBeUndefined();
    expect(found.room?.room_m3.p50).toBeLessThan(0.5);
  });

  it('is as moist as a squeezed handful says', () => {
    const layers = fed(4, [30, 10]);
    const wet = covered({ pail: [scraps(1)], layers, squeeze: 'streams' });
    const dry = covered({ pail: [scraps(1)], layers, squeeze: 'dusty' });
    expect(wet.now?.stuff?.moistureFrom).toBe('squeeze');
    expect(wet.now?.stuff?.moisture_pctWet.p50).toBeGreaterThan(dry.now?.stuff?.moisture_pctWet.p50 ?? 100);
    expect(wet.decision).toBe('mend-first');
    expect(wet.mend?.because).toEqual(['too-wet']);
    expect(wet.mend?.options[0]?.better.wet_kg.p50).toBeGreaterThan(0);
  });

  it('that stings with leaves enough in it only wants forking through', () => {
    const layers: readonly FedLayer[] = [
      { material: 'grass-clippings', amount: { mass_kg: 30 }, age_days: 0 },
      { material: 'autumn-leaves', amount: { mass_kg: 60 }, age_days: 60 },
    ];
    const found = covered({ pail: [scraps(1)], layers, smell: 'ammonia' });
    expect(found.mend).toMatchObject({ because: ['ammonia'], alreadyThere: true });
  });

  it('that smells and of which nothing is known is to be mended, by no figure', () => {
    const { decision, mend } = covered({ pail: [scraps(1)], smell: 'sour' });
    expect(decision).toBe('mend-first');
    expect(mend).toEqual({ because: ['airless'], alreadyThere: false, options: [] });
  });

  it('of grass alone is too wet, and of hen droppings has too little carbon', () => {
    const of = (material: string) => [{ material, amount: { mass_kg: 40 }, age_days: 5 }];
    expect(covered({ pail: [scraps(1)], layers: of('grass-clippings') }).mend?.because).toEqual(['too-wet']);
    expect(covered({ pail: [scraps(1)], layers: of('hen-manure') }).mend?.because).toContain('too-little-carbon');
  });
});

describe('when to stop', () => {
  it('a full bin: the next pail goes into the next', () => {
    const found = covered({ pail: [scraps(1)], layers: fed(2, [40, 20]), bay, height_m: 1, bays: 2 });
    expect(found.decision).toBe('start-next');
    expect(found.stop.reasons).toEqual(['full']);
    expect(found.practice).toEqual(['fill-one-rest-one', 'swap-when-ripe']);
  });

  it('a bin with room goes on, and says when it will be full', () => {
    const ahead = { pails_perWeek: 6, weeks: 10 };
    const { decision, room } = covered({ pail: [scraps(1)], layers: fed(2, [40, 20]), bay, height_m: 0.7, ahead });
    expect(decision).toBe('cover');
    expect(room?.pailsLeft.p50).toBeGreaterThan(3);
    expect(room?.fullIn_days?.p50).toBeGreaterThan(7);
  });

  it('a slow pace may never fill it, for it sinks as fast', () => {
    const ahead = { pails_perWeek: 0.5, weeks: 10 };
    const { room } = covered({ pail: [scraps(1)], layers: [], bay, ahead });
    expect(room?.fills?.met).toBe(0);
    expect(room?.fullIn_days).toBeUndefined();
  });

  it('compost that is wanted sooner than a bin rests', () => {
    expect(covered({ pail: [scraps(1)], wanted_inDays: 60 }).stop.reasons).toEqual(['wanted-soon']);
    expect(covered({ pail: [scraps(1)], wanted_inDays: 200 }).stop.reasons).toEqual([]);
  });

  it('one fed as long and as much as the measured bins', () => {
    const small = { width_m: 0.5, depth_m: 0.5, height_m: 1 };
    const layers = fed(4, [120, 100, 80, 60, 40, 20]);
    const { stop } = covered({ pail: [scraps(1)], layers, bay: small, height_m: 0.6 });
    expect(stop.reasons).toEqual(['fed-long']);
  });

  it('three bays: fill, age, ready', () => {
    expect(covered({ pail: [scraps(1)], bays: 3 }).practice).toEqual(['fill-age-ready', 'fork-on-when-full']);
  });
});

describe('what may no longer be said', () => {
  it('a pail of scraps restarts the clock of safety', () => {
    const { safety } = covered({ pail: [scraps(1)], layers: fed(2, [40]) });
    expect(safety).toMatchObject({ clockRestarts: true, risky: ['kitchen-scraps'] });
    expect(safety.lost.map(({ claim }) => claim)).toEqual(['finished', 'hot-days', 'sanitised']);
  });

  it('weeds in seed take the weed-free away; plain grass restarts no clock', () => {
    const weeds = [
      { material: 'green-weeds', amount: { measure: 'bucket-20l', count: 1 }, doubtful: ['seeding-weeds'] },
    ];
    expect(covered({ pail: weeds }).safety.lost.map(({ claim }) => claim)).toContain('weed-free');
    const grass = [{ material: 'grass-clippings', amount: { measure: 'bucket-20l', count: 1 } }];
    expect(covered({ pail: grass }).safety.clockRestarts).toBe(false);
  });
});

describe('bad input', () => {
  const reckon = (input: unknown) => listed(pailCover).reckon(input, needs);
  const codeOf = (input: unknown): readonly [string, string][] => {
    const outcome = reckon(input);
    return outcome.ok ? [] : outcome.problems.map(({ code, path }): [string, string] => [code, path]);
  };

  it.each([
    ['no pail', {}, ['missing', 'pail']],
    ['an empty pail', { pail: [] }, ['too-small', 'pail']],
    ['nothing in it', { pail: [{ material: 'kitchen-scraps', amount: { mass_kg: 0 } }] }, ['nothing-in-it', 'pail']],
    [
      'an unknown material',
      { pail: [{ material: 'moon-dust', amount: { mass_kg: 1 } }] },
      ['unknown-material', 'pail[0].material'],
    ],
    [
      'an unknown measure',
      { pail: [{ material: 'straw', amount: { measure: 'hatful', count: 1 } }] },
      ['unknown-measure', 'pail[0].amount.measure'],
    ],
    ['what may never go in', { pail: [{ ...scraps(1), doubtful: ['human-waste'] }] }, ['not-for-heaps', 'pail[0]']],
    ['a liquid for dry stuff', { pail: [scraps(1)], dry: [{ material: 'urine' }] }, ['nothing-in-it', 'dry[0]']],
    ['a height without a bay', { pail: [scraps(1)], height_m: 0.5 }, ['missing', 'bay']],
    [
      'a layer from the future',
      { pail: [scraps(1)], layers: [{ ...scraps(1), age_days: -1 }] },
      ['too-small', 'layers[0].age_days'],
    ],
    ['four bays', { pail: [scraps(1)], bays: 4 }, ['not-one-of', 'bays']],
  ])('%s', (_what, input, [code, path]) => {
    expect(codeOf(input)).toContainEqual([code, path]);
  });

  it('tells every problem at once', () => {
    const bad = { material: 'moon-dust', age_days: 1, amount: { mass_kg: 1 } };
    expect(codeOf({ pail: [scraps(1)], layers: [bad, bad] })).toHaveLength(2);
  });
});

it('its example and its answer fit their schemas', () => {
  const outcome = listed(pailCover).reckon(pailCover.example, needs);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  expect(pailCover.output.safeParse(outcome.value).error).toBeUndefined();
});
