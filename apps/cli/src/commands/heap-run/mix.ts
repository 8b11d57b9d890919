import { stuffed } from '@loamwright/advisor';
import type { Holding } from '@loamwright/daybook';
import { bad, good, type Ingredient, type Outcome, startBounds_degC } from '@loamwright/science';
import { readIngredients } from '../../grammar/ingredient.ts';
import { readMeasurement } from '../../grammar/measurement.ts';
import { namesOf } from '../../holding.ts';
import type { Session } from '../../session.ts';

const LITRES_PER_M3 = 1000;

/** What was typed as the ingredients of a mix. Problems: those of ingredients. */
export function readStuff(
  typed: readonly string[],
  holding: Holding,
  session: Session,
): Outcome<readonly Ingredient[]> {
  const read = readIngredients(typed, namesOf(session, holding));
  if (!read.ok) return read;
  return good(
    read.value.map(({ material, doubtful, amount }, i) => ({
      ...stuffed(material, doubtful, holding),
      amount,
      ...(read.value.findIndex((other) => other.material === material) !== i && { line: `${material}-${i + 1}` }),
    })),
  );
}

/** `60L`; undefined where it is left out. Problem: `measurement-unreadable`. */
export function readWater_L(typed: string | undefined, { speaker }: Session): Outcome<number | undefined> {
  if (typed === undefined) return good(undefined);
  const read = readMeasurement(typed, 'liquid', '--water', speaker.system);
  return read.ok ? good(LITRES_PER_M3 * read.value.si) : read;
}

/** A temperature; undefined where it is left out. Problem: `measurement-unreadable`. */
export function readDegrees(
  typed: string | undefined,
  path: string,
  { speaker }: Session,
): Outcome<number | undefined> {
  if (typed === undefined) return good(undefined);
  const read = readMeasurement(typed, 'temperature', path, speaker.system);
  return read.ok ? good(read.value.si) : read;
}

/** How warm the stuff comes, `--start`. Problems: `measurement-unreadable`, `out-of-bounds`, in the reader's own unit. */
export function readStart(typed: string | undefined, session: Session): Outcome<number | undefined> {
  const read = readDegrees(typed, '--start', session);
  const { least, most } = startBounds_degC;
  if (!read.ok || read.value === undefined || (read.value >= least && read.value <= most)) return read;
  const wanted = session.speaker.range({ p10: least, p50: least, p90: most }, 'degC', 'temperature');
  return bad({ code: 'out-of-bounds', path: '--start', found: (typed ?? '').slice(0, 60), wanted });
}

/** A count, such as of days. Problem: `number-unreadable`. */
export function readCount(typed: string | undefined, path: string): Outcome<number | undefined> {
  if (typed === undefined) return good(undefined);
  const plain = typed.trim().replace(',', '.');
  return /^\d{1,6}(?:\.\d{1,3})?$/u.test(plain)
    ? good(Number(plain))
    : bad({ code: 'number-unreadable', path, found: typed.slice(0, 60), wanted: '' });
}
