import type { Wall } from '@loamwright/daybook';
import { type Aim, type Amount, aims } from '@loamwright/science';
import { convert, type UnitSystem } from '@loamwright/units';
import { useSyncExternalStore } from 'react';
import { settings, useSettings } from '../device/settings.ts';
import { asRecord, type Stored, stored } from '../device/stored.ts';

/** One of the holding's own materials, as far as the bins show it. */
export interface OwnAtBins {
  readonly name: string;
  /** The known material that it is like, by which it is drawn. */
  readonly like?: string | undefined;
}

/** One material at the bins, and how much of it lies there as the grower says it. */
export interface BinItem {
  readonly material: string;
  /** Given for one of the holding's own. */
  readonly own?: OwnAtBins | undefined;
  readonly amount: Amount;
  /** What the grower wants of it in the mix, beside what works out best. */
  readonly wish?: Wish | undefined;
}

/** All of it goes in, or just so many of its measures. */
export type Wish = { readonly all: true } | { readonly exactly: number };

/** The bay that is to be filled: one of the holding's, or sizes alone. */
export interface BinBay {
  readonly id: string | null;
  readonly width_m: number;
  readonly depth_m: number;
  readonly height_m: number;
  readonly wall: Wall;
}

/** What was said at the bins and not yet built. It is no fact, so it lies beside the daybook and not in it. */
export interface Bins {
  readonly items: readonly BinItem[];
  readonly bay: BinBay;
  /** Litres of water there are; null where it is not short. */
  readonly mostWater_L: number | null;
  /** Which of the answers is to be laid; null for the first. */
  readonly aim: Aim | null;
}

/** Side of a bay of pallets, as it is said in feet and in metres. */
const usualSide_m: Readonly<Record<UnitSystem, number>> = { us: convert(4, 'ft', 'm'), metric: 1.2 };
const usualWall: Wall = 'pallets';

const walls: readonly Wall[] = ['boards', 'pallets', 'mesh', 'masonry', 'bales', 'plastic', 'drum', 'open', 'other'];

function readBins(raw: unknown): Bins {
  const { items, bay, mostWater_L, aim } = asRecord(raw);
  return {
    items: Array.isArray(items) ? items.filter(isItem) : [],
    bay: readBay(asRecord(bay)),
    mostWater_L: typeof mostWater_L === 'number' && mostWater_L >= 0 ? mostWater_L : null,
    aim: aims.find((one) => one === aim) ?? null,
  };
}

/** The demo's bins are apart from one's own. */
const drafts = { own: stored('loamwright.bins', readBins), demo: stored('loamwright.bins-demo', readBins) };

function kept(): Stored<Bins> {
  return drafts[settings().book === 'demo' ? 'demo' : 'own'];
}

/** Only its shape: whether the amount can be reckoned with is asked where it is reckoned. */
function isItem(raw: unknown): raw is BinItem {
  const { material, amount } = asRecord(raw);
  return typeof material === 'string' && Object.keys(asRecord(amount)).length > 0;
}

function readBay(raw: Readonly<Record<string, unknown>>): BinBay {
  const side = (name: 'width_m' | 'depth_m' | 'height_m'): number => {
    const value = raw[name];
    return typeof value === 'number' && value > 0 && Number.isFinite(value) ? value : usualSide_m[settings().system];
  };
  return {
    id: typeof raw['id'] === 'string' ? raw['id'] : null,
    width_m: side('width_m'),
    depth_m: side('depth_m'),
    height_m: side('height_m'),
    wall: walls.find((wall) => wall === raw['wall']) ?? usualWall,
  };
}

export function useBins(): Bins {
  const draft = drafts[useSettings().book === 'demo' ? 'demo' : 'own'];
  return useSyncExternalStore(draft.subscribe, draft.get);
}

/** Lets the demo's bins go with the demo. */
export function clearDemoBins(): void {
  drafts.demo.set(readBins(null));
}

/** Says how much of a material lies here. A wish is about the amount there was, so it goes with it. */
export function putAmount(material: string, amount: Amount, own?: OwnAtBins): void {
  const { items } = kept().get();
  const known = items.some((item) => item.material === material);
  const next = { material, amount, ...(own !== undefined && { own }) };
  put({ items: known ? items.map((item) => (item.material === material ? next : item)) : [...items, next] });
}

export function takeOut(material: string): void {
  put({
    items: kept()
      .get()
      .items.filter((item) => item.material !== material),
  });
}

export function putWish(material: string, wish: Wish | null): void {
  put({
    items: kept()
      .get()
      .items.map((item) => {
        if (item.material !== material) return item;
        const { wish: _before, ...rest } = item;
        return wish === null ? rest : { ...rest, wish };
      }),
  });
}

export function putBay(bay: BinBay): void {
  put({ bay });
}

export function putMostWater(mostWater_L: number | null): void {
  put({ mostWater_L });
}

/** After the heap has been built from it, the bay stays and the stuff is gone. */
export function clearBins(): void {
  put({ items: [] });
}

/** Chooses another of the answers, or the first again. */
export function putAim(aim: Aim | null): void {
  put({ aim });
}

/** What was chosen among the answers to one question is no choice among those to another. */
function put(change: Partial<Bins>): void {
  kept().set({ ...kept().get(), aim: null, ...change });
}
