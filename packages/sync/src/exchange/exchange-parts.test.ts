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
import { askFor } from './ask.ts';
import { givesFor, readGive } from './give.ts';
import { maxItems } from './limits.ts';
import { begin, goOn, idle, receive } from './machine.ts';
import { digestOf, offerOf } from './offer.ts';
import { readMessage } from './read-message.ts';

const own = (heads: readonly Head[], attachmentsMissing: readonly string[] = []) => ({
  holding,
  heads,
  attachmentsMissing,
});
const offer = (heads: readonly Head[]): Offer => offerOf(holding, heads);
const stretchesOf = (here: readonly Entry[], there: readonly Entry[]) =>
  askFor(own(here), offer(there))?.stretches ?? [];

async function all(gives: AsyncIterable<Give>): Promise<readonly Give[]> {
  const list: Give[] = [];
  for await (const give of gives) list.push(give);
  return list;
}

const device = 'phone-of-ada';
const ten = chain(10);
const some = (...numbers: readonly number[]): readonly Entry[] => numbers.map((n) => must(ten[n - 1]));

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

describe('reading a message', () => {
  const good = offer([
    ...ten,
    otherVersion(must(ten[3]), { text: 'other' }),
    ...chain(2, { first: 50, device: 'shed' }),
  ]);
  const hash = 'a'.repeat(64);
  const run = (from: number, to: number) => ({ from, to, sum: hash });
  const heldWith = (over: object) => ({ ...good, held: [{ device: 'a', runs: [], sides: [], ...over }] });

  test('X1 an offer, an ask and a give come back as they were sent', () => {
    const ask: Ask = { type: 'ask', v: 1, holding, stretches: [{ device, from: 1, to: 9 }], attachments: [hash] };
    const give: Give = { type: 'give', v: 1, holding, entries: ten, attachments: [], last: true };
    for (const message of [good, ask, give]) {
      expect(readMessage(JSON.parse(JSON.stringify(message)), holding)).toEqual({ ok: true, value: message });
    }
  });

  test.each([
    ['null', null, 'exchange-no-message', ''],
    ['a list', [good], 'exchange-no-message', ''],
    ['text', 'offer', 'exchange-no-message', ''],
    ['nothing in it', {}, 'exchange-no-message', 'type'],
    ['an unknown type', { ...good, type: 'wish' }, 'exchange-no-message', 'type'],
    ['a newer version', { ...good, v: 2 }, 'exchange-newer', 'v'],
    ['no version', { ...good, v: '1' }, 'exchange-no-message', 'v'],
    ['X2 another holding', { ...good, holding: 'mill-farm' }, 'exchange-other-holding', 'holding'],
    ['a holding that is no name', { ...good, holding: '../mill' }, 'exchange-no-message', 'holding'],
    ['no list', { ...good, held: { length: 3 } }, 'exchange-no-message', 'held'],
    ['a device twice', { ...good, held: [good.held[0], good.held[0]] }, 'exchange-no-message', 'held[1].device'],
    ['X14 runs that overlap', heldWith({ runs: [run(1, 9), run(9, 12)] }), 'exchange-no-message', 'held[0].runs[1]'],
    ['X14 a run backwards', heldWith({ runs: [run(9, 1)] }), 'exchange-no-message', 'held[0].runs[0]'],
    [
      'X14 a number beyond 2^53 − 1',
      heldWith({ runs: [run(1, 2 ** 53)] }),
      'exchange-no-message',
      'held[0].runs[0].to',
    ],
    ['n = 0', heldWith({ runs: [run(0, 2)] }), 'exchange-no-message', 'held[0].runs[0].from'],
    [
      'half a number',
      heldWith({ sides: [{ n: 1.5, id: must(ten[0]).id, sum: hash }] }),
      'exchange-no-message',
      'held[0].sides[0].n',
    ],
    [
      'a sum that is none',
      heldWith({ runs: [{ from: 1, to: 2, sum: 'A'.repeat(64) }] }),
      'exchange-no-message',
      'held[0].runs[0].sum',
    ],
    [
      'a conflict of nothing',
      { ...good, conflicts: [{ id: 'x', sums: [] }] },
      'exchange-no-message',
      'conflicts[0].id',
    ],
    ['X14 too many items', { ...good, held: Array.from({ length: maxItems + 1 }) }, 'exchange-too-many', 'held'],
    [
      'a stretch backwards',
      { type: 'ask', v: 1, holding, stretches: [{ device, from: 3, to: 2 }], attachments: [] },
      'exchange-no-message',
      'stretches[0]',
    ],
    [
      'a path as a hash',
      { type: 'ask', v: 1, holding, stretches: [], attachments: ['../../etc/passwd'] },
      'exchange-no-message',
      'attachments[0]',
    ],
    [
      'X14 too many in all',
      {
        type: 'ask',
        v: 1,
        holding,
        stretches: Array.from({ length: 60_000 }, () => ({ device, from: 1, to: 1 })),
        attachments: Array.from({ length: 60_000 }, () => hash),
      },
      'exchange-too-many',
      'attachments',
    ],
    [
      'a give without its mark',
      { type: 'give', v: 1, holding, entries: [], attachments: [] },
      'exchange-no-message',
      'last',
    ],
  ])('%s', (_, message, code, path) => {
    const read = readMessage(message, holding);
    expect(read).toMatchObject({ ok: false, problems: [{ code, path }] });
    expect(JSON.stringify(read).length).toBeLessThan(400);
    // The machine keeps nothing of it and says nothing.
    const state = idle(holding);
    expect(receive(state, message)).toMatchObject({
      state,
      keep: { entries: [], attachments: [] },
      answer: null,
      after: null,
    });
  });

  test('whatever comes, it never throws', () => {
    const key = fc.constantFrom(
      'type',
      'v',
      'holding',
      'held',
      'conflicts',
      'stretches',
      'attachments',
      'entries',
      'last',
      'device',
      'runs',
      'sides',
      'from',
      'to',
      'sum',
      'n',
      'id',
    );
    const value = fc.oneof(
      fc.constantFrom<unknown>('offer', 'ask', 'give', holding, 1, device, hash, true),
      fc.jsonValue(),
    );
    const message = fc.dictionary(key, fc.oneof(value, fc.array(fc.dictionary(key, value))));
    void fc.assert(
      fc.property(fc.oneof(message, fc.anything()), (input) => {
        expect(typeof readMessage(input, holding).ok).toBe('boolean');
        const whole = typeof input === 'object' && input !== null ? { ...input, v: 1, holding } : input;
        receive(idle(holding), whole);
      }),
      { numRuns: 2000, seed: 11 },
    );
  });
});

