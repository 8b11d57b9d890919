import type { Holding } from '@loamwright/daybook';
import {
  bad,
  type CautionId,
  type Citation,
  good,
  type KnownMaterial,
  type Material,
  materialById,
  type Outcome,
  type Permit,
  type PropertyId,
  propertyIds,
  type Quantity,
  squeezeSaysLittle,
} from '@loamwright/science';
import type { Saying } from '@loamwright/words';
import { entrySaying } from './entry-saying.ts';
import { factSaying, likelyOf } from './material-words.ts';
import { materialName } from './names.ts';
import { believedOf, ownFigures, publishedFor } from './own-stuff.ts';
import { say, sayOf } from './saying.ts';

/** One figure of a material: what is believed, and where it comes from. */
export interface FactWords {
  readonly property: PropertyId;
  readonly now: Quantity;
  /** "water: about 12 % (4.1–27 %)". */
  readonly said: Saying;
  /** "12 %". */
  readonly likely: Saying;
  readonly from: 'published' | 'described' | 'measured';
  /** The published figure beneath it, if there is one. */
  readonly source: (Citation & { readonly note: string | null }) | null;
}

/** Everything that is known of a material. */
export interface MaterialReport {
  readonly id: string;
  readonly name: Saying;
  /** What part it plays, and whether it may go on a heap; for one of the holding's own, what it is like. */
  readonly head: readonly Saying[];
  readonly permit: Permit | null;
  /** Most deciding figures first. */
  readonly facts: readonly FactWords[];
  /** What was said and measured of it, latest first, each with its entry. */
  readonly told: readonly { readonly entry: string; readonly happened: string; readonly said: Saying }[];
  readonly chop: Saying | null;
  /** Said where a squeeze tells little of it. */
  readonly squeeze: Saying | null;
  readonly cautions: readonly CautionId[];
}

/** The page of a material. Problem: `unknown-material`, for one that is neither of the tables nor the holding's own. */
export function materialReport(holding: Holding, id: string): Outcome<MaterialReport> {
  const own = holding.materials.get(id);
  const published = publishedFor(id, holding);
  if (published === undefined && own === undefined) {
    return bad({ code: 'unknown-material', path: id, found: id, wanted: '' });
  }
  const name = materialName(holding, id);
  return good({
    id,
    name,
    head: headOf(name, published, materialById(id) === undefined),
    permit: published?.permit ?? null,
    facts: factsOf(id, published, holding),
    told: toldOf(id, holding),
    chop: published === undefined ? null : sayOf('chop.reason', published.chop.reason),
    squeeze: published !== undefined && squeezeSaysLittle(published.particle) ? say('known.saysLittle') : null,
    cautions: published?.cautions ?? [],
  });
}

function headOf(name: Saying, published: Material | undefined, own: boolean): readonly Saying[] {
  if (published === undefined) return [say('known.ownLikeNone')];
  const head = say('known.head', {
    name,
    class: sayOf('material.class', published.class),
    permit: sayOf('permit', published.permit),
    reason: sayOf('permit.reason', published.permitReason),
  });
  return own ? [head, say('known.ownLike', { like: sayOf(`material.${published.id}`, 'name') })] : [head];
}

function factsOf(id: string, published: Material | undefined, holding: Holding): readonly FactWords[] {
  const known: KnownMaterial | undefined = believedOf(id, holding);
  if (known === undefined) return [];
  const { described, measured } = ownFigures(id, holding);
  return propertyIds.flatMap((property): readonly FactWords[] => {
    const now = known.quantities[property];
    if (now === undefined) return [];
    const value = published?.values[property];
    const from =
      measured[property] !== undefined ? 'measured' : described[property] !== undefined ? 'described' : 'published';
    const source =
      value === undefined
        ? null
        : { source: value.source, place: value.place ?? '', mark: value.mark, note: value.note ?? null };
    return [{ property, now, said: factSaying(property, now), likely: likelyOf(property, now), from, source }];
  });
}

function toldOf(id: string, holding: Holding): MaterialReport['told'] {
  const own = holding.materials.get(id);
  if (own === undefined) return [];
  return [...(own.described === null ? [] : [own.described]), ...own.measured]
    .map((told) => ({ entry: told.entry.id, happened: told.entry.happened, said: entrySaying(told, holding) }))
    .sort((a, b) => (a.happened < b.happened ? 1 : -1));
}
