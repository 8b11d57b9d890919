import {
  bad,
  blanketBounds_m,
  good,
  type HeapCoverId,
  type HeapWallId,
  heapBlanketIds,
  isBlanket,
  type NamedStanding,
  type Outcome,
  usualBlanket_m,
} from '@loamwright/science';
import { convert, type UnitSystem, unitFor, unitTable } from '@loamwright/units';
import { readMeasurement } from './measurement.ts';

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

/** What lies on a heap, and how deep where it is heaped on. */
type Covering = Pick<NamedStanding, 'cover' | 'coverDepth_m'>;

/** What lies on it: `straw`, `straw:30cm`. Problems: `not-one-of`, `measurement-unreadable`, `out-of-bounds`. */
export function readCover(typed: string, path: string, system: UnitSystem): Outcome<Covering> {
  const [word = '', ...more] = typed.split(':');
  const cover = readWord(word, covers, path);
  if (!cover.ok || more.length === 0) return cover.ok ? good({ cover: cover.value }) : cover;
  if (!isBlanket(cover.value))
    return bad({
      code: 'not-one-of',
      path,
      found: typed.slice(0, 60),
      wanted: heapBlanketIds.map((id) => `${id}:${depthTyped(usualBlanket_m(id), system, Math.round)}`).join(', '),
    });
  const depth = readMeasurement(more.join(':'), 'depth', path, system);
  const { least, most } = blanketBounds_m;
  const bounds = `${depthTyped(least, system, Math.ceil)} … ${depthTyped(most, system, Math.floor)}`;
  const found = typed.slice(0, 60);
  if (!depth.ok) return bad({ code: 'measurement-unreadable', path, found, wanted: bounds });
  if (depth.value.si < least || depth.value.si > most)
    return bad({ code: 'out-of-bounds', path, found, wanted: bounds });
  return good({ cover: cover.value, coverDepth_m: depth.value.si });
}

/** A depth as it would be typed, in whole inches or centimetres. */
function depthTyped(depth_m: number, system: UnitSystem, wholly: (value: number) => number): string {
  const unit = unitFor('depth', system);
  // Nine digits, so that 0.02 m is 2 cm and not 2 and a trace.
  return `${wholly(Number(convert(depth_m, 'm', unit).toPrecision(9)))}${unitTable[unit].symbol}`;
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
export function readStanding(options: StandingOptions, system: UnitSystem): Outcome<NamedStanding> {
  const wall = options.walls === undefined ? undefined : readWalls(options.walls, '--walls');
  const cover = options.cover === undefined ? undefined : readCover(options.cover, '--cover', system);
  const shelter = options.shelter === undefined ? undefined : readWord(options.shelter, shelters, '--shelter');
  const problems = [wall, cover, shelter].flatMap((one) => (one?.ok === false ? one.problems : []));
  if (problems.length > 0) return bad(...problems);
  return good({
    ...(wall?.ok && { walls: wall.value }),
    ...(cover?.ok && cover.value),
    ...(shelter?.ok && { shelter: shelter.value }),
  });
}
