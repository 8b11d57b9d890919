import { attachmentsOf, canonical, type Entry, seal } from '@loamwright/daybook';
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bring } from './bring.ts';
import { offerOf } from './exchange/offer.ts';
import { createExchange } from './exchange.ts';
import { chain, draft, holding, must, otherVersion, photoOf } from './testing/entries.ts';
import { type Connection, createNetwork, type Network, type Tally } from './testing/network.ts';

/** Three devices in a line: 0 and 2 never meet. */
const line: readonly Connection[] = [
  [0, 1],
  [2, 1],
];
const devices = 3;

/** What the world has written so far, and photos taken. */
interface World {
  readonly network: Network;
  readonly written: Entry[];
  readonly photos: Set<string>;
  next: number;
}

type Act = (world: World) => Promise<void>;

const device = fc.nat({ max: devices - 1 });
const connection = fc.constantFrom(...line);
const underWay = fc.tuple(connection, fc.boolean(), fc.nat({ max: 20 }));

const acts: readonly fc.WeightedArbitrary<Act>[] = [
  {
    weight: 6,
    arbitrary: fc.tuple(device, fc.integer({ min: 1, max: 4 })).map(
      ([d, count]): Act =>
        (world) =>
          write(world, d, count),
    ),
  },
  {
    weight: 2,
    arbitrary: fc.tuple(device, fc.nat()).map(
      ([d, pick]): Act =>
        (world) =>
          writeFromBackup(world, d, pick),
    ),
  },
  {
    weight: 1,
    arbitrary: fc.tuple(device, fc.nat()).map(
      ([d, pick]): Act =>
        (world) =>
          disagree(world, d, pick),
    ),
  },
  {
    weight: 2,
    arbitrary: fc.tuple(device, fc.nat()).map(
      ([d, pick]): Act =>
        (world) =>
          photograph(world, d, pick),
    ),
  },
  {
    weight: 2,
    arbitrary: fc.tuple(device, fc.array(fc.nat(), { maxLength: 6 })).map(
      ([d, picks]): Act =>
        (world) =>
          handOver(world, d, picks),
    ),
  },
  {
    weight: 6,
    arbitrary: connection.map(
      (on): Act =>
        (world) =>
          world.network.begin(on),
    ),
  },
  {
    weight: 30,
    arbitrary: underWay.map(
      ([on, back, pick]): Act =>
        (world) =>
          world.network.deliver(on, back, pick),
    ),
  },
  {
    weight: 3,
    arbitrary: underWay.map(
      ([on, back, pick]): Act =>
        async (world) =>
          world.network.lose(on, back, pick),
    ),
  },
  {
    weight: 3,
    arbitrary: underWay.map(
      ([on, back, pick]): Act =>
        async (world) =>
          world.network.repeat(on, back, pick),
    ),
  },
  {
    weight: 1,
    arbitrary: device.map(
      (d): Act =>
        async (world) =>
          world.network.crash(d),
    ),
  },
  {
    weight: 3,
    arbitrary: fc.tuple(device, fc.boolean()).map(
      ([d, full]): Act =>
        async (world) =>
          fill(world, d, full),
    ),
  },
];

const keepingOf = (world: World, d: number) => must(world.network.keepings[d]);
const nameOf = (d: number): string => `device-${d}`;

async function write(world: World, d: number, count: number): Promise<void> {
  const drafts = Array.from({ length: count }, (_, i) => draft(world.next + i, { device: nameOf(d) }));
  world.next += count;
  world.written.push(...keepingOf(world, d).write(nameOf(d), (tip) => seal(tip, drafts)));
}

/** As after a restored backup: the device goes on from an earlier entry and gives out numbers again. */
async function writeFromBackup(world: World, d: number, pick: number): Promise<void> {
  const own = [...keepingOf(world, d).entries.values()].filter((entry) => entry.device === nameOf(d));
  const tip = own[pick % Math.max(1, own.length)] ?? null;
  const entries = seal(tip, [draft(world.next, { device: nameOf(d) }), draft(world.next + 1, { device: nameOf(d) })]);
  world.next += 2;
  world.written.push(...entries);
  await keepFull(world, d, entries);
}

