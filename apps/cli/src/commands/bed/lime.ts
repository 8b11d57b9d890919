import { cropNamed, limeReport } from '@loamwright/advisor';
import {
  bad,
  check,
  createDraws,
  good,
  type LimeRateInput,
  limeRate,
  type Outcome,
  type Quantity,
  textureIds,
} from '@loamwright/science';
import type { Answer } from '../../answer.ts';
import { allOf, readFigure, readOneOf } from '../../blend.ts';
import type { Session } from '../../session.ts';
import { page } from '../../text.ts';
import { cautionText } from '../heap.ts';
import { readArea } from './read.ts';

export interface BedLimeOptions {
  readonly ph?: string | undefined;
  readonly texture?: string | undefined;
  readonly buffer?: string | undefined;
  readonly to?: string | undefined;
  readonly ash?: boolean | undefined;
  readonly value?: string | undefined;
  readonly potash?: string | undefined;
  readonly potassium?: string | undefined;
  readonly area?: string | undefined;
  readonly crops?: readonly string[] | undefined;
}

const USUAL_AREA_M2 = 10;

/** `loamwright bed lime`: how much lime or wood ash a bed wants. */
export function bedLime(options: BedLimeOptions, session: Session): Outcome<Answer> {
  const pH = readNumber(options.ph, '--ph');
  const to = readNumber(options.to, '--to');
  const value = options.value === undefined ? good(undefined) : readFigure(options.value, '--value');
  const potash = options.potash === undefined ? good(undefined) : readFigure(options.potash, '--potash');
  const potassium = options.potassium === undefined ? good(undefined) : readFigure(options.potassium, '--potassium');
  const texture = options.texture === undefined ? good(undefined) : readOneOf(options.texture, textureIds, '--texture');
  const buffer = readBuffer(options.buffer);
  const area = options.area === undefined ? good(USUAL_AREA_M2) : readArea(options.area, '--area', session);
  const crops = readCrops(options.crops ?? [], session);
  if (
    !pH.ok ||
    !to.ok ||
    !value.ok ||
    !potash.ok ||
    !potassium.ok ||
    !texture.ok ||
    !buffer.ok ||
    !area.ok ||
    !crops.ok
  )
    return bad(...allOf(pH, to, value, potash, potassium, texture, buffer, area, crops));
  const ashAlone = (['potash', 'potassium'] as const).filter((id) => options[id] !== undefined && options.ash !== true);
  if (ashAlone.length > 0)
    return bad(...ashAlone.map((id) => ({ code: 'ash-only', path: `--${id}`, found: '', wanted: '--ash' })));
  const input = check<LimeRateInput>(limeRate.input, {
    stuff: options.ash === true ? 'wood-ash' : 'limestone',
    area_m2: area.value,
    crops: crops.value,
    ...(pH.value !== undefined && { pH: pH.value }),
    ...(to.value !== undefined && { target_pH: to.value }),
    ...(texture.value !== undefined && { texture: texture.value }),
    ...(buffer.value !== undefined && { buffer: buffer.value }),
    ...(value.value !== undefined && { equivalent_pct: value.value }),
    ...(potash.value !== undefined && { potash_pctAsIs: potash.value }),
    ...(potassium.value !== undefined && { potassium_pctAsIs: potassium.value }),
  });
  if (!input.ok) return bad(...input.problems.map((one) => ({ ...one, path: optionOf[one.path] ?? one.path })));
  const found = limeRate.run(input.value, { draws: createDraws() });
  if (!found.ok) return found;
  const { speaker, terminal } = session;
  const said = limeReport(input.value, found.value).map((one): [string] => [speaker.tell(one)]);
  return good({
    value: { input: input.value, ...found.value },
    text: [page(terminal.columns, ...said), cautionText(found.value.cautions, speaker, terminal.columns)].join('\n\n'),
  });
}

const optionOf: Readonly<Record<string, string>> = {
  pH: '--ph',
  target_pH: '--to',
  equivalent_pct: '--value',
  potash_pctAsIs: '--potash',
  potassium_pctAsIs: '--potassium',
  stuff: '--ash',
  'buffer.pH': '--buffer',
};

function readNumber(typed: string | undefined, path: string): Outcome<number | undefined> {
  if (typed === undefined) return good(undefined);
  const read: Outcome<Quantity> = readFigure(typed, path);
  if (!read.ok) return read;
  return good(typeof read.value === 'number' ? read.value : read.value.p50);
}

/** `sikora=6.2`. Problems: `not-one-of`, `number-unreadable`. */
function readBuffer(typed: string | undefined): Outcome<LimeRateInput['buffer']> {
  if (typed === undefined) return good(undefined);
  const [name = '', figure = ''] = typed.split('=');
  const method = readOneOf(name, ['sikora', 'mehlich'] as const, '--buffer');
  const pH = readNumber(figure, '--buffer');
  if (!method.ok || !pH.ok) return bad(...allOf(method, pH));
  return pH.value === undefined ? good(undefined) : good({ method: method.value, pH: pH.value });
}

function readCrops(typed: readonly string[], { speaker }: Session): Outcome<readonly string[]> {
  const read = typed.map((name): Outcome<string> => {
    const found = cropNamed(name.slice(0, 60), speaker);
    return 'id' in found
      ? good(found.id)
      : bad({ code: 'unknown-crop', path: '--crops', found: name.slice(0, 60), wanted: found.nearest.join(', ') });
  });
  const problems = allOf(...read);
  return problems.length > 0 ? bad(...problems) : good(read.flatMap((one) => (one.ok ? [one.value] : [])));
}
