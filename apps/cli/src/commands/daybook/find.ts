import type { Entry } from '@loamwright/daybook';
import { bad, good, type Outcome } from '@loamwright/science';

/** So many characters of an id are shown: its random end, by which two entries of one minute can be told apart. */
const SHOWN = 8;
/** Fewer characters than this would fit too many. */
const LEAST = 4;

/** The end of an id, as a person would type it. */
export function shortId(id: string): string {
  return id.slice(-SHOWN);
}

/** The entry of an id, or of the end of one. Problems: `no-such-entry`, `which-entry`. */
export function entryOf(entries: readonly Entry[], typed: string): Outcome<Entry> {
  const asked = typed.trim().toLowerCase();
  const found = entries.filter(({ id }) => id === asked || (asked.length >= LEAST && id.endsWith(asked)));
  const [first] = found;
  if (first === undefined) return bad({ code: 'no-such-entry', path: '', found: typed.slice(0, 60), wanted: '' });
  if (found.some(({ id }) => id !== first.id)) {
    return bad({
      code: 'which-entry',
      path: '',
      found: typed.slice(0, 60),
      wanted: found.map(({ id }) => id).join(', '),
    });
  }
  return good(first);
}
