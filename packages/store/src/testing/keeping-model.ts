import { canonical, type Entry, heldOf, type Keeping, type KeepReport, seal, type Tip } from '@loamwright/daybook';
import * as fc from 'fast-check';
import { expect } from 'vitest';
import { bytesOf, draft, idOf, must, otherVersion } from './entries.ts';
import type { KeepingKit, MakeKit } from './kit.ts';

/** What a keeping should hold, in the plainest form: versions in order of arrival, and attachments. */
export interface Model {
  readonly entries: Map<string, Entry>;
  readonly attachments: Map<string, string>;
  /** Next number for an id that no one has used. */
  next: number;
}

/** The keeping under test; some commands open it anew. */
export interface Real {
  readonly kit: KeepingKit;
  keeping: Keeping;
}

export interface ModelRun {
  readonly runs: number;
  readonly commands: number;
  /** How often each kind of command was carried out: to see that the run did something. */
  readonly counts: ReadonlyMap<string, number>;
}

const devices = ['phone-of-ada', 'shed', 'barn'] as const;
const photos = ['first photo', 'second photo', ''] as const;

type Command = fc.AsyncCommand<Model, Real>;

/** Random commands against the model; the seed is fixed, so a failure comes again. */
export async function runModel(
  makeKit: MakeKit,
  { runs, commands, seed }: { runs: number; commands: number; seed: number },
): Promise<ModelRun> {
  const counts = new Map<string, number>();
  const device = fc.constantFrom(...devices);
  const command = (title: string, act: (model: Model, real: Real) => Promise<void>): Command => ({
    check: () => true,
    toString: () => title,
    run: async (model, real) => {
      const kind = title.split(' ')[0] ?? title;
      counts.set(kind, (counts.get(kind) ?? 0) + 1);
      await act(model, real);
    },
  });
  const kinds = [
    fc
      .tuple(device, fc.integer({ min: 0, max: 4 }))
      .map(([by, count]) => command(`write ${count} as ${by}`, (m, r) => write(m, r, by, count))),
    fc.array(fc.nat(), { maxLength: 6 }).map((picks) => command(`keep ${picks.join()}`, (m, r) => keep(m, r, picks))),
    fc
      .tuple(fc.nat({ max: 12 }), fc.integer({ min: 1, max: 5 }))
      .map(([from, limit]) => command(`read from the ${from}th by ${limit}`, (m, r) => readOn(m, r, from, limit))),
    fc
      .array(fc.tuple(device, fc.nat({ max: 9 }), fc.nat({ max: 9 })), { maxLength: 4 })
      .map((asked) => command(`pick ${JSON.stringify(asked)}`, (m, r) => pick(m, r, asked))),
    fc.constantFrom(...photos).map((photo) => command(`attach "${photo}"`, (m, r) => attach(m, r, photo))),
    fc.constantFrom(...photos).map((photo) => command(`detach "${photo}"`, (m, r) => detach(m, r, photo))),
    fc.constant(command('reopen', reopen)),
    fc.constant(command('heads', heads)),
    fc.constant(command('check', check)),
  ];
  await fc.assert(
    fc.asyncProperty(fc.commands(kinds, { maxCommands: commands, size: 'max' }), async (list) => {
      const kit = await makeKit();
      const real: Real = { kit, keeping: await kit.open() };
      const model: Model = { entries: new Map(), attachments: new Map(), next: 1 };
      try {
        await fc.asyncModelRun(() => ({ model, real }), list);
        await everything(model, real);
      } finally {
        await real.keeping.close();
        await kit.dispose();
      }
    }),
    { numRuns: runs, seed },
  );
  return { runs, commands: [...counts.values()].reduce((sum, count) => sum + count, 0), counts };
}

const nameOf = ({ id, sum }: Pick<Entry, 'id' | 'sum'>): string => `${id} ${sum}`;
const texts = (entries: Iterable<Entry>): readonly string[] => [...entries].map(canonical);
const bySum = (a: Entry, b: Entry): number => a.n - b.n || (a.sum < b.sum ? -1 : 1);

/** All versions of a device, ordered by n and sum. */
function chainOf(model: Model, device: string): readonly Entry[] {
  return [...model.entries.values()].filter((entry) => entry.device === device).sort(bySum);
}

function tipOf(model: Model, device: string): Tip | null {
  const chain = chainOf(model, device);
  const last = chain.at(-1);
  const tip = chain.find(({ n }) => n === last?.n);
  return tip === undefined ? null : { n: tip.n, sum: tip.sum };
}

function addTo(model: Model, entries: readonly Entry[]): KeepReport {
  const before = model.entries.size;
  for (const entry of entries) if (!model.entries.has(nameOf(entry))) model.entries.set(nameOf(entry), entry);
  const ids = [...new Set(entries.map(({ id }) => id))].sort();
  const sumsOf = (id: string): string[] =>
    [...model.entries.values()].filter((entry) => entry.id === id).map(({ sum }) => sum);
  const conflicts = ids.map((id) => ({ id, sums: sumsOf(id).sort() })).filter(({ sums }) => sums.length > 1);
  const kept = model.entries.size - before;
  return { kept, there: entries.length - kept, conflicts };
}

