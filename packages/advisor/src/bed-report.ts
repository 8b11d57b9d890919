import type { Bed, Holding } from '@loamwright/daybook';
import { type BedBudget, type BedBudgetInput, bedBudget, likely, type Needs, type SoilTest } from '@loamwright/science';
import type { Saying, Speaker } from '@loamwright/words';
import { type BedBudgetReport, bedBudgetReport, releasesOf } from './bed-budget-report.ts';
import { bedRecords, recordNotes, seasonOf } from './bed-records.ts';
import { entrySaying } from './entry-saying.ts';
import { area, say, sayOf, smallMass } from './saying.ts';

/** When and for whom a bed is told of. */
export interface BedMoment {
  readonly now: string;
  readonly zone: string;
  readonly speaker: Speaker;
  readonly needs: Needs;
}

/** A bed in a line. */
export interface BedLine {
  readonly id: string;
  readonly name: string;
  /** How large it is and what grows there this season. */
  readonly what: Saying;
  /** How its nitrogen stands; null where nothing is sown that the tables know. */
  readonly stands: Saying | null;
}

/** All beds, a line each. */
export interface BedsOverview {
  readonly headline: Saying;
  readonly beds: readonly BedLine[];
}

/** A bed: what its crops want and have, and what was done there. */
export interface BedReport {
  readonly id: string;
  readonly name: string;
  readonly what: Saying;
  readonly answer: Saying;
  /** How its ground is shared among its crops, where that is not written down or can't be. */
  readonly ground: readonly Saying[];
  /** The budget of this season; absent where nothing is sown that the tables know. */
  readonly budget?: BedBudgetReport | undefined;
  /** What of its records could not be counted. */
  readonly notes: readonly Saying[];
  /** What was done there, newest first. */
  readonly done: readonly { readonly entry: string; readonly instant: string; readonly said: Saying }[];
}

/** What the records of a bed come to this season. */
interface Reckoned {
  readonly input: BedBudgetInput;
  readonly budget: BedBudget;
  readonly ground: readonly Saying[];
}

/**
 * The season's budget of a bed as its records have it; absent where nothing is sown that the tables know, and where what is written
 * down can't be: `isAbsurd` tells the two apart.
 */
export function bedReckoned(bed: Bed, holding: Holding, moment: BedMoment): Reckoned | undefined {
  const { crops, put, soilTest, area_m2, ground } = recordsAt(bed, holding, moment);
  if (crops.length === 0) return undefined;
  const input: BedBudgetInput = { crops, put, soilTest, ...(area_m2 !== undefined && { area_m2 }) };
  const found = bedBudget.run(input, moment.needs);
  return found.ok ? { input, budget: found.value, ground } : undefined;
}

/** What the soil tests of a bed say, the newest of each kind. */
export function bedTested(bed: Bed, holding: Holding, moment: BedMoment): SoilTest {
  return recordsAt(bed, holding, moment).soilTest;
}

/** Whether a crop of the tables is sown and no budget can be made of what is written down. */
function isAbsurd(bed: Bed, holding: Holding, moment: BedMoment): boolean {
  return recordsAt(bed, holding, moment).crops.length > 0 && bedReckoned(bed, holding, moment) === undefined;
}

function recordsAt(bed: Bed, holding: Holding, { now, zone, speaker }: BedMoment) {
  return bedRecords(bed, holding, { season: seasonOf(now, zone), zone, speaker });
}

/** Every bed in a line, in the order they were set up. */
export function bedsOverview(holding: Holding, moment: BedMoment): BedsOverview {
  const beds = [...holding.beds.values()].map((bed): BedLine & { readonly short: boolean } => {
    const nitrogen = bedReckoned(bed, holding, moment)?.budget.elements.nitrogen;
    const unreckoned = isAbsurd(bed, holding, moment) ? say('beds.stands.absurd') : null;
    return {
      id: bed.id,
      name: bed.setUp.body.name,
      what: whatGrows(bed, holding, moment),
      stands:
        nitrogen === undefined
          ? unreckoned
          : sayOf('beds.stands', nitrogen.stands, { short: smallMass(nitrogen.short_kg) }),
      short: nitrogen?.stands === 'short',
    };
  });
  const short = beds.filter((bed) => bed.short).length;
  return {
    headline: headlineOf(),
    beds: beds.map(({ short: _short, ...bed }) => bed),
  };

  function headlineOf(): Saying {
    if (beds.length === 0) return say('beds.none');
    if (beds.every(({ stands }) => stands === null))
      return say('beds.headline.bare', { beds: beds.length, season: seasonTold(moment) });
    return say('beds.headline', { beds: beds.length, short });
  }
}

/** The year of the harvest, as it is said. */
function seasonTold({ now, zone }: BedMoment): string {
  return String(seasonOf(now, zone));
}

function whatGrows(bed: Bed, holding: Holding, moment: BedMoment): Saying {
  const { crops, unknown } = recordsAt(bed, holding, moment);
  const names: readonly Saying[] = [
    ...crops.map(({ crop }) => say('beds.crop', { crop: moment.speaker.sayIf(`crop.${crop}.name`, crop) })),
    ...unknown.map((crop) => say('beds.crop', { crop })),
  ];
  const size = area(bed.setUp.body.area_m2);
  return names.length === 0
    ? say('beds.what.bare', { area: size, season: seasonTold(moment) })
    : say('beds.what', { area: size, crops: names });
}

/** One bed: what it wants this season, why, and what was done there. */
export function bedReport(bed: Bed, holding: Holding, moment: BedMoment): BedReport {
  const reckoned = bedReckoned(bed, holding, moment);
  const records = recordsAt(bed, holding, moment);
  const { unknown, ground } = records;
  const releases = reckoned === undefined ? undefined : releasesOf(reckoned.input, moment.needs);
  const budget =
    reckoned === undefined || releases?.ok !== true
      ? undefined
      : bedBudgetReport({ ...reckoned, releases: releases.value, holding });
  const acts = [...bed.spreadings.map(({ told }) => told), ...bed.sown, ...bed.harvested, ...bed.tests].toSorted(
    (a, b) => b.entry.happened.localeCompare(a.entry.happened),
  );
  return {
    id: bed.id,
    name: bed.setUp.body.name,
    what: whatGrows(bed, holding, moment),
    answer:
      budget?.answer ??
      (isAbsurd(bed, holding, moment) ? say('beds.answer.absurd') : undefined) ??
      (unknown.length > 0 ? say('beds.answer.unknown') : say('beds.answer.nothing', { season: seasonTold(moment) })),
    ground,
    ...(budget !== undefined && { budget }),
    notes: recordNotes(records),
    done: acts.map((told) => ({
      entry: told.entry.id,
      instant: told.entry.happened,
      said: entrySaying(told, holding),
    })),
  };
}

/** Area of a bed, m², its likely one. */
export function bedArea_m2({ setUp }: Bed): number {
  return likely(setUp.body.area_m2);
}
