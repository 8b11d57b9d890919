import { canonical, type Entry, type Keeping, KeepingError, seal, type Tip } from '@loamwright/daybook';
import { describe, expect, test } from 'vitest';
import { damageContract } from './contract-damage.ts';
import { failureContract } from './contract-failure.ts';
import { bytesOf, chain, draft, fromTheFuture, holding, must, otherVersion } from './entries.ts';
import { type MakeKit, rejection } from './kit.ts';
import { withKeeping } from './with-keeping.ts';

/** Every rule of the Keeping port (PORTS.md), tried on one way of keeping. Titles carry the rule's number. */
export function keepingContract(name: string, makeKit: MakeKit): void {
  describe(`keeping in ${name}`, () => {
    keepContract(makeKit);
    writeContract(makeKit);
    readContract(makeKit);
    attachmentContract(makeKit);
    damageContract(makeKit);
    failureContract(makeKit);
  });
}

function texts(entries: readonly Entry[]): readonly string[] {
  return entries.map(canonical);
}

function keepContract(makeKit: MakeKit): void {
  describe('what is kept', () => {
    const { kit, keeping } = withKeeping(makeKit);

    test('K1 an entry already here changes nothing and counts as there', async () => {
      const entries = chain(3);
      expect(await keeping().keep(entries)).toEqual({ kept: 3, there: 0, conflicts: [] });
      expect(await keeping().keep([...entries].reverse())).toEqual({ kept: 0, there: 3, conflicts: [] });
      expect(await keeping().keep([...entries, ...chain(1, { first: 9, device: 'shed' })])).toEqual({
        kept: 1,
        there: 3,
        conflicts: [],
      });
      expect((await keeping().read()).entries).toHaveLength(4);
      expect(await keeping().keep([])).toEqual({ kept: 0, there: 0, conflicts: [] });
    });

    test('K2 one id with two sums: both kept, both read back, the conflict reported with every sum in order', async () => {
      const [entry] = chain(1);
      const versions = [
        must(entry),
        otherVersion(must(entry), { text: 'b' }),
        otherVersion(must(entry), { text: 'c' }),
      ];
      await keeping().keep(versions.slice(0, 1));
      const second = await keeping().keep(versions.slice(1, 2));
      expect(second.kept).toBe(1);
      expect(second.conflicts).toEqual([
        { id: must(entry).id, sums: [must(versions[0]).sum, must(versions[1]).sum].sort() },
      ]);
      const third = await keeping().keep(versions);
      expect(third).toEqual({
        kept: 1,
        there: 2,
        conflicts: [{ id: must(entry).id, sums: versions.map(({ sum }) => sum).sort() }],
      });
      expect(texts((await keeping().read()).entries)).toEqual(texts(versions));
    });

    test('K2 within one batch too', async () => {
      const entry = must(chain(1)[0]);
      const other = otherVersion(entry);
      expect(await keeping().keep([entry, other])).toEqual({
        kept: 2,
        there: 0,
        conflicts: [{ id: entry.id, sums: [entry.sum, other.sum].sort() }],
      });
    });

    test('K3 an entry reads back exactly: unknown kinds, newer versions and unknown fields included', async () => {
      const entries = [fromTheFuture(1), must(chain(1, { first: 2, device: 'shed' })[0])];
      await keeping().keep(entries);
      expect(texts((await keeping().read()).entries)).toEqual(texts(entries));
      const again = await kit().open();
      expect(texts((await again.read()).entries)).toEqual(texts(entries));
      expect(texts(await again.pick([{ device: 'phone-of-ada', from: 1, to: 9 }]))).toEqual(texts(entries.slice(0, 1)));
      await again.close();
    });

    test('K4 an entry of another holding is refused, and with it the whole batch', async () => {
      const stranger = must(seal(null, [draft(7, { device: 'van', holding: 'mill-farm' })])[0]);
      await keeping().keep(chain(1));
      expect(await rejection(keeping().keep([...chain(1, { first: 5, device: 'shed' }), stranger]))).toBe(
        'other-holding',
      );
      expect(await rejection(keeping().write('van', () => [stranger]))).toBe('other-holding');
      expect((await keeping().read()).entries).toHaveLength(1);
    });

    test('K4 in an empty keeping the first entry of a batch decides', async () => {
      const stranger = must(seal(null, [draft(7, { device: 'van', holding: 'mill-farm' })])[0]);
      expect(await rejection(keeping().keep([...chain(1), stranger]))).toBe('other-holding');
      expect(await keeping().holding()).toBeNull();
      await keeping().keep([stranger]);
      expect(await keeping().holding()).toBe('mill-farm');
    });

    test('K5 the same version twice in one batch is kept once', async () => {
      const [a, b] = chain(2);
      expect(await keeping().keep([must(a), must(b), must(a), must(a)])).toEqual({ kept: 2, there: 2, conflicts: [] });
      expect((await keeping().read()).entries).toHaveLength(2);
    });
  });
}

