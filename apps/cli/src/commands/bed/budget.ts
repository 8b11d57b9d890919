import { type BedRecords, bedBudgetReport, bedRecords, recordNotes, releasesOf, seasonOf } from '@loamwright/advisor';
import type { Holding } from '@loamwright/daybook';
import {
  type BedBudgetInput,
  bad,
  bedBudget,
  check,
  createDraws,
  good,
  type Outcome,
  type WeatherId,
  weatherIds,
} from '@loamwright/science';
import type { Saying } from '@loamwright/words';
import type { Answer } from '../../answer.ts';
import { allOf, readFigure, readOneOf } from '../../blend.ts';
import { readMeasurement } from '../../grammar/measurement.ts';
import { namesOf } from '../../holding.ts';
import type { Session } from '../../session.ts';
import { openWithSizes } from '../../sizes.ts';
import { subjectNamed } from '../../subject.ts';
import { page } from '../../text.ts';
import { cautionText } from '../heap.ts';
import { readArea, readBefore, readCrops, readGrades, readPut, readSoil } from './read.ts';

export interface BedBudgetOptions {
  readonly bed?: string | undefined;
  readonly area?: string | undefined;
  readonly put?: readonly string[] | undefined;
  readonly for?: string | undefined;
  readonly mulch?: boolean | undefined;
  readonly after?: string | undefined;
  readonly weather?: string | undefined;
  readonly before?: readonly string[] | undefined;
  readonly soil?: readonly string[] | undefined;
  readonly sandy?: boolean | undefined;
  readonly byHarvest?: boolean | undefined;
  readonly fertiliser?: readonly string[] | undefined;
  readonly soilTemp?: string | undefined;
  readonly days?: string | undefined;
  readonly size?: readonly string[] | undefined;
  readonly full?: boolean | undefined;
}

/** `loamwright bed budget`: what a bed wants, what it has, and what is short or too much. */
export async function bedBudgetCommand(
  typed: readonly string[],
  options: BedBudgetOptions,
  before: Session,
): Promise<Outcome<Answer>> {
  const opened = await openWithSizes(options, before);
  if (!opened.ok) return opened;
  const { holding, session } = opened.value;
  const asked = readAsked(typed, options, holding, session);
  if (!asked.ok) return asked;
  const input = check(bedBudget.input, asked.value.input);
  if (!input.ok) return input;
  const draws = createDraws();
  const found = bedBudget.run(input.value, { draws });
  if (!found.ok) return found;
  const releases = releasesOf(input.value, { draws });
  if (!releases.ok) return releases;
  const report = bedBudgetReport({ input: input.value, budget: found.value, releases: releases.value, holding });
  const { speaker, terminal } = session;
  const { columns } = terminal;
  const lines = (sayings: readonly Saying[], mark = ''): string =>
    page(
      columns,
      ...sayings.map((said): [string, string] => [`${mark}${speaker.tell(said)}`, ' '.repeat(mark.length)]),
    );
  const text = [
    lines([report.answer, ...asked.value.ground, ...report.cover]),
    lines(report.advice, '> '),
    lines([report.range, ...report.assumed, ...recordNotes(asked.value)]),
    lines([...report.wanted, ...report.supplied], '- '),
    lines(report.spread, '- '),
    lines(options.full === true ? report.sources : [], '- '),
    lines(report.others, '- '),
    cautionText(report.cautions, speaker, columns),
  ].filter((block) => block !== '');
  return good({
    value: { input: input.value, ...found.value, releases: releases.value },
    text: text.join('\n\n'),
  });
}

export interface Asked {
  readonly input: unknown;
  readonly leftOut: BedRecords['leftOut'];
  readonly byTables: BedRecords['byTables'];
  readonly unknown: BedRecords['unknown'];
  readonly ground: BedRecords['ground'];
}

const nothing: BedRecords = {
  area_m2: undefined,
  crops: [],
  put: [],
  soilTest: {},
  leftOut: [],
  byTables: [],
  unknown: [],
  ground: [],
};

