const signs: Readonly<Record<string, number>> = { '½': 0.5, '¼': 0.25, '¾': 0.75, '⅓': 1 / 3, '⅔': 2 / 3 };
/** More of any measure than that is a slip of the finger. */
export const MOST_COUNT = 10_000;

/**
 * A count as people type it: "3", "2,5", "1/2", "½", "1 1/2", "2½". Null for anything else, for less than `least`, and
 * for more than `most`: a garden has no more of any measure.
 */
export function readCount(typed: string, least: number, most: number = MOST_COUNT): number | null {
  const text = typed.trim().replace(',', '.');
  const parts = /^(\d+(?:\.\d+)?|\.\d+)?\s*(?:([½¼¾⅓⅔])|(?:(?<=^|\s)(\d+)\/([1-9]\d*)))?$/u.exec(text);
  if (text === '' || parts === null) return null;
  const [, whole = '0', sign, over, under] = parts;
  const part = sign !== undefined ? (signs[sign] ?? 0) : over !== undefined ? Number(over) / Number(under) : 0;
  const count = Number(whole) + part;
  return count >= least && count <= most ? count : null;
}
