import type { Random } from './random.ts';
import type { Day } from './time.ts';

/** Mean of the year, half the swing between winter and summer, and the coldest day. All invented. */
const MEAN_DEGC = 10;
const SWING_K = 12;
const COLDEST_DAY_OF_YEAR = 20;
const DAY_TO_DAY_K = 3;
const KEEPS = 0.7;

/** The air of one day after another, in °C: the season, and spells that hold for some days. */
export function airOf(random: Random): (day: Day) => number {
  let spell_K = 0;
  return ({ dayOfYear }) => {
    spell_K = KEEPS * spell_K + DAY_TO_DAY_K * Math.sqrt(1 - KEEPS * KEEPS) * random.normal();
    const season = Math.cos((2 * Math.PI * (dayOfYear - COLDEST_DAY_OF_YEAR)) / 365.25);
    return MEAN_DEGC - SWING_K * season + spell_K;
  };
}