/** What was typed, over what the daybook knows of the bed. */
export function readAsked(
  typed: readonly string[],
  options: BedBudgetOptions,
  holding: Holding,
  session: Session,
): Outcome<Asked> {
  const season = readSeason(options.for, session);
  if (!season.ok) return season;
  const records = recordsOf(options.bed, season.value, holding, session);
  if (!records.ok) return records;
  const after = options.after === undefined ? good(undefined) : readFigure(options.after, '--after');
  const weather: Outcome<WeatherId | undefined> =
    options.weather === undefined ? good(undefined) : readOneOf(options.weather, weatherIds, '--weather');
  const crops = readCrops(typed, options.byHarvest === true, session);
  const area = options.area === undefined ? good(undefined) : readArea(options.area, '--area', session);
  const gone = readBefore(options.before ?? [], session);
  const soil = readSoil(options.soil ?? []);
  const grades = readGrades(options.fertiliser ?? []);
  const warmth = readWarmth(options, session);
  if (!after.ok || !weather.ok || !crops.ok || !area.ok || !gone.ok || !soil.ok || !grades.ok || !warmth.ok) {
    return bad(...allOf(after, weather, crops, area, gone, soil, grades, warmth));
  }
  const put = readPut(
    options.put ?? [],
    namesOf(session, holding),
    holding,
    {
      season: season.value,
      mulched: options.mulch === true,
      workedInAfter_days: typeof after.value === 'number' ? after.value : undefined,
      weather: weather.value,
    },
    session,
  );
  if (!put.ok) return put;
  const known = records.value;
  const area_m2 = area.value ?? known.area_m2;
  const grown = crops.value.length > 0 ? crops.value : known.crops;
  if (grown.length === 0) return bad({ code: 'no-crop-named', path: 'crops', found: '', wanted: '' });
  return good({
    input: {
      crops: grown,
      ...(area_m2 !== undefined && { area_m2 }),
      put: [...known.put, ...put.value],
      before: gone.value,
      soilTest: { ...known.soilTest, ...soil.value },
      fertilisers: grades.value,
      ...(options.sandy === true && { sandy: true }),
      ...(warmth.value !== undefined && { warmth: warmth.value }),
      ...(session.settings.measures_L !== undefined && { ownSizes: session.settings.measures_L }),
    },
    leftOut: known.leftOut,
    byTables: known.byTables,
    unknown: crops.value.length > 0 ? [] : known.unknown,
    ground: crops.value.length > 0 ? [] : known.ground,
  });
}

const year = /^\d{4}$/u;

export function readSeason(typed: string | undefined, { now, zone }: Session): Outcome<number> {
  if (typed === undefined) return good(seasonOf(now().toISOString(), zone));
  return year.test(typed)
    ? good(Number(typed))
    : bad({ code: 'number-unreadable', path: '--for', found: typed.slice(0, 40), wanted: '' });
}

function recordsOf(
  name: string | undefined,
  season: number,
  holding: Holding,
  { zone, speaker }: Session,
): Outcome<BedRecords> {
  if (name === undefined) return good(nothing);
  const id = subjectNamed(holding, 'bed', name);
  if (!id.ok) return id;
  const bed = holding.beds.get(id.value);
  if (bed === undefined) throw new RangeError('a bed was named');
  return good(bedRecords(bed, holding, { season, zone, speaker }));
}

/** Usual lengths of a season are not known: both are told or neither. Problem: `measurement-unreadable`. */
function readWarmth({ soilTemp, days }: BedBudgetOptions, { speaker }: Session): Outcome<BedBudgetInput['warmth']> {
  if (soilTemp === undefined && days === undefined) return good(undefined);
  const temp = readMeasurement(soilTemp ?? '', 'temperature', '--soil-temp', speaker.system);
  const season = readFigure(days ?? '', '--days');
  if (!temp.ok || !season.ok) return bad(...allOf(temp, season));
  if (typeof season.value !== 'number') {
    return bad({ code: 'number-unreadable', path: '--days', found: (days ?? '').slice(0, 40), wanted: '' });
  }
  return good({ soil_degC: temp.value.si, season_days: season.value });
}
