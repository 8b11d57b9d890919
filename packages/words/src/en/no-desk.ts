/** Stands in for `desk.ts` in a browser, where every word is fetched before the first screen. */
export const deskEn: Readonly<Record<never, string>> = {};