describe('the machine', () => {
  test('the side that began asks; the other answers an offer with its own as well', () => {
    const began = begin(own(ten));
    expect(began.send).toEqual([offer(ten)]);
    const step = receive(idle(holding), began.send[0]);
    expect(step.after).toBe('offer');
    expect(goOn(step.state, own([]), 'offer').send.map(({ type }) => type)).toEqual(['ask', 'offer']);
    const back = receive(began.state, offer([]));
    expect(goOn(back.state, own(ten), 'offer').send).toEqual([]);
  });

  test('X9 asks once: an answer that brought nothing, or came twice, is not followed by the same ask', () => {
    const offered = receive(idle(holding), offer(ten));
    const first = goOn(offered.state, own([]), 'give');
    expect(first.send).toHaveLength(1);
    expect(goOn(first.state, own([]), 'give').send).toEqual([]);
    expect(goOn(goOn(first.state, own([]), 'give').state, own([]), 'give').send).toEqual([]);
    expect(goOn(first.state, own(some(1, 2)), 'give').send).toMatchObject([{ stretches: [{ from: 3, to: 10 }] }]);
  });

  test('its state is plain data', () => {
    const { state } = receive(idle(holding), offer(ten));
    expect(JSON.parse(JSON.stringify(state))).toEqual(state);
  });
});
