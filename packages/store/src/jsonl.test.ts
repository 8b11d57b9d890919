import { spawn } from 'node:child_process';
import { once } from 'node:events';
import {
  appendFileSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Keeping, KeepingError, seal } from '@loamwright/daybook';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { type Disk, nodeDisk } from './jsonl/disk.ts';
import { hasEnded, holderOf, nameOf, takeLock, thisProcess } from './jsonl/lock.ts';
import { openJsonlKeeping } from './jsonl.ts';
import { bytesOf, chain, draft } from './testing/entries.ts';
import { makeJsonlKit } from './testing/jsonl-kit.ts';
import { keepingContract } from './testing/keeping-contract.ts';
import { rejection } from './testing/kit.ts';
import { createMemoryDisk, survivals } from './testing/memory-disk.ts';

keepingContract('a JSON-lines file', makeJsonlKit);

const folders: string[] = [];
function newFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'loamwright-jsonl-file-'));
  folders.push(folder);
  return folder;
}
afterEach(() => {
  for (const folder of folders.splice(0)) rmSync(folder, { recursive: true, force: true });
});

describe('a torn last line', () => {
  /** A daybook of three entries, and the bytes that one more append would add. */
  const prepared = async (append: (keeping: Keeping) => Promise<unknown>): Promise<{ base: Buffer; added: Buffer }> => {
    const folder = newFolder();
    const keeping = await openJsonlKeeping(folder);
    await keeping.keep(chain(3));
    const base = readFileSync(join(folder, 'daybook.jsonl'));
    await append(keeping);
    await keeping.close();
    return { base, added: readFileSync(join(folder, 'daybook.jsonl')).subarray(base.length) };
  };

  const reopened = async (
    content: Buffer,
  ): Promise<{ folder: string; keeping: Awaited<ReturnType<typeof openJsonlKeeping>> }> => {
    const folder = newFolder();
    writeFileSync(join(folder, 'daybook.jsonl'), content);
    return { folder, keeping: await openJsonlKeeping(folder) };
  };

  test('K6 cut at every byte of a batch of two: the batch is there whole or not at all, and what was torn is set aside', async () => {
    const { base, added } = await prepared((keeping) =>
      keeping.write('phone-of-ada', (tip) => seal(tip, [draft(4), draft(5)])),
    );
    expect(added.length).toBeGreaterThan(800);
    const folder = newFolder();
    const file = join(folder, 'daybook.jsonl');
    for (let length = 0; length <= added.length; length++) {
      const disk = createMemoryDisk(new Map([[file, Buffer.concat([base, added.subarray(0, length)])]]));
      const keeping = await openJsonlKeeping(folder, { disk });
      const isWhole = length === added.length;
      expect((await keeping.read()).entries).toEqual(chain(isWhole ? 5 : 3));
      const isTorn = length > 0 && !isWhole;
      expect(keeping.torn).toEqual(isTorn ? [{ setAside: `${file}.torn`, size_bytes: length }] : []);
      expect(disk.size_bytes(`${file}.torn`)).toBe(isTorn ? length + 1 : null);
      if (isTorn) {
        const aside = Buffer.from(disk.read(`${file}.torn`, 0, length));
        expect(aside.equals(added.subarray(0, length))).toBe(true);
        expect(Buffer.from(disk.read(file, 0, base.length + 1)).equals(base)).toBe(true);
      }
      await keeping.close();
    }
  });

  test.each([
    { title: 'nothing but zeros', damage: (added: Buffer) => added.fill(0) },
    { title: 'zeros, then the end', damage: (added: Buffer) => added.fill(0, 0, added.length - 40) },
    { title: 'zeros in the middle', damage: (added: Buffer) => added.fill(0, 100, 300) },
  ])('K6 grown by the disk but not written ($title): as before', async ({ damage }) => {
    const { base, added } = await prepared((keeping) => keeping.keep(chain(3, { first: 20, device: 'shed' })));
    const torn = damage(Buffer.from(added));
    const { folder, keeping } = await reopened(Buffer.concat([base, torn]));
    expect((await keeping.read()).entries).toEqual(chain(3));
    expect(keeping.torn).toEqual([{ setAside: join(folder, 'daybook.jsonl.torn'), size_bytes: torn.length }]);
    await keeping.keep(chain(3, { first: 20, device: 'shed' }));
    expect(await keeping.check()).toMatchObject({ counted: 6, unreadable: [] });
    await keeping.close();
  });

  test('a second torn end is added to the first, and writing goes on after each', async () => {
    const folder = newFolder();
    const file = join(folder, 'daybook.jsonl');
    for (const [round, tail] of ['{"id":"half an en', '[{"id":"and ano'].entries()) {
      const keeping = await openJsonlKeeping(folder);
      await keeping.keep(chain(round + 1));
      await keeping.close();
      appendFileSync(file, tail);
    }
    const keeping = await openJsonlKeeping(folder);
    await keeping.keep(chain(3));
    expect(await keeping.check()).toMatchObject({ counted: 3, gaps: [], breaks: [], unreadable: [] });
    expect(readFileSync(`${file}.torn`, 'utf8')).toBe('{"id":"half an en\n[{"id":"and ano\n');
    await keeping.close();
  });

  test('an open keeping, too, sets aside what another process left torn', async () => {
    const folder = newFolder();
    const keeping = await openJsonlKeeping(folder);
    await keeping.keep(chain(1));
    appendFileSync(join(folder, 'daybook.jsonl'), '{"about":[],"body":{"te');
    expect((await keeping.read()).entries).toEqual(chain(1));
    await keeping.keep(chain(2));
    expect(keeping.torn).toHaveLength(1);
    await keeping.close();
  });

  test.each([0, 1, 20])('a first line of which only %i bytes were written begins anew', async (length) => {
    const { keeping } = await reopened(Buffer.from('{"format":"loamwright-keeping","v":1}\n'.slice(0, length)));
    await keeping.keep(chain(2));
    expect((await keeping.read()).entries).toEqual(chain(2));
    await keeping.close();
  });
});

