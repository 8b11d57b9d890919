import {
  daysToFollow,
  type HeapAsBuilt,
  heapAsBuilt,
  MOST_RUN_DAYS,
  standingIn,
  type TempAtDay,
} from '@loamwright/advisor';
import type { Holding } from '@loamwright/daybook';
import {
  bad,
  good,
  type HeapRunInput,
  type HeapShape,
  type NamedStanding,
  type Outcome,
  type Problem,
  type ToldAct,
  USUAL_RUN_DAYS,
} from '@loamwright/science';
import type { Saying } from '@loamwright/words';
import { allOf } from '../../blend.ts';
import { type ActOptions, type ActRead, readActs } from '../../grammar/heap-acts.ts';
import { readStanding, type StandingOptions } from '../../grammar/standing.ts';
import { namesOf } from '../../holding.ts';
import type { Session } from '../../session.ts';
import { subjectNamed } from '../../subject.ts';
import { readWeather, type WeatherOptions } from '../../weather.ts';
import { readCount, readStart, readStuff, readWater_L } from './mix.ts';
import { readShape, type ShapeOptions } from './place.ts';

export interface HeapRunOptions extends ShapeOptions, StandingOptions, WeatherOptions, ActOptions {
  readonly water?: string | undefined;
  readonly start?: string | undefined;
  readonly chopped?: boolean | undefined;
  readonly days?: string | undefined;
  readonly members?: string | undefined;
  readonly shells?: string | undefined;
  readonly size?: readonly string[] | undefined;
  readonly csv?: boolean | undefined;
}

/** What is run, and what is to be said of how it was understood. */
export interface RunAsked {
  readonly input: HeapRunInput;
  readonly kept: HeapAsBuilt | undefined;
  readonly notes: readonly Saying[];
  /** A problem of the input at what was typed. */
  readonly atOption: (problem: Problem) => Problem;
}

/** A heap by what is in it or by its name, and whatever was typed; what is typed outranks the daybook. */
export async function readAsked(
  typed: readonly string[],
  options: HeapRunOptions,
  holding: Holding,
  session: Session,
): Promise<Outcome<RunAsked>> {
  const named = typed.length === 1 && !typed[0]?.includes('=') ? typed[0] : undefined;
  const kept = named === undefined ? good(undefined) : readKept(named, holding, session);
  const stuff = named === undefined ? readMix(typed, holding, session) : good([]);
  const shape = readShape(options, holding, session);
  const standing = readStanding(options, session.speaker.system);
  const acts = readActs(options, { names: namesOf(session, holding), holding, system: session.speaker.system });
  const numbers = readNumbers(options, session);
  const days = numbers.ok ? (numbers.value.days ?? usualDays(kept.ok ? kept.value : undefined)) : USUAL_RUN_DAYS;
  const place = placeOf(shape.ok ? shape.value : undefined, kept.ok ? kept.value : undefined, holding);
  const weather = await readWeather(
    options,
    { days, ...(kept.ok && aboutAir(kept.value)), roofed: place.roofed },
    session,
  );
  if (!kept.ok || !stuff.ok || !shape.ok || !standing.ok || !acts.ok || !numbers.ok || !weather.ok)
    return bad(...allOf(kept, stuff, shape, standing, acts, numbers, weather));
  const stands = { ...place.standing, ...standing.value };
  const all = actsOf(kept.value?.acts.filter(({ at_day }) => at_day <= days) ?? [], acts.value, named ?? '');
  const ownSizes = session.settings.measures_L;
  const water_L = numbers.value.water_L ?? kept.value?.water_L;
  const input: HeapRunInput = {
    ingredients: kept.value?.ingredients ?? stuff.value,
    ...(water_L !== undefined && { water_L }),
    ...(ownSizes !== undefined && { ownSizes }),
    ...stands,
    ...(place.shape !== undefined && { shape: place.shape }),
    weather: weather.value.weather,
    ...(numbers.value.start_degC !== undefined && { start_degC: numbers.value.start_degC }),
    ...(options.chopped === true && { chopped: true }),
    days,
    acts: all.map(({ act }) => (act.act === 'add' && ownSizes !== undefined ? withSizes(act, ownSizes) : act)),
    ...(numbers.value.members !== undefined && { members: numbers.value.members }),
    ...(numbers.value.shells !== undefined && { shells: numbers.value.shells }),
  };
  return good({
    input,
    kept: kept.value,
    notes: [...(kept.value?.notes ?? []), ...weather.value.notes],
    atOption: (problem) => atOption(problem, { acts: all, shape: shape.value.path, options }),
  });
}

