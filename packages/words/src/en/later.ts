import { intervalEn } from './interval.ts';
import { measureNextEn } from './measure-next.ts';

/**
 * What is said only by what is fetched when it is wanted: beds, safety, spreading, the check worth a minute. The first
 * screen is built without it.
 */
export const laterEn: typeof intervalEn & typeof measureNextEn = { ...intervalEn, ...measureNextEn };