describe('the power goes', () => {
  const photo = bytesOf('a photo of the goats');
  const other = bytesOf('a photo of the rabbits');
  const acts: readonly { readonly title: string; readonly act: (keeping: Keeping) => Promise<unknown> }[] = [
    { title: 'keep', act: (keeping) => keeping.keep(chain(2, { first: 20, device: 'shed' })) },
    { title: 'write', act: (keeping) => keeping.write('phone-of-ada', (tip) => seal(tip, [draft(4)])) },
    { title: 'attach', act: (keeping) => keeping.attach(other.hash, other.bytes, 'image/jpeg') },
    { title: 'detach', act: (keeping) => keeping.detach(photo.hash) },
  ];
  /** More steps than any act takes. */
  const mostSteps = 40;

  const stateOn = async (folder: string, disk: Disk): Promise<string> => {
    const keeping = await openJsonlKeeping(folder, { disk });
    const notes = await keeping.attachments();
    const bytes = await Promise.all(notes.map(({ hash }) => keeping.attachment(hash)));
    const state = JSON.stringify({ page: await keeping.read(), check: await keeping.check(), notes, bytes });
    await keeping.close();
    return state;
  };

  test.each(acts)(
    'K6 K7 at any step of "$title": found as before or after, and what was acknowledged is there',
    async ({ act }) => {
      const folder = newFolder();
      const start = createMemoryDisk();
      const keeping = await openJsonlKeeping(folder, { disk: start });
      await keeping.keep(chain(3));
      await keeping.attach(photo.hash, photo.bytes, 'image/jpeg');
      await keeping.close();
      const before = await stateOn(folder, start.copy());
      const whole = start.copy();
      await act(await openJsonlKeeping(folder, { disk: whole }));
      const after = await stateOn(folder, whole);
      expect(after).not.toBe(before);

      const seen = { before: 0, after: 0 };
      let steps = 0;
      for (let isOver = false; !isOver; ) {
        steps += 1;
        expect(steps).toBeLessThan(mostSteps);
        const disk = start.copy();
        const dying = await openJsonlKeeping(folder, { disk });
        disk.stepsLeft = steps;
        const outcome = await rejection(act(dying));
        isOver = disk.stepsLeft > 0;
        for (const survival of survivals) {
          const state = await stateOn(folder, disk.afterPowerCut(survival));
          expect([before, after], `${steps} ${JSON.stringify(survival)}`).toContain(state);
          if (outcome === 'resolved') expect(state).toBe(after);
          seen[state === before ? 'before' : 'after'] += 1;
        }
      }
      expect(seen.before).toBeGreaterThan(survivals.length);
      expect(seen.after).toBeGreaterThanOrEqual(survivals.length);
    },
  );

  test('K6 K7 at any step of the first opening and the first entry: found empty or with it', async () => {
    const first = chain(1);
    let steps = 0;
    for (let isOver = false; !isOver; ) {
      steps += 1;
      expect(steps).toBeLessThan(mostSteps);
      const folder = newFolder();
      const disk = createMemoryDisk();
      disk.stepsLeft = steps;
      const outcome = await rejection(openJsonlKeeping(folder, { disk }).then((keeping) => keeping.keep(first)));
      isOver = disk.stepsLeft > 0;
      for (const survival of survivals) {
        const found = await openJsonlKeeping(folder, { disk: disk.afterPowerCut(survival) });
        const { entries } = await found.read();
        expect([[], first]).toContainEqual(entries);
        if (outcome === 'resolved') expect(entries).toEqual(first);
        await found.keep(first);
        expect(await found.check()).toMatchObject({ counted: 1, unreadable: [] });
        await found.close();
      }
    }
    expect(steps).toBeGreaterThan(4);
  });

  test('what a crash left of an attachment is tidied away when the daybook is next opened', async () => {
    const folder = newFolder();
    const keeping = await openJsonlKeeping(folder);
    await keeping.attach(photo.hash, photo.bytes, 'image/jpeg');
    await keeping.attach(other.hash, other.bytes, 'image/jpeg');
    await keeping.detach(photo.hash);
    await keeping.close();
    const shelf = join(folder, 'attachments');
    writeFileSync(join(shelf, photo.hash), photo.bytes);
    writeFileSync(join(shelf, `${'a'.repeat(64)}.unfinished`), 'half');
    await (await openJsonlKeeping(folder)).close();
    expect(nodeDisk.names(shelf)).toEqual([other.hash]);
  });
});

