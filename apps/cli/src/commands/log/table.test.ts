import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { flat, type Garden, garden } from '../../testing/garden.ts';

let home: Garden;
beforeEach(async () => {
  home = garden();
  await home.run([
    'build',
    'straw=8barrows',
    'grass clippings=6barrows',
    '--name',
    'Hot heap',
    '--bay',
    '1x1x1m',
    '--when',
    '2026-03-01',
  ]);
});
afterEach(() => home.remove());

function file(text: string | Uint8Array, name = 'log.csv'): string {
  const path = join(home.folder, name);
  writeFileSync(path, text);
  return path;
}

interface Entry {
  readonly kind: string;
}

const written = async (args: readonly string[]): Promise<readonly string[]> => {
  const { value } = await home.json(['log', 'Hot heap', ...args]);
  return (value as { entries: readonly Entry[] }).entries.map(({ kind }) => kind);
};

const notebook = 'date;core °C;edge °C;turned\n2.3.2026;58,5;41;\n3.3.2026;61;44;x\n4.3.2026;62;-;\n';

describe('log --csv', () => {
  it('writes readings and turns down in the order of time, and says how many', async () => {
    const { code, out } = await home.run(['log', 'Hot heap', '--csv', file(notebook), '--units', 'metric']);
    expect(code).toBe(0);
    expect(flat(out)).toContain('Written down of Hot heap: 5 readings and one turn, ');
    const lines = flat((await home.run(['daybook', '--units', 'metric'])).out);
    expect(lines).toContain('58.5 °C');
    expect(lines).toContain('turned');
  });

  it('does not write twice what stands there', async () => {
    const path = file(notebook);
    expect(await written(['--csv', path])).toHaveLength(6);
    expect(await written(['--csv', path])).toEqual([]);
    expect(flat((await home.run(['log', 'Hot heap', '--csv', path])).out)).toContain('6 of them stood in the daybook');
    const more = file(`${notebook}5.3.2026;60;45;\n`);
    expect(await written(['--csv', more])).toEqual(['reading', 'reading']);
  });

  it('leaves out what is older than the day on which the heap was begun, and says so', async () => {
    const older = '1.2.2026;70;60;x\n28.2.2026;66;-;\n1.3.2026;20;-;\n';
    const path = file(notebook.replace('\n', `\n${older}`));
    const { code, out } = await home.run(['log', 'Hot heap', '--csv', path]);
    expect(code).toBe(0);
    expect(flat(out)).toContain('Written down of Hot heap: 6 readings and one turn, ');
    expect(flat(out)).toContain('4 of them are older than Hot heap, which was begun on 1 Mar 2026: left out.');
    const none = await home.run(['log', 'Hot heap', '--csv', file(`date;core °C\n1.2.2026;70\n`, 'old.csv')]);
    expect(flat(none.out)).toContain('Nothing was written down. One of them is older than Hot heap');
    expect(none.code).toBe(0);
  });

  it('keeps what is older by less than was said of the day', async () => {
    await home.run(['build', 'straw=8barrows', '--name', 'Other heap', '--bay', '1x1x1m', '--when', 'last week']);
    const path = file('date;core °C\n20.6.2026;60\n5.7.2026;30\n', 'week.csv');
    const { out } = await home.run(['log', 'Other heap', '--csv', path]);
    expect(flat(out)).toContain('Written down of Other heap: one reading');
  });

  it('with --as-typed marks what no heap has as doubtful, and it is no day’s highest', async () => {
    const path = file('date,core °F\n2026-03-02 08:00,140\n2026-03-02 12:00,144\n2026-03-02 18:00,250\n');
    const out = flat((await home.run(['log', 'Hot heap', '--csv', path, '--as-typed'])).out);
    expect(out).toContain('One reading that no heap has is marked doubtful and proves no heat.');
    expect(flat((await home.run(['daybook', '--units', 'us'])).out)).toContain('250 °F');
    const rules = await home.json(['safe', 'heap', 'Hot heap']);
    const { log } = (rules.value as { input: { log: { readings: readonly { temp_degC: number }[] } } }).input;
    expect(log.readings.map(({ temp_degC }) => Math.round(temp_degC))).toEqual([60, 62]);
  });

  it.each([
    ['Latin-1', new Uint8Array(Buffer.from('date;core °C\n2.3.2026;58,5\n', 'latin1'))],
    ['UTF-16', new Uint8Array(Buffer.from('\ufeffdate;core °C\n2.3.2026;58,5\n', 'utf16le'))],
    [
      'UTF-16, the other way round',
      new Uint8Array(Buffer.from('\ufeffdate;core °C\n2.3.2026;58,5\n', 'utf16le').swap16()),
    ],
  ])('reads a table in %s', async (_, bytes) => {
    expect(await written(['--csv', file(bytes)])).toEqual(['reading']);
  });

  it('keeps each day’s lowest and highest of a logger, and says so', async () => {
    const rows = Array.from({ length: 48 }, (_, i) => {
      const hour = String(i % 24).padStart(2, '0');
      return `2026-03-0${2 + Math.floor(i / 24)} ${hour}:00,${130 + (i % 24)}`;
    });
    const path = file(`Date,Core (°F)\n${rows.join('\n')}\n`);
    expect(await written(['--csv', path])).toEqual(['reading', 'reading', 'reading', 'reading']);
    expect(flat((await home.run(['safe', 'log', '--csv', path])).out)).toContain(
      'Of 48 readings each day’s lowest and highest',
    );
  });

  it.each([
    [['--csv', 'nowhere.csv'], 'The file nowhere.csv can’t be read'],
    [['148F', '--csv', '-'], 'leave log out'],
    [['--csv', '-', '--when', 'yesterday'], 'leave --when out'],
    [['--csv', '-', '--unit', 'K'], '--unit'],
    [['--csv', '-', '--dates', 'ymd'], '--dates'],
    [['--csv', '-'], 'There is nothing in -'],
  ])('%j is refused in words', async (args, said) => {
    const { code, err } = await home.run(['log', 'Hot heap', ...args], { input: '' });
    expect(code).not.toBe(0);
    expect(flat(err)).toContain(said);
  });

  it.each([
    ['date,core °C\n2099-03-01,60\n', 'log.csv:2:1 (file, line, column): “2099-03-01” lies ahead'],
    ['date,core °C\n2026-03-02,60\n2026-03-03,fog\n', 'log.csv:3:2 (file, line, column): “fog” is no temperature'],
    [new Uint8Array([0xff, 0xd8, 0xff, 0xe0, 0x00, 0x10]), 'is not text in UTF-8'],
    ['date,core °F\n2026-03-02,140\n2026-03-03,250\n', 'log.csv:3:2 (file, line, column): no heap has “250”'],
    ['date,core °F\n2026-03-02,140\n2026-03-03,250\n', 'marked doubtful: --as-typed'],
  ])('a table with one wrong row writes nothing: %j', async (text, said) => {
    const { code, err } = await home.run(['log', 'Hot heap', '--csv', file(text)]);
    expect(code).not.toBe(0);
    expect(flat(err)).toContain(said);
    expect(flat((await home.run(['daybook'])).out)).not.toContain('60 °C');
  });
});

