import { bad, type Calculation, type Cites, good, type Needs, type Outcome } from '../catalogue/index.ts';
import { inOrder } from '../caution/index.ts';
import { chance, type Estimate, summarise } from '../estimate/index.ts';
import { heapLimits_degC, mildAir_degC } from '../heap/index.ts';
import { mixCautionIds, mixSources } from '../mix/sources.ts';
import type { Member } from './ensemble.ts';
import { type AllFollowed, type Followed, followAll, SHOWN_S, USUAL_DAYS, USUAL_MEMBERS } from './heap-follow.ts';
import { isTooHigh, placesOf } from './heap-place.ts';
import {
  type Course,
  type HeapRunAnswer,
  type HeapRunNote,
  heapRunAnswerSchema,
  type PlaceFilled,
} from './heap-run-answer.ts';
import { type HeapRunInput, heapRunInputSchema } from './heap-run-input.ts';
import { LINE } from './ledger.ts';
import { publishedNitrogenLoss } from './nitrogen-loss.ts';
import { DAY_S, twinParameters } from './parameters.ts';
import { USUAL_SHELLS } from './run.ts';
import { wholeOf } from './whole.ts';

const NOTES = twinParameters.notes;

function courseOf(all: readonly Float64Array[], digits: number): Course {
  const [first] = all;
  if (first === undefined) throw new RangeError('no heap was run');
  const times = Array.from(first, (_, t) => summarise(all.map((one) => one[t] ?? Number.NaN)));
  const rounded = (value: number): number => Number(value.toFixed(digits));
  return {
    p10: times.map(({ p10 }) => rounded(p10)),
    p50: times.map(({ p50 }) => rounded(p50)),
    p90: times.map(({ p90 }) => rounded(p90)),
  };
}

const HOT_degC = heapLimits_degC.sanitisingDay;
const TURN_degC = heapLimits_degC.turning;

/** The first time a core that got hot asks for a turn: too hot, or no longer hot. */
function firstTurn_day({ core_degC, day }: Followed): number | undefined {
  let wasHot = false;
  for (let t = 0; t < core_degC.length; t++) {
    const temp_degC = core_degC[t] as number;
    if (temp_degC >= TURN_degC || (wasHot && temp_degC < HOT_degC)) return day[t];
    wasHot ||= temp_degC >= HOT_degC;
  }
  return undefined;
}

/** The heap whose highest temperature lies in the middle of all. */
function middleOf(all: readonly Followed[]): Followed {
  const sorted = [...all].sort((a, b) => Math.max(...a.core_degC) - Math.max(...b.core_degC));
  return sorted[Math.floor(sorted.length / 2)] as Followed;
}

/** The most days of shells of heaps that are run at once: a year and a bit of the usual, some seconds of reckoning. */
const MOST_SHELL_DAYS = 400 * USUAL_SHELLS * USUAL_MEMBERS;

function run(input: HeapRunInput, { draws }: Needs): Outcome<HeapRunAnswer> {
  const perMember = (input.days ?? USUAL_DAYS) * (input.shells ?? USUAL_SHELLS);
  const members = input.members ?? USUAL_MEMBERS;
  if (members * perMember > MOST_SHELL_DAYS) {
    const wanted = `<= ${Math.floor(MOST_SHELL_DAYS / perMember)}`;
    return bad({ code: 'out-of-bounds', path: 'members', found: String(members), wanted });
  }
  const late = (input.acts ?? []).findIndex(({ at_day }) => at_day > (input.days ?? USUAL_DAYS));
  if (late >= 0) {
    const found = String(input.acts?.[late]?.at_day);
    return bad({
      code: 'out-of-bounds',
      path: `acts[${late}].at_day`,
      found,
      wanted: `0 to ${input.days ?? USUAL_DAYS}`,
    });
  }
  const followed = followAll(input, draws);
  if (!followed.ok) return followed;
  return good(answerOf(followed.value, input));
}

function line(one: Followed, id: keyof typeof LINE): number {
  return one.end.ledger[LINE[id]] as number;
}

