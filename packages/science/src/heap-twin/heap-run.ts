import { z } from 'zod';
import { bad, type Calculation, type Cites, good, type Needs, type Outcome } from '../catalogue/index.ts';
import { type CautionId, inOrder } from '../caution/index.ts';
import {
  type Chance,
  chance,
  chanceSchema,
  type Draws,
  type Estimate,
  estimateSchema,
  summarise,
} from '../estimate/index.ts';
import { heapLimits_degC } from '../heap/index.ts';
import { weighMix } from '../mix/mix-input.ts';
import { mixSources } from '../mix/sources.ts';
import { type Member, membersOf } from './ensemble.ts';
import { type HeapRunInput, heapRunInputSchema, type ToldAct } from './heap-run-input.ts';
import { LINE } from './ledger.ts';
import { publishedNitrogenLoss } from './nitrogen-loss.ts';
import { DAY_S, HOUR_S, twinParameters } from './parameters.ts';
import { type HeapAct, type HeapRun, type Moment, runHeap, USUAL_PACE, USUAL_SHELLS } from './run.ts';
import type { HeapShape } from './shape.ts';
import { standingOf } from './standings.ts';
import { shellTemperature_degC } from './state.ts';
import { noWeather } from './surroundings.ts';
import { weatherOf } from './weather-input.ts';
import { wholeOf } from './whole.ts';

/** What to bear in mind of a run; the message `twin.note.ID`. */
export const heapRunNotes = [
  'may-stay-cold',
  'airless-core',
  'dries-out',
  'runs-off',
  'past-the-curve',
  'freezes',
  'loses-more-nitrogen',
] as const;
export type HeapRunNote = (typeof heapRunNotes)[number];

/** A line over time with its range. */
export interface Course {
  readonly p10: readonly number[];
  readonly p50: readonly number[];
  readonly p90: readonly number[];
}

/** What a heap would do. */
export interface HeapRunAnswer {
  /** Days after it was built, for every course. */
  readonly day: readonly number[];
  readonly core_degC: Course;
  /** Of the middle heap: each shell's temperature from the core outwards, at each time. */
  readonly shells_degC: readonly (readonly number[])[];
  readonly coreOxygen_pctVolume: Course;
  readonly moisture_pctWet: Course;
  readonly volume_m3: Course;
  /** In how many heaps the core comes to the temperature of a sanitising day. */
  readonly heats: Chance;
  readonly peak_degC: Estimate;
  readonly peak_day: Estimate;
  /** Days on which the core is at or above the temperature of a sanitising day. */
  readonly hotDays_day: Estimate;
  /** Of those heaps that heat: day on which the core first asks for a turn, by heat or by falling. */
  readonly firstTurn_day?: Estimate | undefined;
  readonly dryLost_pctDry: Estimate;
  readonly wetLost_pctWet: Estimate;
  readonly volumeLost_pctVolume: Estimate;
  readonly nitrogenLost_pctNitrogen: Estimate;
  /** What has been published of mixes of like C:N. */
  readonly publishedNitrogenLost_pctNitrogen: { readonly low: number; readonly high: number };
  /** Of those heaps that heat: where the heat goes that is made, as shares of it; the rest is still in the heap. */
  readonly heatThroughSurface_share?: Estimate | undefined;
  readonly heatWithAir_share?: Estimate | undefined;
  readonly waterEvaporated_L: Estimate;
  readonly waterRunOff_L: Estimate;
  readonly members: number;
  readonly notes: readonly HeapRunNote[];
  readonly cautions: readonly CautionId[];
}

const course: z.ZodType<Course> = z.strictObject({
  p10: z.array(z.number()),
  p50: z.array(z.number()),
  p90: z.array(z.number()),
});

const output: z.ZodType<HeapRunAnswer> = z.strictObject({
  day: z.array(z.number()),
  core_degC: course,
  shells_degC: z.array(z.array(z.number())),
  coreOxygen_pctVolume: course,
  moisture_pctWet: course,
  volume_m3: course,
  heats: chanceSchema,
  peak_degC: estimateSchema('Highest of the core, °C.'),
  peak_day: estimateSchema('Day on which it is highest.'),
  hotDays_day: estimateSchema('Days at or above 55 °C in the core.'),
  firstTurn_day: estimateSchema('Day on which the core first asks for a turn, where it heats.').optional(),
  dryLost_pctDry: estimateSchema('Dry matter lost, %.'),
  wetLost_pctWet: estimateSchema('Wet mass lost, %.'),
  volumeLost_pctVolume: estimateSchema('Volume lost, %.'),
  nitrogenLost_pctNitrogen: estimateSchema('Nitrogen lost, %.'),
  publishedNitrogenLost_pctNitrogen: z.strictObject({ low: z.number(), high: z.number() }),
  heatThroughSurface_share: estimateSchema(
    'Share of the heat that leaves through surface and ground, where it heats.',
  ).optional(),
  heatWithAir_share: estimateSchema('Share of the heat that leaves with air and vapour, where it heats.').optional(),
  waterEvaporated_L: estimateSchema('Water that leaves with the air, litres.'),
  waterRunOff_L: estimateSchema('Water that runs off below, litres.'),
  members: z.int(),
  notes: z.array(z.enum(heapRunNotes)),
  cautions: z.array(z.enum(['fire', 'ammonia', 'local-rules'])),
});

