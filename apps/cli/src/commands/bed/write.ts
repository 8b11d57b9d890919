import { cropToKeep } from '@loamwright/advisor';
import type { Bodies, Holding } from '@loamwright/daybook';
import { bad, good, type Outcome, type Quantity, soilTextureIds } from '@loamwright/science';
import { readQuantity } from '@loamwright/units';
import type { Speaker } from '@loamwright/words';
import type { Answer } from '../../answer.ts';
import { allOf, readOneOf } from '../../blend.ts';
import { type Jotting, readBook } from '../../book.ts';
import { readIngredients } from '../../grammar/ingredient.ts';
import { enteredOf, readMeasurement } from '../../grammar/measurement.ts';
import { readPast, type WhenRead } from '../../grammar/when.ts';
import { namesOf } from '../../holding.ts';
import { layersOf } from '../../put.ts';
import { recorded } from '../../recorded.ts';
import type { Session } from '../../session.ts';
import { subjectNamed } from '../../subject.ts';
import { areaEntered, readArea } from './read.ts';

/** What every command takes that writes about a bed. */
export interface BedWriteOptions {
  readonly when?: string | undefined;
  readonly note?: string | undefined;
}

const LONGEST = 60;

export interface Ground {
  readonly holding: Holding;
  readonly when: WhenRead;
  readonly session: Session;
}

/** Reads the daybook and the time, and writes down what is made of them. */
export async function written(
  { when: typed }: BedWriteOptions,
  session: Session,
  make: (ground: Ground) => Outcome<readonly Jotting[]>,
): Promise<Outcome<Answer>> {
  const when = readPast(typed ?? 'now', session.now(), session.zone);
  if (!when.ok) return when;
  const book = await readBook(session);
  if (!book.ok) return book;
  const jottings = make({ holding: book.value.holding, when: when.value, session });
  return jottings.ok ? recorded(session, jottings.value) : jottings;
}

const about = (id: string): Jotting['about'] => [{ type: 'bed', id }];
const noteOf = ({ note }: BedWriteOptions): { readonly note?: string } => (note === undefined ? {} : { note });

export interface BedSetOptions extends BedWriteOptions {
  readonly depth?: string | undefined;
  readonly texture?: string | undefined;
}

/** `loamwright bed set`: a bed set up, or a known one altered. */
export function bedSet(
  name: string,
  typed: string | undefined,
  options: BedSetOptions,
  session: Session,
): Promise<Outcome<Answer>> {
  return written(options, session, ({ holding, when }) => {
    if (name.trim() === '') return bad({ code: 'nothing-named', path: 'bed', found: '', wanted: '' });
    const known = subjectNamed(holding, 'bed', name);
    const set = known.ok ? holding.beds.get(known.value)?.setUp : undefined;
    const before = set?.body;
    const area = typed === undefined ? good(before?.area_m2) : readArea(typed, 'area', session);
    const depth =
      options.depth === undefined
        ? good(undefined)
        : readMeasurement(options.depth, 'depth', '--depth', session.speaker.system);
    const texture =
      options.texture === undefined ? good(undefined) : readOneOf(options.texture, soilTextureIds, '--texture');
    if (!area.ok || !depth.ok || !texture.ok) return bad(...allOf(area, depth, texture));
    if (area.value === undefined)
      return bad({ code: 'missing', path: 'area', found: '', wanted: '12m2, 100ft2, 4x8ft' });
    const body: Bodies['bed-set-up'] = {
      ...before,
      name: before?.name ?? name.trim(),
      area_m2: area.value,
      ...(depth.value !== undefined && { depth_m: depth.value.si }),
      ...(texture.value !== undefined && { texture: texture.value }),
      ...noteOf(options),
    };
    const entered = {
      ...set?.entry.entered,
      ...(typed !== undefined && { '/area_m2': areaEntered(typed, session) }),
      ...(depth.value !== undefined && { '/depth_m': enteredOf(depth.value) }),
    };
    return good([{ kind: 'bed-set-up', body, about: about(known.ok ? known.value : session.newId()), when, entered }]);
  });
}

export interface BedSowOptions extends BedWriteOptions {
  readonly area?: string | undefined;
}