/** Where the heat went of heaps that made much of it; nothing of none. */
function heatShares(hot: readonly Followed[]): Pick<HeapRunAnswer, 'heatThroughSurface_share' | 'heatWithAir_share'> {
  if (hot.length === 0) return {};
  const share = (ids: readonly (keyof typeof LINE)[]): Estimate =>
    summarise(hot.map((one) => ids.reduce((sum, id) => sum + line(one, id), 0) / line(one, 'heatMade_J')));
  return {
    heatThroughSurface_share: share(['heatThroughSurface_J', 'heatToGround_J']),
    heatWithAir_share: share(['heatWithAir_J', 'heatTurnedOut_J']),
  };
}

/** The fullest that it is in each place it comes to lie in. */
function fillingOf(all: readonly Followed[], input: HeapRunInput): readonly PlaceFilled[] {
  const day = all[0]?.day ?? [];
  const places = placesOf(input);
  return places.flatMap(({ from_day, shape: { form } }, i) => {
    const to_day = places[i + 1]?.from_day ?? Number.POSITIVE_INFINITY;
    const isThere = (_: number, t: number): boolean => (day[t] ?? 0) >= from_day && (day[t] ?? 0) < to_day;
    if (!day.some(isThere)) return [];
    const fullest = (of: 'volume_m3' | 'height_m'): Estimate =>
      summarise(all.map((one) => Math.max(...one[of].filter(isThere))));
    return [{ from_day, form, volume_m3: fullest('volume_m3'), height_m: fullest('height_m') }];
  });
}

function answerOf({ heaps: all, cautions }: AllFollowed, input: HeapRunInput): HeapRunAnswer {
  const figure = (of: (one: Followed) => number): Estimate => summarise(all.map(of));
  const peak = (one: Followed): number => Math.max(...one.core_degC);
  const heats = chance(all.map(peak), (temp) => temp >= HOT_degC);
  const turns = all.map(firstTurn_day).filter((day) => day !== undefined);
  const wholes = new Map(all.map((one) => [one, wholeOf(one.end.state)] as const));
  const lost = (of: 'dry_kg' | 'nitrogen_kg' | 'volume_m3'): Estimate =>
    figure((one) => {
      const before = one.start[of] + one.added[of];
      // Of nothing nothing is lost.
      return before === 0 ? 0 : 100 * (1 - (wholes.get(one)?.[of] ?? Number.NaN) / before);
    });
  const nitrogenLost = lost('nitrogen_kg');
  const carbonToNitrogen = summarise(all.map(({ member: { stuff } }) => carbonToNitrogen_ratio(stuff))).p50;
  const published = publishedNitrogenLoss(carbonToNitrogen);
  const half = all.length / 2;
  const most = (holds: (one: Followed) => boolean): boolean => all.filter(holds).length > half;
  const places = fillingOf(all, input);
  const notes: HeapRunNote[] = [];
  if (2 * heats.met < heats.of) {
    notes.push('may-stay-cold');
    const isCold = all.some(({ member: { stuff } }) => stuff.temp_degC < mildAir_degC);
    if (input.start_degC === undefined && isCold) notes.push('taken-cold');
  }
  if (most(({ oxygen_pctVolume }) => Math.min(...oxygen_pctVolume) < NOTES.airless_pctVolume))
    notes.push('airless-core');
  if (most(({ moisture_pctWet }) => (moisture_pctWet.at(-1) ?? 0) < NOTES.dry_pctWet)) notes.push('dries-out');
  if (most((one) => line(one, 'waterDrained_kg') > NOTES.runsOff_L)) notes.push('runs-off');
  if (all.some((one) => peak(one) > one.member.traits.curve.hottest_degC - NOTES.nearEnd_K))
    notes.push('past-the-curve');
  if (most(({ shells_degC }) => (shells_degC.at(-1)?.[0] ?? 1) < 0)) notes.push('freezes');
  if (nitrogenLost.p50 > published.high) notes.push('loses-more-nitrogen');
  if (places.some(isTooHigh)) notes.push('stands-high');
  const middle = middleOf(all);
  return {
    day: middle.day,
    core_degC: courseOf(
      all.map((one) => one.core_degC),
      1,
    ),
    shells_degC: middle.shells_degC.map((shells) => shells.map((temp) => Number(temp.toFixed(1)))),
    coreOxygen_pctVolume: courseOf(
      all.map((one) => one.oxygen_pctVolume),
      1,
    ),
    moisture_pctWet: courseOf(
      all.map((one) => one.moisture_pctWet),
      1,
    ),
    volume_m3: courseOf(
      all.map((one) => one.volume_m3),
      3,
    ),
    places,
    heats,
    peak_degC: figure(peak),
    peak_day: figure((one) => one.day[one.core_degC.indexOf(peak(one))] as number),
    hotDays_day: figure(({ core_degC }) => core_degC.filter((temp) => temp >= HOT_degC).length * (SHOWN_S / DAY_S)),
    ...(turns.length > half ? { firstTurn_day: summarise(turns) } : {}),
    dryLost_pctDry: lost('dry_kg'),
    wetLost_pctWet: figure((one) => {
      const whole = wholes.get(one);
      const before = one.start.dry_kg + one.start.water_kg + one.added.wet_kg;
      return 100 * (1 - ((whole?.dry_kg ?? Number.NaN) + (whole?.water_kg ?? Number.NaN)) / before);
    }),
    volumeLost_pctVolume: lost('volume_m3'),
    nitrogenLost_pctNitrogen: nitrogenLost,
    publishedNitrogenLost_pctNitrogen: published,
    ...heatShares(all.filter((one) => peak(one) >= HOT_degC)),
    waterEvaporated_L: figure((one) => line(one, 'waterWithAir_kg') + line(one, 'waterTurnedOut_kg')),
    waterRunOff_L: figure((one) => line(one, 'waterDrained_kg')),
    members: all.length,
    notes,
    cautions: inOrder([...cautions, 'fire', 'ammonia', 'local-rules']),
  };
}