const USUAL_DAYS = 60;
const USUAL_MEMBERS = 64;
const SHOWN_S = 6 * HOUR_S;
/** A heap of no given form stands as a dome, so high for its width. */
const DOME: HeapShape = { form: 'dome', diameter_m: 1.6, height_m: 1 };

/** What one heap did. */
interface Followed {
  readonly core_degC: Float64Array;
  readonly shells_degC: readonly (readonly number[])[];
  readonly oxygen_pctVolume: Float64Array;
  readonly moisture_pctWet: Float64Array;
  readonly volume_m3: Float64Array;
  readonly day: readonly number[];
  readonly end: Moment;
  readonly member: Member;
  readonly start: ReturnType<typeof wholeOf>;
  readonly added: Readonly<Added>;
}

function follow(member: Member, run: HeapRun): Followed {
  const core: number[] = [];
  const shells: number[][] = [];
  const oxygen: number[] = [];
  const moisture: number[] = [];
  const volume: number[] = [];
  const day: number[] = [];
  let start: ReturnType<typeof wholeOf> | undefined;
  const end = runHeap(run, SHOWN_S, ({ state, time_day }) => {
    const whole = wholeOf(state);
    start ??= whole;
    day.push(time_day);
    core.push(shellTemperature_degC(state, 0));
    shells.push(Array.from({ length: state.shells }, (_, i) => shellTemperature_degC(state, i)));
    oxygen.push(100 * VOLUME_PER_MASS * (state.oxygen_kgPerKg[0] as number));
    moisture.push((100 * whole.water_kg) / (whole.water_kg + whole.dry_kg));
    volume.push(whole.volume_m3);
  });
  const added = addedBy(run.acts);
  return {
    core_degC: Float64Array.from(core),
    shells_degC: shells,
    oxygen_pctVolume: Float64Array.from(oxygen),
    moisture_pctWet: Float64Array.from(moisture),
    volume_m3: Float64Array.from(volume),
    day,
    end,
    member,
    start: start as ReturnType<typeof wholeOf>,
    added,
  };
}

interface Added {
  wet_kg: number;
  dry_kg: number;
  nitrogen_kg: number;
  volume_m3: number;
}

/** What the acts of a run put on the heap. */
function addedBy(acts: readonly HeapAct[]): Readonly<Added> {
  const added: Added = { wet_kg: 0, dry_kg: 0, nitrogen_kg: 0, volume_m3: 0 };
  for (const act of acts) {
    if (act.act === 'water') added.wet_kg += act.water_L;
    if (act.act !== 'add') continue;
    const dry_kg = stuffDry_kg(act.stuff);
    added.wet_kg += dry_kg + act.stuff.water_kg;
    added.dry_kg += dry_kg;
    added.nitrogen_kg += act.stuff.organicN_kg + act.stuff.ammoniacalN_kg + act.stuff.nitrateN_kg;
    added.volume_m3 += act.stuff.volume_m3;
  }
  return added;
}

/** Molar masses of air and oxygen: a kilogram in a kilogram of dry gas, as a share of its volume. */
const VOLUME_PER_MASS = 28.97 / 31.998;

function stuffDry_kg(stuff: Member['stuff']): number {
  return (
    stuff.fast_kg +
    stuff.hemicellulose_kg +
    stuff.cellulose_kg +
    stuff.lignin_kg +
    stuff.inert_kg +
    stuff.ash_kg +
    stuff.char_kg
  );
}

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

/** Runs every member of a heap. The problems of an added mix come back with its place. */
function followAll(input: HeapRunInput, draws: Draws): Outcome<readonly Followed[]> {
  const count = input.members ?? USUAL_MEMBERS;
  const weatherAt = weatherOf(input.weather);
  const now = noWeather();
  weatherAt(0, now);
  const start_degC = input.start_degC ?? now.temp_degC;
  const mix = weighMix(input, draws);
  if (!mix.ok) return mix;
  const members = membersOf(mix.value, draws, { count, temp_degC: start_degC, chopped: input.chopped });
  const acts = readActs(input.acts ?? [], draws, members.length, weatherAt);
  if (!acts.ok) return acts;
  return good(
    members.map((member, i) =>
      follow(member, {
        shape: input.shape ?? DOME,
        stuff: member.stuff,
        traits: member.traits,
        standing: standingOf(input),
        weatherAt,
        acts: acts.value.map((of) => of(i)),
        days: input.days ?? USUAL_DAYS,
        shellCount: input.shells ?? USUAL_SHELLS,
        pace: USUAL_PACE,
      }),
    ),
  );
}

