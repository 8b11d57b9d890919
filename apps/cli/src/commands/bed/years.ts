import {
  buildUpReport,
  cropNamed,
  seasonOf,
  soilCarbonReport,
  stuffed,
  type YearsAsked,
  type YearsRecords,
  type YearsTold,
  yearsAsked,
  yearsFrom,
  yearsRecords,
} from '@loamwright/advisor';
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
import { subjectNamed } from '../../subject.ts';
import { page } from '../../text.ts';
import { cautionText } from '../heap.ts';
import { readArea, readCrops, readSoil } from './read.ts';

export interface BedYearsOptions {
  readonly bed?: string | undefined;
  readonly last?: string | undefined;
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
const USUAL_SEASONS = 3;
const MOST_SEASONS = 20;

/** `loamwright bed years`: a bed under a yearly plan, years on; what the daybook has of it, unless it is typed. */
export async function bedYears(
  typed: readonly string[],
  options: BedYearsOptions,
  before: Session,
): Promise<Outcome<Answer>> {
  const opened = await openWithSizes(options, before);
  if (!opened.ok) return opened;
  const { holding, session } = opened.value;
  const read = readAsked(typed, options, holding, session);
  if (!read.ok) return read;
  const { asked, records, carbon: carbonAsked, up: upAsked } = read.value;
  const carbonInput = check<SoilCarbonInput>(soilCarbon.input, carbonAsked);
  const upInput = check<BuildUpInput>(buildUp.input, upAsked);
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
    records === undefined ? '' : lines(yearsFrom(asked, records, { holding, speaker })),
    lines(report.notes, '- '),
    cautionText(carbon.value.cautions, speaker, terminal.columns),
  ];
  return good({
    value: {
      input: { carbon: carbonAsked, up: upAsked },
      carbon: carbon.value,
      buildUp: up.value,
      ...(records !== undefined && { from: asked.from }),
    },
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
  readonly asked: YearsAsked;
  /** Absent where no bed of the daybook was named. */
  readonly records: YearsRecords | undefined;
  readonly carbon: unknown;
  readonly up: unknown;
}

const nothing: YearsTold = {};

/** What was typed, over what the daybook knows of the bed. */
function readAsked(
  typed: readonly string[],
  options: BedYearsOptions,
  holding: Holding,
  session: Session,
): Outcome<Asked> {
  const named = readNamed(typed, options, holding, session);
  if (!named.ok) return named;
  const told = readTold(named.value.crops, options, holding, session);
  const air =
    options.air === undefined
      ? good(undefined)
      : readMeasurement(options.air, 'temperature', '--air', session.speaker.system);
  const years = options.years === undefined ? good(undefined) : readFigure(options.years, '--years');
  if (!told.ok || !air.ok || !years.ok) return bad(...allOf(told, air, years));
  const { records } = named.value;
  const asked = yearsAsked(told.value, records?.told ?? nothing);
  const grown = asked.up.crops.reduce((sum, { area_m2 }) => sum + likely(area_m2), 0);
  const shared = {
    area_m2: asked.up.area_m2 ?? (grown > 0 ? grown : USUAL_AREA_M2),
    ...(years.value !== undefined && { years: years.value }),
    ...(session.settings.measures_L !== undefined && { ownSizes: session.settings.measures_L }),
  };
  return good({
    asked,
    records,
    carbon: { ...asked.carbon, ...shared, ...(air.value !== undefined && { year_degC: air.value.si }) },
    up: { ...asked.up, ...shared },
  });
}

interface Named {
  readonly records: YearsRecords | undefined;
  readonly crops: readonly string[];
}

/**
 * A bed by `--bed`, or as what is typed first without an area: crops have theirs. A crop without an area, where no bed goes by its
 * name, is left to be refused as one.
 */
function readNamed(
  typed: readonly string[],
  { bed, last }: BedYearsOptions,
  holding: Holding,
  session: Session,
): Outcome<Named> {
  const [first = ''] = typed;
  const isFirst = bed === undefined && first !== '' && !first.includes('=');
  const name = isFirst ? first : bed;
  const seasons = last === undefined ? good(USUAL_SEASONS) : readSeasons(last);
  if (!seasons.ok) return seasons;
  if (name === undefined) return good({ records: undefined, crops: typed });
  const id = subjectNamed(holding, 'bed', name);
  if (!id.ok)
    return isFirst && 'id' in cropNamed(name, session.speaker) ? good({ records: undefined, crops: typed }) : id;
  const kept = holding.beds.get(id.value);
  if (kept === undefined) throw new RangeError('a bed was named');
  const { now, zone, speaker } = session;
  const season = seasonOf(now().toISOString(), zone);
  return good({
    records: yearsRecords(kept, holding, { season, zone, speaker, seasons: seasons.value }),
    crops: isFirst ? typed.slice(1) : typed,
  });
}

/** Problems: those of a figure; `out-of-bounds`. */
function readSeasons(typed: string): Outcome<number> {
  const read = readFigure(typed, '--last');
  if (!read.ok) return read;
  const { value } = read;
  return typeof value === 'number' && Number.isInteger(value) && value >= 1 && value <= MOST_SEASONS
    ? good(value)
    : bad({ code: 'out-of-bounds', path: '--last', found: typed.slice(0, 40), wanted: `1 … ${MOST_SEASONS}` });
}

/** What is typed of the bed; nothing of what is left out. */
function readTold(
  typed: readonly string[],
  options: BedYearsOptions,
  holding: Holding,
  session: Session,
): Outcome<YearsTold> {
  const crops = readCrops(typed, false, session);
  const plan = readPlan(options.put ?? [], holding, session);
  const area = options.area === undefined ? good(undefined) : readArea(options.area, '--area', session);
  const depth =
    options.depth === undefined
      ? good(undefined)
      : readMeasurement(options.depth, 'depth', '--depth', session.speaker.system);
  const texture =
    options.texture === undefined ? good(undefined) : readOneOf(options.texture, soilTextureIds, '--texture');
  const soil = readSoil(options.soil ?? []);
  if (!crops.ok || !plan.ok || !area.ok || !depth.ok || !texture.ok || !soil.ok)
    return bad(...allOf(crops, plan, area, depth, texture, soil));
  const { organicMatter_pctDry, phosphorusClass, potassiumClass } = soil.value;
  return good({
    area_m2: area.value,
    depth_m: depth.value?.si,
    texture: texture.value,
    organicMatter_pctDry,
    phosphorusClass,
    potassiumClass,
    plan: plan.value.length > 0 ? plan.value : undefined,
    crops: crops.value.length > 0 ? crops.value : undefined,
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
