import { likeness } from './nearest.ts';

/** What a material goes by: the messages `material.ID.name` and `material.ID.words`, or a grower's own name. */
export interface MaterialWords {
  readonly id: string;
  readonly name: string;
  /** Further names, separated by commas. */
  readonly words: string;
}

/**
 * How a material was found, best first: what was typed is one of its names; begins one; is made of words
 * that one is made of, or of their beginnings; or is only spelt much like one.
 */
export const matchKinds = ['exact', 'prefix', 'word', 'near'] as const;
export type MatchKind = (typeof matchKinds)[number];

export interface FoundMaterial {
  readonly id: string;
  /** The name by which it was found. */
  readonly word: string;
  readonly match: MatchKind;
}

/** Below this likeness two words are different words, not one word mistyped: our own judgement. */
const NEAR_LIKENESS = 0.5;
const MOST_NEAR = 5;

/**
 * The materials that go by what was typed, best first: exact before prefix before word; a material's own
 * name before its other words; then in the order given. Capitals, accents, hyphens, brackets and plurals
 * make no difference. Near misses come only when nothing better is found, at most five. Nothing typed
 * finds nothing.
 */
export function findMaterials(text: string, words: readonly MaterialWords[]): readonly FoundMaterial[] {
  const typed = plain(text);
  if (typed === '') return [];
  const sure = bestOfEach(words, (known) => rankOf(known, typed));
  if (sure.length > 0) return sure;
  return bestOfEach(words, (known) => {
    const alike = likeness(known, typed);
    return alike < NEAR_LIKENESS ? undefined : { match: 'near', order: -alike };
  }).slice(0, MOST_NEAR);
}

/** How well a name fits: by match, then by `order`, less first. */
interface Rank {
  readonly match: MatchKind;
  readonly order: number;
}

/** Each material by the name of it that fits best, best first. */
function bestOfEach(
  words: readonly MaterialWords[],
  rank: (known: string) => Rank | undefined,
): readonly FoundMaterial[] {
  const hits = words.flatMap(({ id, name, words: others }) => {
    const ranked = [name, ...others.split(',')].flatMap((word, place) => {
      const found = rank(plain(word));
      // A material's own name goes before its other words.
      return found === undefined ? [] : [{ id, word: word.trim(), ...found, place: Math.min(place, 1) }];
    });
    return ranked.sort(byRank).slice(0, 1);
  });
  return hits.sort(byRank).map(({ id, word, match }) => ({ id, word, match }));
}

function byRank(a: Rank & { readonly place: number }, b: Rank & { readonly place: number }): number {
  return matchKinds.indexOf(a.match) - matchKinds.indexOf(b.match) || a.order - b.order || a.place - b.place;
}

function rankOf(known: string, typed: string): Rank | undefined {
  if (known === typed) return { match: 'exact', order: 0 };
  if (known.startsWith(typed)) return { match: 'prefix', order: 0 };
  const parts = known.split(' ');
  const made = typed.split(' ').every((one) => parts.some((part) => part.startsWith(one)));
  return made ? { match: 'word', order: 0 } : undefined;
}

/** A name without capitals, accents, hyphens, brackets and plurals. */
export function plain(name: string): string {
  return name
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/\(.*?\)/gu, ' ')
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== '')
    .map(singular)
    .join(' ');
}

/** Good enough for the names of materials: leaves, ashes, berries. Applied to both sides alike. */
function singular(word: string): string {
  if (word.length > 4 && word.endsWith('ies')) return `${word.slice(0, -3)}y`;
  if (word.length > 4 && /(?:ch|sh|ss|x)es$/u.test(word)) return word.slice(0, -2);
  return word.length > 3 && word.endsWith('s') && !word.endsWith('ss') ? word.slice(0, -1) : word;
}
