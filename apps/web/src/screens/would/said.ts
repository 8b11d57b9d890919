import '@loamwright/words/later';
import type { Course, Estimate, HeapRunAnswer, ToldAct } from '@loamwright/science';
import { convert, unitFor } from '@loamwright/units';
import type { Figure, Saying, Speaker } from '@loamwright/words';
import type { Change, Here } from './asked.ts';

/** A temperature to whole degrees of the reader's: a model knows no tenths. */
function wholeDegrees(speaker: Speaker, temp_degC: number): number {
  const unit = unitFor('temperature', speaker.system);
  return convert(Math.round(convert(temp_degC, 'degC', unit)), unit, 'degC');
}

/** The same as a figure of a sentence. */
export function temperature(speaker: Speaker, temp_degC: number | Estimate): Figure {
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

/** Where and in what air that is, and how warm its stuff comes. */
export function hereSaid(speaker: Speaker, { air_degC, walls, cover, coverDepth_m, start_degC }: Here): Saying {
  const isRead = air_degC === 'as-read';
  const over = speaker.say(`wouldPage.cover.${cover}`);
  return {
    key: isRead ? 'wouldPage.here.read' : 'wouldPage.here',
    places: {
      air: isRead ? speaker.say('wouldPage.here.beside') : temperature(speaker, air_degC),
      walls: speaker.say(`wouldPage.walls.${walls}`),
      cover:
        coverDepth_m === undefined
          ? over
          : speaker.say('wouldPage.here.deep', { cover: over, depth: speaker.likely(coverDepth_m, 'm', 'depth') }),
      start:
        start_degC === undefined
          ? speaker.say('wouldPage.here.asAir')
          : speaker.say('wouldPage.here.comesAt', { temp: degrees(speaker, start_degC) }),
    },
  };
}

const done = ['turn', 'water', 'add', 'stand'] as const satisfies readonly ToldAct['act'][];

/** What is done to it on the way, by kind and how often. */
export function doneSaid(speaker: Speaker, acts: readonly ToldAct[]): string {
  const counts = done.map((kind) => ({ kind, count: acts.filter(({ act }) => act === kind).length }));
  const told = counts.filter(({ count }) => count > 0);
  return speaker.say('wouldPage.done', {
    acts: speaker.list(told.map(({ kind, count }) => speaker.say(`wouldPage.done.${kind}`, { count }))),
  });
}

/** How the heap with one thing otherwise differs from the heap as it stands. */
export function differenceSaid(speaker: Speaker, before: HeapRunAnswer, after: HeapRunAnswer): string {
  const more = after.heats.met - before.heats.met;
  const days = Math.round(after.hotDays_day.p50);
  const longer = days - Math.round(before.hotDays_day.p50);
  const sayDays = (count: number): string => speaker.say('wouldPage.days', { count });
  const hot: Saying = {
    key: hotKey(longer, days),
    places: {
      more: sayDays(longer),
      less: sayDays(-longer),
      days: sayDays(days),
      low: whole(after.hotDays_day.p10),
      high: whole(after.hotDays_day.p90),
    },
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
