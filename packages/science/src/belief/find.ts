import { plain } from '../material/find.ts';
import type { BeliefId } from './belief.ts';

/** What a belief goes by: the belief as it is held, and further words. */
export interface BeliefWords {
  readonly id: BeliefId;
  readonly held: string;
  /** What else a person may call it, separated by commas. */
  readonly words: string;
}

/** Shorter words ("is", "a", "to") tell nothing. */
const SHORTEST_WORD = 3;

/**
 * The beliefs that share most words with what was typed, in the order given. Capitals, accents and plurals make no
 * difference, and the beginning of a word will do. Nothing typed, or nothing shared, finds nothing.
 */
export function findBeliefs(text: string, words: readonly BeliefWords[]): readonly BeliefId[] {
  const typed = [...new Set(wordsOf(text))].filter((word) => word.length >= SHORTEST_WORD || /\d/u.test(word));
  const shared = words.map(({ id, held, words: others }) => {
    const known = wordsOf(`${held} ${others}`);
    return { id, count: typed.filter((word) => known.some((one) => one.startsWith(word))).length };
  });
  const most = Math.max(1, ...shared.map(({ count }) => count));
  return shared.filter(({ count }) => count === most).map(({ id }) => id);
}

function wordsOf(text: string): readonly string[] {
  return plain(text).split(' ');
}
