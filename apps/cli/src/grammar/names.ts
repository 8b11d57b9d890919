import { allMeasures, doubtfulInputs, type Meant, meant, nearest, type Vocabulary } from '@loamwright/science';
import type { UnitSystem } from '@loamwright/units';
import { isMessageKey, type Speaker } from '@loamwright/words';

/** Something with an id and the words people use for it. */
interface Named {
  readonly id: string;
  /** Its name, then its other words. */
  readonly words: readonly string[];
}

/** What a name was found to mean, or the nearest ones. */
export type Found = { readonly id: string } | { readonly nearest: readonly string[] };

/** Names as a person types them, to ids. */
export interface Names {
  material(typed: string): Meant;
  /** A material's own name, by its id. */
  materialName(id: string): string;
  measure(typed: string): Found;
  /** What should not go on a heap, or not on every one. */
  doubtful(typed: string): Found;
}

/** A grower's own measure. */
export interface OwnName {
  readonly id: string;
  readonly name: string;
}

/** The names of one language: of what goes on heaps, and of measures, the grower's own first. */
export function namesFor(
  speaker: Speaker,
  { vocabulary, ...own }: { readonly vocabulary: Vocabulary; readonly measures: readonly OwnName[] },
): Names {
  const nameOf = new Map([...vocabulary.materials, ...vocabulary.own].map(({ id, name }) => [id, name]));
  const measures = [
    ...own.measures.map(ownNamed),
    ...usualFirst(
      allMeasures.map(({ id }) => id),
      speaker.system,
    ).map((id) => named(speaker, 'measure', id)),
  ];
  const doubtful = doubtfulInputs.map(({ id }) => named(speaker, 'doubtful', id));
  return {
    material: (typed) => meant(typed, vocabulary),
    materialName: (id) => nameOf.get(id) ?? id,
    measure: (typed) => find(typed, measures),
    doubtful: (typed) => find(typed, doubtful),
  };
}

/** A bucket is of five gallons to some and of twenty litres to others: the unsaid one is that of the person's units. */
function usualFirst(ids: readonly string[], system: UnitSystem): readonly string[] {
  const usual = system === 'us' ? 'bucket-5gal' : 'bucket-20l';
  return [usual, ...ids.filter((id) => id !== usual)];
}

function ownNamed({ id, name }: OwnName): Named {
  return { id, words: [plain(name)] };
}

function named(speaker: Speaker, kind: 'measure' | 'doubtful', id: string): Named {
  const words = speaker.sayIf(`${kind}.${id}.words`, '').split(',');
  const all = [speaker.sayIf(`${kind}.${id}.name`, id), ...counted(speaker, `${kind}.${id}.some`), ...words];
  return { id, words: all.map(plain).filter((word) => word !== '') };
}

/** The word by which the program itself counts a measure: "1 bale". */
function counted(speaker: Speaker, key: string): readonly string[] {
  if (!isMessageKey(key) || !key.startsWith('measure.')) return [];
  return [speaker.say(key, { count: 1 }).replace(/^\S+ /u, '')];
}

/** By id, then by name, then by another word for it; a plural or a bracketed remark makes no difference. */
function find(typed: string, all: readonly Named[]): Found {
  const asked = plain(typed);
  const found =
    all.find(({ id }) => plain(id) === asked) ??
    all.find(({ words }) => words[0] === asked) ??
    all.find(({ words }) => words.includes(asked));
  if (found !== undefined) return { id: found.id };
  const byWord = new Map(
    all.flatMap(({ id, words }) => [plain(id), ...words].map((word): [string, string] => [word, id])),
  );
  const likely = nearest(asked, [...byWord.keys()]).map((word) => byWord.get(word) ?? word);
  return { nearest: [...new Set(likely)] };
}

function plain(name: string): string {
  return name
    .normalize('NFC')
    .toLowerCase()
    .replace(/\(.*?\)/gu, ' ')
    .replace(/[’'-]/gu, ' ')
    .replace(/(?<=\d)(?=\p{L})/gu, ' ')
    .split(/\s+/u)
    .filter((word) => word !== '')
    .map(singular)
    .join(' ');
}

/** Good enough for measures and materials: leaves, bunches, chips. Applied to both sides alike. */
function singular(word: string): string {
  if (word.length > 4 && word.endsWith('ies')) return `${word.slice(0, -3)}y`;
  if (word.length > 4 && /(?:ch|sh|ss|x)es$/u.test(word)) return word.slice(0, -2);
  return word.length > 3 && word.endsWith('s') && !word.endsWith('ss') ? word.slice(0, -1) : word;
}
