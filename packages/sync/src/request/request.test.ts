import { canonical, type Entry, type ExchangeMessage, heldOf, maxGive_bytes, seal } from '@loamwright/daybook';
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { notThere } from '../exchange/not-there.ts';
import { digestOf } from '../exchange/offer.ts';
import { letGoOfRemoved } from '../let-go.ts';
import { chain, draft, holding, must, otherVersion, photoOf } from '../testing/entries.ts';
import { createMemoryKeeping, type MemoryKeeping } from '../testing/memory-keeping.ts';
import { answerRequest, standingOffer } from './answer.ts';
import { exchangeWith, type OtherSide } from './drive.ts';
import { jsonLines } from './json-lines.ts';

class Lost extends Error {}

/** What the simulated network does to the next request. */
type Fate = 'through' | 'request-lost' | 'answer-lost' | 'answer-cut' | 'twice';

interface Wire {
  readonly other: OtherSide;
  readonly sent: ExchangeMessage[];
}

/** A server on a keeping, reached through text as over a network. */
function reach(server: MemoryKeeping, fate: () => Fate = () => 'through'): Wire {
  const sent: ExchangeMessage[] = [];
  const ask = async (body: string): Promise<readonly string[]> => {
    const answered = await answerRequest(server, JSON.parse(body));
    if (!answered.ok) throw new Lost(answered.problems[0]?.code);
    const lines: string[] = [];
    for await (const line of answered.value.lines) lines.push(`${JSON.stringify(line)}\n`);
    return lines;
  };
  async function* send(message: ExchangeMessage): AsyncGenerator<unknown> {
    const body = JSON.stringify(message);
    sent.push(message);
    const what = fate();
    if (what === 'request-lost') throw new Lost(what);
    if (what === 'twice') await ask(body);
    const lines = await ask(body);
    if (what === 'answer-lost') throw new Lost(what);
    if (what === 'answer-cut') {
      yield* jsonLines(lines.slice(0, -1));
      throw new Lost(what);
    }
    yield* jsonLines(lines);
  }
  return { other: { offer: async () => standingOffer(server), send }, sent };
}

async function offerIn(keeping: MemoryKeeping): Promise<string> {
  return digestOf(holding, await keeping.heads());
}

/** A photo on a keeping, with the entry that shows it. */
function photograph(keeping: MemoryKeeping, device: string, number: number): string {
  const photo = photoOf(`photo ${number}`);
  keeping.shelf.set(photo.hash, photo);
  const body = { attachment: photo.hash, mediaType: photo.mediaType };
  keeping.write(device, (tip) => seal(tip, [draft(number, { device, kind: 'photo', body })]));
  return photo.hash;
}

function note(keeping: MemoryKeeping, device: string, number: number): void {
  keeping.write(device, (tip) => seal(tip, [draft(number, { device })]));
}

