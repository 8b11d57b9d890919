import { pottingReport } from '@loamwright/advisor';
import {
  bad,
  check,
  createDraws,
  good,
  type Outcome,
  pottingMix,
  recipeIds,
  useIds,
  vesselIds,
  type Wanted,
} from '@loamwright/science';
import { convert, readQuantity } from '@loamwright/units';
import type { Answer } from '../answer.ts';
import {
  allOf,
  type CompostOptions,
  readCompost,
  readFigure,
  readHave,
  readMeasure,
  readOneOf,
  readParts,
  reportText,
  type StuffOptions,
} from '../blend.ts';
import { namesOf } from '../holding.ts';
import type { Session } from '../session.ts';
import { openWithSizes } from '../sizes.ts';

export interface PottingOptions extends CompostOptions, StuffOptions {
  readonly recipe?: string | undefined;
  readonly eatenRaw?: boolean | undefined;
}

/** `loamwright potting`: a mix for so many pots or trays. */
export async function potting(
  use: string,
  pots: readonly string[],
  options: PottingOptions,
  before: Session,
): Promise<Outcome<Answer>> {
  const opened = await openWithSizes(options, before);
  if (!opened.ok) return opened;
  const { holding, session } = opened.value;
  const names = namesOf(session, holding);
  const meant = readOneOf(use, useIds, 'potting');
  const wanted = pots.map((text) => readPots(text, session));
  const compost = readCompost(options);
  const parts = readParts(options.part ?? [], session);
  const have = readHave(options.have ?? [], names, session);
  const measure = readMeasure(options.measure, session.speaker.system === 'us' ? 'bucket-5gal' : 'bucket-20l', names);
  const recipe = options.recipe === undefined ? good(undefined) : readOneOf(options.recipe, recipeIds, '--recipe');
  if (
    !meant.ok ||
    !compost.ok ||
    !parts.ok ||
    !have.ok ||
    !measure.ok ||
    !recipe.ok ||
    !wanted.every((one) => one.ok)
  ) {
    return bad(...allOf(meant, ...wanted, compost, parts, have, measure, recipe));
  }
  const input = check(pottingMix.input, {
    use: meant.value,
    wanted: wanted.flatMap((one) => (one.ok ? [one.value] : [])),
    compost: compost.value,
    measure: measure.value,
    ...(recipe.value !== undefined && { recipe: recipe.value }),
    ...(parts.value.length > 0 && { parts: parts.value }),
    ...(have.value.length > 0 && { onHand: have.value }),
    ...(options.eatenRaw === true && { eatenRaw: true }),
    ...(session.settings.measures_L !== undefined && { ownSizes: session.settings.measures_L }),
  });
  if (!input.ok) return input;
  const mix = pottingMix.run(input.value, { draws: createDraws() });
  if (!mix.ok) return mix;
  const report = pottingReport(mix.value);
  const stock = report.parts.flatMap((part) => (part.stock === null ? [] : [part.stock]));
  const text = reportText({ ...report, opening: [report.answer, report.recipe], stock }, session);
  return good({ value: { input: input.value, ...mix.value }, text });
}

const LONGEST = 60;
const counted = /^\s*(\d{1,4})\s*[x×]\s*(.+)$/u;

/** `20x3L`, `2 seed-trays`, `30 small pots`. Problem: `pots-unreadable`. */
function readPots(typed: string, { speaker }: Session): Outcome<Wanted> {
  const text = typed.slice(0, LONGEST);
  const unreadable = bad({ code: 'pots-unreadable', path: '', found: text, wanted: '' });
  const volumes = counted.exec(text);
  if (volumes !== null) {
    const each = readQuantity(volumes[2] ?? '', 'volume', speaker.system === 'us' ? 'gal' : 'L');
    if (each === undefined) return unreadable;
    return good({ count: Number(volumes[1]), each_L: convert(each.si, 'm3', 'L') });
  }
  const count = readFigure(text, '');
  const vessel = vesselIds.find((id) => {
    const words = [id, id.replace('-', ' '), `${id.replace('-', ' ')}s`, speaker.say(`blend.vessel.${id}`)];
    const rest = text
      .replace(/^\s*[\d.,]+\s*/u, '')
      .trim()
      .toLowerCase();
    return words.includes(rest) || (id === 'seed-tray' && /^trays?$/u.test(rest));
  });
  if (!count.ok || typeof count.value !== 'number' || vessel === undefined) return unreadable;
  return good({ count: count.value, vessel });
}
