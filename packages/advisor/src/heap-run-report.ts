import {
  type CautionId,
  type Estimate,
  type HeapRunAnswer,
  type HeapRunNote,
  heapLimits_degC,
  isTooHigh,
  type PlaceFilled,
  tallestHeap_m,
} from '@loamwright/science';
import type { Figure, Place, Saying } from '@loamwright/words';
import { plainPlaces } from './blend-words.ts';
import { height, liquid, say, sayOf, temperature } from './saying.ts';

/** What a heap would do, in sentences. */
export interface HeapRunReport {
  /** Whether it heats, how hot and when. */
  readonly heats: Saying;
  /** When it first asks for a turn; of a heap that is likely to stay cold nothing is said. */
  readonly turn: Saying | undefined;
  /** What is gone of it by the end. */
  readonly lost: Saying;
  /** Where the heat goes, and what water, oxygen and nitrogen do. */
  readonly reasons: readonly Saying[];
  readonly notes: readonly Saying[];
  readonly cautions: readonly CautionId[];
}

/** From this share of the heaps on it is said to heat; up to what is left of all, to stay cold. */
const SURE_share = 0.8;

/** What a heap would do, in words. */
export function heapRunReport(found: HeapRunAnswer): HeapRunReport {
  const heats = found.heats.met / found.heats.of;
  const isCold = heats <= 1 - SURE_share;
  return {
    heats: heatsWords(found, heats >= SURE_share ? 'twin.heats' : isCold ? 'twin.heats.cold' : 'twin.heats.open'),
    turn: isCold ? undefined : turnWords(found),
    lost: lostWords(found),
    reasons: [
      heatWords(found),
      waterWords(found),
      oxygenWords(found),
      say('twin.published', {
        low: whole(found.publishedNitrogenLost_pctNitrogen.low),
        high: whole(found.publishedNitrogenLost_pctNitrogen.high),
      }),
    ],
    notes: [...found.notes.flatMap((note) => noteWords(note, found)), say('twin.count', { members: found.members })],
    cautions: found.cautions,
  };
}

type HeatsKey = 'twin.heats' | 'twin.heats.open' | 'twin.heats.cold';

function heatsWords({ heats, peak_degC, peak_day, hotDays_day }: HeapRunAnswer, key: HeatsKey): Saying {
  const hot = plainPlaces(hotDays_day);
  return say(key, {
    hot: temperature(heapLimits_degC.sanitisingDay),
    chance: { chance: heats },
    peak: asRange(temperature(peak_degC)),
    ...ranged('day', plainPlaces(peak_day)),
    hotDays: hot.likely,
    hotLow: hot.low,
    hotHigh: hot.high,
  });
}

function turnWords({ firstTurn_day }: HeapRunAnswer): Saying {
  if (firstTurn_day === undefined) return say('twin.turn.none');
  const { likely, low, high } = plainPlaces(firstTurn_day);
  return say('twin.turn', {
    day: likely,
    low,
    high,
    turning: temperature(heapLimits_degC.turning),
    hot: temperature(heapLimits_degC.sanitisingDay),
  });
}

function lostWords({ day, dryLost_pctDry, volumeLost_pctVolume, nitrogenLost_pctNitrogen }: HeapRunAnswer): Saying {
  return say('twin.lost', {
    days: whole(day.at(-1) ?? 0),
    ...ranged('dry', lossPlaces(dryLost_pctDry)),
    ...ranged('volume', lossPlaces(volumeLost_pctVolume)),
    ...ranged('nitrogen', lossPlaces(nitrogenLost_pctNitrogen)),
  });
}

/** What is lost is never told as less than nothing. */
function lossPlaces({ p10, p50, p90 }: Estimate): ReturnType<typeof plainPlaces> {
  const lost = (value: number): number => Math.max(0, value);
  return plainPlaces({ p10: lost(p10), p50: lost(p50), p90: lost(p90) });
}

/** Shares of the heat; a heap that makes next to none has none to tell, for the weather brings it as much. */
function heatWords({ heatThroughSurface_share, heatWithAir_share }: HeapRunAnswer): Saying {
  if (heatThroughSurface_share === undefined || heatWithAir_share === undefined) return say('twin.heat.none');
  const both = [heatThroughSurface_share, heatWithAir_share];
  if (both.some(({ p50 }) => p50 < 0 || p50 > 1)) return say('twin.heat.none');
  const areShares = both.every(({ p10, p90 }) => p10 >= 0 && p90 <= 1);
  return say(areShares ? 'twin.heat' : 'twin.heat.open', {
    ...ranged('surface', percent(heatThroughSurface_share)),
    ...ranged('air', percent(heatWithAir_share)),
  });
}

function waterWords({ moisture_pctWet: { p10, p50, p90 }, waterEvaporated_L }: HeapRunAnswer): Saying {
  const steam = liquid(waterEvaporated_L);
  return say('twin.water', {
    from: whole(p50[0] ?? 0),
    to: whole(p50.at(-1) ?? 0),
    low: whole(p10.at(-1) ?? 0),
    high: whole(p90.at(-1) ?? 0),
    steam,
    steamRange: asRange(steam),
  });
}

/** When the core has least oxygen, by the likely course. */
function oxygenWords({ day, coreOxygen_pctVolume: { p10, p50, p90 } }: HeapRunAnswer): Saying {
  const lowest = p50.indexOf(Math.min(...p50));
  return say('twin.oxygen', {
    day: whole(day[lowest] ?? 0),
    oxygen: whole(p50[lowest] ?? 0),
    low: whole(p10[lowest] ?? 0),
    high: whole(p90[lowest] ?? 0),
  });
}

function noteWords(note: HeapRunNote, { waterRunOff_L, core_degC, places }: HeapRunAnswer): readonly Saying[] {
  if (note === 'stands-high') return places.filter(isTooHigh).map(highWords);
  const water = liquid(waterRunOff_L);
  const start = temperature(core_degC.p50[0] ?? Number.NaN);
  return [sayOf('twin.note', note, { water, range: asRange(water), start })];
}

function highWords({ from_day, height_m }: PlaceFilled): Saying {
  const high = height(height_m);
  return say('twin.note.stands-high', {
    where: from_day === 0 ? say('twin.where.built') : say('twin.where.turned', { day: Number(from_day.toFixed(1)) }),
    height: high,
    range: asRange(high),
    tallest: height(tallestHeap_m),
  });
}

function percent({ p10, p50, p90 }: Estimate): ReturnType<typeof plainPlaces> {
  return plainPlaces({ p10: 100 * p10, p50: 100 * p50, p90: 100 * p90 });
}

/** The three places of a figure without a unit: its name, and the same with `Low` and `High`. */
function ranged(name: string, { likely, low, high }: ReturnType<typeof plainPlaces>): Readonly<Record<string, Place>> {
  return { [name]: likely, [`${name}Low`]: low, [`${name}High`]: high };
}

const whole = (value: number): number => Math.round(value);
const asRange = (figure: Figure): Figure => ({ ...figure, asRange: true });