/** Problems: `no-such-heap`, `which-heap`, `heap-not-built`, `heap-empty`, `heap-too-old`. */
function readKept(name: string, holding: Holding, session: Session): Outcome<HeapAsBuilt> {
  const id = subjectNamed(holding, 'heap', name);
  if (!id.ok) return id;
  const heap = holding.heaps.get(id.value);
  if (heap === undefined) throw new RangeError('a heap was named');
  const found = name.slice(0, 80);
  if (heap.built === null) return bad({ code: 'heap-not-built', path: '', found, wanted: '' });
  const kept = heapAsBuilt(heap, holding, session.now().toISOString());
  if (kept === undefined) return bad({ code: 'heap-empty', path: '', found, wanted: '' });
  return daysToFollow(kept) === undefined
    ? bad({ code: 'heap-too-old', path: '', found, wanted: String(MOST_RUN_DAYS) })
    : good(kept);
}

/** Problems: `nothing-named`, `heap-or-stuff`, and those of ingredients. */
function readMix(typed: readonly string[], holding: Holding, session: Session): ReturnType<typeof readStuff> {
  if (typed.length === 0) return bad({ code: 'nothing-named', path: 'heap run', found: '', wanted: '' });
  const strange = typed.find((text) => !text.includes('='));
  if (strange !== undefined) return bad({ code: 'heap-or-stuff', path: '', found: strange.slice(0, 80), wanted: '' });
  return readStuff(typed, holding, session);
}

function usualDays(kept: HeapAsBuilt | undefined): number {
  return (kept === undefined ? undefined : daysToFollow(kept)) ?? USUAL_RUN_DAYS;
}

function aboutAir(kept: HeapAsBuilt | undefined): { readonly begun?: string; readonly air?: readonly TempAtDay[] } {
  return kept === undefined ? {} : { begun: kept.begun, air: kept.air };
}

interface PlaceFound {
  readonly shape: HeapShape | undefined;
  readonly standing: NamedStanding;
  readonly roofed: boolean;
}

/** Where it stands: as typed, else by the daybook. A bay that was named brings its walls. */
function placeOf(
  typed: { readonly shape?: HeapShape | undefined; readonly bay?: string | undefined } | undefined,
  kept: HeapAsBuilt | undefined,
  holding: Holding,
): PlaceFound {
  const bay = typed?.bay === undefined ? undefined : holding.bays.get(typed.bay);
  const stands = bay === undefined ? undefined : standingIn(bay.setUp.body);
  if (typed?.shape !== undefined) return { shape: typed.shape, standing: {}, roofed: false, ...stands };
  return { shape: kept?.shape, standing: kept?.standing ?? {}, roofed: kept?.roofed === true };
}

interface Numbers {
  readonly water_L: number | undefined;
  readonly start_degC: number | undefined;
  readonly days: number | undefined;
  readonly members: number | undefined;
  readonly shells: number | undefined;
}

function readNumbers(options: HeapRunOptions, session: Session): Outcome<Numbers> {
  const water = readWater_L(options.water, session);
  const start = readStart(options.start, session);
  const days = readCount(options.days, '--days');
  const members = readCount(options.members, '--members');
  const shells = readCount(options.shells, '--shells');
  if (!water.ok || !start.ok || !days.ok || !members.ok || !shells.ok)
    return bad(...allOf(water, start, days, members, shells));
  return good({
    water_L: water.value,
    start_degC: start.value,
    days: days.value,
    members: members.value,
    shells: shells.value,
  });
}

/** What the daybook has and what was typed, in the order of days, so that a problem is told where it was typed. */
function actsOf(kept: readonly ToldAct[], typed: readonly ActRead[], name: string): readonly ActRead[] {
  const known = kept.map((act): ActRead => ({ act, path: name }));
  return [...known, ...typed].sort((a, b) => a.act.at_day - b.act.at_day);
}

type Adding = Extract<ToldAct, { readonly act: 'add' }>;

function withSizes(act: Adding, ownSizes: NonNullable<HeapRunInput['ownSizes']>): Adding {
  return { ...act, mix: { ...act.mix, ownSizes } };
}

const optionOf: Readonly<Record<string, string>> = {
  water_L: '--water',
  days: '--days',
  members: '--members',
  shells: '--shells',
  rain_mmPerDay: '--rain',
  wind_mPerS: '--wind',
  humidity_share: '--humidity',
  warmest_degC: '--climate',
  coldest_degC: '--climate',
  above_degC: '--above',
};

interface Typed {
  readonly acts: readonly ActRead[];
  readonly shape: string;
  readonly options: WeatherOptions;
}

/** A problem of the input at the option that was typed. */
export function atOption(problem: Problem, { acts, shape, options }: Typed): Problem {
  const { path } = problem;
  const act = /^acts\[(\d+)\]/u.exec(path);
  if (act !== null) return { ...problem, path: acts[Number(act[1])]?.path ?? '--turn' };
  if (path.startsWith('shape')) return { ...problem, path: shape };
  if (path.startsWith('weather.readings')) return { ...problem, path: options.weather ?? '--weather' };
  if (path.startsWith('weather.still.temp')) return { ...problem, path: '--air' };
  const last = path.slice(path.lastIndexOf('.') + 1);
  return { ...problem, path: optionOf[last] ?? path };
}
