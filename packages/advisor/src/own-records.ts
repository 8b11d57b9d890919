import type { Bodies, Holding, MaterialFigures } from '@loamwright/daybook';
import {
  bad,
  good,
  type MaterialMeasuredInput,
  materialById,
  materialMeasured,
  type Needs,
  type Outcome,
  type PropertyId,
  type Quantity,
} from '@loamwright/science';
import { type ChangeWords, changeWords } from './material-words.ts';
import { believedOf, figuresOf, ownFigures, publishedFor } from './own-stuff.ts';

/** A check of a material that the grower has made. */
export type Check = Omit<MaterialMeasuredInput, 'material' | 'described'>;

/** What a check comes to, before it is written down. */
export interface CheckRead {
  /** The body of the entry `material-measured`. */
  readonly body: Bodies['material-measured'];
  /** What it changes, figure by figure. */
  readonly changes: readonly ChangeWords[];
  /** Whether every figure lies where such stuff lies; if not, it may be told to stand in place of what is published. */
  readonly agrees: boolean;
}

/**
 * Joins a check with what is published or described of a material. Problems: those of `material-measured`, and
 * `like-what` for a material of the holding's own that is like none of the tables.
 *
 * @param method how it was measured, in words, for the entry.
 */
export function readCheck(
  material: string,
  check: Check,
  { holding, method, needs }: { readonly holding: Holding; readonly method: string; readonly needs: Needs },
): Outcome<CheckRead> {
  const published = publishedFor(material, holding);
  if (published === undefined) return bad({ code: 'like-what', path: material, found: material, wanted: '' });
  const { described } = ownFigures(material, holding);
  const measured = materialMeasured.run({ ...check, material: published.id, described }, needs);
  if (!measured.ok) return measured;
  const { findings } = measured.value;
  const now = believedOf(material, holding)?.quantities ?? {};
  return good({
    body: {
      ...figuresOf(Object.fromEntries(findings.map(({ property, measured: found }) => [property, found]))),
      method,
    },
    changes: findings.map(({ property, before, believed }) => changeWords(property, now[property] ?? before, believed)),
    agrees: findings.every(({ agrees }) => agrees),
  });
}

/** The body of `material-described` that says these figures of a material, beside what was said of it before. */
export function describedWith(
  material: string,
  figures: MaterialFigures,
  { holding, name }: { readonly holding: Holding; readonly name: string },
): Bodies['material-described'] {
  return { name, ...holding.materials.get(material)?.described?.body, ...figures };
}

/** The figures of a check, without how they were measured: to be said in place of what is published. */
export function figuresOfCheck({
  method: _how,
  laboratory: _who,
  ...figures
}: Bodies['material-measured']): MaterialFigures {
  return figures;
}

/** What saying a figure of a material changes in what is believed of it. */
export function changeOf(material: string, property: PropertyId, said: Quantity, holding: Holding): ChangeWords {
  return changeWords(property, believedOf(material, holding)?.quantities[property], said);
}

/**
 * The id of a material of the holding's own: its name in plain letters, so that two devices that add it mean the same.
 * Empty for a name without a letter or a figure.
 */
export function ownMaterialId(name: string): string {
  const plain = name
    .normalize('NFD')
    .toLowerCase()
    .replace(/\p{M}/gu, '')
    .replace(/[^a-z0-9]+/gu, '-')
    .slice(0, MOST_NAME)
    .replace(/^-+|-+$/gu, '');
  return materialById(plain) === undefined ? plain : `own-${plain}`;
}

const MOST_NAME = 50;
