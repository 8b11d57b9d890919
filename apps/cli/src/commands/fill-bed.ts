import { bedFillReport } from '@loamwright/advisor';
import {
  type BedFillInput,
  bad,
  baseIds,
  bedFill,
  check,
  createDraws,
  good,
  type Outcome,
  standsOnIds,
  wallIds,
} from '@loamwright/science';
import { readQuantity, readSides, unitFor } from '@loamwright/units';
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
import { readBaySize, readMeasurement } from '../grammar/measurement.ts';
import { namesOf } from '../holding.ts';
import type { Session } from '../session.ts';
import { openWithSizes } from '../sizes.ts';

export interface FillBedOptions extends CompostOptions, StuffOptions {
  readonly depth?: string | undefined;
  readonly beds?: string | undefined;
  readonly compost?: string | undefined;
  readonly foot?: string | undefined;
  readonly standsOn?: string | undefined;
  readonly walls?: string | undefined;
}

/** `loamwright fill-bed`: what fills a raised bed, what it weighs, and what it will want next year. */
export async function fillBed(typed: string, options: FillBedOptions, before: Session): Promise<Outcome<Answer>> {
  const opened = await openWithSizes(options, before);
  if (!opened.ok) return opened;
  const { holding, session } = opened.value;
  const names = namesOf(session, holding);
  const bed = readBed(typed, options.depth, session);
  const beds = options.beds === undefined ? good(undefined) : readFigure(options.beds, '--beds');
  const share = options.compost === undefined ? good(undefined) : readFigure(options.compost, '--compost');
  const base = options.foot === undefined ? good(undefined) : readFoot(options.foot, session);
  const standsOn =
    options.standsOn === undefined ? good(undefined) : readOneOf(options.standsOn, standsOnIds, '--stands-on');
  const walls = options.walls === undefined ? good(undefined) : readOneOf(options.walls, wallIds, '--walls');
  const compost = readCompost(options);
  const parts = readParts(options.part ?? [], session);
  const have = readHave(options.have ?? [], names, session);
  const measure = readMeasure(options.measure, 'barrow', names);
  if (
    !bed.ok ||
    !beds.ok ||
    !share.ok ||
    !base.ok ||
    !standsOn.ok ||
    !walls.ok ||
    !compost.ok ||
    !parts.ok ||
    !have.ok ||
    !measure.ok
  ) {
    return bad(...allOf(bed, beds, share, base, standsOn, walls, compost, parts, have, measure));
  }
  const input = check(bedFill.input, {
    bed: bed.value,
    compost: compost.value,
    measure: measure.value,
    ...(beds.value !== undefined && { beds: beds.value }),
    ...(share.value !== undefined && { compost_pctVolume: share.value }),
    ...(base.value !== undefined && { base: base.value }),
    ...(standsOn.value !== undefined && { standsOn: standsOn.value }),
    ...(walls.value !== undefined && { walls: walls.value }),
    ...(parts.value.length > 0 && { parts: parts.value }),
    ...(have.value.length > 0 && { onHand: have.value }),
    ...(session.settings.measures_L !== undefined && { ownSizes: session.settings.measures_L }),
  });
  if (!input.ok) return input;
  const filled = bedFill.run(input.value, { draws: createDraws() });
  if (!filled.ok) return filled;
  const report = bedFillReport(filled.value);
  const stock = report.parts.flatMap((part) => (part.stock === null ? [] : [part.stock]));
  const opening = [...(report.base === null ? [] : [report.base]), report.answer];
  return good({
    value: { input: input.value, ...filled.value },
    text: reportText({ ...report, opening, stock }, session),
  });
}

const LONGEST = 60;

/** `2.4x1.2x0.4m`; `8x4ft`, or any shape by its area, with `--depth`. Problems: `bed-unreadable`, `bed-how-deep`. */
function readBed(typed: string, depth: string | undefined, { speaker }: Session): Outcome<BedFillInput['bed']> {
  const unreadable = bad({ code: 'bed-unreadable', path: '', found: typed.slice(0, LONGEST), wanted: '' });
  const box = readBaySize(typed, speaker.system);
  if (box !== undefined) {
    return depth === undefined
      ? good({ length_m: box.width_m, width_m: box.depth_m, depth_m: box.height_m })
      : unreadable;
  }
  const [length_m, width_m, ...more] = readSides(typed.slice(0, LONGEST), unitFor('length', speaker.system)) ?? [];
  const isFlat = length_m !== undefined && width_m !== undefined && more.length === 0;
  const howDeep = bad({ code: 'bed-how-deep', path: '', found: typed.slice(0, LONGEST), wanted: '' });
  if (isFlat) {
    if (depth === undefined) return howDeep;
    const deep = readMeasurement(depth, 'depth', '--depth', speaker.system);
    return deep.ok ? good({ length_m, width_m, depth_m: deep.value.si }) : deep;
  }
  const area = readQuantity(typed.slice(0, LONGEST), 'area', speaker.system === 'us' ? 'ft2' : 'm2');
  if (area === undefined || area.si <= 0) return unreadable;
  if (depth === undefined) return howDeep;
  const deep = readMeasurement(depth, 'depth', '--depth', speaker.system);
  return deep.ok ? good({ area_m2: area.si, depth_m: deep.value.si }) : deep;
}

/** `logs=15cm`. Problems: `not-one-of`, `measurement-unreadable`. */
function readFoot(typed: string, { speaker }: Session): Outcome<NonNullable<BedFillInput['base']>> {
  const [stuff = '', depth = ''] = typed.split('=');
  const kind = readOneOf(stuff, baseIds, '--foot');
  const deep = readMeasurement(depth, 'depth', '--foot', speaker.system);
  return kind.ok && deep.ok ? good({ stuff: kind.value, depth_m: deep.value.si }) : bad(...allOf(kind, deep));
}
