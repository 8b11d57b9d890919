const SHOWN = 3;

/** The known names most like a mistyped one, best first; see {@link likeness}. */
export function nearest(typed: string, known: readonly string[]): readonly string[] {
  return known
    .map((name) => ({ name, likeness: likeness(typed, name) }))
    .sort((a, b) => b.likeness - a.likeness)
    .slice(0, SHOWN)
    .map(({ name }) => name);
}

/**
 * How alike two words are, 0 to 1: the share of letter pairs they have in common, with the blanks before
 * and after counted as letters (Dice L. R. 1945, Ecology 26:297-302).
 */
export function likeness(a: string, b: string): number {
  const pairsOfA = pairs(a);
  const pairsOfB = pairs(b);
  const shared = [...pairsOfA].filter((pair) => pairsOfB.has(pair)).length;
  return (2 * shared) / (pairsOfA.size + pairsOfB.size);
}

/** No name is longer; what is typed beyond it makes no word likelier. */
const MOST_LETTERS = 100;

function pairs(word: string): ReadonlySet<string> {
  const padded = ` ${word.slice(0, MOST_LETTERS).toLowerCase()} `;
  return new Set(Array.from({ length: padded.length - 1 }, (_, i) => padded.slice(i, i + 2)));
}