function writeContract(makeKit: MakeKit): void {
  describe('writing', () => {
    const { kit, keeping } = withKeeping(makeKit);

    test('K9 of two that write for one device at once, each sees the other: no n is given out twice', async () => {
      const other = await kit().open();
      const write = (by: Keeping, number: number): Promise<readonly Entry[]> =>
        by.write('phone-of-ada', (tip) => seal(tip, [draft(number), draft(number + 1)]));
      const rounds = Array.from({ length: 10 }, (_, i) => [
        write(keeping(), 100 + 2 * i),
        write(other, 200 + 2 * i),
      ]).flat();
      const written = (await Promise.all(rounds)).flat();
      expect(written.map(({ n }) => n).sort((a, b) => a - b)).toEqual(Array.from({ length: 40 }, (_, i) => i + 1));
      const report = await other.check();
      expect(report).toMatchObject({ counted: 40, gaps: [], breaks: [], doubled: [], conflicts: [] });
      await other.close();
    });

    test('K10 compose gets null before the first entry, then the highest n with its sum', async () => {
      const seen: (Tip | null)[] = [];
      const compose = (number: number) => (tip: Tip | null) => {
        seen.push(tip);
        return seal(tip, [draft(number)]);
      };
      const [first] = await keeping().write('phone-of-ada', compose(1));
      await keeping().write('phone-of-ada', compose(2));
      await keeping().write('shed', (tip) => {
        seen.push(tip);
        return [];
      });
      expect(seen).toEqual([null, { n: 1, sum: must(first).sum }, null]);
    });

    test('K10 where the highest n is doubled, its lowest sum', async () => {
      const [first, ...rest] = chain(3);
      const doubled = seal(must(rest[0]), [draft(70), draft(71)]);
      await keeping().keep([must(first), ...rest, must(doubled[0])]);
      const sums = [must(rest[1]).sum, must(doubled[0]).sum].sort();
      let seen: Tip | null = null;
      await keeping().write('phone-of-ada', (tip) => {
        seen = tip;
        return [];
      });
      expect(seen).toEqual({ n: 3, sum: sums[0] });
    });

    test('K11 what does not continue the chain is refused and nothing is written', async () => {
      const [first, second, third] = chain(3);
      const broken: readonly (readonly Entry[])[] = [
        [must(third)],
        [must(first)],
        chain(1, { first: 9, device: 'shed' }),
        [must(second), must(second)],
        [must(second), must(seal(must(second), [draft(2)])[0])],
        [otherVersion({ ...must(second), prev: must(third).sum })],
        [{ ...must(second), body: { text: 'not what was sealed' } }],
      ];
      await keeping().keep([must(first)]);
      for (const entries of broken)
        expect(await rejection(keeping().write('phone-of-ada', () => entries)), JSON.stringify(entries)).toBe(
          'broken-chain',
        );
      const again = seal(must(first), [draft(1)]);
      expect(await rejection(keeping().write('phone-of-ada', () => again))).toBe('id-taken');
      expect((await keeping().read()).entries).toHaveLength(1);
      expect(await keeping().write('phone-of-ada', () => [])).toEqual([]);
      expect(texts(await keeping().write('phone-of-ada', () => [must(second)]))).toEqual(texts([must(second)]));
    });

    test('K12 an error thrown in compose passes through unchanged and nothing is written', async () => {
      const mine = new KeepingError('busy', 'the caller threw this');
      let calls = 0;
      const thrown = await keeping()
        .write('phone-of-ada', () => {
          calls += 1;
          throw mine;
        })
        .catch((error: unknown) => error);
      expect(thrown).toBe(mine);
      expect(calls).toBe(1);
      expect(await rejection(keeping().keep(chain(1)))).toBe('resolved');
      expect((await keeping().read()).entries).toHaveLength(1);
    });
  });
}

