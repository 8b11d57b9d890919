import { compareText, type Stretch } from '@loamwright/daybook';

/**
 * Stretches ordered by device and n, with overlapping and touching ones joined and empty ones
 * left out, so that whatever is asked is looked up once.
 */
export function joinStretches(stretches: readonly Stretch[]): readonly Stretch[] {
  const joined: Stretch[] = [];
  const sorted = stretches
    .filter((stretch) => stretch.from <= stretch.to)
    .sort((a, b) => compareText(a.device, b.device) || a.from - b.from);
  for (const stretch of sorted) {
    const last = joined.at(-1);
    if (last === undefined || last.device !== stretch.device || stretch.from > last.to + 1) joined.push(stretch);
    else if (stretch.to > last.to) joined[joined.length - 1] = { ...last, to: stretch.to };
  }
  return joined;
}
