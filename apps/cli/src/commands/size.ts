import { type SizeReport, sizeReport } from '@loamwright/advisor';
import {
  bad,
  check,
  createDraws,
  good,
  type HeatToHoldInput,
  heapBounds,
  heatToHold,
  type Outcome,
  type Problem,
} from '@loamwright/science';
import { readQuantity } from '@loamwright/units';
import type { Answer } from '../answer.ts';
import { bayMeant } from '../bay.ts';
import { readBook } from '../book.ts';
import { readBaySize, readMeasurement } from '../grammar/measurement.ts';
import type { Session } from '../session.ts';
import { page } from '../text.ts';
import { cautionText } from './heap.ts';

export interface SizeOptions {
  readonly air?: string | undefined;
  readonly core?: string | undefined;
  readonly insulated?: boolean | undefined;
}

/** `loamwright size`: whether a heap or a bin of a size keeps a hot core, and whether straw walls would do it. */
export async function size(typed: string, options: SizeOptions, session: Session): Promise<Outcome<Answer>> {
  const read = await readHeapSize(typed, session);
  const { system } = session.speaker;
  const air =
    options.air === undefined ? good(undefined) : readMeasurement(options.air, 'temperature', '--air', system);
  const core =
    options.core === undefined ? good(undefined) : readMeasurement(options.core, 'temperature', '--core', system);
  if (!read.ok || !air.ok || !core.ok) {
    return bad(...[read, air, core].flatMap((one) => (one.ok ? [] : one.problems)));
  }
  const input: HeatToHoldInput = {
    size: read.value,
    ...(options.insulated === true && { insulated: true }),
    ...(air.value !== undefined && { air_degC: air.value.si }),
    ...(core.value !== undefined && { core_degC: core.value.si }),
  };
  const checked = check(heatToHold.input, input);
  if (!checked.ok) {
    const [beyond] = checked.problems.filter(({ path }) => path.startsWith('size'));
    const others = checked.problems.filter(({ path }) => !path.startsWith('size'));
    return bad(
      ...(beyond === undefined ? [] : [heapSizeBeyond(typed, session)]),
      ...others.map((problem) => ({ ...problem, path: optionOf[problem.path] ?? problem.path })),
    );
  }
  const found = heatToHold.run(input, { draws: createDraws() });
  if (!found.ok) return found;
  return good({ value: { input, ...found.value }, text: sizeText(sizeReport(input, found.value), session) });
}

const optionOf: Readonly<Record<string, string>> = { air_degC: '--air', core_degC: '--core' };

/** Of a size that was read but that no heap has. */
export function heapSizeBeyond(typed: string, { speaker }: Session): Problem {
  const { leastSide_m, mostSide_m, mostHeight_m, most_m3 } = heapBounds;
  const [least, most, height] = [leastSide_m, mostSide_m, mostHeight_m].map((side) =>
    speaker.likely(side, 'm', 'length'),
  );
  const wanted = speaker.say('size.bounds', {
    least: least ?? '',
    most: most ?? '',
    height: height ?? '',
    volume: speaker.likely(most_m3, 'm3', 'bulkVolume'),
  });
  return { code: 'heap-size-beyond', path: 'size', found: typed.slice(0, 60), wanted };
}

/** `1.2x1.2x1.2m`, `0.76m3`, or a bay by its name. Problems: `heap-size-unreadable`, `bay-unmeasured`. */
export async function readHeapSize(typed: string, session: Session): Promise<Outcome<HeatToHoldInput['size']>> {
  const box = readBaySize(typed, session.speaker.system);
  if (box !== undefined) return good(box);
  const volume = /\p{L}/u.test(typed) ? readQuantity(typed.slice(0, 40), 'volume', 'm3') : undefined;
  if (volume !== undefined) return good({ volume_m3: volume.si });
  const unreadable = { code: 'heap-size-unreadable', path: 'size', found: typed.slice(0, 60), wanted: '' };
  if (/^\s*\d/u.test(typed)) return bad(unreadable);
  const book = await readBook(session);
  if (!book.ok) return book;
  const bay = bayMeant(typed, book.value.holding, session);
  if (!bay.ok) return bad(unreadable);
  return bay.value.size === undefined
    ? bad({ code: 'bay-unmeasured', path: 'size', found: typed.slice(0, 60), wanted: '' })
    : good(bay.value.size);
}

function sizeText(report: SizeReport, { speaker, terminal }: Session): string {
  const { columns } = terminal;
  return [
    page(columns, [speaker.tell(report.answer)]),
    page(columns, ...report.seasons.map((said): [string, string] => [`- ${speaker.tell(said)}`, '  '])),
    page(columns, ...[...report.notes, report.heat].map((said): [string] => [speaker.tell(said)])),
    cautionText(report.cautions, speaker, columns),
  ].join('\n\n');
}
