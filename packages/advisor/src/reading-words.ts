import {
  type CautionId,
  type Direction,
  heapLimits_degC,
  heapTriggers,
  type Plausibility,
  type ProbePoint,
  type ReadingAct,
  type ReadingMeaning,
  type Suggestion,
  type TypedReading,
  temperatureBandOf,
} from '@loamwright/science';
import type { Place, Saying } from '@loamwright/words';
import { bulk, depth, difference, say, sayOf, temperature } from './saying.ts';

/** One thing to do, with its reason, what waiting costs, how soon, and what would narrow the answer. */
export interface ActWords {
  /** How soon, as an id for sorting and drawing. */
  readonly urgency: ReadingAct['when'];
  readonly when: Saying;
  readonly what: Saying;
  readonly because: Saying;
  readonly waiting: Saying;
  readonly checks: readonly Saying[];
}

/** A reading's meaning in sentences. */
export interface ReadingWords {
  readonly state: Saying;
  readonly trend: readonly Saying[];
  /** What growers seek and handbooks prefer, that the two differ, and why; then where this reading lies. */
  readonly views: readonly Saying[];
  readonly sanitising: Saying;
  /** The published bands in which it lies, with their edges. */
  readonly bands: readonly BandWords[];
  readonly act: ActWords;
  readonly notes: readonly Saying[];
  readonly cautions: readonly CautionId[];
}

/** A band that the reading lies in. */
export interface BandWords {
  readonly said: Saying;
  readonly low_degC: number | null;
  readonly high_degC: number | null;
  readonly source: string;
  readonly place: string;
  readonly mark: ReadingMeaning['bands'][number]['mark'];
}

/** Puts a reading's meaning into sentences; the same on every screen and at the command line. */
export function readingWords(meaning: ReadingMeaning, point: ProbePoint): ReadingWords {
  return {
    state: sayOf('reading.state', meaning.state, {
      temp: temperature(meaning.temp_degC),
      where: sayOf('reading.where', point),
    }),
    trend: trendWords(meaning),
    views: viewsWords(meaning),
    sanitising: say(meaning.sanitisingDay.counts ? 'reading.sanitising.counts' : 'reading.sanitising.not', {
      limit: temperature(heapLimits_degC.sanitisingDay),
      chance: { chance: meaning.sanitisingDay.chance },
    }),
    bands: meaning.bands
      .filter(({ lies }) => lies === 'in')
      .map(({ id, low_degC, high_degC, source, place, mark }) => ({
        said: sayOf('reading.band', id),
        low_degC,
        high_degC,
        source,
        place,
        mark,
      })),
    act: actWords(meaning),
    notes: meaning.notes.map((id) => sayOf('reading.note', id, figures(meaning))),
    cautions: meaning.cautions,
  };
}

const HOURS_PER_DAY = 24;
const MINUTES_PER_HOUR = 60;

/** A stretch of time as people tell it: minutes within the hour, hours within the day, then days. */
function spanOf(days: number): Saying {
  const hours = days * HOURS_PER_DAY;
  if (hours < 1) return say('reading.span.minutes', { count: Math.max(1, Math.round(hours * MINUTES_PER_HOUR)) });
  if (Math.round(hours) < HOURS_PER_DAY) return say('reading.span.hours', { count: Math.round(hours) });
  const rounded = days < 2 ? Math.round(days * 10) / 10 : Math.round(days);
  return say('reading.span.days', { count: rounded });
}

function trendWords({ trend }: ReadingMeaning): readonly Saying[] {
  const { direction, change_KPerDay = 0, over_days = 0 } = trend;
  const span = spanOf(over_days);
  const words: Readonly<Record<Direction, Saying>> = {
    rising: say('reading.trend.rising', { change: difference(change_KPerDay * over_days), span }),
    holding: say('reading.trend.holding', { span }),
    falling: say('reading.trend.falling', { change: difference(-change_KPerDay * over_days), span }),
    unknown: say('reading.trend.unknown'),
  };
  if (trend.belowPeak_K < heapTriggers.fallFrom_K) return [words[direction]];
  return [
    words[direction],
    say('reading.trend.below-peak', { fall: difference(trend.belowPeak_K), peak: temperature(trend.peak_degC) }),
  ];
}

