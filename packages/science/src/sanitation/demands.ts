import { type Day, daysBetween } from '../calendar/index.ts';
import { type Citation, cited } from '../catalogue/index.ts';
import { likely } from '../estimate/index.ts';
import { daysLogged, type HeatRun, heatRun, isHot, type LoggedDay } from './heat-days.ts';
import type { SanitationLog } from './log.ts';
import type { Door, RuleSet } from './parameters.ts';
import type { Demand, DemandId, Verdict, WhyId } from './verdict.ts';

type More = Pick<Demand, 'have' | 'want' | 'at_degC'>;

export function demand(
  id: DemandId,
  [verdict, why]: readonly [Verdict, WhyId],
  citation: Citation,
  more: More = {},
): Demand {
  return { demand: id, verdict, why, ...more, ...cited(citation) };
}

/** How one door's days stand. */
export interface DoorStand {
  readonly door: Door;
  readonly run: HeatRun;
  readonly demand: Demand;
}

const order: readonly Verdict[] = ['met', 'cannot-be-shown', 'not-yet', 'not-meant'];

/** The door of a rule that comes nearest: the best verdict, then the least that is missing. */
export function nearestDoor(rule: RuleSet, log: SanitationLog): DoorStand {
  const logged = daysLogged(log, 'inside');
  const stands = rule.doors.map((door) => standOf(door, logged, rule));
  const [best] = stands.sort(
    (a, b) =>
      order.indexOf(a.demand.verdict) - order.indexOf(b.demand.verdict) ||
      a.door.days - countOf(a) - (b.door.days - countOf(b)),
  );
  if (best === undefined) throw new RangeError(`${rule.id} has no door`);
  return best;
}

function countOf({ door, run }: DoorStand): number {
  return door.run === 'apart' || door.run === 'unsaid' ? run.days.length : run.longest;
}

function standOf(door: Door, logged: readonly LoggedDay[], rule: RuleSet): DoorStand {
  const run = heatRun(logged, door);
  const stand = (judged: readonly [Verdict, WhyId], have: number): DoorStand => ({
    door,
    run,
    demand: demand('days', judged, rule, { have, want: door.days, at_degC: door.least_degC }),
  });
  if (logged.length === 0) return stand(['cannot-be-shown', 'nothing-logged'], 0);
  if (run.longest >= door.days) return stand(['met', 'as-asked'], run.longest);
  const sum = run.days.length;
  if (door.run === 'apart') {
    if (sum >= door.days) return stand(['met', 'as-asked'], sum);
    return stand(run.daysFilled >= door.days ? ['cannot-be-shown', 'days-unrecorded'] : ['not-yet', 'too-few'], sum);
  }
  if (sum >= door.days && door.run === 'unsaid') return stand(['met', 'apart-unsaid'], sum);
  if (run.longestFilled >= door.days) return stand(['cannot-be-shown', 'days-unrecorded'], run.longest);
  if (sum >= door.days && door.run === 'maintained') return stand(['cannot-be-shown', 'broken'], run.longest);
  const counted = door.run === 'unsaid' ? sum : run.longest;
  return stand(['not-yet', door.run === 'together' && sum >= door.days ? 'broken' : 'too-few'], counted);
}

/** Turnings: on a day at heat, between the first and the last day at heat, or whenever. */
export function turnsDemand(rule: RuleSet, { door, run }: DoorStand, log: SanitationLog): readonly Demand[] {
  const { turns } = rule;
  if (turns === undefined) return [];
  const logged = new Map(daysLogged(log, 'inside').map((one) => [one.day, one]));
  const [first] = run.days;
  const last = run.days.at(-1);
  const counts = (day: Day): boolean => {
    if (log.lastRaw_day !== undefined && day <= log.lastRaw_day) return false;
    if (turns.when === 'any') return true;
    if (turns.when === 'within') return first !== undefined && last !== undefined && day >= first && day <= last;
    const read = logged.get(day);
    return read !== undefined && isHot(read, door);
  };
  const counted = spaced([...new Set(log.turned)].sort().filter(counts), turns.apart_days ?? 1);
  const judged: readonly [Verdict, WhyId] =
    counted.length >= turns.count ? ['met', 'as-asked'] : ['not-yet', 'too-few-turns'];
  return [demand('turns', judged, turns, { have: counted.length, want: turns.count })];
}

/** Days of which each lies so far from the one before. */
function spaced(days: readonly Day[], apart_days: number): readonly Day[] {
  const kept: Day[] = [];
  for (const day of days) {
    const last = kept.at(-1);
    if (last === undefined || daysBetween(last, day) >= apart_days) kept.push(day);
  }
  return kept;
}

