import type { Keeping } from '@loamwright/daybook';
import { bad, good } from '@loamwright/science';
import { bring, bundleLines, bundleOf, readBundle } from '@loamwright/sync';
import type { Exchange } from './http/daybook.ts';

/**
 * The daybook of a keeping, handed out and taken in as the same file that `take` writes and `bring` reads.
 *
 * A file that is not whole and sound is refused as it stands: whoever sent it still has what it was made of, and can
 * make it again.
 */
export function exchangeOn(keeping: Keeping): Exchange {
  return {
    take: async () => {
      const holding = await keeping.holding();
      if (holding === null) return null;
      const bundle = await bundleOf(keeping, holding);
      return { entries: bundle.entries.length, lines: bundleLines(bundle) };
    },
    bring: async (text) => {
      const read = await readBundle(text, await keeping.holding());
      if (read.problems.length > 0) return bad(...read.problems);
      return good(await bring(keeping, read));
    },
  };
}
