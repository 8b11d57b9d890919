import { bedEn } from './bed.ts';
import { cropsEn } from './crops.ts';
import { intervalEn } from './interval.ts';
import { measureNextEn } from './measure-next.ts';
import { sanitationEn } from './sanitation.ts';

/**
 * What is said only by what is fetched when it is wanted: beds, safety, spreading, the check worth a minute. The first
 * screen is built without it.
 */
export const laterEn: typeof bedEn & typeof cropsEn & typeof intervalEn & typeof measureNextEn & typeof sanitationEn = {
  ...bedEn,
  ...cropsEn,
  ...intervalEn,
  ...measureNextEn,
  ...sanitationEn,
};