/** C:N of the mix as built: nothing can be done about it later. */
export function ratioDemand(
  { carbonToNitrogen: asked }: RuleSet,
  { carbonToNitrogen }: SanitationLog,
): readonly Demand[] {
  if (asked === undefined) return [];
  if (carbonToNitrogen === undefined) return [demand('ratio', ['cannot-be-shown', 'not-recorded'], asked)];
  const have = likely(carbonToNitrogen);
  const inside = have >= asked.low && have <= asked.high;
  return [
    demand('ratio', inside ? ['met', 'as-asked'] : ['not-yet', 'outside'], asked, {
      have,
      want: have < asked.low ? asked.low : asked.high,
    }),
  ];
}

/** Whether all of it came into the heat: seen to, or the outside read and hot as long as is asked. */
export function allMaterialDemand(rule: RuleSet, { door }: DoorStand, log: SanitationLog): readonly Demand[] {
  const { allMaterial } = rule;
  if (allMaterial === undefined) return [];
  const outside = daysLogged(log, 'outside');
  // Edges that were read go before what is said.
  if (outside.length === 0) {
    const seenTo = log.allMaterial === true;
    return [demand('all-material', seenTo ? ['met', 'as-asked'] : ['cannot-be-shown', 'edges-unread'], allMaterial)];
  }
  const { longest } = heatRun(outside, door);
  return [
    demand('all-material', longest >= door.days ? ['met', 'as-asked'] : ['not-yet', 'edges-cold'], allMaterial, {
      have: longest,
      want: door.days,
    }),
  ];
}

export function moistureDemand({ moisture: asked }: RuleSet, { moisture_pctWet }: SanitationLog): readonly Demand[] {
  if (asked === undefined) return [];
  if (moisture_pctWet === undefined) return [demand('moisture', ['cannot-be-shown', 'not-recorded'], asked)];
  const have = likely(moisture_pctWet);
  const wet: readonly [Verdict, WhyId] = have >= asked.least_pctWet ? ['met', 'as-asked'] : ['not-yet', 'too-dry'];
  return [demand('moisture', wet, asked, { have, want: asked.least_pctWet })];
}

/** Weeks from the building, or from the first reading, to the last. */
export function weeksDemand({ weeks: asked }: RuleSet, log: SanitationLog): readonly Demand[] {
  if (asked === undefined) return [];
  const logged = daysLogged(log, 'inside');
  const first = log.lastRaw_day ?? log.begun_day ?? logged[0]?.day;
  const last = logged.at(-1)?.day;
  if (first === undefined || last === undefined) return [demand('weeks', ['cannot-be-shown', 'not-recorded'], asked)];
  const have = Math.floor(daysBetween(first, last) / 7);
  const long: readonly [Verdict, WhyId] = have >= asked.least ? ['met', 'as-asked'] : ['not-yet', 'too-soon'];
  return [demand('weeks', long, asked, { have, want: asked.least })];
}

/** A few hours of greater heat, whose length must have been written down. */
export function peakDemand({ peak: asked }: RuleSet, log: SanitationLog): readonly Demand[] {
  if (asked === undefined) return [];
  const above = log.readings.filter(
    ({ temp_degC, day }) =>
      (asked.orMore === true ? temp_degC >= asked.above_degC : temp_degC > asked.above_degC) &&
      (log.lastRaw_day === undefined || day > log.lastRaw_day),
  );
  const held_h = Math.max(0, ...above.map(({ held_h: hours = 0 }) => hours));
  const more = { have: held_h, want: asked.hours, at_degC: asked.above_degC };
  if (held_h >= asked.hours) return [demand('peak', ['met', 'as-asked'], asked, more)];
  if (above.some(({ held_h: hours }) => hours === undefined) || log.readings.length === 0)
    return [demand('peak', ['cannot-be-shown', 'not-recorded'], asked, more)];
  return [demand('peak', ['not-yet', 'too-few'], asked, more)];
}

/** Cured below a temperature, until it is as warm as the air. */
export function curingDemand({ curing: asked }: RuleSet, { curing }: SanitationLog): readonly Demand[] {
  if (asked === undefined) return [];
  const say = (judged: readonly [Verdict, WhyId]): readonly Demand[] => [demand('curing', judged, asked)];
  if (curing === undefined) return say(['not-yet', 'cure-first']);
  if (curing.warmest_degC !== undefined && curing.warmest_degC >= asked.below_degC)
    return say(['not-yet', 'still-warm']);
  if (curing.asWarmAsAir === false) return say(['not-yet', 'still-warm']);
  if (curing.asWarmAsAir === undefined) return say(['cannot-be-shown', 'not-recorded']);
  return say(['met', 'as-asked']);
}
