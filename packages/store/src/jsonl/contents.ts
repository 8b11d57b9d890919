import {
  type AttachmentNote,
  compareText,
  type DeviceTip,
  type Entry,
  type Head,
  type Position,
  type Stretch,
} from '@loamwright/daybook';
import { joinStretches } from '../shared/stretches.ts';
import type { Line, PlacedRecord } from './lines.ts';

/** Where one entry stands in the file. */
export interface Place extends Head {
  readonly position: Position;
  readonly length_bytes: number;
}

/** What is in the file, without the bodies: enough to know what is here and where it stands. */
export interface Contents {
  readonly inOrder: readonly Place[];
  readonly holding: string | null;
  readonly attachments: ReadonlyMap<string, AttachmentNote>;
  readonly detached: ReadonlySet<string>;
  absorb(lines: readonly Line[]): void;
  sumsOf(id: string): readonly string[];
  /** Every version of one device, ordered by n and sum. */
  chainOf(device: string): readonly Place[];
  heads(): readonly Place[];
  tips(): readonly DeviceTip[];
}

export function createContents(): Contents {
  const inOrder: Place[] = [];
  const sums = new Map<string, string[]>();
  const chains = new Map<string, { readonly places: Place[]; isSorted: boolean }>();
  const attachments = new Map<string, AttachmentNote>();
  const detached = new Set<string>();
  let holding: string | null = null;

  const addEntry = (entry: Entry, { position, length_bytes }: PlacedRecord): void => {
    const { id, device, n, prev, sum } = entry;
    const known = sums.get(id);
    if (known?.includes(sum) === true) return;
    if (known === undefined) sums.set(id, [sum]);
    else known.push(sum);
    holding ??= entry.holding;
    const place: Place = { id, device, n, prev, sum, position, length_bytes };
    inOrder.push(place);
    const chain = chains.get(device);
    if (chain === undefined) chains.set(device, { places: [place], isSorted: true });
    else {
      const last = chain.places.at(-1);
      chain.isSorted &&= last === undefined || inChain(last, place) < 0;
      chain.places.push(place);
    }
  };

  const absorbLine = ({ content }: Line): void => {
    switch (content.type) {
      case 'records':
        for (const placed of content.records) if (placed.record.ok) addEntry(placed.record.entry, placed);
        break;
      case 'attached':
        attachments.set(content.note.hash, content.note);
        detached.delete(content.note.hash);
        break;
      case 'detached':
        attachments.delete(content.hash);
        detached.add(content.hash);
        break;
      case 'header':
      case 'unreadable':
        break;
    }
  };

  const chainOf = (device: string): readonly Place[] => {
    const chain = chains.get(device);
    if (chain === undefined) return [];
    if (!chain.isSorted) chain.places.sort(inChain);
    chain.isSorted = true;
    return chain.places;
  };
  const devices = (): readonly string[] => [...chains.keys()].sort(compareText);

  return {
    inOrder,
    get holding() {
      return holding;
    },
    attachments,
    detached,
    absorb: (lines) => {
      for (const line of lines) absorbLine(line);
    },
    sumsOf: (id) => sums.get(id) ?? [],
    chainOf,
    heads: () => devices().flatMap(chainOf),
    tips: () =>
      devices().flatMap((device) => {
        const tip = tipOf(chainOf(device));
        return tip === null ? [] : [{ device, n: tip.n, sum: tip.sum }];
      }),
  };
}

/** The highest n of a chain, with the lowest sum where it is doubled (rule K10). */
export function tipOf(chain: readonly Place[]): Place | null {
  const last = chain.at(-1);
  if (last === undefined) return null;
  let first = chain.length - 1;
  while (chain[first - 1]?.n === last.n) first--;
  return chain[first] ?? null;
}

/** Places within the stretches, ordered by device, n and sum, each once. */
export function placesWithin(contents: Contents, stretches: readonly Stretch[]): readonly Place[] {
  return joinStretches(stretches).flatMap(({ device, from, to }) => {
    const chain = contents.chainOf(device);
    return chain.slice(
      firstWhere(chain, (place) => place.n >= from),
      firstWhere(chain, (place) => place.n > to),
    );
  });
}

/** Index of the first element that meets a condition which, once met, stays met; the length where none does. */
export function firstWhere<Element>(list: readonly Element[], meets: (element: Element) => boolean): number {
  let low = 0;
  let high = list.length;
  while (low < high) {
    const middle = (low + high) >>> 1;
    const element = list[middle];
    if (element !== undefined && meets(element)) high = middle;
    else low = middle + 1;
  }
  return low;
}

function inChain(a: Place, b: Place): number {
  return a.n - b.n || compareText(a.sum, b.sum);
}