function readContract(makeKit: MakeKit): void {
  describe('reading', () => {
    const { kit, keeping } = withKeeping(makeKit);

    test('K13 order of arrival; within a batch that of the batch; positions rise and stay', async () => {
      const [a, b, c] = chain(3);
      await keeping().keep([must(c), must(a)]);
      const first = await keeping().read();
      await keeping().keep([must(b), must(a)]);
      const all = await keeping().read();
      expect(texts(all.entries)).toEqual(texts([must(c), must(a), must(b)]));
      expect(all.position).toBeGreaterThan(first.position);
      const again = await kit().open();
      expect(await again.read({ after: first.position })).toEqual({ entries: [must(b)], position: all.position });
      await again.close();
    });

    test.each([1, 2, 3, 7, 1000])(
      'K14 paging by %i sees every entry once, also those that arrive meanwhile',
      async (limit) => {
        for (const batch of [chain(5), chain(4, { first: 20, device: 'shed' })]) await keeping().keep(batch);
        const late = chain(3, { first: 40, device: 'barn' });
        const seen: Entry[] = [];
        let position = 0;
        for (let turns = 0; turns < 40; turns++) {
          const page = await keeping().read({ after: position, limit });
          expect(page.entries.length).toBeLessThanOrEqual(limit);
          seen.push(...page.entries);
          if (turns === 0) await keeping().keep(late);
          if (page.entries.length === 0 && turns > 0) {
            expect(page.position).toBe(position);
            break;
          }
          position = page.position;
        }
        expect(texts(seen)).toEqual(texts([...chain(5), ...chain(4, { first: 20, device: 'shed' }), ...late]));
        expect(await keeping().read({ limit: 0 })).toEqual({ entries: [], position: 0 });
      },
    );

    test('K15 what has resolved is read by every later read, by whomever', async () => {
      const other = await kit().open();
      expect((await other.read()).entries).toEqual([]);
      await keeping().keep(chain(2));
      expect((await other.read()).entries).toHaveLength(2);
      expect(await other.holding()).toBe(holding);
      const { hash, bytes } = bytesOf('a photo');
      await other.attach(hash, bytes, 'image/jpeg');
      expect((await keeping().attachment(hash))?.bytes).toEqual(bytes);
      await keeping().detach(hash);
      expect(await other.attachments()).toEqual([]);
      await other.close();
    });

    test('K16 pick gives every version in the stretches once, ordered by device, n, sum', async () => {
      const ada = chain(6);
      const third = otherVersion(must(ada[2]));
      const shed = chain(3, { first: 20, device: 'shed' });
      await keeping().keep([...[...ada].reverse(), third, ...shed]);
      const stretches = [
        { device: 'shed', from: 2, to: Number.MAX_SAFE_INTEGER },
        { device: 'phone-of-ada', from: 2, to: 4 },
        { device: 'phone-of-ada', from: 3, to: 5 },
        { device: 'phone-of-ada', from: 9, to: 4 },
        { device: 'nobody', from: 1, to: 5 },
        { device: 'shed', from: 3, to: 3 },
      ];
      const thirds = [must(ada[2]), third].sort((a, b) => (a.sum < b.sum ? -1 : 1));
      expect(texts(await keeping().pick(stretches))).toEqual(
        texts([must(ada[1]), ...thirds, must(ada[3]), must(ada[4]), must(shed[1]), must(shed[2])]),
      );
      expect(await keeping().pick([])).toEqual([]);
    });

    test('K17 tips and heads agree with the entries kept; no holding before the first entry', async () => {
      expect(await keeping().holding()).toBeNull();
      expect(await keeping().tips()).toEqual([]);
      expect(await keeping().heads()).toEqual([]);
      const ada = chain(3);
      const other = otherVersion(must(ada[2]));
      const shed = chain(2, { first: 20, device: 'shed' });
      await keeping().keep([...shed, other, ...ada]);
      const thirds = [must(ada[2]), other].sort((a, b) => (a.sum < b.sum ? -1 : 1));
      expect(await keeping().tips()).toEqual([
        { device: 'phone-of-ada', n: 3, sum: must(thirds[0]).sum },
        { device: 'shed', n: 2, sum: must(shed[1]).sum },
      ]);
      expect(await keeping().heads()).toEqual(
        [must(ada[0]), must(ada[1]), ...thirds, ...shed].map(({ id, device, n, prev, sum }) => ({
          id,
          device,
          n,
          prev,
          sum,
        })),
      );
    });

    test('K17 an entry of n = 2^53 − 1 is kept like any other', async () => {
      const far = otherVersion({ ...must(chain(2)[1]), n: Number.MAX_SAFE_INTEGER });
      await keeping().keep([far]);
      expect(await keeping().tips()).toEqual([{ device: far.device, n: far.n, sum: far.sum }]);
      expect(texts(await keeping().pick([{ device: far.device, from: 1, to: far.n }]))).toEqual(texts([far]));
    });
  });
}

