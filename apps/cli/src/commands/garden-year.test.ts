import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { flat, type Garden, garden } from '../testing/garden.ts';

let home: Garden;
let other: Garden;
beforeEach(() => {
  home = garden();
  other = garden();
});
afterEach(() => {
  home.remove();
  other.remove();
});

const at = (day: number) => ({ at: `2026-07-${day}T11:00:00.000Z` });
const stuff = ['straw=2bales', 'leaves=6bags', 'goat bedding=3 barrows', 'coffee-grounds=4buckets'];

/** A heap built and read on three days, one of the readings odd and meant. */
async function buildAndRead(): Promise<void> {
  await home.run(['log', 'bay', 'Left bay', '1.2x1.2x1.2m', '--units', 'metric'], at(15));
  await home.run(['build', ...stuff, '--name', 'First heap', '--bay', 'Left bay', '--water', '26L'], at(15));
  await home.run(['log', 'First heap', '48C', '--where', 'core'], at(17));
  await home.run(['log', 'First heap', '62C', '--where', 'core'], at(18));
}

async function lines(of: Garden): Promise<readonly { readonly entry: string; readonly sum: string }[]> {
  const { value } = await of.json(['daybook', '--all'], at(20));
  return value as readonly { readonly entry: string; readonly sum: string }[];
}

describe('a heap from building to reading', () => {
  it('is built with its card, read, and told with what to do', async () => {
    await buildAndRead();
    const page = flat((await home.run(['heap', 'First heap'], at(18))).out);
    expect(page).toContain('First heap, in Left bay');
    expect(page).toContain('62 °C in the core');
    expect(page).toContain('! Manure can carry germs');
    expect(await lines(home)).toHaveLength(4);
  });

  it('asks about an odd reading: nothing is written until somebody says so', async () => {
    await buildAndRead();
    const odd = ['log', 'First heap', '300F', '--where', 'core'];
    const asked = await home.run(odd, at(19));
    expect(asked.code).toBe(2);
    expect(flat(asked.out + asked.err)).toContain('Did you mean 130 °F, with a 1 before it?');
    expect(await lines(home)).toHaveLength(4);
    expect((await home.run([...odd, '--as-typed'], at(19))).code).toBe(0);
    expect(await lines(home)).toHaveLength(5);
    // What nobody would ask about is not marked, though it is given as typed.
    await home.run(['log', 'First heap', '60C', '--where', 'core', '--as-typed'], at(20));
    const book = flat((await home.run(['daybook', '--units', 'us'], at(20))).out);
    expect(book).toContain('First heap read 300 °F in the core, marked doubtful.');
    expect(book).toContain('First heap read 140 °F in the core.');
  });

  it('tells fire before anything else at 90 °C, and not simply to turn', async () => {
    await buildAndRead();
    const { out } = await home.run(['log', 'First heap', '90C', '--where', 'core', '--as-typed'], at(19));
    const text = flat(out);
    expect(text).toContain('! Fire:');
    expect(text.indexOf('! Fire:')).toBe(text.indexOf('! '));
    expect(text).not.toMatch(/Today: Turn it/u);
  });

  it('takes a temperature below zero for what it is, and no option', async () => {
    await buildAndRead();
    const { code, out } = await home.run(['log', 'First heap', '-5C', '--where', 'edge', '--as-typed'], at(19));
    expect(code).toBe(0);
    expect(out).toContain('-5 °C');
    const air = await home.run(['log', 'First heap', '50C', '--air', '-10C', '--as-typed'], at(19));
    expect(air.code).toBe(0);
    expect((await home.run(['log', 'First heap', '-40C'], at(19))).err).not.toContain('unknown option');
  });

  it('tells a span of a few hours in hours', async () => {
    await buildAndRead();
    await home.run(['log', 'First heap', '66C', '--where', 'core'], { at: '2026-07-18T13:30:00.000Z' });
    const page = flat((await home.run(['heap', 'First heap'], { at: '2026-07-18T14:00:00.000Z' })).out);
    expect(page).toContain('in 3 hours.');
    await home.run(['log', 'First heap', '70C', '--where', 'core'], { at: '2026-07-18T13:50:00.000Z' });
    const soon = flat((await home.run(['heap', 'First heap'], { at: '2026-07-18T14:00:00.000Z' })).out);
    expect(soon).toContain('in 20 minutes.');
  });

  it('does not forget smoke because water was poured on', async () => {
    await buildAndRead();
    await home.run(['log', 'First heap', '65C', '--where', 'core', '--smell', 'smoke'], at(19));
    await home.run(['log', 'First heap', 'watered', '20L'], at(19));
    const after = { at: '2026-07-19T12:00:00.000Z' };
    const { out } = await home.run(['log', 'First heap', '66C', '--where', 'core'], after);
    expect(out).toContain('! Fire:');
    expect(out).not.toContain('Leave it alone');
  });

  it('corrects and takes back by further entries, and the chain still checks', async () => {
    await buildAndRead();
    const [newest] = await lines(home);
    const end = newest?.entry.slice(-8) ?? '';
    expect((await home.run(['daybook', '--amend', end, '64C', '--where', 'core'], at(19))).code).toBe(0);
    expect((await home.run(['heap', 'First heap'], at(19))).out).toContain('64 °C');
    expect((await home.run(['daybook', '--withdraw', end, '--why', 'wrong heap'], at(19))).code).toBe(0);
    expect((await home.run(['heap', 'First heap'], at(19))).out).toContain('48 °C');
    expect((await home.run(['daybook', '--check'], at(19))).out).toContain('nothing is changed, missing or in doubt');
  });

  it('is fed by the pail, watered and turned', async () => {
    await buildAndRead();
    const fed = await home.run(['feed', 'First heap', 'kitchen-scraps=1pail', 'straw=2 armfuls'], at(19));
    const watered = await home.run(['log', 'First heap', 'watered', '20L'], at(19));
    const turned = await home.run(['log', 'First heap', 'turned'], at(19));
    expect([fed.code, watered.code, turned.code]).toEqual([0, 0, 0]);
    expect(flat((await home.run(['daybook'], at(19))).out)).toContain('fed with 1 pail of kitchen scraps');
  });
});