describe('entries kept together', () => {
  test('K21 K23 one that is damaged leaves the others readable; brackets, commas and quotes in a text mislead no one', async () => {
    const folder = newFolder();
    const texts = ['a "quoted, [text]', 'back\\slash at the end \\', 'note }{][,', 'ø🌱'];
    const entries = seal(
      null,
      texts.map((text, i) => draft(i + 1, { body: { text, list: [[], {}, [[','], '\\"']] } })),
    );
    const keeping = await openJsonlKeeping(folder);
    await keeping.keep(entries);
    expect((await keeping.read()).entries).toEqual(entries);
    const file = join(folder, 'daybook.jsonl');
    writeFileSync(file, readFileSync(file, 'utf8').replace('"text":"note }{][,"', '"text":note }{][,"'));
    const again = await openJsonlKeeping(folder);
    expect(await again.check()).toMatchObject({ unreadable: [{ why: 'a list without its end' }] });
    writeFileSync(file, readFileSync(file, 'utf8').replace('"text":note }{][,"', '"text":n"te }{][,"'));
    const third = await openJsonlKeeping(folder);
    const { unreadable, counted } = await third.check();
    expect(unreadable).toHaveLength(1);
    expect(counted).toBe(3);
    expect((await third.read()).entries).toEqual(entries.filter((_, i) => i !== 2));
    for (const one of [keeping, again, third]) await one.close();
  });
});

describe('a file that is not ours to change', () => {
  test.each([
    {
      title: 'a newer version',
      content: '{"format":"loamwright-keeping","v":2}\n{"id":1}\n',
      message: /newer version .* update the program/u,
    },
    { title: 'another program’s JSON', content: '{"name":"Ada","leeks":3}\n', message: /no daybook/u },
    { title: 'no JSON', content: 'Dear diary, today the leeks went in.\n', message: /no daybook/u },
    { title: 'one long line', content: 'x'.repeat(10_000), message: /no daybook/u },
  ])('$title: refused and left as it was', async ({ content, message }) => {
    const folder = newFolder();
    writeFileSync(join(folder, 'daybook.jsonl'), content);
    const error = await openJsonlKeeping(folder).catch((refused: unknown) => refused);
    expect(error).toBeInstanceOf(KeepingError);
    expect(error).toMatchObject({ code: 'damaged' });
    expect((error as KeepingError).message).toMatch(message);
    expect(readFileSync(join(folder, 'daybook.jsonl'), 'utf8')).toBe(content);
    expect(existsSync(join(folder, 'daybook.jsonl.torn'))).toBe(false);
  });
});

