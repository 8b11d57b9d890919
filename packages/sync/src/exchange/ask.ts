import {
  type Ask,
  compareText,
  type Head,
  type HeldOfDevice,
  type Offer,
  type Run,
  type Stretch,
} from '@loamwright/daybook';

/** What one side holds, as far as an exchange asks. */
export interface Own {
  readonly holding: string;
  readonly heads: readonly Head[];
  /** Attachments that entries held refer to, that none in force has removed, and that are not here. */
  readonly attachmentsMissing: readonly string[];
}

/** What to ask of a side that offers this; null when nothing is missing here (rules X4, X5, X13). */
export function askFor(own: Own, theirs: Offer): Ask | null {
  const chains = chainsOf(own.heads);
  const stretches = theirs.held.flatMap((held) => missingOf(held, chains.get(held.device) ?? noChain));
  if (stretches.length === 0 && own.attachmentsMissing.length === 0) return null;
  return {
    type: 'ask',
    v: 1,
    holding: own.holding,
    stretches: joined(stretches),
    attachments: [...own.attachmentsMissing].sort(compareText),
  };
}

/** One device's versions held here. */
interface Chain {
  /** By `versionName`. */
  readonly versions: ReadonlyMap<string, Head>;
  /** Every n of which a version is held, rising, each once. */
  readonly numbers: readonly number[];
}

const noChain: Chain = { versions: new Map(), numbers: [] };

function versionName(n: number, sum: string): string {
  return `${n} ${sum}`;
}

function chainsOf(heads: readonly Head[]): ReadonlyMap<string, Chain> {
  const byDevice = new Map<string, Head[]>();
  for (const head of heads) {
    const of = byDevice.get(head.device);
    if (of === undefined) byDevice.set(head.device, [head]);
    else of.push(head);
  }
  return new Map(
    [...byDevice].map(([device, of]) => [
      device,
      {
        versions: new Map(of.map((head) => [versionName(head.n, head.sum), head])),
        numbers: [...new Set(of.map(({ n }) => n))].sort((a, b) => a - b),
      },
    ]),
  );
}

function missingOf({ device, runs, sides }: HeldOfDevice, chain: Chain): readonly Stretch[] {
  const ofRuns = runs.flatMap((run) => missingOfRun(run, chain));
  const ofSides = sides
    .filter(({ n, sum }) => !chain.versions.has(versionName(n, sum)))
    .map(({ n }) => ({ from: n, to: n }));
  return [...ofRuns, ...ofSides].map((stretch) => ({ device, ...stretch }));
}

type Span = Pick<Stretch, 'from' | 'to'>;

function missingOfRun(run: Run, chain: Chain): readonly Span[] {
  const top = chain.versions.get(versionName(run.to, run.sum));
  if (top === undefined) {
    const missing = numbersMissing(run, chain.numbers);
    return missing.length === 0 ? [{ from: run.from, to: run.to }] : missing;
  }
  let reached = top;
  while (reached.n > run.from) {
    const below: Head | undefined = chain.versions.get(versionName(reached.n - 1, reached.prev ?? ''));
    if (below === undefined) return [{ from: run.from, to: reached.n - 1 }];
    reached = below;
  }
  return [];
}

/** The spans between the numbers held: told without counting through them, for a hostile run may be endless. */
function numbersMissing({ from, to }: Span, numbers: readonly number[]): readonly Span[] {
  const missing: Span[] = [];
  let next = from;
  for (let i = firstFrom(numbers, from); i < numbers.length; i++) {
    const n = numbers[i] ?? to + 1;
    if (n > to) break;
    if (n > next) missing.push({ from: next, to: n - 1 });
    next = n + 1;
  }
  if (next <= to) missing.push({ from: next, to });
  return missing;
}

/** Index of the first of rising numbers that is `from` or more. */
function firstFrom(numbers: readonly number[], from: number): number {
  let low = 0;
  let high = numbers.length;
  while (low < high) {
    const middle = (low + high) >>> 1;
    if ((numbers[middle] ?? 0) < from) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Ordered, with overlapping and touching stretches joined: the same need gives the same ask. */
function joined(stretches: readonly Stretch[]): readonly Stretch[] {
  const result: Stretch[] = [];
  for (const stretch of [...stretches].sort((a, b) => compareText(a.device, b.device) || a.from - b.from)) {
    const last = result.at(-1);
    if (last === undefined || last.device !== stretch.device || stretch.from > last.to + 1) result.push(stretch);
    else if (stretch.to > last.to) result[result.length - 1] = { ...last, to: stretch.to };
  }
  return result;
}