/** One id with two contents. */
async function disagree(world: World, d: number, pick: number): Promise<void> {
  const one = world.written[pick % Math.max(1, world.written.length)];
  if (one === undefined) return;
  const other = otherVersion(one, { text: `told differently ${pick % 3}` });
  world.written.push(other);
  await keepFull(world, d, [other]);
}

async function photograph(world: World, d: number, pick: number): Promise<void> {
  const photo = photoOf(`photo ${world.next}`);
  const removed = [...world.photos][pick % 5];
  world.next += 1;
  const body = removed === undefined ? { attachment: photo.hash, mediaType: photo.mediaType } : { attachment: removed };
  const kind = removed === undefined ? 'photo' : 'attachment-removed';
  const entries = keepingOf(world, d).write(nameOf(d), (tip) =>
    seal(tip, [draft(world.next, { device: nameOf(d), kind, body })]),
  );
  world.next += 1;
  world.written.push(...entries);
  if (removed === undefined) {
    world.photos.add(photo.hash);
    keepingOf(world, d).shelf.set(photo.hash, photo);
  }
}

/** Some entries of others, as brought in an old file: with gaps. */
async function handOver(world: World, d: number, picks: readonly number[]): Promise<void> {
  const some = picks.flatMap((pick) => world.written[pick % Math.max(1, world.written.length)] ?? []);
  await keepFull(world, d, some);
}

async function fill(world: World, d: number, full: boolean): Promise<void> {
  keepingOf(world, d).full = full;
}

/** Keeps whatever the device's fullness: it is the exchange that shall meet a full keeping, not the test's own writing. */
async function keepFull(world: World, d: number, entries: readonly Entry[]): Promise<void> {
  const keeping = keepingOf(world, d);
  const { full } = keeping;
  keeping.full = false;
  await keeping.keep(entries);
  keeping.full = full;
}

async function offersIn(world: World): Promise<readonly string[]> {
  return Promise.all(world.network.keepings.map(async (keeping) => canonical(offerOf(holding, await keeping.heads()))));
}

const versions = (entries: Iterable<Entry>): readonly string[] => [...new Set([...entries].map(canonical))].sort();

describe('devices that lose, repeat and reorder messages, crash and fill up', () => {
  test('X3 X9 X10 X11 X13 once healed, hold the same, and nothing ever written is lost', async () => {
    const total: Tally & { runs: number; conflicts: number; doubled: number; photos: number } = {
      ...{ delivered: 0, lost: 0, repeated: 0, reordered: 0, crashed: 0, refused: 0, kept: 0 },
      ...{ runs: 0, conflicts: 0, doubled: 0, photos: 0 },
    };
    await fc.assert(
      fc.asyncProperty(fc.array(fc.oneof(...acts), { minLength: 40, maxLength: 160, size: 'max' }), async (list) => {
        const world: World = { network: createNetwork(devices), written: [], photos: new Set(), next: 1 };
        for (const act of list) await act(world);
        for (const [key, count] of Object.entries(world.network.tally)) total[key as keyof Tally] += count;

        for (const keeping of world.network.keepings) keeping.full = false;
        for (const on of [...line, ...line]) await world.network.settle(on);

        const [first, ...others] = await offersIn(world);
        for (const other of others) expect(other).toBe(first);
        const all = versions(world.written);
        for (const keeping of world.network.keepings) expect(versions(keeping.entries.values())).toEqual(all);
        const wanted = attachmentsOf(world.written).wanted;
        for (const keeping of world.network.keepings)
          expect([...keeping.shelf.keys()]).toEqual(expect.arrayContaining([...wanted]));
        // Equal sides only offer.
        for (const on of line) expect(await world.network.settle(on)).toBe(2);

        const offer = offerOf(holding, await must(world.network.keepings[0]).heads());
        total.runs += 1;
        total.conflicts += offer.conflicts.length;
        total.doubled += offer.held.filter(({ sides }) => sides.length > 0).length;
        total.photos += wanted.length;
      }),
      { numRuns: 120, seed: 20260301 },
    );
    // The runs did something, each kind of it many times.
    expect(total.runs).toBe(120);
    expect(total.delivered).toBeGreaterThan(2000);
    expect(total.kept).toBeGreaterThan(1000);
    const { lost, repeated, reordered, crashed, refused, conflicts, doubled, photos } = total;
    for (const [kind, count] of Object.entries({
      lost,
      repeated,
      reordered,
      crashed,
      refused,
      conflicts,
      doubled,
      photos,
    }))
      expect(count, kind).toBeGreaterThan(100);
  });
});

