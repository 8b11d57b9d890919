import { bad, good, type HeapCoverId, type HeapWallId, type NamedStanding, type Outcome } from '@loamwright/science';

/** What a grower calls each, the usual word first. */
type Words<Id extends string> = readonly (readonly [id: Id, usual: string, ...others: string[]])[];

const walls: Words<HeapWallId> = [
  ['none', 'none', 'open', 'wire', 'mesh'],
  ['pallet', 'pallet', 'pallets'],
  ['timber', 'timber', 'boards', 'wood'],
  ['block', 'block', 'blocks', 'masonry', 'brick', 'bricks'],
  ['plastic', 'plastic'],
  ['strawBales', 'straw-bales', 'bales', 'straw'],
  ['insulated', 'insulated', 'foam'],
];

const covers: Words<HeapCoverId> = [
  ['open', 'open', 'none', 'nothing'],
  ['lid', 'lid', 'boards'],
  ['fleece', 'fleece'],
  ['tarpaulin', 'tarpaulin', 'tarp', 'sheet'],
  ['carpet', 'carpet', 'felt'],
  ['compost', 'compost', 'soil'],
  ['straw', 'straw', 'hay', 'leaves'],
];

const shelters: Words<'sheltered' | 'open'> = [
  ['sheltered', 'sheltered'],
  ['open', 'open'],
];

function readWord<Id extends string>(typed: string, words: Words<Id>, path: string): Outcome<Id> {
  const plain = typed
    .trim()
    .toLowerCase()
    .replace(/[\s_]+/gu, '-');
  const found = words.find(([, ...names]) => names.includes(plain));
  if (found !== undefined) return good(found[0]);
  return bad({
    code: 'not-one-of',
    path,
    found: typed.slice(0, 60),
    wanted: words.map(([, usual]) => usual).join(', '),
  });
}

/** What lies on it. Problem: `not-one-of`. */
export function readCover(typed: string, path: string): Outcome<HeapCoverId> {
  return readWord(typed, covers, path);
}

/** What stands around it. Problem: `not-one-of`. */
export function readWalls(typed: string, path: string): Outcome<HeapWallId> {
  return readWord(typed, walls, path);
}

/** How a heap stands, as typed. */
export interface StandingOptions {
  readonly walls?: string | undefined;
  readonly cover?: string | undefined;
  readonly shelter?: string | undefined;
}

/** How a heap stands; nothing of what is left out. Problem: `not-one-of`. */
export function readStanding(options: StandingOptions): Outcome<NamedStanding> {
  const wall = options.walls === undefined ? undefined : readWalls(options.walls, '--walls');
  const cover = options.cover === undefined ? undefined : readCover(options.cover, '--cover');
  const shelter = options.shelter === undefined ? undefined : readWord(options.shelter, shelters, '--shelter');
  const problems = [wall, cover, shelter].flatMap((one) => (one?.ok === false ? one.problems : []));
  if (problems.length > 0) return bad(...problems);
  return good({
    ...(wall?.ok && { walls: wall.value }),
    ...(cover?.ok && { cover: cover.value }),
    ...(shelter?.ok && { shelter: shelter.value }),
  });
}