describe('an exchange by request and answer', () => {
  test('X10 X16 brings both sides to the same in one go, photos included, and knows it', async () => {
    const phone = createMemoryKeeping(chain(30));
    const server = createMemoryKeeping(chain(20, { first: 100, device: 'shed' }));
    const hash = photograph(phone, 'phone-of-ada', 300);
    const back = photograph(server, 'shed', 301);
    const done = await exchangeWith(phone, reach(server).other);
    expect(done).toMatchObject({ kept: 21, attached: 1, given: 31, givenAttachments: 1, problems: [] });
    expect(await offerIn(phone)).toBe(await offerIn(server));
    expect(server.shelf.has(hash)).toBe(true);
    expect(phone.shelf.has(back)).toBe(true);
    expect(notThere(await phone.heads(), must(done.held))).toEqual([]);
  });

  test('X5 asks once, with one small message, where both hold the same', async () => {
    const wire = reach(createMemoryKeeping(chain(50)));
    const done = await exchangeWith(createMemoryKeeping(chain(50)), wire.other);
    expect(done).toMatchObject({ kept: 0, given: 0, problems: [] });
    expect(wire.sent.map(({ type }) => type)).toEqual(['offer']);
    expect(JSON.stringify(wire.sent[0]).length).toBeLessThan(400);
  });

  test('an empty device takes on the holding of what it meets, and so does an empty server', async () => {
    const full = createMemoryKeeping(chain(4));
    const empty = createMemoryKeeping();
    expect(await exchangeWith(empty, reach(full).other)).toMatchObject({ kept: 4 });
    const server = createMemoryKeeping();
    expect(await exchangeWith(full, reach(server).other)).toMatchObject({ given: 4 });
    expect(await offerIn(server)).toBe(await offerIn(full));
    expect(await exchangeWith(createMemoryKeeping(), reach(createMemoryKeeping()).other)).toMatchObject({
      kept: 0,
      given: 0,
      held: [],
    });
  });

  test('X2 the server of another holding refuses, and nothing is mixed', async () => {
    const drafts = [1, 2].map((number) => draft(number, { holding: 'elsewhere', device: 'shed' }));
    const server = createMemoryKeeping(seal(null, drafts));
    const phone = createMemoryKeeping(chain(3, { first: 10 }));
    await expect(exchangeWith(phone, reach(server).other)).rejects.toThrow('exchange-other-holding');
    expect([phone.entries.size, server.entries.size]).toEqual([3, 2]);
  });

  test('X7 much goes in parts, each kept as it comes; a break loses none of them', async () => {
    const body = { text: 'ä🌱'.repeat(20_000) };
    const drafts = Array.from({ length: 60 }, (_, i) => draft(i + 1, { body }));
    const phone = createMemoryKeeping(seal(null, drafts));
    const server = createMemoryKeeping();
    let requests = 0;
    const broken = reach(server, () => (++requests === 3 ? 'request-lost' : 'through'));
    await expect(exchangeWith(phone, broken.other)).rejects.toThrow(Lost);
    const kept = server.entries.size;
    expect(kept).toBeGreaterThan(10);
    expect(kept).toBeLessThan(60);
    const whole = reach(server);
    expect(await exchangeWith(phone, whole.other)).toMatchObject({ given: 60 - kept });
    for (const message of [...broken.sent, ...whole.sent])
      expect(Buffer.byteLength(JSON.stringify(message))).toBeLessThanOrEqual(maxGive_bytes);
    // The other way round, over an answer of many lines that is cut.
    const other = createMemoryKeeping();
    const cut = reach(server, () => 'answer-cut');
    await expect(
      exchangeWith(other, { ...cut.other, send: cutGives(cut.other, reach(server).other) }),
    ).rejects.toThrow();
    expect(other.entries.size).toBeGreaterThan(10);
    const came = other.entries.size;
    expect(await exchangeWith(other, reach(server).other)).toMatchObject({ kept: 60 - came });
  });

  test('X9 loss, cuts and repetition: two phones and one server converge, and nothing is lost or counted twice', async () => {
    const fates: readonly Fate[] = ['through', 'through', 'request-lost', 'answer-lost', 'answer-cut', 'twice'];
    let broken = 0;
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.tuple(fc.nat({ max: 1 }), fc.constantFrom('note', 'photo', 'exchange')), {
          minLength: 10,
          maxLength: 40,
          size: 'max',
        }),
        fc.infiniteStream(fc.constantFrom(...fates)),
        async (acts, stream) => {
          const server = createMemoryKeeping();
          const phones = [createMemoryKeeping(), createMemoryKeeping()].map((keeping, i) => ({
            keeping,
            device: `p${i}`,
          }));
          let number = 1;
          let written = 0;
          const hashes: string[] = [];
          for (const [which, act] of acts) {
            const { keeping, device } = must(phones[which]);
            if (act === 'exchange') {
              const { other } = reach(server, () => must(stream.next().value));
              try {
                await exchangeWith(keeping, other);
              } catch (error) {
                if (!(error instanceof Lost)) throw error;
                broken += 1;
              }
              continue;
            }
            if (act === 'note') note(keeping, device, number);
            else hashes.push(photograph(keeping, device, number));
            number += 1;
            written += 1;
          }
          for (const { keeping } of [...phones, ...phones]) await exchangeWith(keeping, reach(server).other);
          for (const { keeping } of [...phones, { keeping: server }]) {
            expect(keeping.entries.size).toBe(written);
            expect([...keeping.shelf.keys()].sort()).toEqual([...hashes].sort());
          }
          for (const { keeping } of phones) {
            const wire = reach(server);
            const { held } = await exchangeWith(keeping, wire.other);
            expect(notThere(await keeping.heads(), must(held))).toEqual([]);
            expect(wire.sent).toHaveLength(written === 0 ? 0 : 1);
          }
        },
      ),
      { numRuns: 150, seed: 42 },
    );
    expect(broken).toBeGreaterThan(200);
  });

  test('X4 X11 branches, gaps and conflicts come across', async () => {
    const ten = chain(10);
    const branch = seal(must(ten[4]), [draft(200), draft(201)]);
    const phone = createMemoryKeeping([
      ...ten.slice(0, 3),
      ...ten.slice(7),
      otherVersion(must(ten[1]), { text: 'other' }),
    ]);
    const server = createMemoryKeeping([...ten.slice(0, 6), ...branch]);
    const { held } = await exchangeWith(phone, reach(server).other);
    await exchangeWith(phone, reach(server).other);
    expect(await offerIn(phone)).toBe(await offerIn(server));
    expect(held).not.toBeNull();
  });

  test('X17 what the other side will not keep is told, and is not called exchanged', async () => {
    const phone = createMemoryKeeping(chain(2));
    const [one, two] = chain(2);
    // Its sum does not fit: as after damage on the phone.
    const damaged = createMemoryKeeping([must(one), { ...must(two), body: { text: 'changed' } }]);
    const server = createMemoryKeeping();
    const done = await exchangeWith(damaged, reach(server).other);
    expect(done.held).toBeNull();
    expect(done.problems.map(({ code }) => code)).toContain('sum-mismatch');
    expect(server.entries.size).toBe(1);
    expect(phone.entries.size).toBe(2);
  });

  test('a full server keeps nothing and says so', async () => {
    const server = createMemoryKeeping();
    server.full = true;
    await expect(exchangeWith(createMemoryKeeping(chain(2)), reach(server).other)).rejects.toThrow('no room');
  });

  test('X14 rubbish in place of an answer gives problems, and no end without an end', async () => {
    const rubbish = [
      '',
      '[1]',
      '"x"',
      '{"type":"offer"}',
      '{"type":"took","v":1,"kept":-4,"problems":[3]}',
      '{'.repeat(9),
    ];
    async function* send(): AsyncGenerator<unknown> {
      yield* jsonLines(rubbish.map((line) => `${line}\n`));
    }
    const phone = createMemoryKeeping(chain(2));
    const done = await exchangeWith(phone, { offer: async () => null, send });
    expect(done).toMatchObject({ kept: 0, given: 0, held: null });
    expect(done.problems.length).toBeGreaterThan(3);
    expect(phone.entries.size).toBe(2);
  });

  test.each([
    [null, 'exchange-no-message'],
    ['x', 'exchange-no-message'],
    [{ type: 'offer', v: 2, holding }, 'exchange-newer'],
    [{ type: 'ask', v: 1, holding: 'elsewhere', stretches: [], attachments: [] }, 'exchange-other-holding'],
    [
      { type: 'ask', v: 1, holding, stretches: [{ device: 'a', from: 0, to: 2 ** 60 }], attachments: [] },
      'exchange-no-message',
    ],
    [
      { type: 'give', v: 1, holding, entries: Array.from({ length: 100_001 }), attachments: [], last: true },
      'exchange-too-many',
    ],
  ])('X14 a message that is none is refused: %#', async (message, code) => {
    const server = createMemoryKeeping(chain(1));
    const answered = await answerRequest(server, message);
    expect(answered).toMatchObject({ ok: false, problems: [{ code }] });
    expect(server.entries.size).toBe(1);
  });
});

