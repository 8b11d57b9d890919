import type { Keeping } from '@loamwright/daybook';
import { bad, good } from '@loamwright/science';
import {
  answerRequest,
  bring,
  bundleLines,
  bundleOf,
  letGoOfRemoved,
  readBundle,
  standingOffer,
} from '@loamwright/sync';
import type { Exchange } from './http/daybook.ts';
import type { Answering } from './http/exchange.ts';

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
      const report = await bring(keeping, read);
      await letGoOfRemoved(keeping);
      return good(report);
    },
  };
}

/** The same daybook as a side of an exchange by request and answer. */
export function answeringOn(keeping: Keeping): Answering {
  return {
    offer: () => standingOffer(keeping),
    answer: async (message) => {
      const answered = await answerRequest(keeping, message);
      if (answered.ok && answered.value.kept > 0) await letGoOfRemoved(keeping);
      return answered;
    },
  };
}
