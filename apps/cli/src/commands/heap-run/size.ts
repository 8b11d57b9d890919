import { heapSizeReport } from '@loamwright/advisor';
import {
  bad,
  check,
  createDraws,
  good,
  type HeapSize,
  type HeapSizeInput,
  heapSize,
  type Outcome,
} from '@loamwright/science';
import type { Saying } from '@loamwright/words';
import type { Answer } from '../../answer.ts';
import { allOf } from '../../blend.ts';
import { readStanding, type StandingOptions } from '../../grammar/standing.ts';
import type { Session } from '../../session.ts';
import { openWithSizes } from '../../sizes.ts';
import { page } from '../../text.ts';
import { readWeather, type WeatherOptions } from '../../weather.ts';
import { cautionText } from '../heap.ts';
import { atOption } from './asked.ts';
import { readCount, readDegrees, readStart, readStuff, readWater_L } from './mix.ts';

export interface HeapSizeOptions extends StandingOptions, WeatherOptions {
  readonly water?: string | undefined;
  readonly start?: string | undefined;
  readonly above?: string | undefined;
  readonly days?: string | undefined;
  readonly size?: readonly string[] | undefined;
}

/** The calculation's own, where nothing is said. */
const USUAL = { above_degC: 55, days: 3, followed_days: 14 } as const;
/** Enough in one of four, in half and in three of four of the heaps it may be. */
const [SMALL_share, LIKELY_share, LARGE_share] = [0.25, 0.5, 0.75];

/** `loamwright heap size`: the smallest heap of a mix that gets and stays hot here. */
export async function sizeOfHeap(
  typed: readonly string[],
  options: HeapSizeOptions,
  before: Session,
): Promise<Outcome<Answer>> {
  const opened = await openWithSizes(options, before);
  if (!opened.ok) return opened;
  const { holding, session } = opened.value;
  if (typed.length === 0) return bad({ code: 'nothing-named', path: 'heap size', found: '', wanted: '' });
  const stuff = readStuff(typed, holding, session);
  const water = readWater_L(options.water, session);
  const start = readStart(options.start, session);
  const above = readDegrees(options.above, '--above', session);
  const days = readCount(options.days, '--days');
  const standing = readStanding(options, session.speaker.system);
  const weather = await readWeather(options, { days: USUAL.followed_days }, session);
  if (!stuff.ok || !water.ok || !start.ok || !above.ok || !days.ok || !standing.ok || !weather.ok)
    return bad(...allOf(stuff, water, start, above, days, standing, weather));
  const ownSizes = session.settings.measures_L;
  const input: HeapSizeInput = {
    ingredients: stuff.value,
    ...(water.value !== undefined && { water_L: water.value }),
    ...(ownSizes !== undefined && { ownSizes }),
    ...standing.value,
    weather: weather.value.weather,
    ...(start.value !== undefined && { start_degC: start.value }),
    ...(above.value !== undefined && { above_degC: above.value }),
    ...(days.value !== undefined && { days: days.value }),
  };
  const atTyped = (problem: Parameters<typeof atOption>[0]) => atOption(problem, { acts: [], shape: '', options });
  const checked = check(heapSize.input, input);
  if (!checked.ok) return bad(...checked.problems.map(atTyped));
  const of = (enough_share: number): Outcome<HeapSize> =>
    heapSize.run({ ...checked.value, enough_share }, { draws: createDraws() });
  const likely = of(LIKELY_share);
  if (!likely.ok) return bad(...likely.problems.map(atTyped));
  const small = of(SMALL_share);
  const large = of(LARGE_share);
  if (!small.ok || !large.ok) return bad(...allOf(small, large).map(atTyped));
  const found = { likely: likely.value, small: small.value, large: large.value };
  const told = {
    ...USUAL,
    ...(above.value !== undefined && { above_degC: above.value }),
    days: days.value ?? USUAL.days,
  };
  const report = heapSizeReport(found, told);
  const { speaker, terminal } = session;
  const lines = (sayings: readonly Saying[]): string =>
    page(terminal.columns, ...sayings.map((said): [string] => [speaker.tell(said)]));
  const blocks = [
    lines([report.answer]),
    lines(report.reasons),
    lines([...weather.value.notes, ...report.notes]),
    cautionText(report.cautions, speaker, terminal.columns),
  ];
  return good({ value: { input, ...found }, text: blocks.filter((block) => block !== '').join('\n\n') });
}
