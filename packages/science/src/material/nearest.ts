const SHOWN = 3;

/**
 * The known names most like a mistyped one: by the share of letter pairs they have in common
 * (Dice L. R. 1945, Ecology 26:297-302). Best first.
 */
export function nearest(typed: string, known: readonly string[]): readonly string[] {
  const wanted = pairs(typed);
  return known
    .map((name) => ({ name, likeness: likeness(wanted, pairs(name)) }))
    .sort((a, b) => b.likeness - a.likeness)
    .slice(0, SHOWN)
    .map(({ name }) => name);
}

function pairs(word: string): ReadonlySet<string> {
  const padded = ` ${word.toLowerCase()} `;
  return new Set(Array.from({ length: padded.length - 1 }, (_, i) => padded.slice(i, i + 2)));
}

function likeness(a: ReadonlySet<string>, b: ReadonlySet<string>): number {
  const shared = [...a].filter((pair) => b.has(pair)).length;
  return (2 * shared) / (a.size + b.size);
}