/** `loamwright bed sow`: a crop sown or planted. */
export function bedSow(name: string, crop: string, options: BedSowOptions, session: Session): Promise<Outcome<Answer>> {
  return written(options, session, ({ holding, when }) => {
    const bed = subjectNamed(holding, 'bed', name);
    const area = options.area === undefined ? good(undefined) : readArea(options.area, '--area', session);
    const sown = readCrop(crop, session.speaker);
    if (!bed.ok || !area.ok || !sown.ok) return bad(...allOf(bed, area, sown));
    const body: Bodies['sown'] = {
      crop: sown.value,
      ...(area.value !== undefined && { area_m2: area.value }),
      ...noteOf(options),
    };
    const entered = options.area === undefined ? undefined : { '/area_m2': areaEntered(options.area, session) };
    return good([{ kind: 'sown', body, about: about(bed.value), when, entered }]);
  });
}

/** Problem: `nothing-named`. */
function readCrop(typed: string, speaker: Speaker): Outcome<string> {
  const name = cropToKeep(typed, speaker);
  return name === '' ? bad({ code: 'nothing-named', path: 'crop', found: '', wanted: '' }) : good(name);
}

export interface BedHarvestOptions extends BedWriteOptions {
  readonly mass?: string | undefined;
  readonly last?: boolean | undefined;
}

/** `loamwright bed harvest`: a crop taken. */
export function bedHarvest(
  name: string,
  crop: string,
  options: BedHarvestOptions,
  session: Session,
): Promise<Outcome<Answer>> {
  return written(options, session, ({ holding, when }) => {
    const bed = subjectNamed(holding, 'bed', name);
    const taken = readCrop(crop, session.speaker);
    const mass: Outcome<Quantity | undefined> =
      options.mass === undefined ? good(undefined) : readMass(options.mass, session);
    if (!bed.ok || !taken.ok || !mass.ok) return bad(...allOf(bed, taken, mass));
    const body: Bodies['harvested'] = {
      crop: taken.value,
      ...(mass.value !== undefined && { mass_kg: mass.value }),
      ...(options.last === true && { last: true }),
      ...noteOf(options),
    };
    return good([{ kind: 'harvested', body, about: about(bed.value), when }]);
  });
}

/** A mass such as `12kg`. Problem: `measurement-unreadable`. */
function readMass(typed: string, { speaker }: Session): Outcome<number> {
  const read = readQuantity(typed.slice(0, LONGEST), 'mass', speaker.system === 'us' ? 'lb' : 'kg');
  return read !== undefined && read.si > 0
    ? good(read.si)
    : bad({ code: 'measurement-unreadable', path: '--mass', found: typed.slice(0, LONGEST), wanted: '12kg, 25lb' });
}

export interface BedPutOptions extends BedWriteOptions {
  readonly mulch?: boolean | undefined;
  readonly fromStock?: boolean | undefined;
}

/** `loamwright bed put`: stuff that went on a bed straight, an entry for each. */
export function bedPut(
  name: string,
  typed: readonly string[],
  options: BedPutOptions,
  session: Session,
): Promise<Outcome<Answer>> {
  return written(options, session, ({ holding, when }) => {
    const bed = subjectNamed(holding, 'bed', name);
    const stuff = readIngredients(typed, namesOf(session, holding));
    if (!bed.ok || !stuff.ok) return bad(...allOf(bed, stuff));
    const put = layersOf(stuff.value, holding, session, options.fromStock === true);
    if (!put.ok) return put;
    return good(
      put.value.layers.map(({ material, mass_kg, volume_m3, raw }, i): Jotting => {
        const entered = put.value.entered[`/layers/${i}/mass_kg`];
        const body: Bodies['spread'] = {
          of: {
            type: 'material',
            id: material,
            mass_kg,
            ...(raw !== undefined && { raw }),
            ...(options.fromStock === true && { fromStock: true }),
          },
          ...(volume_m3 !== undefined && { volume_m3 }),
          workedIn: options.mulch !== true,
          ...noteOf(options),
        };
        return {
          kind: 'spread',
          body,
          about: about(bed.value),
          when,
          ...(entered !== undefined && { entered: { '/of/mass_kg': entered } }),
        };
      }),
    );
  });
}
