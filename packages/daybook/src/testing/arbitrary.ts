import fc from 'fast-check';
import type { Draft, Entry, Tip } from '../entry/entry.ts';
import { seal } from '../entry/seal.ts';
import type { Bodies, KindId } from '../kinds/registry.ts';
import { kinds } from '../kinds/registry.ts';
import { minutesIn2026, testId } from './ids.ts';

/** Few ids, so that entries meet one another often. */
const heapId = fc.constantFrom('heap-a', 'heap-b', 'heap-c', 'heap-d');
const bedId = fc.constantFrom('leeks', 'squash');
const bayId = fc.constantFrom('bay-1', 'bay-2');
const materialId = fc.constantFrom('straw', 'goat-bedding', 'coffee-grounds', 'pomace', 'hedge-chips');

const kilograms = fc.oneof(
  fc.integer({ min: 1, max: 60 }),
  fc.integer({ min: 1, max: 60 }).map((p50) => ({ p10: p50 * 0.7, p50, p90: p50 * 1.4 })),
);
const part = fc.constantFrom(0.1, 0.25, 0.3333, 0.5, 1);
const name = fc.constantFrom('Quarry', 'Hedge', 'Long');

const layer = fc.record(
  {
    material: materialId,
    mass_kg: kilograms,
    raw: fc.boolean(),
    from: fc.oneof(
      fc.constant({ type: 'stock' as const }),
      fc.record({ type: fc.constant('heap' as const), id: heapId, share: part }),
    ),
  },
  { requiredKeys: ['material', 'mass_kg'] },
);

/** A body for each kind that this version knows. */
const bodies: { readonly [Id in KindId]: fc.Arbitrary<Bodies[Id]> } = {
  'material-described': fc.record({ name, raw: fc.boolean() }),
  'material-measured': fc.record({ moisture_pctWet: fc.integer({ min: 1, max: 99 }) }),
  'stock-in': fc.record({ mass_kg: kilograms }),
  'stock-out': fc.record({ mass_kg: kilograms, why: fc.constantFrom('used', 'given', 'spoiled') }),
  'bay-set-up': fc.record({ name, wall: fc.constantFrom('boards', 'pallets') }),
  'heap-built': fc.record(
    { name, bay: bayId, layers: fc.array(layer, { maxLength: 4 }) },
    { requiredKeys: ['name', 'layers'] },
  ),
  'heap-fed': fc.record({ layers: fc.array(layer, { minLength: 1, maxLength: 2 }) }),
  reading: fc.record({ temp_degC: fc.integer({ min: -10, max: 80 }), point: fc.constantFrom('core', 'edge') }),
  turned: fc.record({ bay: bayId, outsideIn: fc.boolean() }, { requiredKeys: [] }),
  watered: fc.record(
    { volume_L: kilograms, liquid: fc.constantFrom('water', 'leachate') },
    { requiredKeys: ['volume_L'] },
  ),
  covered: fc.record({ cover: fc.constantFrom('none', 'straw') }),
  moved: fc.record({ bay: bayId }),
  combined: fc.record({
    from: fc.array(fc.record({ heap: heapId, share: part, raw: fc.boolean() }, { requiredKeys: ['heap'] }), {
      minLength: 1,
      maxLength: 2,
    }),
  }),
  split: fc.record({
    into: fc.array(fc.record({ heap: heapId, share: fc.constantFrom(0.1, 0.3333, 0.5) }), {
      minLength: 1,
      maxLength: 2,
    }),
  }),
  screened: fc.record({
    oversize: fc.record(
      { material: fc.constant('oversize'), mass_kg: kilograms, share: part, of: materialId },
      { requiredKeys: ['material', 'mass_kg', 'share'] },
    ),
  }),
  finished: fc.constant({}),
  spread: fc.record({
    of: fc.oneof(
      fc.record({ type: fc.constant('heap' as const), id: heapId, share: part }),
      fc.record({
        type: fc.constant('material' as const),
        id: materialId,
        mass_kg: kilograms,
        fromStock: fc.boolean(),
      }),
    ),
    workedIn: fc.boolean(),
  }),
  'bed-set-up': fc.record({ name, area_m2: kilograms }),
  sown: fc.record({ crop: fc.constantFrom('leek', 'kale') }),
  harvested: fc.record({ crop: fc.constantFrom('leek', 'kale') }),
  'bean-tested': fc.record({
    seen: fc.constant({ pots: 4, controls: 4, hurt: 'slight', controlsNormal: true, weeks: 3 } as const),
  }),
  'ripeness-tested': fc.record({
    seen: fc.constantFrom({ smell: 'earthy' } as const, { measured: { selfHeating_K: 8 } }),
  }),
  'soil-tested': fc.record({
    pH: fc.integer({ min: 4, max: 9 }),
    figures: fc.constant([{ element: 'phosphorus', value: 84, unit: 'ppm', method: 'bray-1' } as const]),
  }),
  note: fc.record({ text: fc.constantFrom('steaming', 'smells of forest', 'naïve 🐐') }),
  photo: fc.record({
    attachment: fc.constantFrom('a'.repeat(64), 'b'.repeat(64)),
    mediaType: fc.constant('image/jpeg'),
  }),
  series: fc.constant({
    attachment: 'c'.repeat(64),
    mediaType: 'application/octet-stream',
    quantity: 'temp_degC',
    probe: 'long-stem',
    from: minutesIn2026(0),
    to: minutesIn2026(60),
    count: 60,
  }),
  'attachment-removed': fc.record({ attachment: fc.constantFrom('a'.repeat(64), 'b'.repeat(64)) }),
  'local-clause': fc.record({ title: name, text: name, source: name }),
  withdrawal: fc.constant({}),
};