function carbonToNitrogen_ratio(stuff: Member['stuff']): number {
  const pools = twinParameters.pools;
  const carbon_kg =
    pools.fast.carbon_kgPerKg * stuff.fast_kg +
    pools.hemicellulose.carbon_kgPerKg * stuff.hemicellulose_kg +
    pools.cellulose.carbon_kgPerKg * stuff.cellulose_kg +
    pools.lignin.carbon_kgPerKg * stuff.lignin_kg +
    pools.inert.carbon_kgPerKg * stuff.inert_kg;
  return carbon_kg / Math.max(1e-9, stuff.organicN_kg + stuff.ammoniacalN_kg + stuff.nitrateN_kg);
}

const sources: readonly Cites[] = [
  { source: 'rosso-1995', place: 'cardinal temperature curve', mark: 'seen' },
  { source: 'haug-1993', place: 'moisture, air space and oxygen', mark: 'memory' },
  { source: 'richard-2006', place: 'oxygen at which the rate is half', mark: 'seen' },
  { source: 'ahn-2009', place: 'conductivity', mark: 'seen' },
  { source: 'poulsen-2007', place: 'permeability', mark: 'memory' },
  { source: 'cornell-oxygen-diffusion', place: 'diffusion of oxygen', mark: 'seen' },
  { source: 'emerson-1975', place: 'ammonium and ammonia', mark: 'seen' },
  { source: 'sander-2023', place: 'ammonia over water', mark: 'seen' },
  { source: 'sundberg-2005', place: 'sourness with warmth; best temperature', mark: 'seen' },
  { source: 'wsu-compost-structures', place: 'greatest height of a pile', mark: 'seen' },
  ...mixSources,
];

/** What a heap would do, from core to surface. */
export const heapRun: Calculation<HeapRunInput, HeapRunAnswer> = {
  id: 'heap-run',
  title: 'What a heap would do',
  summary:
    'Runs a physical model of the heap from core to surface, for many heaps that the mix may turn out to be: temperatures, oxygen, moisture and volume over the days, the chance that it heats, what is lost, and where the heat goes. Turning, watering, adding and covering on the way. The chance is a chance: the same bin has a cold and a hot way to be.',
  input: heapRunInputSchema,
  output: heapRunAnswerSchema,
  sources,
  cautions: mixCautionIds,
  example: {
    ingredients: [
      { material: 'goat-bedding', amount: { measure: 'barrow', count: 4 } },
      { material: 'coffee-grounds', amount: { measure: 'bucket-20l', count: 4 } },
      { material: 'grass-clippings', amount: { measure: 'barrow', count: 3 } },
      { material: 'straw', amount: { measure: 'barrow', count: 3 } },
    ],
    water_L: 40,
    shape: { form: 'box', width_m: 1.2, depth_m: 1.2, height_m: 1 },
    walls: 'pallet',
    weather: { still: { temp_degC: 12 } },
    days: 30,
    members: 16,
    acts: [{ at_day: 8, act: 'turn' }],
  },
  run,
};
