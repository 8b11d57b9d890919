import type { Material } from '../material/index.ts';
import type { Filled } from './filled.ts';
import { ABOUT_M, measuresFor, type Pile, repeatsFor, shareOut, shareWater_L } from './layers.ts';
import { mixParameters } from './parameters.ts';

/** What a layer is for; its words are the message `mix.layer.ROLE`. */
export const roles = ['base', 'dry', 'wet', 'cover'] as const;
export type Role = (typeof roles)[number];

/** Something to mind while building; its words are the message `mix.note.CODE`. */
export const noteCodes = [
  'too-wet',
  'too-dry',
  'fork-together',
  'base-from-elsewhere',
  'cover-from-elsewhere',
  'mix-fines-at-once',
  'starter-inside',
  'ash-apart',
  'higher-than-bay',
] as const;
export type NoteCode = (typeof noteCodes)[number];

/** Measures of one line of the mix, filled as that line says. */
export interface CardPart extends Filled {
  /** Position in the mix. */
  readonly line: number;
  readonly material: string;
  readonly measure: string;
  readonly count: number;
}

/** One layer, to scale. */
export interface CardLayer {
  readonly role: Role;
  readonly parts: readonly CardPart[];
  /** Likely height of its underside above the ground, and its own, m. */
  readonly bottom_m: number;
  readonly height_m: number;
  /** Water to pour on it, litres. */
  readonly water_L: number;
  /** A live starter that goes in with it. */
  readonly starter?: Omit<CardPart, 'line'> | undefined;
}

/** A line of the mix with what laying it needs to know, all likely. */
export interface Laid extends CardPart {
  readonly published: Material;
  readonly moisture_pctWet: number;
  /** All of it spread over the bay, m. */
  readonly height_m: number;
  /** Water all of it can take up, litres. */
  readonly room_L: number;
}

/** A part as the card shows it. */
function partOf({ line, material, measure, count, fill, packed }: CardPart): CardPart {
  return {
    line,
    material,
    measure,
    count,
    ...(fill === undefined ? {} : { fill }),
    ...(packed === undefined ? {} : { packed }),
  };
}

/** A part with its likely height and the water it can take up. */
interface Share extends CardPart {
  readonly height_m: number;
  readonly room_L: number;
}

interface Draft {
  readonly role: Role;
  /** Which turn of dry and wet it belongs to; absent for base and cover. */
  readonly repeat?: number | undefined;
  readonly shares: readonly Share[];
}

const { layers: depths, wetFrom_pctWet, thinHeap_share } = mixParameters;

/**
 * Lays a mix out: base, dry and wet in turn, cover. Every measure is in one layer; heights sum to the
 * heap's. Liquids go on dry layers; ash is dusted on dry stuff, at the bottom when anything rich is in
 * the mix; a starter goes into the inner wet layers, away from ash and from the dry outside.
 */
export function arrange(
  laid: readonly Laid[],
  water_L: number,
  starter: Omit<CardPart, 'line'> | undefined,
): { readonly layers: readonly CardLayer[]; readonly repeats: number; readonly notes: readonly NoteCode[] } {
  const thin_m = thinHeap_share.value * laid.reduce((sum, { height_m }) => sum + height_m, 0);
  const base = takeFrom(laid, isCoarse, Math.min(depths.base_m.low_m, thin_m));
  const cover = takeFrom(base.rest, isCover, Math.min(depths.cover_m.low_m, thin_m));
  const core = cover.rest;
  const ash = core.filter(isAsh);
  const dry = core.filter((one) => !isAsh(one) && !isWet(one));
  const wet = core.filter((one) => !isAsh(one) && isWet(one));
  const repeats = core.length === 0 ? 0 : repeatsFor([pilesOf(dry), pilesOf(wet)], depths.layer_m.high_m);
  const ashRepeats = laid.some(({ published }) => published.class === 'nitrogen-rich') ? Math.min(1, repeats) : repeats;
  const drafts: readonly Draft[] = [
    { role: 'base', shares: base.taken },
    ...Array.from({ length: repeats }, (_, repeat): readonly Draft[] => [
      { role: 'dry', repeat, shares: [...sharesIn(ash, repeat, ashRepeats), ...sharesIn(dry, repeat, repeats)] },
      { role: 'wet', repeat, shares: sharesIn(wet, repeat, repeats) },
    ]).flat(),
    { role: 'cover', shares: cover.taken },
  ];
  const kept = drafts.filter(({ shares }) => shares.length > 0);
  const started = starter === undefined ? undefined : starterIn(kept, starter, { repeats, hasAsh: ash.length > 0 });
  return {
    layers: toScale(kept, water_L, started),
    repeats,
    notes: [
      ...(isPaired(kept) ? (['fork-together'] as const) : []),
      ...(base.taken.length === 0 ? (['base-from-elsewhere'] as const) : []),
      ...(cover.taken.length === 0 ? (['cover-from-elsewhere'] as const) : []),
      ...(kept.some((draft) => hasThickFines(draft, laid)) || (repeats > 1 && dry.length === 0 && wet.some(isMatting))
        ? (['mix-fines-at-once'] as const)
        : []),
      ...(starter === undefined ? [] : (['starter-inside'] as const)),
      ...(ash.length > 0 ? (['ash-apart'] as const) : []),
    ],
  };
}

