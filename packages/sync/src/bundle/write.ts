import { type Attachment, attachmentsOf, canonical, compareInChain, type Entry } from '@loamwright/daybook';
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import { toBase64 } from '../base64.ts';
import type { ExchangeKeeping } from '../bring.ts';
import { digestOf } from '../exchange/offer.ts';
import { type BundleEnd, type BundleHeader, bundleFormat, bundleVersion } from './format.ts';

/** What goes into a file. */
export interface Bundle {
  readonly holding: string;
  readonly entries: readonly Entry[];
  /** Hashes of the attachments to go along; none to leave the photos out. */
  readonly attachments: readonly string[];
  /** Looks one up. They are asked for one at a time: together they may be larger than memory. */
  readonly attachment: (hash: string) => Promise<Attachment | null>;
}

/** Everything that a keeping has: all entries, and the attachments that the keeper has not let go. */
export async function bundleOf(keeping: ExchangeKeeping, holding: string): Promise<Bundle> {
  const { entries } = await keeping.read();
  const removed = new Set(attachmentsOf(entries).removed);
  const attachments = (await keeping.attachments()).map(({ hash }) => hash).filter((hash) => !removed.has(hash));
  return { holding, entries, attachments, attachment: keeping.attachment };
}

/**
 * The lines of a file, each with its line feed (`FILE.md`). The same daybook gives the same file,
 * in whatever order its entries arrived.
 * @throws Error when an attachment has been let go since the bundle was made: make it again
 */
export async function* bundleLines(bundle: Bundle): AsyncGenerator<string> {
  const hash = sha256.create();
  let lines = 0;
  const line = (text: string): string => {
    const whole = `${text}\n`;
    hash.update(utf8ToBytes(whole));
    lines += 1;
    return whole;
  };

  const { holding, entries, attachments } = bundle;
  const header: BundleHeader = {
    format: bundleFormat,
    v: bundleVersion,
    holding,
    entries: entries.length,
    attachments: attachments.length,
    sum: digestOf(holding, entries),
  };
  yield line(JSON.stringify(header));
  for (const entry of [...entries].sort(compareInChain)) yield line(canonical(entry));
  for (const name of attachments) {
    const attachment = await bundle.attachment(name);
    if (attachment === null) throw new Error(`the attachment ${name} was let go while the file was written`);
    const { mediaType, bytes } = attachment;
    yield line(canonical({ attachment: { hash: name, mediaType, bytes_base64: toBase64(bytes) } }));
  }
  const end: BundleEnd = { lines, sha256: bytesToHex(hash.digest()) };
  yield `${JSON.stringify({ end })}\n`;
}
