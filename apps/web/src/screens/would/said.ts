import '@loamwright/words/later';
import type { Course, Estimate, HeapRunAnswer } from '@loamwright/science';
import { heapLimits_degC } from '@loamwright/science';
import { convert, unitFor } from '@loamwright/units';
import type { Figure, Saying, Speaker } from '@loamwright/words';
import type { Change, Here } from './asked.ts';

/** A temperature to whole degrees of the reader's: a model knows no tenths. */
function wholeDegrees(speaker: Speaker, temp_degC: number): number {
  const unit = unitFor('temperature', speaker.system);
  return convert(Math.round(convert(temp_degC, 'degC', unit)), unit, 'degC');
}

function temperature(speaker: Speaker, temp_degC: number | Estimate): Figure {
  const read = (value: number): number => wholeDegrees(speaker, value);
  const figure =
    typeof temp_degC === 'number'
      ? read(temp_degC)
      : { p10: read(temp_degC.p10), p50: read(temp_degC.p50), p90: read(temp_degC.p90) };
  return { figure, unit: 'degC', as: 'temperature' };
}

/** "62 °C". */
export function degrees(speaker: Speaker, temp_degC: number): string {
  return speaker.likely(wholeDegrees(speaker, temp_degC), 'degC', 'temperature');
}

/** A count of days or percents as it is told: whole. */
export function whole(day: number): string {
  return String(Math.round(day));
}

/** A share, to whole percents; what is lost is never told as less than nothing. */
export function percent(share_pct: number): string {
  return `${Math.max(0, Math.round(share_pct))} %`;
}

/** From this share of the heaps on it is said that it should get hot; up to what is left of all, that it stays cold. */
const SURE_share = 0.8;

/** What the heap would do, as sentences of the answer. */
export function answerSaid(speaker: Speaker, answer: HeapRunAnswer): readonly Saying[] {
  const { heats, peak_degC, peak_day, firstTurn_day } = answer;
  const met = heats.met === 0 ? 'none' : heats.met === heats.of ? 'all' : 'some';
  const places = {
    heats: {
      key: `wouldPage.heats.${met}`,
      places: { count: speaker.say('wouldPage.heats.count', { met: heats.met, of: heats.of }) },
    },
    peakDay: whole(peak_day.p50),
    peak: temperature(speaker, peak_degC),
    range: { ...temperature(speaker, peak_degC), asRange: true },
  } as const;
  const lost: Saying = {
    key: 'wouldPage.lost',
    places: {
      days: whole(lastOf(answer.day)),
      volume: percent(answer.volumeLost_pctVolume.p50),
      nitrogen: percent(answer.nitrogenLost_pctNitrogen.p50),
      dry: percent(answer.dryLost_pctDry.p50),
    },
  };
  const share = heats.met / heats.of;
  if (share <= 1 - SURE_share) return [{ key: 'wouldPage.cold', places }, lost];
  const turn: Saying =
    firstTurn_day === undefined
      ? { key: 'wouldPage.turn.none', places: { days: whole(lastOf(answer.day)) } }
      : { key: 'wouldPage.turn', places: { day: whole(firstTurn_day.p50) } };
  return [{ key: share >= SURE_share ? 'wouldPage.hot' : 'wouldPage.open', places: { ...places, turn } }, lost];
}

/** Where and in what air that is. */
export function hereSaid(speaker: Speaker, { air_degC, walls, cover }: Here): Saying {
  return {
    key: 'wouldPage.here',
    places: {
      air: temperature(speaker, air_degC),
      walls: speaker.say(`wouldPage.walls.${walls}`),
      cover: speaker.say(`wouldPage.cover.${cover}`),
    },
  };
}

