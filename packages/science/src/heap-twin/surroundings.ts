/** A surface of a heap. */
export interface Face {
  /** Cover or wall on it, m² K/W; 0 for none. */
  readonly insulation_m2KPerW: number;
  /** What the same keeps of vapour and air that would diffuse out, s/m; 0 for none. */
  readonly vapour_sPerM: number;
}

/** How a heap stands: what is on and around it. */
export interface Standing {
  readonly top: Face;
  readonly side: Face;
  /** Share of the draught that its walls and cover let through, 0 to 1. */
  readonly open_share: number;
  /** Share of the wind, of the rain and of the sun that comes to it, 0 to 1. */
  readonly wind_share: number;
  readonly rain_share: number;
  readonly sun_share: number;
}

/** Weather at one moment, written over at each step. */
export interface Weather {
  temp_degC: number;
  vapour_Pa: number;
  wind_mPerS: number;
  /** Rain, kg/(m² s): the mean of a while where one was asked about. */
  rain_kgPerM2S: number;
  sun_WPerM2: number;
  ground_degC: number;
}

/** Fills in the weather at a time, s after the start, and the mean rain of the while before it: left out, the rain then. */
export type WeatherAt = (time_s: number, into: Weather, while_s?: number) => void;

/** The weather's fields before any is read. */
export function noWeather(): Weather {
  return { temp_degC: 0, vapour_Pa: 0, wind_mPerS: 0, rain_kgPerM2S: 0, sun_WPerM2: 0, ground_degC: 0 };
}
