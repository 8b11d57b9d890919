import { type Entry, seal, type Tip } from '@loamwright/daybook';
import { describe, expect, test } from 'vitest';
import { bytesOf, chain, draft, must, otherVersion } from './entries.ts';
import type { MakeKit } from './kit.ts';
import { withKeeping } from './with-keeping.ts';

const clean = {
  changed: [],
  gaps: [],
  breaks: [],
  doubled: [],
  conflicts: [],
  unreadable: [],
  attachmentsChanged: [],
  attachmentsMissing: [],
};

/** Rules K21 to K23: what `check` finds on a medium that was tampered with, and that the rest stays readable. */
export function damageContract(makeKit: MakeKit): void {
  describe('checking', () => {
    const { kit, keeping } = withKeeping(makeKit);

    /** Keeps entries one by one and tells where each stands. */
    const place = async (entries: readonly Entry[]): Promise<readonly number[]> => {
      const positions: number[] = [];
      for (const entry of entries) {
        await keeping().keep([entry]);
        positions.push((await keeping().read()).position);
      }
      return positions;
    };

    test('K21 a sound keeping has nothing to report', async () => {
      expect(await keeping().check()).toEqual({ counted: 0, ...clean });
      await place(chain(3));
      expect(await keeping().check()).toEqual({ counted: 3, ...clean });
    });

    test('K21 K22 an entry changed on the medium is found, also by a keeping that was open, and stays readable', async () => {
      const entries = chain(3);
      const positions = await place(entries);
      await kit().rewriteRecord(must(positions[1]), (text) => text.replace('note 2', 'note 7'));
      const again = await kit().open();
      for (const by of [keeping(), again]) {
        const report = await by.check();
        expect(report).toMatchObject({
          ...clean,
          counted: 3,
          changed: [{ id: must(entries[1]).id, n: 2, sum: must(entries[1]).sum }],
        });
        expect(must(report.changed[0]).recomputed).not.toBe(must(entries[1]).sum);
      }
      const { entries: read } = await again.read();
      expect(read.map(({ body }) => body['text'])).toEqual(['note 1', 'note 7', 'note 3']);
      await again.close();
    });

    test('K21 K23 a record that is no entry is reported with its position, and the others are still read', async () => {
      const entries = chain(5);
      const positions = await place(entries);
      await kit().rewriteRecord(must(positions[1]), (text) => `X${text.slice(1)}`);
      await kit().rewriteRecord(must(positions[2]), (text) => text.replace('"holding"', '"hilding"'));
      const again = await kit().open();
      for (const by of [keeping(), again]) {
        const report = await by.check();
        expect(report.unreadable.map(({ position }) => position)).toEqual([positions[1], positions[2]]);
        expect(report.unreadable.every(({ why }) => why.length > 0)).toBe(true);
        expect(report.counted).toBe(3);
        const sound = [must(entries[0]), must(entries[3]), must(entries[4])];
        expect((await by.read()).entries).toEqual(sound);
        const paged: Entry[] = [];
        for (let position = 0; ; ) {
          const page = await by.read({ after: position, limit: 1 });
          if (page.entries.length === 0) break;
          paged.push(...page.entries);
          position = page.position;
        }
        expect(paged).toEqual(sound);
        expect(await by.pick([{ device: 'phone-of-ada', from: 1, to: 5 }])).toEqual(sound);
      }
      await again.close();
    });

    test('K21 gaps, breaks, doubled numbers and conflicts are reported', async () => {
      const entries = chain(6);
      const [first, second, , fourth, fifth, sixth] = entries.map(must);
      const doubled = must(seal(must(first), [draft(70)])[0]);
      const tip: Tip = { n: 5, sum: must(first).sum };
      const broken = must(seal(tip, [draft(80)])[0]);
      const conflicting = otherVersion(must(fifth));
      await keeping().keep([
        must(first),
        must(second),
        doubled,
        must(fourth),
        must(fifth),
        conflicting,
        must(sixth),
        broken,
      ]);
      const report = await keeping().check();
      expect(report).toMatchObject({
        counted: 8,
        changed: [],
        gaps: [{ device: 'phone-of-ada', from: 3, to: 3 }],
        conflicts: [{ id: must(fifth).id, sums: [must(fifth).sum, conflicting.sum].sort() }],
        unreadable: [],
      });
      expect(report.doubled.map(({ n }) => n)).toEqual([2, 6]);
      expect(report.breaks).toEqual([
        {
          device: 'phone-of-ada',
          n: 6,
          id: broken.id,
          prev: must(first).sum,
          found: [must(fifth).sum, conflicting.sum].sort(),
        },
      ]);
    });

    test('K21 attachments changed or missing are reported, those removed by an entry are not', async () => {
      const [here, changed, lost, never, removed] = ['here', 'changed', 'lost', 'never came', 'removed']
        .map(bytesOf)
        .map(must);
      const shown = [here, changed, lost, never, removed].map(must);
      const photos = shown.map(({ hash }, i) =>
        draft(i + 1, { kind: 'photo', body: { attachment: hash, mediaType: 'image/jpeg' } }),
      );
      const removal = draft(90, { kind: 'attachment-removed', body: { attachment: must(removed).hash } });
      await keeping().keep(seal(null, [...photos, removal]));
      for (const { hash, bytes } of [here, changed, lost].map(must)) await keeping().attach(hash, bytes, 'image/jpeg');
      await kit().rewriteAttachment(must(changed).hash, must(here).bytes);
      await kit().loseAttachment(must(lost).hash);
      const missing = [must(lost).hash, must(never).hash].sort();
      const report = await keeping().check();
      expect(report).toEqual({
        ...clean,
        counted: 6,
        attachmentsChanged: [must(changed).hash],
        attachmentsMissing: missing,
      });
    });
  });
}