function attachmentContract(makeKit: MakeKit): void {
  describe('attachments', () => {
    const { kit, keeping } = withKeeping(makeKit);
    const photo = bytesOf('as many bytes as a photo');

    test('K18 bytes with another hash, or too many, are refused', async () => {
      expect(await rejection(keeping().attach(bytesOf('other').hash, photo.bytes, 'image/jpeg'))).toBe('wrong-hash');
      expect(await rejection(keeping().attach('../daybook.jsonl', photo.bytes, 'image/jpeg'))).toBe('wrong-hash');
      const large = new Uint8Array(8 * 1024 * 1024 + 1);
      expect(await rejection(keeping().attach(bytesOf('other').hash, large, 'image/jpeg'))).toBe('too-large');
      expect(await keeping().attachments()).toEqual([]);
      expect(await keeping().attachment('../daybook.jsonl')).toBeNull();
    });

    test('K19 the same bytes come back; attaching them again changes nothing', async () => {
      const source = new Uint8Array([...photo.bytes, 9, 9]);
      await keeping().attach(photo.hash, source.subarray(0, photo.bytes.length), 'image/jpeg');
      source.fill(0);
      await keeping().attach(photo.hash, photo.bytes, 'image/png');
      const again = await kit().open();
      expect(await again.attachment(photo.hash)).toEqual({
        hash: photo.hash,
        mediaType: 'image/jpeg',
        bytes: photo.bytes,
      });
      expect(await again.attachment(bytesOf('none').hash)).toBeNull();
      const empty = bytesOf('');
      await again.attach(empty.hash, empty.bytes, 'text/plain');
      expect((await again.attachment(empty.hash))?.bytes).toEqual(empty.bytes);
      expect(await again.attachments()).toEqual(
        [
          { hash: photo.hash, mediaType: 'image/jpeg', size_bytes: photo.bytes.length },
          { hash: empty.hash, mediaType: 'text/plain', size_bytes: 0 },
        ].sort((a, b) => (a.hash < b.hash ? -1 : 1)),
      );
      await again.close();
    });

    test('K20 detach takes the bytes away, leaves the entries, and does nothing where there are none', async () => {
      await keeping().keep(chain(2));
      await keeping().attach(photo.hash, photo.bytes, 'image/jpeg');
      await keeping().detach(photo.hash);
      await keeping().detach(photo.hash);
      await keeping().detach('no hash at all');
      expect(await keeping().attachment(photo.hash)).toBeNull();
      expect(await keeping().attachments()).toEqual([]);
      expect((await keeping().read()).entries).toHaveLength(2);
      await keeping().attach(photo.hash, photo.bytes, 'image/png');
      const again = await kit().open();
      expect((await again.attachment(photo.hash))?.mediaType).toBe('image/png');
      await again.close();
    });
  });
}