describe('a daybook taken and brought', () => {
  it('is the same daybook elsewhere, and bringing it twice changes nothing', async () => {
    await buildAndRead();
    const file = join(home.folder, 'garden.jsonl');
    expect((await home.run(['take', '--out', file])).code).toBe(0);
    expect((await other.run(['bring', file])).code).toBe(0);
    const page = ['heap', 'First heap', '--units', 'metric'];
    expect((await other.run(page, at(18))).out).toBe((await home.run(page, at(18))).out);
    expect(await lines(other)).toEqual(await lines(home));
    expect((await other.run(['bring', file])).out).toContain('Nothing new; 4 were here already.');
  });

  it('takes only the sound lines of a damaged copy, says so, and fails', async () => {
    await buildAndRead();
    const file = join(home.folder, 'garden.jsonl');
    await home.run(['take', '--out', file]);
    writeFileSync(file, readFileSync(file, 'utf8').replace('First heap', 'Fifth heap'));
    const { code, out } = await other.run(['bring', file]);
    expect(code).toBe(1);
    const sound = (await lines(home)).map(({ sum }) => sum);
    const brought = (await lines(other)).map(({ sum }) => sum);
    expect(brought).toHaveLength(sound.length - 1);
    expect(sound).toEqual(expect.arrayContaining(brought));
    expect(out).not.toContain('Fifth heap');
  });

  it.each(['{"some":"json"}\n', '', '\0\u0001', '[]', 'straw'])('keeps nothing of %j', async (text) => {
    const file = join(home.folder, 'other.jsonl');
    writeFileSync(file, text);
    const { code, out, err } = await other.run(['bring', file]);
    expect(code).toBeGreaterThan(0);
    expect(err + out).not.toMatch(/\bat .+\.ts:/u);
    expect(await lines(other)).toEqual([]);
  });

  it('leaves a file that is no database as it is, and says what would do', async () => {
    const file = join(home.folder, 'daybook.sqlite');
    writeFileSync(file, 'no database at all, but long enough to be taken for one');
    const { code, err, out } = await home.run(['daybook']);
    expect(code).toBe(1);
    expect(out + err).toContain('backup');
    expect(readFileSync(file, 'utf8')).toContain('no database at all');
  });
});

describe('the demo garden', () => {
  it('is kept apart, and goes when it is let go', async () => {
    expect(flat((await home.run(['heap', '--demo'])).out)).toContain('Kitchen bin');
    expect(await lines(home)).toEqual([]);
    expect((await home.run(['daybook', '--demo', '--forget'])).code).toBe(0);
  });
});