/** How the heap with one thing otherwise differs from the heap as it stands. */
export function differenceSaid(speaker: Speaker, before: HeapRunAnswer, after: HeapRunAnswer): string {
  const more = after.heats.met - before.heats.met;
  const days = Math.round(after.hotDays_day.p50);
  const longer = days - Math.round(before.hotDays_day.p50);
  const sayDays = (count: number): string => speaker.say('wouldPage.days', { count });
  const hot: Saying = {
    key: hotKey(longer, days),
    places: { more: sayDays(longer), less: sayDays(-longer), days: sayDays(days) },
  };
  return speaker.tell({
    key: more > 0 ? 'wouldPage.differs.more' : more < 0 ? 'wouldPage.differs.fewer' : 'wouldPage.differs.same',
    places: { met: after.heats.met, of: after.heats.of, count: Math.abs(more), hot },
  });
}

function hotKey(longer: number, days: number): Saying['key'] {
  if (longer > 0) return 'wouldPage.hot.longer';
  if (longer < 0) return 'wouldPage.hot.shorter';
  return days === 0 ? 'wouldPage.hot.never' : 'wouldPage.hot.same';
}

/** What is done otherwise, as the word that is touched. */
export function changeSaid(speaker: Speaker, { id, water_L }: Change): string {
  if (water_L === undefined) return speaker.sayIf(`wouldPage.change.${id}`, id);
  return speaker.say(id === 'drier' ? 'wouldPage.change.drier' : 'wouldPage.change.wetter', {
    water: speaker.likely(water_L, 'L', 'liquid'),
  });
}

/** Where the heat, the water and the nitrogen go, and what the model is. */
export function whySaid(speaker: Speaker, answer: HeapRunAnswer): readonly Saying[] {
  const { hotDays_day, publishedNitrogenLost_pctNitrogen } = answer;
  return [
    {
      key: 'wouldPage.why.heats',
      places: {
        hot: temperature(speaker, heapLimits_degC.sanitisingDay),
        days: speaker.say('wouldPage.days', { count: Math.round(hotDays_day.p50) }),
        low: whole(hotDays_day.p10),
        high: whole(hotDays_day.p90),
      },
    },
    ...heatSaid(answer),
    {
      key: 'wouldPage.why.water',
      places: {
        steam: speaker.likely(answer.waterEvaporated_L, 'L', 'liquid'),
        run: speaker.likely(answer.waterRunOff_L, 'L', 'liquid'),
        days: whole(lastOf(answer.day)),
      },
    },
    {
      key: 'wouldPage.why.nitrogen',
      places: {
        low: whole(publishedNitrogenLost_pctNitrogen.low),
        high: whole(publishedNitrogenLost_pctNitrogen.high),
      },
    },
    { key: 'wouldPage.why.model' },
  ];
}

/** Where the heat goes; nothing is said of a heap that makes none to speak of. */
function heatSaid({ heatThroughSurface_share: surface, heatWithAir_share: air }: HeapRunAnswer): readonly Saying[] {
  if (surface === undefined || air === undefined) return [];
  const places = { surface: percent(100 * surface.p50), air: percent(100 * air.p50) };
  return [{ key: 'wouldPage.why.heat', places }];
}

/** A heap at a moment of its course, °C. */
export interface AtMoment {
  readonly at: number;
  readonly day: number;
  readonly core_degC: number;
  readonly middle_degC: number;
  readonly outside_degC: number;
  readonly range_degC: { readonly low: number; readonly high: number };
  readonly oxygen_pctVolume: number;
}

/** The moment that is nearest to a day. */
export function momentOf(answer: HeapRunAnswer, day: number): AtMoment {
  const at = answer.day.reduce(
    (best, one, i) => (Math.abs(one - day) < Math.abs((answer.day[best] ?? 0) - day) ? i : best),
    0,
  );
  const shells = answer.shells_degC[at] ?? [];
  const shell = (i: number): number => shells[i] ?? Number.NaN;
  const of = (course: Course, point: keyof Course): number => course[point][at] ?? Number.NaN;
  return {
    at,
    day,
    core_degC: shell(0),
    middle_degC: shell(Math.floor(shells.length / 2)),
    outside_degC: shell(shells.length - 1),
    range_degC: { low: of(answer.core_degC, 'p10'), high: of(answer.core_degC, 'p90') },
    oxygen_pctVolume: of(answer.coreOxygen_pctVolume, 'p50'),
  };
}

export function lastOf(values: readonly number[]): number {
  return values.at(-1) ?? Number.NaN;
}
