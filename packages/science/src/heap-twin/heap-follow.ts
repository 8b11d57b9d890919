import { bad, good, type Outcome } from '../catalogue/index.ts';
import type { CautionId } from '../caution/index.ts';
import type { Draws } from '../estimate/index.ts';
import { weighMix } from '../mix/mix-input.ts';
import { CannotFollow } from './advance.ts';
import { OXYGEN_VOLUME_PER_MASS } from './constants.ts';
import { type Member, membersOf } from './ensemble.ts';
import type { HeapRunInput, ToldAct } from './heap-run-input.ts';
import { DAY_S, HOUR_S } from './parameters.ts';
import { type HeapAct, type HeapRun, type Moment, runHeap, USUAL_PACE, USUAL_SHELLS } from './run.ts';
import type { HeapShape } from './shape.ts';
import { type NamedStanding, standingOf } from './standings.ts';
import { shellTemperature_degC } from './state.ts';
import { noWeather } from './surroundings.ts';
import { weatherOf } from './weather-input.ts';
import { wholeOf } from './whole.ts';

/** How long a heap is followed, and as how many heaps, where nothing is said. */
export const USUAL_DAYS = 60;
export const USUAL_MEMBERS = 64;
/** So often it is looked at. */
export const SHOWN_S: number = 6 * HOUR_S;
/** A heap of no given form stands as a dome, so high for its width. */
export const USUAL_DOME: Extract<HeapShape, { readonly form: 'dome' }> = { form: 'dome', diameter_m: 1.6, height_m: 1 };

/** What every heap that it may be did, and what all its stuff asks care of. */
export interface AllFollowed {
  readonly heaps: readonly Followed[];
  readonly cautions: readonly CautionId[];
}

/** What one heap did. */
export interface Followed {
  readonly core_degC: Float64Array;
  readonly shells_degC: readonly (readonly number[])[];
  readonly oxygen_pctVolume: Float64Array;
  readonly moisture_pctWet: Float64Array;
  readonly volume_m3: Float64Array;
  readonly height_m: Float64Array;
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
  const height: number[] = [];
  const day: number[] = [];
  let start: ReturnType<typeof wholeOf> | undefined;
  const end = runHeap(run, SHOWN_S, ({ state, shells: { outline }, time_day }) => {
    const whole = wholeOf(state);
    start ??= whole;
    day.push(time_day);
    core.push(shellTemperature_degC(state, 0));
    shells.push(Array.from({ length: state.shells }, (_, i) => shellTemperature_degC(state, i)));
    oxygen.push(100 * OXYGEN_VOLUME_PER_MASS * (state.oxygen_kgPerKg[0] as number));
    moisture.push((100 * whole.water_kg) / (whole.water_kg + whole.dry_kg));
    volume.push(whole.volume_m3);
    // Settling takes of the height.
    height.push((outline.height_m * whole.volume_m3) / outline.volume_m3);
  });
  const added = addedBy(run.acts);
  return {
    core_degC: Float64Array.from(core),
    shells_degC: shells,
    oxygen_pctVolume: Float64Array.from(oxygen),
    moisture_pctWet: Float64Array.from(moisture),
    volume_m3: Float64Array.from(volume),
    height_m: Float64Array.from(height),
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

/** What a run comes to. Problem: `cannot-be-followed`, where no step can follow a heap. */
export function sureToEnd<Found>(run: () => Found): Outcome<Found> {
  try {
    return good(run());
  } catch (error) {
    if (!(error instanceof CannotFollow)) throw error;
    return bad({ code: 'cannot-be-followed', path: 'ingredients', found: '', wanted: '' });
  }
}

/** Runs every member of a heap. The problems of an added mix come back with its place. */
export function followAll(input: HeapRunInput, draws: Draws): Outcome<AllFollowed> {
  const count = input.members ?? USUAL_MEMBERS;
  const weatherAt = weatherOf(input.weather);
  const now = noWeather();
  weatherAt(0, now);
  const start_degC = input.start_degC ?? now.temp_degC;
  const mix = weighMix(input, draws);
  if (!mix.ok) return mix;
  const members = membersOf(mix.value, draws, { count, temp_degC: start_degC, chopped: input.chopped });
  const acts = readActs(input, draws, members.length, weatherAt);
  if (!acts.ok) return acts;
  const followed = sureToEnd(() =>
    members.map((member, i) =>
      follow(member, {
        shape: input.shape ?? USUAL_DOME,
        stuff: member.stuff,
        traits: member.traits,
        standing: standingOf(input),
        weatherAt,
        acts: acts.value.acts.map((of) => of(i)),
        days: input.days ?? USUAL_DAYS,
        shellCount: input.shells ?? USUAL_SHELLS,
        pace: USUAL_PACE,
      }),
    ),
  );
  if (!followed.ok) return followed;
  return good({
    heaps: followed.value,
    cautions: [...mix.value.ingredients.flatMap(({ cautions }) => cautions), ...acts.value.cautions],
  });
}

/** The acts of each member, and what the stuff that is added asks care of. */
interface ActsRead {
  readonly acts: readonly ((member: number) => HeapAct)[];
  readonly cautions: readonly CautionId[];
}

function readActs(
  { acts: told = [], cover, coverDepth_m, walls, shelter }: HeapRunInput,
  draws: Draws,
  count: number,
  weatherAt: HeapRun['weatherAt'],
): Outcome<ActsRead> {
  const acts: ((member: number) => HeapAct)[] = [];
  const cautions: CautionId[] = [];
  const standings = standingsAfter(told, { cover, coverDepth_m, walls, shelter });
  for (const [place, one] of told.entries()) {
    const { at_day } = one;
    switch (one.act) {
      case 'turn':
        acts.push(() => ({
          at_day,
          act: 'turn',
          care: one.care ?? 'thorough',
          insideOut: one.insideOut ?? true,
          into: one.into,
        }));
        break;
      case 'water':
        acts.push(() => ({ at_day, act: 'water', water_L: one.water_L, where: one.where ?? 'through' }));
        break;
      case 'stand':
        acts.push(() => ({ at_day, act: 'stand', standing: standingOf(standings.get(one) ?? one) }));
        break;
      case 'add': {
        const mix = weighMix(one.mix, draws, `acts[${place}].mix.ingredients`);
        if (!mix.ok) return mix;
        cautions.push(...mix.value.ingredients.flatMap((ingredient) => ingredient.cautions));
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
  return good({ acts, cautions });
}

/** How the heap stands from each change on: what a change leaves out stays as it was. */
function standingsAfter(told: readonly ToldAct[], start: NamedStanding): ReadonlyMap<ToldAct, NamedStanding> {
  const standings = new Map<ToldAct, NamedStanding>();
  let now = start;
  for (const act of told.toSorted((a, b) => a.at_day - b.at_day)) {
    if (act.act !== 'stand') continue;
    const { cover = now.cover, walls = now.walls, shelter = now.shelter } = act;
    // Another cover lies as deep as it is said to, not as the last one did.
    const coverDepth_m = act.coverDepth_m ?? (act.cover === undefined ? now.coverDepth_m : undefined);
    now = { cover, coverDepth_m, walls, shelter };
    standings.set(act, now);
  }
  return standings;
}