describe('safe log --csv', () => {
  // 7 CFR 205.203(c)(2): 131 °F to 170 °F for 3 days in a vessel, C:N from 25:1 to 40:1.
  const vessel = 'day,temp °F\n2026-03-01,133\n2026-03-02,135\n2026-03-03,131\n';

  it('says of a table what it says of the same readings typed', async () => {
    const more = ['--method', 'in-vessel', '--ratio', '30'];
    const typed = await home.json(['safe', 'log', '133F', '135F', '131F', '--from', '2026-03-01', ...more]);
    const read = await home.json(['safe', 'log', '--csv', file(vessel), ...more]);
    expect(read).toEqual(typed);
    expect(flat((await home.run(['safe', 'log', '--csv', '-', ...more], { input: vessel })).out)).toMatch(
      /^This log meets/u,
    );
  });

  it('asks about a reading that no heap has, typed or in a table, and with --as-typed leaves it out', async () => {
    const asked = flat((await home.run(['safe', 'log', '133F', '250F', '131F'])).err);
    expect(asked).toContain('reading 2 is “250F”, and no heap has that.');
    expect(asked).toContain('--as-typed');
    const days = ['--from', '2026-03-01', '--as-typed'];
    const typed = await home.json(['safe', 'log', '133F', '250F', '131F', ...days]);
    const path = file('day,temp °F\n2026-03-01,133\n2026-03-02,250\n2026-03-03,131\n');
    expect(await home.json(['safe', 'log', '--csv', path, '--as-typed'])).toEqual(typed);
    const { log } = (typed.value as { input: { log: { readings: readonly unknown[] } } }).input;
    expect(log.readings).toHaveLength(2);
  });

  it('takes turns from the table, and from --turned besides', async () => {
    const { value } = await home.json(['safe', 'log', '--csv', file(notebook), '--turned', '2026-03-04']);
    const { log } = (
      value as { input: { log: { turned: readonly string[]; readings: readonly { point?: string }[] } } }
    ).input;
    expect(log.turned).toEqual(['2026-03-03', '2026-03-04']);
    expect(log.readings.filter(({ point }) => point === 'edge')).toHaveLength(2);
  });

  it.each([
    [['safe', 'log'], 'It is not said what'],
    [['safe', 'log', '60C', '--csv', 'x.csv'], 'leave readings out'],
    [['safe', 'log', '--csv', 'x.csv', '--from', '2026-03-01'], 'leave --from out'],
  ])('%j is refused in words', async (args, said) => {
    const { code, err } = await home.run(args);
    expect(code).not.toBe(0);
    expect(flat(err)).toContain(said);
  });
});
