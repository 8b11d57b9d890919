import { type BuildUp, type BuiltUp, carbonParameters, type SoilCarbon } from '@loamwright/science';
import type { Figure, Saying } from '@loamwright/words';
import { liquid, liquidCover, mass, say, sayOf, smallMass, temperature } from './saying.ts';

const SURE = 0.8;
const EVERY_YEARS = 5;
const LEAST_LITRES = 0.5;
const LEAST_HARVESTS = 0.5;
const LEAST_KG = 1;
const { low, typical, high } = carbonParameters.yearUnknown_degC;
const unknownAir = { p10: low, p50: typical, p90: high };

/** A bed's organic matter and water over the years, in sentences. */
export function soilCarbonReport(found: SoilCarbon): {
  readonly answer: Saying;
  readonly lines: readonly Saying[];
  readonly notes: readonly Saying[];
} {
  const last = found.years.at(-1);
  if (last === undefined) throw new RangeError('a year');
  const { met, of } = found.rises;
  const rises = met / of;
  const told = { years: last.year, start: tenths(found.start_pctDry.p50), end: tenths(found.end_pctDry.p50), of };
  return {
    answer:
      rises >= SURE
        ? say('years.answer.up', { ...told, met })
        : rises <= 1 - SURE
          ? say('years.answer.down', { ...told, met: of - met })
          : say('years.answer.same', { ...told, met }),
    lines: [
      say('years.range', {
        low: tenths(found.end_pctDry.p10),
        high: tenths(found.end_pctDry.p90),
        bare: tenths(last.without_pctDry.p10),
        bareHigh: tenths(last.without_pctDry.p90),
      }),
      say('years.course', {
        points: found.years
          .filter(({ year }) => year % EVERY_YEARS === 0)
          .map(({ year, organicMatter_pctDry }) => say('years.point', { year, pct: tenths(organicMatter_pctDry.p50) })),
      }),
      ...keptWords(found),
      waterWords(found, last.available_mm.p50),
    ],
    notes: found.notes.map((note) => sayOf('years.note', note, { air: { ...temperature(unknownAir), asRange: true } })),
  };
}

/** The plan's two answers on one screen: what becomes of organic matter and water, and of phosphorus and potassium. */
export function yearsAnswer(
  carbon: SoilCarbon,
  up: BuildUp,
  { stuff, area_m2 }: { readonly stuff: readonly Saying[]; readonly area_m2: number },
): { readonly soil: Saying; readonly nutrients: Saying } {
  const last = carbon.years.at(-1);
  if (last === undefined) throw new RangeError('a year');
  const { p10, p50, p90 } = carbon.end_pctDry;
  const places = {
    start: tenths(carbon.start_pctDry.p50),
    end: tenths(p50),
    years: last.year,
    low: tenths(p10),
    high: tenths(p90),
  };
  const element = (id: 'phosphate' | 'potash'): Saying => {
    const { figure, range } = netOf(up[id]);
    return sayOf(`yearsPage.${id}`, up[id].way, { kg: figure, range });
  };
  return {
    soil:
      stuff.length === 0
        ? say('yearsPage.answer.nothing', places)
        : say('yearsPage.answer', { ...places, stuff, water: bedWater(carbon, area_m2) }),
    nutrients: say('yearsPage.up', { years: up.years, phosphate: element('phosphate'), potash: element('potash') }),
  };
}

/** A millimetre is a litre on each square metre. */
function bedWater({ water: { gain_mm } }: SoilCarbon, area_m2: number): Saying {
  if (gain_mm.p50 < LEAST_LITRES) return say('yearsPage.water.none');
  const gain = liquid({ p10: gain_mm.p10 * area_m2, p50: gain_mm.p50 * area_m2, p90: gain_mm.p90 * area_m2 });
  return say('yearsPage.water', { gain, range: { ...gain, asRange: true } });
}

function keptWords({ brought_kg, kept_kg, kept_share }: SoilCarbon): readonly Saying[] {
  if (kept_share === undefined) return [];
  return [
    say('years.kept', {
      brought: mass(brought_kg),
      kept: mass(kept_kg),
      share: `${Math.round(100 * kept_share.p10)}–${Math.round(100 * kept_share.p90)}`,
    }),
  ];
}

function waterWords({ water: { gain_mm, bySurvey_mm } }: SoilCarbon, all_mm: number): Saying {
  if (Math.max(gain_mm.p50, bySurvey_mm.high) < LEAST_LITRES)
    return say('years.water.none', { least: liquidCover(LEAST_LITRES) });
  return say('years.water', {
    gain: liquidCover(gain_mm),
    range: { ...liquidCover(gain_mm), asRange: true },
    all: liquidCover(all_mm),
    survey: {
      ...liquidCover({ p10: bySurvey_mm.low, p50: (bySurvey_mm.low + bySurvey_mm.high) / 2, p90: bySurvey_mm.high }),
      asRange: true,
    },
  });
}

/** Phosphorus and potassium of a bed years on, in sentences. */
export function buildUpReport(found: BuildUp): readonly Saying[] {
  return [
    ...(['phosphate', 'potash'] as const).flatMap((element) => [
      sayOf(found[element].takenEachYear_kg.p50 > 0 ? 'years' : 'years.unharvested', element, {
        brought: some(found[element].broughtEachYear_kg),
        taken: some(found[element].takenEachYear_kg),
        net: netWords(found[element]),
        years: found.years,
      }),
      ...harvestWords(found[element]),
      sayOf('years.act', found[element].act),
    ]),
    say('years.no-ppm'),
  ];
}

function netWords(element: BuiltUp): Saying {
  const { figure, range } = netOf(element);
  return sayOf('years.net', element.way, { kg: figure, range });
}

/** What builds up, or what the soil gives where it falls. */
function netOf({ overYears_kg: { p10, p50, p90 }, way }: BuiltUp): { readonly figure: Figure; readonly range: Figure } {
  const figure = some(way === 'falls' ? { p10: -p90, p50: -p50, p90: -p10 } : { p10, p50, p90 });
  return { figure, range: { ...figure, asRange: true } };
}

function harvestWords({ overYears_harvests: harvests, way }: BuiltUp): readonly Saying[] {
  if (harvests === undefined || way !== 'builds' || harvests.p50 < LEAST_HARVESTS) return [];
  return [say('years.harvests', { harvests: String(Number(harvests.p50.toPrecision(2))) })];
}

function some(kg: { readonly p10: number; readonly p50: number; readonly p90: number }): Figure {
  return Math.abs(kg.p50) < LEAST_KG ? smallMass(kg) : mass(kg);
}

function tenths(value: number): string {
  return value.toFixed(1);
}
