import { good, type Outcome } from '../catalogue/index.ts';
import { knownMaterial, materialById, type OwnSizes } from '../material/index.ts';
import type { MilpSolver } from '../solver/index.ts';
import { type Permitted, resolve, weighLikely } from './ingredient.ts';
import { mixParameters } from './parameters.ts';
import { scaled } from './portion.ts';
import type { Choice, Wanted } from './programme.ts';
import { type Found, search } from './search.ts';
import type { Counting, Shelf } from './stock.ts';

/** A material to have more of, or to fetch. */
export interface Extra {
  readonly permitted: Permitted;
  readonly counting: Counting;
  readonly measuresPerStep: number;
  /** Position in the stock of what is on hand already; absent for what is to be fetched. */
  readonly stock?: number | undefined;
  readonly choice: Choice;
}

/** How an extra is counted. */
export interface Counted {
  readonly measure: string;
  readonly measuresPerStep: number;
}

/** What would mend a mix: how many steps of each extra, and the mix there would be. */
export interface Mending {
  readonly extras: readonly { readonly extra: Extra; readonly steps: number }[];
  readonly found: Found;
  /** The stock's choices and the extras', in the order of `found`. */
  readonly choices: readonly Choice[];
}

const MOST_MENDINGS = 3;
/** Relaxed programmes solved at the most in search of mendings; each takes about a millisecond. */
const MOST_TRIALS = 40;

/**
 * What would mend a mix: first the single materials, more of one on hand or one to fetch, that better it
 * most; where none of them is enough, the best pair of a rich and a dry one too. With nothing on
 * hand only pairs, the best with each rich material; a liquid by itself is poured on something first. Tried on relaxed programmes, then solved in whole
 * steps: at most 40 of the one and 6 of the other.
 */
export function mend(options: {
  readonly shelves: readonly Shelf[];
  readonly candidates: readonly Extra[];
  readonly wanted: Wanted;
  readonly best: Found;
  readonly solver: MilpSolver;
  /** Whether a mending leaves nothing to wish for. */
  readonly isEnough: (mending: Mending) => boolean;
  /** Whether to look for pairs too. */
  readonly pairs: boolean;
}): Outcome<readonly Mending[]> {
  const { shelves, candidates, wanted, best, solver, isEnough, pairs } = options;
  const worth = best.cost - mixParameters.solver.worthwhile.value;
  const isBare = best.steps.every((steps) => steps === 0);
  const more = shelves.flatMap((shelf, i) => moreOf(shelf, i, best.steps[i] ?? 0, wanted));
  const singles = shelves.length === 0 ? [] : [...more, ...candidates].map((extra) => [extra]);
  const mended = confirm(withOnHand(relax(singles)));
  if (!mended.ok || !pairs || mended.value.some(isEnough)) return mended;
  const paired = confirm(bestByRich(relax(pairsOf(candidates))).slice(0, isBare ? MOST_MENDINGS : 1));
  if (!paired.ok) return paired;
  const kept = withOnHandFirst(mended.value).slice(0, MOST_MENDINGS - paired.value.length);
  return good([...kept, ...paired.value]);

  /** The trials that better the mix, best first, by their relaxed programmes. */
  function relax(trials: readonly (readonly Extra[])[]): readonly (readonly Extra[])[] {
    return trials
      .slice(0, MOST_TRIALS)
      .map((extras) => ({ extras, found: search(withExtras(shelves, extras), wanted, solver, false) }))
      .flatMap(({ extras, found }) =>
        found.ok && found.value.cost < worth ? [{ extras, cost: found.value.cost }] : [],
      )
      .sort((a, b) => a.cost - b.cost)
      .map(({ extras }) => extras);
  }

  /** The same in whole steps, best first; those that then better nothing drop out. */
  function confirm(trials: readonly (readonly Extra[])[]): Outcome<readonly Mending[]> {
    const mendings: Mending[] = [];
    for (const extras of trials) {
      const choices = withExtras(shelves, extras);
      const found = search(choices, wanted, solver);
      if (!found.ok) return found;
      const used = extras
        .map((extra, i) => ({ extra, steps: found.value.steps[shelves.length + i] ?? 0 }))
        .filter(({ steps }) => steps > 0);
      if (found.value.cost < worth && used.length > 0) mendings.push({ extras: used, found: found.value, choices });
    }
    return good(mendings.sort((a, b) => a.found.cost - b.found.cost));
  }
}

