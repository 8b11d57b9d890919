import { bad, good, type Outcome, type ToldReading } from '@loamwright/science';
import { z } from 'zod';
import type { HourlyWeather, WeatherSource, WeatherWanted } from './source.ts';

/** What a service of hourly forecasts and history answers: one list of times and one for each quantity, `null` for an hour it lacks. */
const answerSchema = z.object({
  hourly: z.object({
    time: z.array(z.string()),
    temperature_2m: z.array(z.number().nullable()),
    relative_humidity_2m: z.array(z.number().nullable()).optional(),
    wind_speed_10m: z.array(z.number().nullable()).optional(),
    precipitation: z.array(z.number().nullable()).optional(),
    shortwave_radiation: z.array(z.number().nullable()).optional(),
    soil_temperature_54cm: z.array(z.number().nullable()).optional(),
  }),
});
type Hourly = z.infer<typeof answerSchema>['hourly'];

const QUANTITIES = [
  'temperature_2m',
  'relative_humidity_2m',
  'wind_speed_10m',
  'precipitation',
  'shortwave_radiation',
  'soil_temperature_54cm',
] as const;
const PATIENCE_MS = 20_000;
/** Ten years of hours in every list are some megabytes; more is no weather. */
const MOST_BYTES = 32 * 2 ** 20;
/** A gap so long is bridged by a straight line. */
const LONGEST_GAP_H = 3;
const HOURS_A_DAY = 24;

/**
 * A service that answers `GET BASE?latitude=…&longitude=…&start_date=…&end_date=…&hourly=…` in JSON, as the open
 * forecast and reanalysis services do. Millimetres an hour become millimetres a day.
 *
 * @param base its address, which the grower names; nothing is asked of any other
 */
export function hourlyService(base: string, fetching: typeof fetch = fetch): WeatherSource {
  return {
    async hourly(wanted) {
      const address = addressOf(base, wanted);
      if (address === undefined)
        return bad({
          code: 'weather-unreachable',
          path: 'LOAMWRIGHT_WEATHER',
          found: base.slice(0, 60),
          wanted: 'https://…',
        });
      const text = await ask(address, fetching);
      return text.ok ? readAnswer(text.value, wanted) : text;
    },
  };
}

function addressOf(base: string, { north_deg, east_deg, from, to }: WeatherWanted): URL | undefined {
  if (!URL.canParse(base)) return undefined;
  const address = new URL(base);
  if (address.protocol !== 'https:' && address.protocol !== 'http:') return undefined;
  const asked = {
    latitude: String(north_deg),
    longitude: String(east_deg),
    start_date: from,
    end_date: to,
    hourly: QUANTITIES.join(','),
    wind_speed_unit: 'ms',
    timezone: 'UTC',
  };
  for (const [key, value] of Object.entries(asked)) address.searchParams.set(key, value);
  return address;
}

async function ask(address: URL, fetching: typeof fetch): Promise<Outcome<string>> {
  const unreachable = (found: string): Outcome<string> =>
    bad({ code: 'weather-unreachable', path: address.host, found, wanted: '200' });
  try {
    const answer = await fetching(address, { signal: AbortSignal.timeout(PATIENCE_MS), redirect: 'error' });
    if (!answer.ok) return unreachable(String(answer.status));
    const size = Number(answer.headers.get('content-length') ?? 0);
    if (size > MOST_BYTES) return unreachable(`${size} bytes`);
    const text = await answer.text();
    return text.length > MOST_BYTES ? unreachable(`${text.length} bytes`) : good(text);
  } catch (error) {
    return unreachable(error instanceof Error ? error.message : String(error));
  }
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

/** The answer as readings, short gaps bridged. */
function readAnswer(text: string, { from, to }: WeatherWanted): Outcome<HourlyWeather> {
  const read = answerSchema.safeParse(parsed(text));
  if (!read.success) {
    const path = read.error.issues[0]?.path.join('.') ?? '';
    return bad({
      code: 'weather-unreadable',
      path: `weather ${path}`,
      found: text.slice(0, 40),
      wanted: 'hourly lists in JSON',
    });
  }
  const { hourly } = read.data;
  const hours = hourly.time.length;
  const days = (Date.parse(to) - Date.parse(from)) / (HOURS_A_DAY * 3_600_000) + 1;
  if (hours !== days * HOURS_A_DAY || QUANTITIES.some((id) => (hourly[id]?.length ?? hours) !== hours)) {
    return bad({
      code: 'weather-hours-missing',
      path: 'hourly.time',
      found: String(hours),
      wanted: String(days * HOURS_A_DAY),
    });
  }
  const bridged = bridgeAll(hourly);
  if (!bridged.ok) return bridged;
  return good({ every_h: 1, values: Array.from({ length: hours }, (_, i) => readingOf(bridged.value, i)) });
}

type Lists = ReadonlyMap<(typeof QUANTITIES)[number], readonly number[]>;

function bridgeAll(hourly: Hourly): Outcome<Lists> {
  const lists = new Map<(typeof QUANTITIES)[number], readonly number[]>();
  for (const id of QUANTITIES) {
    const list = hourly[id];
    // A quantity that the service lacks altogether is left to what is usual; the temperature must be there.
    if (list === undefined || (id !== 'temperature_2m' && list.every((value) => value === null))) continue;
    const gap = longestGap(list);
    if (gap.hours > LONGEST_GAP_H) {
      return bad({
        code: 'weather-hours-missing',
        path: `${id} ${hourly.time[gap.at] ?? ''}`,
        found: `${gap.hours} h`,
        wanted: `≤ ${LONGEST_GAP_H} h`,
      });
    }
    lists.set(id, bridge(list));
  }
  return good(lists);
}

function longestGap(list: readonly (number | null)[]): { readonly at: number; readonly hours: number } {
  let longest = { at: 0, hours: 0 };
  let begun = 0;
  for (let i = 0; i <= list.length; i++) {
    if (i < list.length && list[i] === null) continue;
    if (i - begun > longest.hours) longest = { at: begun, hours: i - begun };
    begun = i + 1;
  }
  return longest;
}

/** Straight lines over the gaps; at the ends the nearest value. */
function bridge(list: readonly (number | null)[]): readonly number[] {
  return list.map((value, i) => {
    if (value !== null) return value;
    const before = list.slice(0, i).findLastIndex((one) => one !== null);
    const after = list.findIndex((one, k) => k > i && one !== null);
    const low = list[before < 0 ? after : before] ?? 0;
    const high = list[after < 0 ? before : after] ?? 0;
    return before < 0 || after < 0 ? low : low + ((i - before) / (after - before)) * (high - low);
  });
}

function readingOf(lists: Lists, i: number): ToldReading {
  const at = (id: (typeof QUANTITIES)[number]): number | undefined => lists.get(id)?.[i];
  const humidity = at('relative_humidity_2m');
  const rain = at('precipitation');
  const wind = at('wind_speed_10m');
  const sun = at('shortwave_radiation');
  const ground = at('soil_temperature_54cm');
  return {
    temp_degC: at('temperature_2m') ?? Number.NaN,
    ...(humidity !== undefined && { humidity_share: Math.min(1, Math.max(0, humidity / 100)) }),
    ...(wind !== undefined && { wind_mPerS: Math.max(0, wind) }),
    ...(rain !== undefined && { rain_mmPerDay: Math.max(0, rain) * HOURS_A_DAY }),
    ...(sun !== undefined && { sun_WPerM2: Math.max(0, sun) }),
    ...(ground !== undefined && { ground_degC: ground }),
  };
}
