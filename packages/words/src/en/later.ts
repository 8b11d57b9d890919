import { bedEn } from './bed.ts';
import { cropsEn } from './crops.ts';
import { inputsEn } from './inputs.ts';
import { intervalEn } from './interval.ts';
import { measureNextEn } from './measure-next.ts';
import { sanitationEn } from './sanitation.ts';
import { spreadEn } from './spread.ts';

type Later = typeof bedEn &
  typeof cropsEn &
  typeof inputsEn &
  typeof intervalEn &
  typeof measureNextEn &
  typeof sanitationEn &
  typeof spreadEn;

/**
 * What is said only by what is fetched when it is wanted: beds, safety, spreading, the check worth a minute. The first
 * screen is built without it.
 */
export const laterEn: Later = {
  ...bedEn,
  ...cropsEn,
  ...inputsEn,
  ...intervalEn,
  ...measureNextEn,
  ...sanitationEn,
  ...spreadEn,
};