describe('the lock', () => {
  const self = thisProcess();
  const own = 'f'.repeat(32);
  /** A number that no process has: above the highest that Linux gives out (2^22, proc(5), pid_max). */
  const noProcess = 2 ** 22 + 1;

  test('a holder reads back from the name of its file', () => {
    expect(holderOf(`${nameOf(self)}.${own}`)).toEqual(self);
    for (const name of ['', 'lock', 'a.b.c.d.e.f', 'a.b.c.0.e.f', 'a.b.c.12', '.DS_Store'])
      expect(holderOf(name)).toBeUndefined();
  });

  test('who runs is told from who has ended, who began anew, and who can’t be looked at', () => {
    expect(hasEnded(self, self)).toBe(false);
    expect(hasEnded({ ...self, pid: noProcess }, self)).toBe(true);
    expect(hasEnded({ ...self, boot: '0123456789ab' }, self)).toBe(true);
    expect(hasEnded({ ...self, host: '0123456789ab' }, self)).toBeUndefined();
    expect(hasEnded({ ...self, space: '0123456789ab' }, self)).toBeUndefined();
    // Only where the machine tells when a process started.
    expect(hasEnded({ ...self, pid: process.ppid }, self)).toBe(existsSync('/proc/self/stat'));
  });

  test.runIf(existsSync('/proc/self/stat'))(
    'a killed process that its parent has not looked after has ended',
    async () => {
      // The shell becomes a `sleep`, which never asks after the child that the shell had begun.
      const parent = spawn('sh', ['-c', 'sleep 0.3 & echo $!; exec sleep 20'], { stdio: ['ignore', 'pipe', 'ignore'] });
      const [line]: Buffer[] = await once(parent.stdout, 'data');
      const pid = Number(String(line));
      await vi.waitFor(() => expect(readFileSync(`/proc/${pid}/stat`, 'utf8')).toMatch(/\) Z /u), { timeout: 15_000 });
      expect(() => process.kill(pid, 0)).not.toThrow();
      expect(hasEnded({ ...self, pid }, self)).toBe(true);
      parent.kill();
    },
  );

  test.each([
    { title: 'of a process that was killed', holder: { ...self, pid: noProcess } },
    { title: 'whose process number another process has now', holder: { ...self, started: '1' } },
    { title: 'from before the machine was last started', holder: { ...self, boot: '0123456789ab' } },
  ])('a lock $title is taken over at once', async ({ holder }) => {
    const folder = newFolder();
    writeFileSync(join(folder, `${nameOf(holder)}.${own}`), '');
    const lock = await takeLock(folder, 50);
    expect(nodeDisk.names(folder)).toHaveLength(1);
    lock.release();
    expect(nodeDisk.names(folder)).toEqual([]);
  });

  test.each([
    { title: 'of another machine', name: `${nameOf({ ...self, host: '0123456789ab' })}.${own}` },
    { title: 'with a name unknown here', name: 'a-note-someone-left' },
  ])('a lock $title is respected while it is young and taken over when it is old', async ({ name }) => {
    const folder = newFolder();
    const path = join(folder, name);
    writeFileSync(path, '');
    expect(await rejection(takeLock(folder, 60))).toBe('busy');
    expect(nodeDisk.names(folder)).toEqual([name]);
    const twoMinutesAgo_s = Date.now() / 1000 - 120;
    utimesSync(path, twoMinutesAgo_s, twoMinutesAgo_s);
    const lock = await takeLock(folder, 60);
    expect(existsSync(path)).toBe(false);
    lock.release();
  });

  test('of many that want it at once, one has it at a time, and each gets it', async () => {
    const folder = join(newFolder(), 'lock');
    mkdirSync(folder);
    let inside = 0;
    let turns = 0;
    const one = async (): Promise<void> => {
      const lock = await takeLock(folder, 20_000);
      inside += 1;
      expect(inside).toBe(1);
      await new Promise((resolve) => setTimeout(resolve, 3));
      inside -= 1;
      turns += 1;
      lock.release();
    };
    await Promise.all(Array.from({ length: 24 }, one));
    expect(turns).toBe(24);
    expect(nodeDisk.names(folder)).toEqual([]);
  });
});