/** Whether some turn has something dry and something wet to fork together. */
function isPaired(drafts: readonly Draft[]): boolean {
  return drafts.some(
    ({ role, repeat }) => role === 'wet' && drafts.some((one) => one.role === 'dry' && one.repeat === repeat),
  );
}

function isWet({ moisture_pctWet, published }: Laid): boolean {
  return moisture_pctWet >= wetFrom_pctWet.value && published.particle !== 'liquid';
}

function isAsh({ published }: Laid): boolean {
  return published.id === 'wood-ash';
}

function isCoarse(one: Laid): boolean {
  return one.published.particle === 'coarse' && !isWet(one);
}

/** Dry brown stuff that sheds rain and keeps smells in, or finished compost. */
function isCover(one: Laid): boolean {
  const { class: kind, particle, id } = one.published;
  if (id === 'finished-compost') return true;
  return kind === 'carbon-rich' && !isWet(one) && (particle === 'stringy' || particle === 'leafy');
}

/** Fresh fines mat when they lie thick; anything else may lie as thick as a layer. */
function thickest_m(one: Laid): number {
  return isMatting(one) ? depths.fines_m.high_m : depths.layer_m.high_m;
}

function isMatting({ published }: Laid): boolean {
  const { class: kind, particle } = published;
  return particle === 'pasty' || (kind === 'nitrogen-rich' && particle !== 'stringy');
}

function pilesOf(kind: readonly Laid[]): readonly Pile[] {
  return kind.filter(({ height_m }) => height_m > 0).map((one) => ({ ...one, thickest_m: thickest_m(one) }));
}

function shareOf(one: Laid, count: number): Share {
  const part = count / one.count;
  return { ...partOf(one), count, height_m: one.height_m * part, room_L: one.room_L * part };
}

/** Takes a height of the first fitting material off the mix. */
function takeFrom(
  laid: readonly Laid[],
  fits: (one: Laid) => boolean,
  height_m: number,
): { readonly taken: readonly Share[]; readonly rest: readonly Laid[] } {
  const from = laid.find(fits);
  if (from === undefined || laid.length === 1) return { taken: [], rest: laid };
  const count = measuresFor({ ...from, thickest_m: height_m }, height_m);
  const left = from.count - count;
  const rest = laid.flatMap((one) => {
    if (one !== from) return [one];
    const { height_m: high, room_L } = shareOf(one, left);
    return left > 0 ? [{ ...one, count: left, height_m: high, room_L }] : [];
  });
  return { taken: [shareOf(from, count)], rest };
}

/** What lies in one repeat when a kind is shared out over the first so many. */
function sharesIn(kind: readonly Laid[], repeat: number, repeats: number): readonly Share[] {
  return kind.flatMap((one) => {
    const count = shareOut(one.count, repeats)[repeat] ?? 0;
    return count > 0 ? [shareOf(one, count)] : [];
  });
}

/** Which drafts the starter goes into, and how much: the wet ones of the inner half, else the dry ones. */
function starterIn(
  drafts: readonly Draft[],
  starter: Omit<CardPart, 'line'>,
  { repeats, hasAsh }: { readonly repeats: number; readonly hasAsh: boolean },
): ReadonlyMap<Draft, Omit<CardPart, 'line'>> {
  const isInner = ({ repeat = -1 }: Draft): boolean =>
    repeat + 0.5 >= repeats / 4 && repeat + 0.5 <= (3 * repeats) / 4 && !(hasAsh && repeat === 0);
  const ofCore = drafts.filter(({ repeat }) => repeat !== undefined);
  const wet = ofCore.filter(({ role }) => role === 'wet');
  const inner = wet.filter(isInner);
  const into = [inner, wet, ofCore, drafts].find((some) => some.length > 0) ?? [];
  const shares = shareOut(starter.count, into.length);
  return new Map(
    into.flatMap((draft, i): readonly [Draft, Omit<CardPart, 'line'>][] => {
      const count = shares[i] ?? 0;
      return count > 0 ? [[draft, { ...starter, count }]] : [];
    }),
  );
}

function hasThickFines({ shares }: Draft, laid: readonly Laid[]): boolean {
  return shares.some(({ line, height_m }) => {
    const one = laid.find((candidate) => candidate.line === line);
    return one !== undefined && isMatting(one) && height_m > thickest_m(one) + ABOUT_M;
  });
}

/** Heights from the ground up; water on the dry layers that have room for it. */
function toScale(
  drafts: readonly Draft[],
  water_L: number,
  started: ReadonlyMap<Draft, Omit<CardPart, 'line'>> | undefined,
): readonly CardLayer[] {
  const sum = (shares: readonly Share[], of: (share: Share) => number): number =>
    shares.reduce((total, share) => total + of(share), 0);
  const room = (draft: Draft): number => sum(draft.shares, ({ room_L }) => room_L);
  const dry = drafts.map((draft) => (draft.role === 'cover' || draft.role === 'wet' ? 0 : room(draft)));
  const water = shareWater_L(water_L, dry.some((litres) => litres > 0) ? dry : drafts.map(room));
  let bottom_m = 0;
  return drafts.map((draft, i): CardLayer => {
    const height_m = sum(draft.shares, (share) => share.height_m);
    const starter = started?.get(draft);
    const layer = {
      role: draft.role,
      parts: draft.shares.map(partOf),
      bottom_m,
      height_m,
      water_L: water[i] ?? 0,
      ...(starter === undefined ? {} : { starter }),
    };
    bottom_m += height_m;
    return layer;
  });
}