/** Lets offers through, and cuts the answers to asks. */
function cutGives(cut: OtherSide, whole: OtherSide): OtherSide['send'] {
  return (message) => (message.type === 'ask' ? cut : whole).send(message);
}

describe('what a side is not known to have', () => {
  const ten = chain(10);
  const some = (...numbers: readonly number[]): readonly Entry[] => numbers.map((n) => must(ten[n - 1]));

  test('is what was written since', () => {
    expect(notThere(ten, heldOf(some(1, 2, 3, 4)))).toEqual(ten.slice(4));
    expect(notThere(ten, [])).toEqual(ten);
    expect(notThere(ten, heldOf(ten))).toEqual([]);
    expect(notThere(some(2, 3), heldOf(ten))).toEqual([]);
  });

  test('is another branch, and another version', () => {
    const branch = seal(must(ten[4]), [draft(200), draft(201)]);
    expect(notThere([...ten, ...branch], heldOf(ten))).toEqual(branch);
    const other = otherVersion(must(ten[4]), { text: 'other' });
    expect(notThere([...ten, other], heldOf(ten))).toEqual([other]);
    expect(notThere([...ten, other], heldOf([...ten, other]))).toEqual([]);
  });

  test('is empty exactly for those who hold all, whatever the set', () => {
    const all = [...ten, ...chain(4, { first: 50, device: 'shed' }), ...seal(must(ten[4]), [draft(200), draft(201)])];
    void fc.assert(
      fc.property(fc.subarray(all), fc.subarray(all), (here, there) => {
        const union = [...new Set([...here, ...there])];
        const missing = notThere(union, heldOf(there)).map(canonical);
        const truly = union.filter((entry) => !there.includes(entry)).map(canonical);
        expect(missing).toEqual(truly);
      }),
      { numRuns: 300, seed: 7 },
    );
  });
});

describe('what the keeper has let go', () => {
  test('X13 goes on every device that learns of it, and comes back with none', async () => {
    const phone = createMemoryKeeping();
    const server = createMemoryKeeping();
    const hash = photograph(phone, 'phone-of-ada', 1);
    const stays = photograph(phone, 'phone-of-ada', 2);
    await exchangeWith(phone, reach(server).other);
    expect(server.shelf.has(hash)).toBe(true);
    phone.write('phone-of-ada', (tip) =>
      seal(tip, [draft(3, { kind: 'attachment-removed', body: { attachment: hash } })]),
    );
    expect(await letGoOfRemoved(phone)).toBe(1);
    await exchangeWith(phone, reach(server).other);
    expect(server.shelf.has(hash)).toBe(true);
    expect(await letGoOfRemoved(server)).toBe(1);
    await exchangeWith(phone, reach(server).other);
    expect([...phone.shelf.keys()]).toEqual([stays]);
    expect([...server.shelf.keys()]).toEqual([stays]);
  });
});
