import { cropNamed, seasonOf, stuffed } from '@loamwright/advisor';
import type { Entered, Holding } from '@loamwright/daybook';
import {
  areaSlips,
  type BedCrop,
  type Before,
  bad,
  classIds,
  type Grade,
  good,
  type Outcome,
  type PutOn,
  type Quantity,
  type SoilTest,
} from '@loamwright/science';
import { readArea as readTypedArea } from '@loamwright/units';
import { allOf, readFigure, readOneOf } from '../../blend.ts';
import { readIngredients } from '../../grammar/ingredient.ts';
import type { Names } from '../../grammar/names.ts';
import { readWhen } from '../../grammar/when.ts';
import type { Session } from '../../session.ts';

const LONGEST = 60;

function all<Value>(read: readonly Outcome<Value>[]): Outcome<readonly Value[]> {
  const problems = allOf(...read);
  return problems.length > 0 ? bad(...problems) : good(read.flatMap((one) => (one.ok ? [one.value] : [])));
}

function cut(text: string, at: string): readonly [before: string, after: string | undefined] {
  const place = text.lastIndexOf(at);
  return place < 0 ? [text, undefined] : [text.slice(0, place).trim(), text.slice(place + 1).trim()];
}

/**
 * An area such as `10m2` or `100 ft2`, or its sides, `4x8ft`, in m². Problems: `measurement-unreadable`; `area-beyond` for one that no
 * bed has.
 */
export function readArea(typed: string, path: string, { speaker }: Session): Outcome<number> {
  const text = typed.slice(0, LONGEST);
  const area = readTypedArea(text, speaker.system);
  if (area === undefined || area.m2 <= 0)
    return bad({ code: 'measurement-unreadable', path, found: text, wanted: '10m2, 100ft2, 4x8ft' });
  const slips = areaSlips(area.m2, path);
  return slips.length === 0 ? good(area.m2) : bad(...slips);
}

/** An area as it was typed, for the entry to keep. */
export function areaEntered(typed: string, { speaker }: Session): Entered {
  return { words: readTypedArea(typed.slice(0, LONGEST), speaker.system)?.words ?? typed.slice(0, LONGEST) };
}

function readCropName(typed: string, path: string, { speaker }: Session): Outcome<string> {
  const found = cropNamed(typed.slice(0, LONGEST), speaker);
  if ('id' in found) return good(found.id);
  return bad({ code: 'unknown-crop', path, found: typed.slice(0, LONGEST), wanted: found.nearest.join(', ') });
}

/** `kale=10m2`. Problems: `unknown-crop`, `crop-without-area`, `measurement-unreadable`. */
export function readCrops(typed: readonly string[], byRemoval: boolean, session: Session): Outcome<readonly BedCrop[]> {
  return all(
    typed.map((text): Outcome<BedCrop> => {
      const [name, area] = cut(text, '=');
      const crop = readCropName(name, 'crops', session);
      const path = text.slice(0, LONGEST);
      const area_m2 =
        area === undefined
          ? bad({ code: 'crop-without-area', path, found: '', wanted: '' })
          : readArea(area, path, session);
      if (!crop.ok || !area_m2.ok) return bad(...allOf(crop, area_m2));
      return good({ crop: crop.value, area_m2: area_m2.value, ...(byRemoval && { byRemoval }) });
    }),
  );
}

/** How and in which season something was put on, besides what it is. */
export interface Laid {
  readonly season: number;
  readonly mulched: boolean;
  readonly workedInAfter_days: number | undefined;
  readonly weather: PutOn['weather'];
}

/** `compost=2barrows@2025-04-01`; without a day, this season. Problems: those of ingredients; `spread-later`. */
export function readPut(
  typed: readonly string[],
  names: Names,
  holding: Holding,
  { season, mulched, workedInAfter_days, weather }: Laid,
  session: Session,
): Outcome<readonly PutOn[]> {
  const read = typed.map((text): Outcome<PutOn> => {
    const [what, day] = cut(text, '@');
    const stuff = readIngredients([what], names);
    const seasonsAgo = day === undefined ? good(0) : readSeasonsAgo(day, season, session);
    if (!stuff.ok || !seasonsAgo.ok) return bad(...allOf(stuff, seasonsAgo));
    const [one] = stuff.value;
    if (one === undefined) throw new RangeError('one ingredient was read');
    const now = seasonsAgo.value === 0;
    return good({
      ...stuffed(one.material, one.doubtful, holding),
      amount: one.amount,
      seasonsAgo: seasonsAgo.value,
      ...(now && mulched && { placed: 'mulched' as const }),
      ...(now && workedInAfter_days !== undefined && { workedInAfter_days }),
      ...(now && weather !== undefined && { weather }),
    });
  });
  return all(read);
}

