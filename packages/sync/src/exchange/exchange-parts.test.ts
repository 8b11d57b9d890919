import {
  type Ask,
  type Attachment,
  canonical,
  canonicalBytes,
  type Entry,
  type Give,
  type Head,
  maxAttachment_bytes,
  maxGive_bytes,
  type Offer,
  seal,
  sha256Hex,
} from '@loamwright/daybook';
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { toBase64 } from '../base64.ts';
import { chain, draft, holding, must, otherVersion, photoOf } from '../testing/entries.ts';
import { device, offer, own, some, ten } from '../testing/held.ts';
import { askFor } from './ask.ts';
import { givesFor, readGive } from './give.ts';
import { digestOf } from './offer.ts';
import { readMessage } from './read-message.ts';

const stretchesOf = (here: readonly Entry[], there: readonly Entry[]) =>
  askFor(own(here), offer(there))?.stretches ?? [];

async function all(gives: AsyncIterable<Give>): Promise<readonly Give[]> {
  const list: Give[] = [];
  for await (const give of gives) list.push(give);
  return list;
}

describe('the offer', () => {
  test('X3 is a function of the set alone, and equal offers mean equal sets', () => {
    const versions = [
      ...ten,
      ...chain(4, { first: 50, device: 'shed' }),
      otherVersion(must(ten[3]), { text: 'other' }),
    ];
    const subset = fc.subarray(versions);
    void fc.assert(
      fc.property(subset, subset, fc.infiniteStream(fc.nat()), (a, b, order) => {
        const shuffled = [...a].sort(() => (order.next().value % 3) - 1);
        expect(canonical(offer([...shuffled, ...a]))).toBe(canonical(offer(a)));
        const isSame = canonical(offer(a)) === canonical(offer(b));
        expect(isSame).toBe(a.length === b.length && a.every((entry) => b.includes(entry)));
        expect(digestOf(holding, a) === digestOf(holding, b)).toBe(isSame);
      }),
      { numRuns: 300, seed: 3 },
    );
  });

  test('says whole chains in few words', () => {
    expect(offer(ten)).toEqual({
      type: 'offer',
      v: 1,
      holding,
      held: [{ device, runs: [{ from: 1, to: 10, sum: must(ten[9]).sum }], sides: [] }],
      conflicts: [],
    });
  });
});

describe('the ask', () => {
  test('X5 of equal offers: nothing', () => {
    expect(askFor(own(ten), offer(ten))).toBeNull();
    expect(askFor(own([]), offer([]))).toBeNull();
    expect(askFor(own(ten), offer(some(2, 3, 7)))).toBeNull();
  });

  test('X4 the numbers of a run of which nothing is held', () => {
    expect(stretchesOf([], ten)).toEqual([{ device, from: 1, to: 10 }]);
    expect(stretchesOf(some(1, 2, 5), ten)).toEqual([
      { device, from: 3, to: 4 },
      { device, from: 6, to: 10 },
    ]);
  });

  test('X4 where the top is held and the way down stops, everything below the stop', () => {
    expect(stretchesOf(some(1, 2, 3, 7, 8, 9, 10), ten)).toEqual([{ device, from: 1, to: 6 }]);
    expect(stretchesOf(some(10), ten)).toEqual([{ device, from: 1, to: 9 }]);
    expect(stretchesOf(some(4, 5, 6), some(4, 5, 6))).toEqual([]);
  });

  test('X4 the whole run where every number is held, but as another branch', () => {
    const branch = chain(10, { first: 300 });
    expect(stretchesOf(branch, ten)).toEqual([{ device, from: 1, to: 10 }]);
  });

  test('X4 a side that is not held', () => {
    const other = otherVersion(must(ten[4]), { text: 'other' });
    expect(stretchesOf(ten, [...ten, other])).toEqual([{ device, from: 5, to: 5 }]);
    expect(stretchesOf([...ten, other], ten)).toEqual([]);
  });

  test('X13 attachments are asked for only where they are missing, in order, also when nothing else is', () => {
    const hashes = ['b', 'a'].map((letter) => photoOf(letter).hash);
    expect(askFor(own(ten, hashes), offer(ten))).toEqual({
      type: 'ask',
      v: 1,
      holding,
      stretches: [],
      attachments: [...hashes].sort(),
    });
  });

  test('X14 endless runs, and very many of them against very many entries, cost no more than reading them', () => {
    const endless: Offer = {
      ...offer([]),
      held: [{ device, runs: [{ from: 1, to: Number.MAX_SAFE_INTEGER, sum: 'a'.repeat(64) }], sides: [] }],
    };
    expect(askFor(own(some(1, 4)), endless)?.stretches).toEqual([
      { device, from: 2, to: 3 },
      { device, from: 5, to: Number.MAX_SAFE_INTEGER },
    ]);
    const count = 40_000;
    const heads = Array.from(
      { length: count },
      (_, i): Head => ({ ...must(ten[0]), n: 2 * i + 1, sum: `${i}`, prev: null }),
    );
    const runs = Array.from({ length: count }, (_, i) => ({ from: 2 * i + 2, to: 2 * i + 2, sum: 'b'.repeat(64) }));
    const before_ms = performance.now();
    expect(askFor(own(heads), { ...endless, held: [{ device, runs, sides: [] }] })?.stretches).toHaveLength(count);
    // A walk of every run through every head would be 1.6 × 10^9 steps: many times this.
    expect(performance.now() - before_ms).toBeLessThan(2000);
  });
});

