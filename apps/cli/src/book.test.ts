import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { flat, type Garden, garden } from './testing/garden.ts';

let home: Garden;
beforeEach(() => {
  home = garden();
});
afterEach(() => home.remove());

interface Line {
  readonly device: string;
  readonly by: string;
}

async function note(text: string, ...more: readonly string[]): Promise<Line> {
  expect((await home.run(['log', 'note', text, ...more])).code).toBe(0);
  const { value } = await home.json(['daybook', '--newest', '1', ...more.filter((word) => word === '--demo')]);
  const [line] = value as readonly Line[];
  if (line === undefined) throw new Error('nothing was written');
  return line;
}

function changeSettings(change: (settings: Record<string, unknown>) => unknown): void {
  const file = join(home.folder, 'settings.json');
  writeFileSync(file, JSON.stringify(change(JSON.parse(readFileSync(file, 'utf8')))));
}

describe('who writes', () => {
  it('is one device from command to command, in the demo another', async () => {
    const first = await note('one');
    const demo = await note('two', '--demo');
    const second = await note('three');
    expect(second.device).toBe(first.device);
    expect(demo.device).not.toBe(first.device);
    expect((await note('four', '--demo')).device).toBe(demo.device);
  });

  it('is a new device once the entries are gone: no number is given out twice', async () => {
    const first = await note('one');
    for (const end of ['', '-wal', '-shm']) rmSync(join(home.folder, `daybook.sqlite${end}`), { force: true });
    expect((await note('two')).device).not.toBe(first.device);
  });

  it('is a new device when the folder has been copied to another computer', async () => {
    const first = await note('one');
    changeSettings((settings) => ({
      ...settings,
      devices: { own: { id: first.device, computer: 'another-computer' } },
    }));
    expect((await note('two')).device).not.toBe(first.device);
    expect((await home.run(['daybook', '--check'])).code).toBe(0);
  });

  it('is the person who was last named', async () => {
    expect((await note('one')).by).toBe('keeper');
    expect((await note('two', '--by', 'Nell Öst')).by).toBe('nell-ost');
    expect((await note('three')).by).toBe('nell-ost');
  });
});

describe('the settings', () => {
  it.each(['{', '[]', '{"units":"imperial"}', '{"measures_L":{"bucket-20l":-1}}'])(
    'that can’t be read are told and left: %s',
    async (text) => {
      const file = join(home.folder, 'settings.json');
      writeFileSync(file, text);
      const { code, err } = await home.run(['heap']);
      expect(code).toBe(1);
      expect(err).toContain('settings.json');
      expect(readFileSync(file, 'utf8')).toBe(text);
    },
  );

  it('of a later version are kept', async () => {
    await note('one');
    changeSettings((settings) => ({ ...settings, later: { a: 1 } }));
    await note('two', '--units', 'us');
    const kept = JSON.parse(readFileSync(join(home.folder, 'settings.json'), 'utf8'));
    expect(kept).toMatchObject({ later: { a: 1 }, units: 'us' });
  });
});

describe('a data folder that can’t be used', () => {
  it('is told, and nothing is written', async () => {
    const file = join(home.folder, 'a-file');
    writeFileSync(file, 'somebody’s');
    for (const args of [
      ['log', 'note', 'one'],
      ['heap', '--demo'],
      ['mix', 'straw=1bale', '--units', 'us'],
    ]) {
      const { code, err } = await home.run([...args, '--data', join(file, 'garden')]);
      expect(code).toBe(1);
      expect(err).toContain('a-file');
    }
    expect(readFileSync(file, 'utf8')).toBe('somebody’s');
  });

  it('is no file: that is told by every command, and the file is left as it was', async () => {
    const file = join(home.folder, 'a-file');
    writeFileSync(file, 'somebody’s');
    for (const args of [['heap'], ['log', 'note', 'one'], ['mix', 'straw=1bale'], ['take']]) {
      const { code, err } = await home.run([...args, '--data', file]);
      expect(code).toBe(2);
      expect(flat(err)).toContain(`${file} is a file, and --data wants the folder`);
    }
    expect(readFileSync(file, 'utf8')).toBe('somebody’s');
  });

  it('does not keep an answer back that needs nothing written', async () => {
    const file = join(home.folder, 'a-file');
    writeFileSync(file, '');
    const mixed = await home.run(['mix', 'straw=1bale', 'grass=2barrows', '--data', join(file, 'garden')]);
    expect(mixed.code).toBe(0);
    expect((await home.run(['heap', '--data', join(file, 'garden')])).code).toBe(0);
  });
});
