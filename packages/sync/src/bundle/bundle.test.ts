import { createHash } from 'node:crypto';
import { canonical, type Entry, seal } from '@loamwright/daybook';
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bring } from '../bring.ts';
import { maxProblems } from '../exchange/limits.ts';
import { digestOf } from '../exchange/offer.ts';
import { chain, draft, holding, must, otherVersion, photoOf } from '../testing/entries.ts';
import { createMemoryKeeping, type MemoryKeeping } from '../testing/memory-keeping.ts';
import { maxLine } from './format.ts';
import { type BundleRead, readBundle } from './read.ts';
import { bundleLines, bundleOf } from './write.ts';

const goats = photoOf('a photo of the two goats');
const rabbits = photoOf('a photo of the six rabbits');

/** A daybook of notes, two photos, another device and a conflict. */
function daybook(): MemoryKeeping {
  const notes = chain(4);
  const photos = [goats, rabbits].map(({ hash, mediaType }, i) =>
    draft(20 + i, { device: 'shed', kind: 'photo', body: { attachment: hash, mediaType } }),
  );
  const keeping = createMemoryKeeping([
    ...notes,
    ...seal(null, photos),
    otherVersion(must(notes[2]), { text: 'told differently' }),
  ]);
  for (const photo of [goats, rabbits]) keeping.shelf.set(photo.hash, photo);
  return keeping;
}

async function linesIn(keeping: MemoryKeeping): Promise<readonly string[]> {
  const lines: string[] = [];
  for await (const line of bundleLines(await bundleOf(keeping, holding))) lines.push(line);
  return lines;
}

const codes = ({ problems }: BundleRead): readonly string[] => problems.map(({ code, line }) => `${line} ${code}`);
const names = (entries: readonly Entry[]): readonly string[] => entries.map(canonical).sort();

describe('a file', () => {
  test('comes back as it was written', async () => {
    const keeping = daybook();
    const read = await readBundle((await linesIn(keeping)).join(''), holding);
    expect(read.problems).toEqual([]);
    expect(read.holding).toBe(holding);
    expect(names(read.entries)).toEqual(names([...keeping.entries.values()]));
    expect(read.attachments.map(({ hash }) => hash).sort()).toEqual([goats.hash, rabbits.hash].sort());
    expect(read.attachments.find(({ hash }) => hash === goats.hash)).toEqual(goats);
  });

  test('is the same for the same daybook, however its entries arrived', async () => {
    const keeping = daybook();
    const turned = createMemoryKeeping([...keeping.entries.values()].reverse());
    for (const photo of [goats, rabbits]) turned.shelf.set(photo.hash, photo);
    expect(await linesIn(turned)).toEqual(await linesIn(keeping));
  });

  test('is built as FILE.md says: header, entries in canonical JSON, attachments, and a sum that any tool can work out', async () => {
    const keeping = daybook();
    const lines = await linesIn(keeping);
    const entries = [...keeping.entries.values()];
    expect(JSON.parse(must(lines[0]))).toEqual({
      format: 'loamwright-daybook',
      v: 1,
      holding,
      entries: entries.length,
      attachments: 2,
      sum: digestOf(holding, entries),
    });
    expect(
      lines
        .slice(1, 8)
        .map((line) => line.trimEnd())
        .sort(),
    ).toEqual(names(entries));
    expect(JSON.parse(must(lines[8]))).toEqual({
      attachment: {
        hash: goats.hash,
        mediaType: 'image/jpeg',
        bytes_base64: Buffer.from(goats.bytes).toString('base64'),
      },
    });
    const before = lines.slice(0, -1).join('');
    expect(JSON.parse(must(lines.at(-1)))).toEqual({
      end: { lines: lines.length - 1, sha256: createHash('sha256').update(before, 'utf8').digest('hex') },
    });
    for (const line of lines) expect(line.indexOf('\n')).toBe(line.length - 1);
  });

  test('of an empty daybook is read as one', async () => {
    const read = await readBundle((await linesIn(createMemoryKeeping())).join(''), null);
    expect(read).toEqual({ holding, entries: [], attachments: [], problems: [] });
  });

  test('leaves out what the keeper has let go, though its bytes are still here', async () => {
    const keeping = daybook();
    keeping.write('shed', (tip) =>
      seal(tip, [draft(90, { device: 'shed', kind: 'attachment-removed', body: { attachment: goats.hash } })]),
    );
    const read = await readBundle(await linesIn(keeping), holding);
    expect(read.attachments.map(({ hash }) => hash)).toEqual([rabbits.hash]);
    expect(read.problems).toEqual([]);
  });

  test('brought twice changes nothing the second time', async () => {
    const read = await readBundle((await linesIn(daybook())).join(''), null);
    const keeping = createMemoryKeeping();
    expect(await bring(keeping, read)).toMatchObject({ kept: 7, there: 0, attached: 2, problems: [] });
    expect(await bring(keeping, read)).toMatchObject({ kept: 0, there: 7, attached: 0, problems: [] });
    expect(await linesIn(keeping)).toEqual(await linesIn(daybook()));
  });

  test('read in pieces cut anywhere is the same as read whole', async () => {
    const text = (await linesIn(daybook())).join('');
    const whole = await readBundle(text, holding);
    await fc.assert(
      fc.asyncProperty(fc.array(fc.nat({ max: text.length }), { maxLength: 30 }), async (cuts) => {
        const sorted = [0, ...cuts, text.length].sort((a, b) => a - b);
        const pieces = sorted.slice(1).map((cut, i) => text.slice(sorted[i], cut));
        expect(await readBundle(pieces, holding)).toEqual(whole);
      }),
      { numRuns: 40, seed: 5 },
    );
  });

  test('with a byte order mark, carriage returns and empty lines, as mail and editors add them, is still sound', async () => {
    const lines = await linesIn(daybook());
    const text = `\uFEFF${lines.map((line) => line.replace('\n', '\r\n')).join('')}\r\n\r\n`;
    const read = await readBundle(text, holding);
    expect(read.problems).toEqual([]);
    expect(read.entries).toHaveLength(7);
  });
});