function readActs(
  told: readonly ToldAct[],
  draws: Draws,
  count: number,
  weatherAt: HeapRun['weatherAt'],
): Outcome<readonly ((member: number) => HeapAct)[]> {
  const acts: ((member: number) => HeapAct)[] = [];
  for (const [place, one] of told.entries()) {
    const { at_day } = one;
    switch (one.act) {
      case 'turn':
        acts.push(() => ({ at_day, act: 'turn', care: one.care ?? 'thorough', insideOut: one.insideOut ?? true }));
        break;
      case 'water':
        acts.push(() => ({ at_day, act: 'water', water_L: one.water_L, where: one.where ?? 'through' }));
        break;
      case 'stand':
        acts.push(() => ({ at_day, act: 'stand', standing: standingOf(one) }));
        break;
      case 'add': {
        const mix = weighMix(one.mix, draws, `acts[${place}].mix.ingredients`);
        if (!mix.ok) return mix;
        const then = noWeather();
        weatherAt(at_day * DAY_S, then);
        const stuffs = membersOf(mix.value, draws, { count, temp_degC: then.temp_degC }).map(({ stuff }) => stuff);
        acts.push((member) => ({
          at_day,
          act: 'add',
          stuff: stuffs[member] as Member['stuff'],
          mixed: one.mixed ?? false,
        }));
        break;
      }
    }
  }
  return good(acts);
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
  return good(answerOf(followed.value));
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

function answerOf(all: readonly Followed[]): HeapRunAnswer {
  const figure = (of: (one: Followed) => number): Estimate => summarise(all.map(of));
  const peak = (one: Followed): number => Math.max(...one.core_degC);
  const heats = chance(all.map(peak), (temp) => temp >= HOT_degC);
  const turns = all.map(firstTurn_day).filter((day) => day !== undefined);
  const wholes = new Map(all.map((one) => [one, wholeOf(one.end.state)] as const));
  const lost = (of: 'dry_kg' | 'nitrogen_kg' | 'volume_m3'): Estimate =>
    figure((one) => {
      const before = one.start[of] + one.added[of];
      return 100 * (1 - (wholes.get(one)?.[of] ?? Number.NaN) / before);
    });
  const nitrogenLost = lost('nitrogen_kg');
  const carbonToNitrogen = summarise(all.map(({ member: { stuff } }) => carbonToNitrogen_ratio(stuff))).p50;
  const published = publishedNitrogenLoss(carbonToNitrogen);
  const half = all.length / 2;
  const most = (holds: (one: Followed) => boolean): boolean => all.filter(holds).length > half;
  const notes: HeapRunNote[] = [];
  if (2 * heats.met < heats.of) notes.push('may-stay-cold');
  if (most(({ oxygen_pctVolume }) => Math.min(...oxygen_pctVolume) < AIRLESS_pct)) notes.push('airless-core');
  if (most(({ moisture_pctWet }) => (moisture_pctWet.at(-1) ?? 0) < DRY_pctWet)) notes.push('dries-out');
  if (most((one) => line(one, 'waterDrained_kg') > RUNS_OFF_kg)) notes.push('runs-off');
  if (all.some((one) => peak(one) > one.member.traits.curve.hottest_degC - NEAR_END_K)) notes.push('past-the-curve');
  if (most(({ shells_degC }) => (shells_degC.at(-1)?.[0] ?? 1) < 0)) notes.push('freezes');
  if (nitrogenLost.p50 > published.high) notes.push('loses-more-nitrogen');
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
    cautions: inOrder(['fire', 'ammonia', 'local-rules']),
  };
}

/** Below so much oxygen in the core growers smell it: 5 % by the handbook. */
const AIRLESS_pct = 5;
const DRY_pctWet = 35;
/** More than a watering can of it is worth saying. */
const RUNS_OFF_kg = 10;
/** Nearer than this to where the curve ends, a hotter reading is none that the model can explain. */
const NEAR_END_K = 2;

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
  ...mixSources,
];

/** What a heap would do, from core to surface. */
export const heapRun: Calculation<HeapRunInput, HeapRunAnswer> = {
  id: 'heap-run',
  title: 'What a heap would do',
  summary:
    'Runs a physical model of the heap from core to surface, for many heaps that the mix may turn out to be: temperatures, oxygen, moisture and volume over the days, the chance that it heats, what is lost, and where the heat goes. Turning, watering, adding and covering on the way. The chance is a chance: the same bin has a cold and a hot way to be.',
  input: heapRunInputSchema,
  output,
  sources,
  cautions: ['fire', 'ammonia', 'local-rules'],
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
