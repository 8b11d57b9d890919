import { chmodSync, existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { flat, type Garden, garden } from '../../testing/garden.ts';

let home: Garden;
beforeEach(() => {
  home = garden();
});
afterEach(() => home.remove());

const at = (day: number) => ({ at: `2026-07-${String(day).padStart(2, '0')}T12:00:00.000Z` });

async function build(name: string): Promise<void> {
  await home.run(
    ['build', 'goat bedding=8barrows', 'straw=2barrows', '--bay', '1.2x1.2x1.2m', '--name', name, '--by', 'Ada'],
    at(15),
  );
  await home.run(['log', name, '64C', '--where', 'core'], at(17));
  await home.run(['log', name, 'turned'], at(17));
  await home.run(['log', name, '20C', '--where', 'core', '--as-typed'], at(18));
}

async function correct(): Promise<void> {
  const { value } = await home.json(['daybook'], at(18));
  const [newest] = value as { entry: string }[];
  await home.run(
    ['daybook', '--amend', newest?.entry.slice(-8) ?? '', '66C', '--where', 'core', '--by', 'Ben'],
    at(19),
  );
}

/** A table read back as RFC 4180 says. */
function rowsOf(text: string): readonly (readonly string[])[] {
  return text
    .split('\r\n')
    .filter((line) => line !== '')
    .map((line) =>
      [...line.matchAll(/("(?:[^"]|"")*"|[^,]*)(?:,|$)/gu)]
        .slice(0, 17)
        .map(([, cell = '']) => (cell.startsWith('"') ? cell.slice(1, -1).replaceAll('""', '"') : cell)),
    );
}

describe('safe record', () => {
  it('tells what went in, readings, turnings, who wrote it, what was corrected, the check and the verdicts', async () => {
    await build('March heap');
    await correct();
    const { code, out } = await home.run(['safe', 'record', 'march heap', '--units', 'metric'], at(20));
    expect(code).toBe(0);
    const text = flat(out);
    for (const said of [
      '# Record of March heap',
      'It is no certificate',
      'nothing is changed, missing or in doubt',
      'barrows of goat bedding',
      '64 °C',
      'turned',
      'Written by ada on 17 Jul 2026',
      'First written, by ada: ',
      'Changed, by ben, to: ',
      'counts as raw manure',
      'ask your own authority',
    ])
      expect(text).toContain(said);
    for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(100);
  });

  it('a broken rule of the place leads wherever the heap is told of', async () => {
    await build('March heap');
    const said = 'Not as it stands: Town bars manure of farm animals.';
    expect((await home.run(['heap', 'March heap'], at(20))).out).not.toContain('Not as it stands');
    await home.run(['safe', 'clauses', '--clause', 'bars farm-manure', '--of', 'Town', '--keep'], at(20));
    const us = async (...words: string[]) => flat((await home.run([...words, '--units', 'us'], at(20))).out);
    expect(await us('safe', 'heap', 'March heap')).toMatch(new RegExp(`^${said}`, 'u'));
    expect(await us('safe', 'record', 'March heap')).toMatch(new RegExp(`20 Jul 2026:? - ${said}`, 'u'));
    const page = await us('heap', 'March heap');
    expect(page).toContain(said);
    expect(page.indexOf(said)).toBeLessThan(page.indexOf('Made of'));
  });

  it('as a table and as data it holds the same entries', async () => {
    await build('March heap');
    await correct();
    const table = rowsOf((await home.run(['safe', 'record', 'March heap', '--as', 'csv'], at(20))).out);
    expect(new Set(table.map(({ length }) => length))).toEqual(new Set([17]));
    const entries = table.filter(([part]) => part === 'entry');
    const { value } = await home.json(['safe', 'record', 'March heap'], at(20));
    const data = value as { entries: { entry: string; sum: string; status: string }[]; check: { sound: boolean } };
    expect(entries.map((row) => row[14])).toEqual(data.entries.map(({ entry }) => entry));
    expect(entries.map((row) => row[11])).toContain('amended');
    expect(data.check.sound).toBe(true);
    const printed = (await home.run(['safe', 'record', 'March heap', '--as', 'json'], at(20))).out;
    expect(JSON.parse(printed)).toEqual(value);
    expect(table.some(([part, , , , , , , , , what]) => part === 'record' && what?.includes('no certificate'))).toBe(
      true,
    );
    expect(table.some(([part]) => part === 'check') && table.some(([part]) => part === 'rules')).toBe(true);
  });

  it.each([
    '=cmd|calc',
    '+SUM(A1),"x"',
    '@evil [link](http://x) <script>',
    'Heap\u001b[31m\u202ered',
    'Heap | one\n# Certified',
  ])('a heap called %j bends neither page nor table', async (name) => {
    await build(name);
    const { out } = await home.run(['safe', 'record', name], at(20));
    expect(out).toMatch(/^# Record of /u);
    expect(out).not.toMatch(/^# Certified/mu);
    for (const bent of ['\u001b', '\u202e', '<script>', ' [link]']) expect(out).not.toContain(bent);
    const table = rowsOf((await home.run(['safe', 'record', name, '--as', 'csv'], at(20))).out);
    expect(table.length).toBeGreaterThan(5);
    for (const row of table) {
      expect(row).toHaveLength(17);
      for (const cell of row) expect(cell).not.toMatch(/^[=+\-@]/u);
    }
  });

  it('writes a file whole, in place of the old one, and leaves nothing beside it', async () => {
    await build('March heap');
    const folder = join(home.folder, 'papers');
    mkdirSync(folder);
    const file = join(folder, 'march.csv');
    writeFileSync(file, 'old');
    const { code, out } = await home.run(['safe', 'record', 'March heap', '--as', 'csv', '--out', file], at(20));
    expect(code).toBe(0);
    expect(flat(out)).toContain('4 entries of March heap');
    expect(readFileSync(file, 'utf8')).toMatch(/^part,happened/u);
    expect(readdirSync(folder)).toEqual(['march.csv']);
  });

  it('what can’t be written leaves the old file as it was', async () => {
    await build('March heap');
    const taken = join(home.folder, 'taken');
    mkdirSync(join(taken, 'inside'), { recursive: true });
    const { code, err } = await home.run(['safe', 'record', 'March heap', '--out', taken], at(20));
    expect(code).toBe(1);
    expect(err).toContain('can’t be written');
    expect(existsSync(join(taken, 'inside'))).toBe(true);
    expect(readdirSync(home.folder).filter((name) => name.endsWith('.new'))).toEqual([]);
    chmodSync(taken, 0o700);
  });

  it('never takes the daybook itself for its paper', async () => {
    await build('March heap');
    const book = readdirSync(home.folder).find((name) =>
      readFileSync(join(home.folder, name)).includes('SQLite format'),
    );
    const path = join(home.folder, book ?? '');
    const { code, err } = await home.run(['safe', 'record', 'March heap', '--out', path], at(20));
    expect(code).toBe(1);
    expect(flat(err)).toContain('it is the daybook itself');
    expect((await home.run(['daybook', '--check'], at(20))).code).toBe(0);
  });

  it.each([
    [['safe', 'record', 'no such'], 'no heap called'],
    [['safe', 'record', 'March heap', '--as', 'pdf'], 'text, csv, json'],
  ])('%j is refused in words', async (args, said) => {
    await build('March heap');
    const { code, err } = await home.run(args);
    expect(code).toBe(2);
    expect(flat(err)).toContain(said);
  });

  it('an empty daybook has no record', async () => {
    expect((await home.run(['safe', 'record', 'March heap'])).code).toBe(1);
  });
});

describe('safe heap', () => {
  // 7 CFR 205.203(c)(2) and NOP 5021: three days on all the material. One turning shows nothing of all the material.
  it('one turning outside in is no proof that everything was at heat; edges or the grower’s word are', async () => {
    await home.run(
      ['build', 'goat bedding=8barrows', 'straw=2barrows', '--bay', '1.2x1.2x1.2m', '--name', 'Hot heap'],
      at(1),
    );
    for (const day of [2, 3, 4]) await home.run(['log', 'Hot heap', '65C', '--where', 'core'], at(day));
    await home.run(['log', 'Hot heap', 'turned', '--note', 'outside in'], at(3));
    const ask = ['safe', 'heap', 'hot heap', '--ratio', '30'];
    const verdict = async (more: readonly string[]): Promise<string> => {
      const { value } = await home.json([...ask, ...more], at(6));
      const { rules } = value as { rules: { rule: string; verdict: string }[] };
      return rules.find(({ rule }) => rule === 'us-organic-5021')?.verdict ?? '';
    };
    expect(await verdict([])).toBe('cannot-be-shown');
    expect(await verdict(['--all-through'])).toBe('met');
    const text = flat((await home.run(ask, at(6))).out);
    expect(text).toContain('nothing shows that all of it came into the heat');
    expect(text).toContain('counts as raw manure');
    for (const day of [2, 3, 4]) await home.run(['log', 'Hot heap', '58C', '--where', 'edge'], at(day));
    expect(await verdict([])).toBe('met');
  });

  it.each([
    [['safe', 'heap', 'no such'], 'no heap called'],
    [['safe', 'heap', 'Hot heap', '--method', 'magic'], 'turned'],
  ])('%j is refused in words', async (args, said) => {
    await home.run(['build', 'straw=2barrows', '--bay', '1.2x1.2x1.2m', '--name', 'Hot heap'], at(1));
    const { code, err } = await home.run(args, at(2));
    expect(code).toBe(2);
    expect(flat(err)).toContain(said);
  });
});