function viewsWords({ views, bands }: ReadingMeaning): readonly Saying[] {
  const sought = temperatureBandOf('growers-sought');
  const preferred = temperatureBandOf('preferred');
  const edge = (value: number | null): Place => temperature(value ?? Number.NaN);
  const said = [
    say('reading.views.differ', {
      soughtLow: edge(sought.low_degC),
      soughtHigh: edge(sought.high_degC),
      tooCool: edge(temperatureBandOf('growers-too-cool').high_degC),
      preferredLow: edge(preferred.low_degC),
      preferredHigh: edge(preferred.high_degC),
    }),
    say(standingOf(views)),
  ];
  if (bands.every(({ id, lies }) => id !== 'growers-nitrogen-leaving' || lies !== 'in')) return said;
  return [
    ...said,
    say('reading.views.nitrogen', { nitrogen: edge(temperatureBandOf('growers-nitrogen-leaving').low_degC) }),
  ];
}

function standingOf({ growersSought, handbookPreferred }: ReadingMeaning['views']): Saying['key'] {
  if (growersSought === 'in') return handbookPreferred === 'in' ? 'reading.views.both' : 'reading.views.growers';
  if (handbookPreferred === 'in') return 'reading.views.handbooks';
  if (growersSought === 'above') return 'reading.views.above';
  return handbookPreferred === 'below' ? 'reading.views.below' : 'reading.views.between';
}

/** The one act in sentences. */
function actWords(meaning: ReadingMeaning): ActWords {
  const { act, because, when, checks } = meaning.act;
  const places = figures(meaning);
  return {
    urgency: when,
    when: sayOf('reading.when', when),
    what: sayOf('reading.act', act, places),
    because: sayOf('reading.because', because, places),
    waiting: sayOf('reading.waiting', because, places),
    checks: checks.map((id) => sayOf('reading.check', id)),
  };
}

/** The turning limit as it is published, 160 °F: what a sentence and a drawn line tell. */
export const publishedTurning_degC: number = temperatureBandOf('self-limiting').low_degC ?? heapLimits_degC.turning;

/** Every figure that a sentence about a reading may want. */
function figures({ trend }: ReadingMeaning): Readonly<Record<string, Place>> {
  return {
    turning: temperature(publishedTurning_degC),
    fire: temperature(heapLimits_degC.fire),
    curing: temperature(heapLimits_degC.curing),
    fresh: temperature(heapLimits_degC.coolWithFood),
    fall: difference(trend.belowPeak_K),
    fallFrom: difference(heapTriggers.fallFrom_K),
    fallTo: difference(heapTriggers.fallTo_K),
    hotDays: Math.floor(trend.hot_days),
    smallest: bulk(heapTriggers.smallestHeap_m3),
    ratio: String(heapTriggers.slowCarbonToNitrogen),
    shallowest: depth(heapTriggers.shallowestProbe_m),
  };
}

/** An odd reading asked about: what is odd, what may have been meant, and that it may stand. */
export interface DoubtWords {
  readonly odd: readonly Saying[];
  readonly suggestions: readonly { readonly said: Saying; readonly suggested: Suggestion['suggested'] }[];
  readonly keep: Saying;
  readonly cautions: readonly CautionId[];
}

/** The question to ask about an odd reading; undefined for one that any heap may have. */
export function doubtWords(doubt: Plausibility, typed: TypedReading): DoubtWords | undefined {
  if (doubt.odd.length === 0) return undefined;
  const temp = asTyped(typed.value, typed.unit);
  const places: Readonly<Record<string, Place>> = {
    temp,
    last: temperature(typed.last_degC ?? Number.NaN),
    air: temperature(typed.air_degC ?? Number.NaN),
  };
  return {
    odd: doubt.odd.map((code) => sayOf('reading.odd', code, places)),
    suggestions: doubt.suggestions.map(({ code, suggested }) => ({
      said: sayOf('reading.suggest', code, {
        meant: suggested === undefined ? '' : asTyped(suggested.value, suggested.unit),
      }),
      suggested,
    })),
    keep: say('reading.suggest.keep'),
    cautions: doubt.cautions,
  };
}

/** In the unit it was typed in, whatever the reader's: the question is about the typing. */
function asTyped(value: number, unit: TypedReading['unit']): string {
  return `${Math.round(value * 10) / 10} ${unit === 'degC' ? '°C' : '°F'}`;
}