function isRich({ permitted }: Extra): boolean {
  return materialById(permitted.material)?.class === 'nitrogen-rich';
}

/** The best few; more of something on hand is among them where it helps at all, being nearest. */
function withOnHand(ranked: readonly (readonly Extra[])[]): readonly (readonly Extra[])[] {
  const isOnHand = (extras: readonly Extra[]): boolean => extras.every(({ stock }) => stock !== undefined);
  const first = ranked.slice(0, MOST_MENDINGS);
  const nearest = ranked.find(isOnHand);
  if (nearest === undefined || first.includes(nearest)) return first;
  return [nearest, ...first.slice(0, MOST_MENDINGS - 1)];
}

/** Where not all can be kept, more of something on hand is. */
function withOnHandFirst(mendings: readonly Mending[]): readonly Mending[] {
  const isOnHand = ({ extras }: Mending): boolean => extras.every(({ extra }) => extra.stock !== undefined);
  return [...mendings.filter(isOnHand), ...mendings.filter((mending) => !isOnHand(mending))];
}

/** Every rich candidate with every other one. */
function pairsOf(candidates: readonly Extra[]): readonly (readonly [Extra, Extra])[] {
  const dry = candidates.filter((extra) => !isRich(extra));
  return candidates.filter(isRich).flatMap((rich) => dry.map((other): readonly [Extra, Extra] => [rich, other]));
}

/** Of ranked pairs, the first of each rich material. */
function bestByRich(ranked: readonly (readonly Extra[])[]): readonly (readonly Extra[])[] {
  const first = (pair: readonly Extra[]): string | undefined => pair[0]?.permitted.material;
  return ranked.filter((pair, i) => ranked.findIndex((other) => first(other) === first(pair)) === i);
}

function withExtras(shelves: readonly Shelf[], extras: readonly Extra[]): readonly Choice[] {
  return [...shelves.map(({ choice }) => choice), ...extras.map(({ choice }) => choice)];
}

/** More of a material of which everything is in the mix already: no more than a few times what there is. */
function moreOf(shelf: Shelf, stock: number, used: number, wanted: Wanted): readonly Extra[] {
  const { choice, counting, permitted, measuresPerStep, count, isDusted } = shelf;
  if (isDusted || used < choice.highest || choice.step.volume_m3 <= 0) return [];
  const whole = measuresPerStep === count ? 1 : measuresPerStep;
  const step = scaled(choice.step, whole / measuresPerStep);
  const most = Math.ceil((mixParameters.mostMore_times.value * count) / whole);
  const limited = { step, lowest: 0, highest: Math.min(most, enough(step.volume_m3, wanted)), rank: choice.rank };
  return [{ permitted, counting, measuresPerStep: whole, stock, choice: limited }];
}

/** Steps that alone fill the wanted volume. */
function enough(step_m3: number, { volume_m3, packing_share }: Wanted): number {
  return Math.ceil(volume_m3 / (packing_share * step_m3));
}

/** Common materials that are not on hand, each in a measure of its own; ids without figures are passed over. */
export function candidatesOf(options: {
  readonly ids: readonly string[];
  readonly onHand: readonly string[];
  readonly countedIn: (material: string) => Counted;
  readonly wanted: Wanted;
  readonly ownSizes: OwnSizes | undefined;
}): Outcome<readonly Extra[]> {
  const { ids, onHand, countedIn, wanted, ownSizes } = options;
  const extras: Extra[] = [];
  for (const [i, material] of ids.entries()) {
    if (onHand.includes(material) || knownMaterial(material) === undefined) continue;
    const path = `candidates[${i}]`;
    const resolved = resolve({ material }, path);
    if (!resolved.ok) return resolved;
    const { measure, measuresPerStep } = countedIn(material);
    const amount = { measure, count: measuresPerStep };
    const step = weighLikely(resolved.value, amount, material, { ownSizes, path });
    if (!step.ok) return step;
    if (step.value.volume_m3 <= 0) continue;
    const highest = enough(step.value.volume_m3, wanted);
    const choice = { step: step.value, lowest: 0, highest, rank: onHand.length + i };
    const { permitted } = resolved.value;
    extras.push({ permitted, counting: { measure }, measuresPerStep, choice });
  }
  return good(extras);
}
