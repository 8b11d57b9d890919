import type { Attachment, Entry } from '@loamwright/daybook';
import { linesOf } from './lines.ts';
import { type BundleItem, type BundleProblem, createReader } from './reader.ts';

/** Everything found in a file. */
export interface BundleRead {
  /** The holding of the daybook in it; null where that can't be told. */
  readonly holding: string | null;
  readonly entries: readonly Entry[];
  readonly attachments: readonly Attachment[];
  /** Empty for a whole and sound file. Otherwise the sound lines are offered all the same: the caller decides. */
  readonly problems: readonly BundleProblem[];
}

/** Text of a file: whole, or in pieces cut anywhere. */
export type BundleText = string | AsyncIterable<string> | Iterable<string>;

/**
 * Reads a file. Never throws, whatever stands in it.
 * @param holding the holding whose daybook it should be; null where any will do
 */
export async function readBundle(text: BundleText, holding: string | null): Promise<BundleRead> {
  const entries: Entry[] = [];
  const attachments: Attachment[] = [];
  const problems: BundleProblem[] = [];
  let of: string | null = null;
  for await (const item of bundleItems(text, holding)) {
    switch (item.type) {
      case 'header':
        of = item.header.holding;
        break;
      case 'entry':
        of ??= item.entry.holding;
        entries.push(item.entry);
        break;
      case 'attachment':
        attachments.push(item.attachment);
        break;
      case 'problem':
        problems.push(item.problem);
        break;
    }
  }
  return { holding: of, entries, attachments, problems };
}

/**
 * Reads a file piece by piece and gives what it finds, for files larger than memory: read once to
 * see whether it is sound, and again to keep what is in it.
 */
export async function* bundleItems(text: BundleText, holding: string | null): AsyncGenerator<BundleItem> {
  const reader = createReader(holding);
  for await (const line of linesOf(typeof text === 'string' ? [text] : text)) {
    yield* reader.take(line);
    if (reader.isOver()) return;
  }
  yield* reader.finish();
}
