import { charReport } from '@loamwright/advisor';
import {
  bad,
  type CharBlendInput,
  charBlend,
  charSoils,
  check,
  createDraws,
  good,
  type Outcome,
  type Quantity,
} from '@loamwright/science';
import { convert } from '@loamwright/units';
import type { Answer } from '../../answer.ts';
import { allOf, readFigure, readOneOf } from '../../blend.ts';
import { readMeasurement } from '../../grammar/measurement.ts';
import type { Session } from '../../session.ts';
import { page } from '../../text.ts';
import { cautionText } from '../heap.ts';
import { readArea } from './read.ts';

export interface BedCharOptions {
  readonly area?: string | undefined;
  readonly depth?: string | undefined;
  readonly mix?: string | undefined;
  readonly soil?: string | undefined;
  readonly ph?: string | undefined;
  readonly weighs?: string | undefined;
  readonly charged?: boolean | undefined;
}

const USUAL_AREA_M2 = 10;

/** `loamwright bed char`: how much charcoal goes on a bed or into a mix. */
export function bedChar(typed: string | undefined, options: BedCharOptions, session: Session): Outcome<Answer> {
  const charcoal = readLitres(typed, 'charcoal', session);
  const mix = readLitres(options.mix, '--mix', session);
  const area = options.area === undefined ? good(USUAL_AREA_M2) : readArea(options.area, '--area', session);
  const depth =
    options.depth === undefined
      ? good(undefined)
      : readMeasurement(options.depth, 'depth', '--depth', session.speaker.system);
  const soil = options.soil === undefined ? good(undefined) : readOneOf(options.soil, charSoils, '--soil');
  const pH = readOptional(options.ph, '--ph');
  const weighs = readOptional(options.weighs, '--weighs');
  if (!charcoal.ok || !mix.ok || !area.ok || !depth.ok || !soil.ok || !pH.ok || !weighs.ok)
    return bad(...allOf(charcoal, mix, area, depth, soil, pH, weighs));
  const input = check<CharBlendInput>(charBlend.input, {
    ...(charcoal.value !== undefined && { charcoal_L: charcoal.value }),
    ...(mix.value === undefined
      ? { bed: { area_m2: area.value, ...(depth.value !== undefined && { depth_m: depth.value.si }) } }
      : { mix_L: mix.value }),
    ...(soil.value !== undefined && { soil: soil.value }),
    ...(pH.value !== undefined && { pH: pH.value }),
    // Grams in a litre are kilograms in a cubic metre.
    ...(weighs.value !== undefined && { density_kgPerM3Dry: weighs.value }),
    ...(options.charged === true && { isCharged: true }),
  });
  if (!input.ok) return bad(...input.problems.map(asTyped));
  const found = charBlend.run(input.value, { draws: createDraws() });
  if (!found.ok) return bad(...found.problems.map(asTyped));
  const { speaker, terminal } = session;
  const said = charReport(input.value, found.value).map((one): [string] => [speaker.tell(one)]);
  return good({
    value: { input: input.value, ...found.value },
    text: [page(terminal.columns, ...said), cautionText(found.value.cautions, speaker, terminal.columns)].join('\n\n'),
  });
}

const optionOf: Readonly<Record<string, string>> = {
  charcoal_L: 'charcoal',
  'bed.area_m2': '--area',
  'bed.depth_m': '--depth',
  mix_L: '--mix',
  pH: '--ph',
  density_kgPerM3Dry: '--weighs',
};

function asTyped<Slip extends { readonly path: string }>(problem: Slip): Slip {
  return { ...problem, path: optionOf[problem.path] ?? problem.path };
}

function readLitres(typed: string | undefined, path: string, { speaker }: Session): Outcome<number | undefined> {
  if (typed === undefined) return good(undefined);
  const read = readMeasurement(typed, 'liquid', path, speaker.system);
  return read.ok ? good(convert(read.value.si, 'm3', 'L')) : read;
}

function readOptional(typed: string | undefined, path: string): Outcome<Quantity | undefined> {
  return typed === undefined ? good(undefined) : readFigure(typed, path);
}