describe('two sides', () => {
  const two = async (a: readonly Entry[], b: readonly Entry[]) => {
    const network = createNetwork(2);
    await must(network.keepings[0]).keep(a);
    await must(network.keepings[1]).keep(b);
    const messages = await network.settle([0, 1]);
    const [first, second] = network.keepings.map((keeping) => versions(keeping.entries.values()));
    return { network, messages, first, second };
  };

  test('X10 one exchange is enough in both directions', async () => {
    const a = chain(30);
    const b = chain(20, { first: 100, device: 'shed' });
    const { first, second, messages } = await two(a, b);
    expect(first).toEqual(versions([...a, ...b]));
    expect(second).toEqual(first);
    // Offer, offer, an ask and a give each way.
    expect(messages).toBe(6);
  });

  test('X4 a side with a gap, and one with another branch, end up with all', async () => {
    const a = chain(12);
    const branch = seal(
      must(a[4]),
      Array.from({ length: 6 }, (_, i) => draft(200 + i)),
    );
    const b = [...a.slice(0, 3), ...a.slice(5, 6), ...branch];
    const { first, second } = await two(a, b);
    expect(first).toEqual(versions([...a, ...branch]));
    expect(second).toEqual(first);
  });

  test('X11 a conflict travels to both sides', async () => {
    const a = chain(3);
    const b = [...chain(3).slice(0, 2), otherVersion(must(a[1]), { text: 'told differently' })];
    const { network, first, second } = await two(a, b);
    expect(second).toEqual(first);
    const offer = offerOf(holding, await must(network.keepings[0]).heads());
    expect(offer.conflicts.map(({ id }) => id)).toEqual([must(a[1]).id]);
  });

  test('X13 what the keeper has let go is neither asked for nor given, wherever its bytes still lie', async () => {
    const photo = photoOf('the neighbour in her garden');
    const shown = draft(1, { kind: 'photo', body: { attachment: photo.hash, mediaType: photo.mediaType } });
    const gone = draft(2, { kind: 'attachment-removed', body: { attachment: photo.hash } });
    const [entry, removal] = seal(null, [shown, gone]);
    const network = createNetwork(2);
    const [a, b] = network.keepings.map(must);
    await must(a).keep([must(entry), must(removal)]);
    must(a).shelf.set(photo.hash, photo);
    await must(b).keep([must(entry)]);
    // Asked for by one that does not know yet.
    const ask = { type: 'ask', v: 1, holding, stretches: [], attachments: [photo.hash] };
    const { send } = await createExchange(must(a), holding).receive(ask);
    const given = [];
    for await (const message of send) given.push(message);
    expect(given).toMatchObject([{ type: 'give', attachments: [], last: true }]);
    await network.settle([1, 0]);
    expect(must(b).shelf.size).toBe(0);
    expect(must(b).entries.size).toBe(2);
  });

  test('an attachment that no entry wants is left out and reported', async () => {
    const network = createNetwork(2);
    const photo = photoOf('of nothing');
    const report = await bring(must(network.keepings[0]), { entries: chain(2), attachments: [photo] });
    expect(report).toMatchObject({
      kept: 2,
      attached: 0,
      problems: [{ code: 'exchange-attachment-unwanted', path: photo.hash }],
    });
  });
});
