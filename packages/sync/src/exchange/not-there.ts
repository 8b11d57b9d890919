import type { Head, HeldOfDevice } from '@loamwright/daybook';

/**
 * Which versions a side that described what it holds (`heldOf`) is not known to have.
 *
 * A run speaks for the chain that leads down from its top. Where the top is not among the heads, or the way down stops,
 * the run counts for every number below: from here it can't be told which versions they are, and the next exchange will.
 */
export function notThere<H extends Head>(heads: readonly H[], held: readonly HeldOfDevice[]): readonly H[] {
  const versions = new Map(heads.map((head) => [nameOf(head), head]));
  const there = new Map(held.map((of) => [of.device, thereOf(of, versions)]));
  return heads.filter((head) => {
    const of = there.get(head.device);
    if (of === undefined) return true;
    return !of.versions.has(nameOf(head)) && !of.spans.some(({ from, to }) => from <= head.n && head.n <= to);
  });
}

type Version = Pick<Head, 'device' | 'n' | 'sum'>;

function nameOf({ device, n, sum }: Version): string {
  return `${device} ${n} ${sum}`;
}

interface There {
  /** By `nameOf`. */
  readonly versions: ReadonlySet<string>;
  readonly spans: readonly { readonly from: number; readonly to: number }[];
}

function thereOf({ device, runs, sides }: HeldOfDevice, here: ReadonlyMap<string, Head>): There {
  const versions = new Set(sides.map(({ n, sum }) => nameOf({ device, n, sum })));
  const spans = runs.map(({ from, to, sum }) => {
    let below = to;
    let at = here.get(nameOf({ device, n: to, sum }));
    while (at !== undefined && at.n >= from) {
      versions.add(nameOf(at));
      below = at.n - 1;
      at = here.get(nameOf({ device, n: below, sum: at.prev ?? '' }));
    }
    return { from, to: below };
  });
  return { versions, spans };
}