describe('a file at fault', () => {
  const sound = async (): Promise<string[]> => [...(await linesIn(daybook()))];

  test('a damaged line is told with its number, and the sound ones are offered', async () => {
    const lines = await sound();
    lines[2] = must(lines[2]).replace('note', 'nota');
    lines[4] = must(lines[4]).slice(0, 100).concat('\n');
    lines[8] = must(lines[8]).replace('"bytes_base64":"', '"bytes_base64":"AAAA');
    const read = await readBundle(lines.join(''), holding);
    expect(codes(read)).toEqual(['3 sum-mismatch', '5 bundle-line-unreadable', '9 exchange-attachment-changed']);
    expect(read.problems.map(({ path }) => path)).toEqual(['line 3, sum', 'line 5', 'line 9, hash']);
    for (const problem of read.problems) {
      expect(problem.found).not.toBe('');
      expect(problem.wanted).not.toBe('');
    }
    expect(read.entries).toHaveLength(5);
    expect(read.attachments.map(({ hash }) => hash)).toEqual([rabbits.hash]);
  });

  test('every single changed letter is noticed', async () => {
    const text = (await sound()).join('');
    let noticed = 0;
    for (let at = 0; at < text.length; at += 7) {
      const letter = text.charAt(at);
      const other = letter === '\n' ? ' ' : letter === 'x' ? 'y' : 'x';
      const read = await readBundle(`${text.slice(0, at)}${other}${text.slice(at + 1)}`, holding);
      expect(
        read.problems.length,
        `letter ${at} of ${text.length}, ${JSON.stringify(text.slice(at - 20, at + 20))}`,
      ).toBeGreaterThan(0);
      noticed += 1;
    }
    expect(noticed).toBeGreaterThan(500);
  });

  test('cut short at any line, or in the middle of one, is noticed; what came before is offered', async () => {
    const lines = await sound();
    for (let count = 1; count < lines.length; count++) {
      const read = await readBundle(lines.slice(0, count).join(''), holding);
      expect(codes(read)).toEqual(['0 bundle-cut-short']);
      expect(read.entries).toHaveLength(Math.min(7, count - 1));
      const half = await readBundle(lines.slice(0, count).join('').concat(must(lines[count]).slice(0, 30)), holding);
      expect(codes(half)).toEqual([`${count + 1} bundle-line-unreadable`, '0 bundle-cut-short']);
    }
  });

  test.each([
    { title: 'a missing entry', change: (lines: string[]) => lines.splice(3, 1), code: '0 bundle-count-wrong' },
    {
      title: 'an entry twice',
      change: (lines: string[]) => lines.splice(3, 0, must(lines[3])),
      code: '0 bundle-count-wrong',
    },
    {
      title: 'entries in another order',
      change: (lines: string[]) => lines.splice(3, 2, must(lines[4]), must(lines[3])),
      code: '0 bundle-sum-wrong',
    },
    {
      title: 'something behind the end',
      change: (lines: string[]) => lines.push('{"more":1}\n'),
      code: '12 bundle-after-end',
    },
    {
      title: 'two files one behind the other',
      change: (lines: string[]) => lines.push(...lines),
      code: '12 bundle-after-end',
    },
    {
      title: 'an end that is none',
      change: (lines: string[]) => lines.splice(-1, 1, '{"end":{"lines":"ten"}}\n'),
      code: '11 bundle-line-unreadable',
    },
  ])('$title', async ({ change, code }) => {
    const lines = await sound();
    change(lines);
    const read = await readBundle(lines.join(''), holding);
    expect(codes(read)[0]).toBe(code);
    expect(read.entries.length).toBeGreaterThan(5);
  });

  test('a sound file whose header names another set of entries', async () => {
    const lines = await sound();
    lines[0] = must(lines[0]).replace(/"sum":"[0-9a-f]{64}"/u, `"sum":"${'0'.repeat(64)}"`);
    const before = lines.slice(0, -1).join('');
    const end = { lines: lines.length - 1, sha256: createHash('sha256').update(before).digest('hex') };
    lines[lines.length - 1] = `${JSON.stringify({ end })}\n`;
    expect(codes(await readBundle(lines.join(''), holding))).toEqual(['0 bundle-set-wrong']);
  });

  test('of another holding: told, and nothing is offered; one foreign entry among others is left out', async () => {
    const text = (await sound()).join('');
    expect(await readBundle(text, 'mill-farm')).toMatchObject({
      entries: [],
      attachments: [],
      problems: [{ code: 'bundle-other-holding', line: 1, path: 'line 1', found: holding, wanted: 'mill-farm' }],
    });
    const lines = await sound();
    const stranger = must(seal(null, [draft(9, { holding: 'mill-farm' })])[0]);
    lines.splice(2, 1, `${canonical(stranger)}\n`);
    const read = await readBundle(lines.join(''), holding);
    expect(codes(read)).toEqual(['3 exchange-other-holding']);
    expect(read.entries).toHaveLength(6);
  });

  test('without its first line, or with a damaged one, the sound entries are still offered', async () => {
    const lines = await sound();
    const without = await readBundle(lines.slice(1).join(''), holding);
    expect(codes(without)).toEqual(['1 bundle-header-damaged']);
    expect(without.entries).toHaveLength(7);
    const damaged = [
      '{"format":"loamwright-daybook","v":1,"holding":"Quarry Lane"}\n',
      '{"format":"loam\n',
      '\u0000\u0001\u0002\n',
    ];
    for (const header of damaged) {
      const read = await readBundle([header, ...lines.slice(1)], null);
      expect(codes(read)).toEqual(['1 bundle-header-damaged']);
      expect(read.holding).toBe(holding);
      expect(read.entries).toHaveLength(7);
    }
  });

  test('of a newer version: told, nothing is offered', async () => {
    const lines = await sound();
    lines[0] = must(lines[0]).replace('"v":1', '"v":2');
    const read = await readBundle(lines.join(''), holding);
    expect(codes(read)).toEqual(['1 bundle-newer']);
    expect(read.entries).toEqual([]);
  });

  test.each([
    { title: 'nothing', text: '', code: '0 bundle-empty' },
    { title: 'empty lines', text: '\n\r\n\n', code: '0 bundle-empty' },
    { title: 'a byte order mark', text: '\uFEFF', code: '0 bundle-empty' },
    { title: 'a diary', text: 'Dear diary,\ntoday the leeks went in.\n', code: '0 bundle-not-ours' },
    {
      title: 'other people’s JSON',
      text: JSON.stringify({ name: 'leeks', rows: [1, 2, 3] }, null, 2),
      code: '0 bundle-not-ours',
    },
    { title: 'other people’s JSON lines', text: '{"a":1}\n{"a":2}\n'.repeat(500), code: '0 bundle-not-ours' },
    { title: 'a table', text: 'date,temp\n2026-03-01,55\n'.repeat(500), code: '0 bundle-not-ours' },
    { title: 'another format', text: '{"format":"geo","v":1}\n[]\n', code: '0 bundle-not-ours' },
    {
      title: 'binary',
      text: Buffer.from(Array.from({ length: 5000 }, (_, i) => (i * 7919) % 256)).toString('utf8'),
      code: '0 bundle-not-ours',
    },
    { title: 'a very deep list', text: `${'['.repeat(2_000_000)}\n`, code: '0 bundle-not-ours' },
    {
      title: 'a very deep object',
      text: `${'{"attachment":'.repeat(300_000)}1${'}'.repeat(300_000)}\n`,
      code: '0 bundle-not-ours',
    },
    {
      title: 'a deep header',
      text: `{"format":"loamwright-daybook","v":1,"holding":${'['.repeat(100_000)}${']'.repeat(100_000)}}\n`,
      code: '0 bundle-not-ours',
    },
    { title: 'null', text: 'null\n', code: '0 bundle-not-ours' },
    { title: 'only an end', text: '{"end":{"lines":0,"sha256":"x"}}\n', code: '0 bundle-not-ours' },
  ])('$title', async ({ text, code }) => {
    const read = await readBundle(text, holding);
    expect(codes(read)).toEqual([code]);
    expect(read).toMatchObject({ entries: [], attachments: [] });
    expect(JSON.stringify(read.problems).length).toBeLessThan(500);
  });

  test('a line without end is passed over without being gathered up', async () => {
    const lines = await sound();
    const piece = 'x'.repeat(1_000_000);
    async function* pieces(): AsyncGenerator<string> {
      yield lines.slice(0, 3).join('');
      for (let i = 0; i < 40; i++) yield piece;
      yield `\n${lines.slice(4).join('')}`;
    }
    const read = await readBundle(pieces(), holding);
    expect(40 * piece.length).toBeGreaterThan(3 * maxLine);
    expect(codes(read)).toEqual(['4 bundle-line-too-long']);
    expect(read.entries).toHaveLength(6);
  });

  test('of very many faults only the first are told, and how many more there are', async () => {
    const [header, ...rest] = await sound();
    const read = await readBundle(
      [must(header), ...Array.from({ length: 1000 }, () => '{"not":"an entry"}\n'), ...rest],
      holding,
    );
    expect(read.problems).toHaveLength(maxProblems + 1);
    expect(read.problems.at(-1)?.code).toBe('bundle-more-problems');
    expect(Number(read.problems.at(-1)?.found)).toBeGreaterThan(900);
    expect(read.entries).toHaveLength(7);
  });

  test('whatever is done to a file, reading it never throws and offers only sound entries', async () => {
    const text = (await sound()).join('');
    const all = new Set(names([...daybook().entries.values()]));
    await fc.assert(
      fc.asyncProperty(
        fc.array(
          fc.tuple(fc.nat({ max: text.length }), fc.nat({ max: 400 }), fc.string({ unit: 'binary', maxLength: 30 })),
          { maxLength: 4 },
        ),
        async (edits) => {
          let edited = text;
          for (const [at, length, put] of edits) edited = `${edited.slice(0, at)}${put}${edited.slice(at + length)}`;
          const read = await readBundle(edited, holding);
          for (const entry of read.entries) expect(all.has(canonical(entry))).toBe(true);
          if (read.problems.length === 0) expect(names(read.entries)).toEqual([...all].sort());
        },
      ),
      { numRuns: 300, seed: 9 },
    );
  });
});