const subjectIds: Readonly<Record<string, fc.Arbitrary<string>>> = {
  heap: heapId,
  bed: bedId,
  bay: bayId,
  material: materialId,
  clause: fc.constantFrom('clause-1', 'clause-2'),
};

/** What an entry says, before it is known which entry it is. */
interface Saying {
  readonly kind: string;
  readonly kv: number;
  readonly about: Draft['about'];
  readonly body: Draft['body'];
}

/** Heaps are built, parted and brought together more often than the rest: that is where matter can go astray. */
const kindId: fc.Arbitrary<KindId> = fc.oneof(
  { weight: 2, arbitrary: fc.constant<KindId>('heap-built') },
  {
    weight: 3,
    arbitrary: fc.constantFrom<KindId>('heap-built', 'combined', 'split', 'screened', 'spread', 'bed-set-up'),
  },
  {
    weight: 8,
    arbitrary: fc.constantFrom(...(Object.keys(kinds) as KindId[]).filter((kind) => kind !== 'withdrawal')),
  },
);

const knownSaying: fc.Arbitrary<Saying> = kindId.chain((kind) => {
  const type = kinds[kind].subject;
  const about = type === null ? fc.constant([]) : (subjectIds[type] ?? heapId).map((id) => [{ type, id }]);
  return fc.record({
    kind: fc.constant(kind),
    kv: fc.constant(kinds[kind].kv),
    about,
    body: bodies[kind] as fc.Arbitrary<never>,
  });
});

/** A kind, or a version of a body, that this version of the program has never heard of. */
const unknownSaying: fc.Arbitrary<Saying> = fc.record({
  kind: fc.constantFrom('brew-started', 'worm-bed-fed', 'reading'),
  kv: fc.constantFrom(7, 8),
  about: fc.constant([{ type: 'brew', id: 'brew-1' }]),
  body: fc.dictionary(
    fc.constantFrom('oxygen_mgPerL', 'food_g', 'liste'),
    fc.oneof(fc.integer(), fc.string({ unit: 'grapheme' }), fc.constant([1, { deep: null }])),
  ),
});

/** Which entry is amended or withdrawn: by its number, or counted from the own one. */
type Pointing = { readonly way: 'amends' | 'withdraws'; readonly to: number; readonly fromHere: boolean } | null;

