import { intervalEn } from './interval.ts';

/** What only pages say that are fetched when they are opened: beds, safety, spreading. The first screen is built without it. */
export const laterEn: typeof intervalEn = { ...intervalEn };
