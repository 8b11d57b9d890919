import { buildUpReport, soilCarbonReport, stuffed } from '@loamwright/advisor';
import type { Holding } from '@loamwright/daybook';
import {
  type BuildUpInput,
  bad,
  buildUp,
  check,
  createDraws,
  good,
  likely,
  type Outcome,
  type Problem,
  type SoilCarbonInput,
  soilCarbon,
  soilTextureIds,
  type Yearly,
} from '@loamwright/science';
import type { Saying } from '@loamwright/words';
import type { Answer } from '../../answer.ts';
import { allOf, readFigure, readOneOf } from '../../blend.ts';
import { readIngredients } from '../../grammar/ingredient.ts';
import { readMeasurement } from '../../grammar/measurement.ts';
import { namesOf } from '../../holding.ts';
import type { Session } from '../../session.ts';
import { openWithSizes } from '../../sizes.ts';
import { page } from '../../text.ts';
import { cautionText } from '../heap.ts';
import { readArea, readCrops, readSoil } from './read.ts';

export interface BedYearsOptions {
  readonly put?: readonly string[] | undefined;
  readonly area?: string | undefined;
  readonly depth?: string | undefined;
  readonly texture?: string | undefined;
  readonly air?: string | undefined;
  readonly years?: string | undefined;
  readonly soil?: readonly string[] | undefined;
  readonly size?: readonly string[] | undefined;
}

const USUAL_AREA_M2 = 10;

/** `loamwright bed years`: a bed under a yearly plan, years on. */
export async function bedYears(
  typed: readonly string[],
  options: BedYearsOptions,
  before: Session,
): Promise<Outcome<Answer>> {
  const opened = await openWithSizes(options, before);
  if (!opened.ok) return opened;
  const { holding, session } = opened.value;
  const asked = readAsked(typed, options, holding, session);
  if (!asked.ok) return asked;
  const carbonInput = check<SoilCarbonInput>(soilCarbon.input, asked.value.carbon);
  const upInput = check<BuildUpInput>(buildUp.input, asked.value.up);
  if (!carbonInput.ok || !upInput.ok) return bad(...asOptions(allOf(carbonInput.ok ? upInput : carbonInput)));
  const draws = createDraws();
  const carbon = soilCarbon.run(carbonInput.value, { draws });
  if (!carbon.ok) return bad(...asOptions(carbon.problems));
  const up = buildUp.run(upInput.value, { draws });
  if (!up.ok) return bad(...asOptions(up.problems));
  const { speaker, terminal } = session;
  const report = soilCarbonReport(carbon.value);
  const lines = (sayings: readonly Saying[], mark = ''): string =>
    page(
      terminal.columns,
      ...sayings.map((said): [string, string] => [`${mark}${speaker.tell(said)}`, ' '.repeat(mark.length)]),
    );
  const text = [
    lines([report.answer, ...report.lines]),
    lines(buildUpReport(up.value)),
    lines(report.notes, '- '),
    cautionText(carbon.value.cautions, speaker, terminal.columns),
  ];
  return good({
    value: { input: asked.value, carbon: carbon.value, buildUp: up.value },
    text: text.filter((block) => block !== '').join('\n\n'),
  });
}

const optionOf: Readonly<Record<string, string>> = {
  area_m2: '--area',
  depth_m: '--depth',
  year_degC: '--air',
  years: '--years',
  organicMatter_pctDry: '--soil om',
  plan: '--put',
};

function asOptions(problems: readonly Problem[]): readonly Problem[] {
  return problems.map((one) => ({ ...one, path: optionOf[one.path] ?? one.path.replace(/^plan/u, '--put') }));
}

interface Asked {
  readonly carbon: unknown;
  readonly up: unknown;
}

function readAsked(
  typed: readonly string[],
  options: BedYearsOptions,
  holding: Holding,
  session: Session,
): Outcome<Asked> {
  const crops = readCrops(typed, false, session);
  const plan = readPlan(options.put ?? [], holding, session);
  const area = options.area === undefined ? good(undefined) : readArea(options.area, '--area', session);
  const { system } = session.speaker;
  const depth =
    options.depth === undefined ? good(undefined) : readMeasurement(options.depth, 'depth', '--depth', system);
  const air =
    options.air === undefined ? good(undefined) : readMeasurement(options.air, 'temperature', '--air', system);
  const texture =
    options.texture === undefined ? good(undefined) : readOneOf(options.texture, soilTextureIds, '--texture');
  const years = options.years === undefined ? good(undefined) : readFigure(options.years, '--years');
  const soil = readSoil(options.soil ?? []);
  if (!crops.ok || !plan.ok || !area.ok || !depth.ok || !air.ok || !texture.ok || !years.ok || !soil.ok)
    return bad(...allOf(crops, plan, area, depth, air, texture, years, soil));
  const grown = crops.value.reduce((sum, { area_m2 }) => sum + likely(area_m2), 0);
  const shared = {
    area_m2: area.value ?? (grown > 0 ? grown : USUAL_AREA_M2),
    plan: plan.value,
    ...(years.value !== undefined && { years: years.value }),
    ...(session.settings.measures_L !== undefined && { ownSizes: session.settings.measures_L }),
  };
  const { organicMatter_pctDry, phosphorusClass, potassiumClass } = soil.value;
  return good({
    carbon: {
      ...shared,
      ...(depth.value !== undefined && { depth_m: depth.value.si }),
      ...(air.value !== undefined && { year_degC: air.value.si }),
      ...(texture.value !== undefined && { texture: texture.value }),
      ...(organicMatter_pctDry !== undefined && { organicMatter_pctDry }),
    },
    up: {
      ...shared,
      crops: crops.value,
      ...(phosphorusClass !== undefined && { phosphorusClass }),
      ...(potassiumClass !== undefined && { potassiumClass }),
    },
  });
}

/** `compost=1barrow straw=10kg`, each year. */
function readPlan(typed: readonly string[], holding: Holding, session: Session): Outcome<readonly Yearly[]> {
  const stuffs = readIngredients(typed, namesOf(session, holding));
  if (!stuffs.ok) return stuffs;
  return good(
    stuffs.value.map(({ material, doubtful, amount }) => ({ ...stuffed(material, doubtful, holding), amount })),
  );
}
