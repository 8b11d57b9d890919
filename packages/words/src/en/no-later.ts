/** Stands in for `later.ts` in a browser until a page that says its words is opened (`@loamwright/words/later`). */
export const laterEn: Readonly<Record<never, string>> = {};