async function write(model: Model, real: Real, device: string, count: number): Promise<void> {
  const first = model.next;
  model.next += count;
  const drafts = Array.from({ length: count }, (_, i) => draft(first + i, { device }));
  let seen: Tip | null | undefined;
  const written = await real.keeping.write(device, (tip) => {
    seen = tip;
    return seal(tip, drafts);
  });
  expect(seen).toEqual(tipOf(model, device));
  expect(written).toHaveLength(count);
  addTo(model, written);
}

/** Entries from elsewhere: some known here, some conflicting, some beyond a gap, some doubling a number. */
function fromElsewhere(model: Model, pick: number): Entry {
  const known = [...model.entries.values()];
  const one = known[pick % Math.max(1, known.length)];
  if (one !== undefined && pick % 3 === 0) return one;
  if (one !== undefined && pick % 3 === 1) return otherVersion(one, { text: `version ${pick % 5}` });
  const device = devices[pick % devices.length] ?? devices[0];
  const at = tipOf(model, device);
  const tip = at === null ? null : { n: at.n + (pick % 4) - 1, sum: at.sum };
  model.next += 1;
  return must(
    seal(tip === null || tip.n < 1 ? null : tip, [draft(model.next - 1, { device, id: idOf(model.next - 1) })])[0],
  );
}

async function keep(model: Model, real: Real, picks: readonly number[]): Promise<void> {
  const batch = picks.map((pick) => fromElsewhere(model, pick));
  const report = await real.keeping.keep(batch);
  expect(report).toEqual(addTo(model, batch));
}

/** Pages from a position that was given out before, to the end. */
async function readOn(model: Model, real: Real, from: number, limit: number): Promise<void> {
  const all = [...model.entries.values()];
  const start = from === 0 ? { entries: [], position: 0 } : await real.keeping.read({ limit: from });
  expect(texts(start.entries)).toEqual(texts(all.slice(0, from)));
  const seen: Entry[] = [];
  for (let { position } = start; ; ) {
    const page = await real.keeping.read({ after: position, limit });
    if (page.entries.length === 0) break;
    seen.push(...page.entries);
    position = page.position;
  }
  expect(texts(seen)).toEqual(texts(all.slice(start.entries.length)));
}

async function pick(model: Model, real: Real, asked: readonly (readonly [string, number, number])[]): Promise<void> {
  const stretches = asked.map(([device, from, to]) => ({ device, from, to }));
  const wanted = [...devices]
    .sort()
    .flatMap((device) =>
      chainOf(model, device).filter(({ n }) => stretches.some((s) => s.device === device && s.from <= n && n <= s.to)),
    );
  expect(texts(await real.keeping.pick(stretches))).toEqual(texts(wanted));
}

async function attach(model: Model, real: Real, photo: string): Promise<void> {
  const { hash, bytes } = bytesOf(photo);
  const mediaType = `image/x-${model.next}`;
  await real.keeping.attach(hash, bytes, mediaType);
  if (!model.attachments.has(hash)) model.attachments.set(hash, mediaType);
}

async function detach(model: Model, real: Real, photo: string): Promise<void> {
  const { hash } = bytesOf(photo);
  await real.keeping.detach(hash);
  model.attachments.delete(hash);
}

async function reopen(model: Model, real: Real): Promise<void> {
  await real.keeping.close();
  real.keeping = await real.kit.open();
  expect((await real.keeping.read()).entries).toHaveLength(model.entries.size);
}

async function heads(model: Model, real: Real): Promise<void> {
  const wanted = [...devices].sort().flatMap((device) => chainOf(model, device));
  const kept = await real.keeping.heads();
  expect(kept).toEqual(wanted.map(({ id, device, n, prev, sum }) => ({ id, device, n, prev, sum })));
  expect(heldOf(kept)).toEqual(heldOf(model.entries.values()));
  const tips = [...devices].sort().flatMap((device) => {
    const tip = tipOf(model, device);
    return tip === null ? [] : [{ device, ...tip }];
  });
  expect(await real.keeping.tips()).toEqual(tips);
}

async function check(model: Model, real: Real): Promise<void> {
  const report = await real.keeping.check();
  expect(report).toMatchObject({ counted: model.entries.size, changed: [], unreadable: [], attachmentsChanged: [] });
}

async function everything(model: Model, real: Real): Promise<void> {
  await reopen(model, real);
  await heads(model, real);
  await check(model, real);
  expect(texts((await real.keeping.read()).entries)).toEqual(texts(model.entries.values()));
  const notes = [...model.attachments]
    .map(([hash, mediaType]) => ({ hash, mediaType }))
    .sort((a, b) => (a.hash < b.hash ? -1 : 1));
  expect((await real.keeping.attachments()).map(({ hash, mediaType }) => ({ hash, mediaType }))).toEqual(notes);
}