describe('the give', () => {
  const ask: Ask = { type: 'ask', v: 1, holding, stretches: [], attachments: [] };

  test('X6 an ask of which nothing is here is answered, too', async () => {
    expect(await all(givesFor(ask, [], []))).toEqual([
      { type: 'give', v: 1, holding, entries: [], attachments: [], last: true },
    ]);
  });

  test('X7 no part is larger than the limit as JSON, each can be kept by itself, and only the last is marked', async () => {
    const body = { text: 'ä🌱'.repeat(20_000) };
    const entries = seal(
      null,
      Array.from({ length: 40 }, (_, i) => draft(i + 1, { body })),
    );
    const photos = Array.from({ length: 9 }, (_, i): Attachment => {
      const bytes = new Uint8Array(i === 4 ? maxAttachment_bytes : 700_000).fill(i);
      return { hash: sha256Hex(bytes), mediaType: 'image/jpeg', bytes };
    });
    const gives = await all(givesFor(ask, entries, photos));
    expect(gives.length).toBeGreaterThan(4);
    for (const give of gives) {
      const size_bytes = Buffer.byteLength(JSON.stringify(give));
      const isOneAttachment = give.entries.length === 0 && give.attachments.length === 1;
      expect(size_bytes <= maxGive_bytes || isOneAttachment).toBe(true);
    }
    expect(gives.map(({ last }) => last)).toEqual([...gives.slice(1).map(() => false), true]);
    expect(gives.flatMap((give) => give.entries)).toEqual(entries);
    const received = gives.map((give) => readGive(give));
    expect(received.flatMap(({ problems }) => problems)).toEqual([]);
    const back = received.flatMap(({ attachments }) => attachments);
    expect(back.map(({ hash }) => hash)).toEqual(photos.map(({ hash }) => hash));
    expect(back.every(({ bytes }, i) => Buffer.from(bytes).equals(must(photos[i]).bytes))).toBe(true);
  });

  test('X1 X12 is plain JSON, entries of unknown kinds and newer versions included', async () => {
    const strange = draft(1, { kind: 'moon-phase', kv: 9, body: { phase: 0.25, of: ['ø', '\u0000', '🌒'] } });
    const newer = { ...strange, v: 2, n: 1, prev: null, weather: { rain_mm: 3.5 } };
    const entry = { ...newer, sum: sha256Hex(canonicalBytes(newer)) };
    const [give] = await all(givesFor(ask, [entry], [photoOf('a')]));
    const sent: unknown = JSON.parse(JSON.stringify(give));
    expect(sent).toEqual(give);
    const read = readMessage(sent, holding);
    if (!read.ok || read.value.type !== 'give') throw new Error('it was to be a give');
    expect(readGive(read.value).entries.map(canonical)).toEqual([canonical(entry)]);
  });

  test('X8 what fails is left out and told, the rest is kept', () => {
    const photo = photoOf('goats');
    const good = { hash: photo.hash, mediaType: photo.mediaType, bytes_base64: toBase64(photo.bytes) };
    const stranger = must(seal(null, [draft(9, { holding: 'mill-farm' })])[0]);
    const received = readGive({
      type: 'give',
      v: 1,
      holding,
      last: true,
      entries: [ten[0], { ...ten[1], body: { text: 'changed' } }, null, 'text', stranger, ten[2]],
      attachments: [
        { ...good, hash: 'c'.repeat(64) },
        good,
        { ...good, bytes_base64: `${good.bytes_base64.slice(0, -1)}*` },
        { ...good, mediaType: 'text/html; charset=utf-8' },
        { ...good, bytes_base64: 'A'.repeat(12 * 1024 * 1024) },
        7,
        {},
      ],
    });
    expect(received.entries).toEqual([ten[0], ten[2]]);
    expect(received.attachments).toEqual([{ hash: photo.hash, mediaType: photo.mediaType, bytes: photo.bytes }]);
    expect(received.problems.map(({ code, path }) => `${code} ${path}`)).toEqual([
      'sum-mismatch entries[1].sum',
      'wrong-type entries[2]',
      'wrong-type entries[3]',
      'exchange-other-holding entries[4].holding',
      'exchange-attachment-changed attachments[0].hash',
      'exchange-no-attachment attachments[2].bytes_base64',
      'exchange-no-attachment attachments[3].mediaType',
      'exchange-attachment-too-large attachments[4].bytes_base64',
      'exchange-no-attachment attachments[5]',
      'exchange-no-attachment attachments[6]',
    ]);
  });
});