function readSeasonsAgo(day: string, season: number, { now, zone }: Session): Outcome<number> {
  const read = readWhen(day, now(), zone);
  if (!read.ok) return bad(...read.problems.map((problem) => ({ ...problem, path: '--put' })));
  const seasonsAgo = season - seasonOf(read.value.happened, zone);
  return seasonsAgo >= 0
    ? good(seasonsAgo)
    : bad({ code: 'spread-later', path: '--put', found: day.slice(0, LONGEST), wanted: String(season) });
}

const credits = ['alfalfa', 'alfalfa-thin', 'dry-beans'] as const;

/** `hairy-vetch`, `"hairy vetch=5m2"`, `alfalfa`. Problems: `unknown-crop`, `measurement-unreadable`. */
export function readBefore(typed: readonly string[], session: Session): Outcome<readonly Before[]> {
  return all(
    typed.map((text): Outcome<Before> => {
      const [name, area] = cut(text, '=');
      const credit = readOneOf(name, credits, '--before');
      const what = credit.ok ? credit : readCropName(name, '--before', session);
      const area_m2 = area === undefined ? good(undefined) : readArea(area, '--before', session);
      if (!what.ok || !area_m2.ok) return bad(...allOf(what, area_m2));
      return good({ what: what.value, ...(area_m2.value !== undefined && { area_m2: area_m2.value }) });
    }),
  );
}

const results = ['p', 'k', 'ph', 'om', 'salts'] as const;

/** `p=high k=low ph=6.4 om=4 salts=0.8`. Problems: `not-one-of`, `number-unreadable`. */
export function readSoil(typed: readonly string[]): Outcome<SoilTest> {
  const read = typed.map((text): Outcome<SoilTest> => {
    const [name, value = ''] = cut(text, '=');
    const result = readOneOf(name, results, '--soil');
    if (!result.ok) return result;
    const path = `--soil ${result.value}`;
    if (result.value === 'p' || result.value === 'k') {
      const told = readOneOf(value, classIds, path);
      if (!told.ok) return told;
      return good(result.value === 'p' ? { phosphorusClass: told.value } : { potassiumClass: told.value });
    }
    const figure = readFigure(value, path);
    return figure.ok ? measuredAs(result.value, figure.value, path) : figure;
  });
  const tests = all(read);
  return tests.ok ? good(Object.assign({}, ...tests.value) as SoilTest) : tests;
}

function measuredAs(result: 'ph' | 'om' | 'salts', value: Quantity, path: string): Outcome<SoilTest> {
  if (result === 'om') return good({ organicMatter_pctDry: value });
  if (result === 'salts') return good({ conductivity_dSPerM: value });
  return typeof value === 'number'
    ? good({ pH: value })
    : bad({ code: 'number-unreadable', path, found: JSON.stringify(value).slice(0, LONGEST), wanted: '' });
}

const grade = /^(\d{1,2}(?:\.\d{1,2})?|100)(?::(\d{1,2}(?:\.\d{1,2})?):(\d{1,2}(?:\.\d{1,2})?))?$/u;

/** `12`, `20:10:10`, `20:10:10@1.40` with the price of a kilogram. Problem: `grade-unreadable`. */
export function readGrades(typed: readonly string[]): Outcome<readonly Grade[]> {
  return all(
    typed.map((text): Outcome<Grade> => {
      const [shares, price] = cut(text, '@');
      const found = grade.exec(shares);
      const price_perKg = price === undefined ? undefined : Number(price);
      if (found === null || (price_perKg !== undefined && !(price_perKg >= 0 && price !== ''))) {
        return bad({ code: 'grade-unreadable', path: '--fertiliser', found: text.slice(0, LONGEST), wanted: '' });
      }
      const [, nitrogen, phosphate, potash] = found;
      return good({
        nitrogen_pctAsIs: Number(nitrogen),
        ...(phosphate !== undefined && { phosphate_pctAsIs: Number(phosphate) }),
        ...(potash !== undefined && { potash_pctAsIs: Number(potash) }),
        ...(price_perKg !== undefined && { price_perKg }),
      });
    }),
  );
}
