import type { Outcome, ToldReading } from '@loamwright/science';

/** Where and from when to when: degrees north and east, and days as `2026-11-25`. */
export interface WeatherWanted {
  readonly north_deg: number;
  readonly east_deg: number;
  readonly from: string;
  /** The last day, with all of its hours. */
  readonly to: string;
}

/** Readings of every hour from the first midnight (UTC) on. */
export interface HourlyWeather {
  readonly every_h: 1;
  readonly values: readonly ToldReading[];
}

/** Where weather that was or is foretold comes from. Nothing asks it by itself, and nothing needs it. */
export interface WeatherSource {
  /** Problems: `weather-unreachable`, `weather-unreadable`, `weather-hours-missing`. */
  hourly(wanted: WeatherWanted): Promise<Outcome<HourlyWeather>>;
}
