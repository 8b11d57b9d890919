import { type FoundMaterial, findMaterials, type MaterialWords } from './find.ts';
import { nearest } from './nearest.ts';

/** The words of one language for everything that may be typed where a material is asked for. */
export interface Vocabulary {
  /** A holding's own materials; each goes before a published one of the same name. */
  readonly own: readonly MaterialWords[];
  readonly materials: readonly MaterialWords[];
  /** Doubtful inputs: `doubtfulInputs`. */
  readonly doubtful: readonly MaterialWords[];
  /** Words too general to be one material: `generalNames`. */
  readonly general: readonly (MaterialWords & { readonly materials: readonly string[] })[];
}

/** What was meant by what was typed. */
export type Meant =
  | { readonly is: 'material'; readonly id: string }
  /** It may be any of these: ask which. */
  | { readonly is: 'which'; readonly ids: readonly string[] }
  /** A doubtful input, to be met with its caution and not with a guess at its spelling. */
  | { readonly is: 'doubtful'; readonly id: string }
  /** Nothing goes by it; these are spelt most like it, likeliest first: never none. */
  | { readonly is: 'unknown'; readonly near: readonly string[] };

/** So many materials can be asked about in one breath. */
const MOST_ASKED = 6;

/**
 * What a grower means by a name. A whole name goes first: the holding's own, a material's, a doubtful input's, a
 * general word's. Then a part of a name, where one material alone has it; then a word in it that is a doubtful
 * input by itself ("some old cheese"). Only what none of these knows is taken for a slip of the pen.
 */
export function meant(typed: string, vocabulary: Vocabulary): Meant {
  const all = [...vocabulary.own, ...vocabulary.materials];
  return (
    byId(typed, all) ??
    materialOf(exact(findMaterials(typed, vocabulary.own))) ??
    materialOf(exact(findMaterials(typed, vocabulary.materials))) ??
    doubtfulOf(exact(findMaterials(typed, vocabulary.doubtful))) ??
    generalOf(typed, vocabulary) ??
    materialOf(findMaterials(typed, all).filter(({ match }) => match !== 'near')) ??
    doubtfulWithin(typed, vocabulary) ?? { is: 'unknown', near: spelledLike(typed, all) }
  );
}

function spelledLike(typed: string, all: readonly MaterialWords[]): readonly string[] {
  const near = findMaterials(typed, all).map(({ id }) => id);
  if (near.length > 0) return near;
  const byName = new Map(all.map(({ id, name }) => [name, id]));
  return nearest(typed, [...byName.keys()]).map((name) => byName.get(name) ?? name);
}

function byId(typed: string, all: readonly MaterialWords[]): Meant | undefined {
  return all.some(({ id }) => id === typed) ? { is: 'material', id: typed } : undefined;
}

function exact(found: readonly FoundMaterial[]): readonly FoundMaterial[] {
  return found.filter(({ match }) => match === 'exact');
}

function materialOf(found: readonly FoundMaterial[]): Meant | undefined {
  const [only] = found;
  if (only === undefined) return undefined;
  if (found.length === 1) return { is: 'material', id: only.id };
  return { is: 'which', ids: found.slice(0, MOST_ASKED).map(({ id }) => id) };
}

function doubtfulOf([first]: readonly FoundMaterial[]): Meant | undefined {
  return first === undefined ? undefined : { is: 'doubtful', id: first.id };
}

function generalOf(typed: string, { general }: Vocabulary): Meant | undefined {
  const [first] = exact(findMaterials(typed, general));
  const found = general.find(({ id }) => id === first?.id);
  return found === undefined ? undefined : { is: 'which', ids: found.materials };
}

function doubtfulWithin(typed: string, { doubtful }: Vocabulary): Meant | undefined {
  const whole = doubtfulOf(findMaterials(typed, doubtful).filter(({ match }) => match !== 'near'));
  if (whole !== undefined) return whole;
  const words = typed.split(/[^\p{L}]+/u).filter((word) => word !== '');
  for (const word of words) {
    const found = doubtfulOf(exact(findMaterials(word, doubtful)));
    if (found !== undefined) return found;
  }
  return undefined;
}