interface Line {
  readonly saying: Saying;
  readonly pointing: Pointing;
  readonly device: number;
  readonly happened: number;
  readonly writtenLater: number;
}

const way = fc.constantFrom('amends' as const, 'withdraws' as const);

const line: fc.Arbitrary<Line> = fc.record({
  saying: fc.oneof({ weight: 12, arbitrary: knownSaying }, { weight: 1, arbitrary: unknownSaying }),
  pointing: fc.oneof(
    { weight: 6, arbitrary: fc.constant(null) },
    // Also what comes later, what never comes, and one another in a ring.
    {
      weight: 2,
      arbitrary: fc.oneof(
        fc.record({ way, to: fc.nat({ max: 45 }), fromHere: fc.constant(false) }),
        fc.record({ way, to: fc.constantFrom(-2, -1, 1, 2), fromHere: fc.constant(true) }),
      ),
    },
  ),
  device: fc.nat({ max: 2 }),
  // Few moments, so that many entries tie.
  happened: fc.nat({ max: 40 }),
  writtenLater: fc.constantFrom(0, 0, 0, 1, 90, -90, 600_000),
});

function draftOfLine({ saying, pointing, device, happened, writtenLater }: Line, number: number): Draft {
  const target = pointing === null ? number : pointing.to + (pointing.fromHere ? number : 0);
  const to = target === number || target < 0 ? undefined : testId(target);
  const withdraws = pointing?.way === 'withdraws' ? to : undefined;
  const amends = pointing?.way === 'amends' ? to : undefined;
  const said = withdraws === undefined ? saying : { kind: 'withdrawal', kv: 1, about: [], body: {} };
  return {
    id: testId(number),
    holding: 'quarry-lane',
    device: `device-${device}`,
    by: 'ada',
    happened: minutesIn2026(happened * 30),
    zone: 'Europe/London',
    precision: happened % 3 === 0 ? 'day' : 'minute',
    written: minutesIn2026(happened * 30 + writtenLater),
    ...said,
    ...(amends === undefined ? {} : { amends }),
    ...(withdraws === undefined ? {} : { withdraws }),
  };
}

/** Seals drafts in their order, each device its own chain. */
export function sealByDevice(drafts: readonly Draft[]): readonly Entry[] {
  const tips = new Map<string, Tip>();
  return drafts.flatMap((draft) => {
    const sealed = seal(tips.get(draft.device) ?? null, [draft]);
    for (const entry of sealed) tips.set(draft.device, entry);
    return sealed;
  });
}

/**
 * Daybooks of a made-up holding, written by up to three devices: every kind, amendments and withdrawals (also of
 * each other, of what comes later and of what never comes), unknown kinds and newer versions, wrong clocks, ties.
 */
export function arbitraryDaybook(maxLength = 40): fc.Arbitrary<readonly Entry[]> {
  return fc.array(line, { maxLength, size: 'max' }).map((lines) => sealByDevice(lines.map(draftOfLine)));
}

/** Daybooks in which, besides, one id may stand for two sums, and one device may have given out one n twice. */
export function arbitraryTroubledDaybook(maxLength = 30): fc.Arbitrary<readonly Entry[]> {
  return fc
    .tuple(fc.array(line, { maxLength, size: 'max' }), fc.array(fc.tuple(fc.nat(), fc.boolean()), { maxLength: 3 }))
    .map(([lines, troubles]) => {
      const drafts = lines.map(draftOfLine);
      const entries = sealByDevice(drafts);
      const more = troubles.flatMap(([pick, sameId], i) => {
        const entry = entries[pick % Math.max(1, entries.length)];
        if (entry === undefined) return [];
        const { sum: _sum, v: _v, n, prev, ...draft } = entry;
        const id = sameId ? draft.id : testId(900 + i);
        return seal(n === 1 ? null : { n: n - 1, sum: prev ?? '' }, [
          { ...draft, id, by: 'ben', written: minutesIn2026(pick % 2000) },
        ]);
      });
      return [...entries, ...more];
    });
}
