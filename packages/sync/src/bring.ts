import { type Attachment, attachmentsOf, type Conflict, type Entry, type Keeping } from '@loamwright/daybook';
import type { Problem } from '@loamwright/science';

/** The part of a keeping that an exchange needs. */
export type ExchangeKeeping = Pick<
  Keeping,
  'keep' | 'read' | 'pick' | 'heads' | 'holding' | 'attach' | 'attachment' | 'attachments'
>;

/** What has come in: checked, and of the keeping's holding. */
export interface Brought {
  readonly entries: readonly Entry[];
  readonly attachments: readonly Attachment[];
}

/** What became of it. */
export interface BringReport {
  /** Entries that are new here. */
  readonly kept: number;
  /** Entries that were here already. */
  readonly there: number;
  /** Ids that now stand for more than one content. */
  readonly conflicts: readonly Conflict[];
  /** Attachments that are new here. */
  readonly attached: number;
  /** Attachments left out, because no entry wants them. */
  readonly problems: readonly Problem[];
}

/**
 * Keeps what has come in: first all entries, in one go, then those attachments that entries want.
 * Bringing the same again changes nothing.
 * @throws KeepingError as the keeping does; what had resolved before stays kept
 */
export async function bring(keeping: ExchangeKeeping, { entries, attachments }: Brought): Promise<BringReport> {
  const report = await keeping.keep(entries);
  if (attachments.length === 0) return { ...report, attached: 0, problems: [] };
  const missing = new Set(await attachmentsMissing(keeping));
  const problems: Problem[] = [];
  let attached = 0;
  for (const { hash, mediaType, bytes } of attachments) {
    if (missing.has(hash)) {
      await keeping.attach(hash, bytes, mediaType);
      missing.delete(hash);
      attached += 1;
    } else if ((await keeping.attachment(hash)) === null)
      problems.push({
        code: 'exchange-attachment-unwanted',
        path: hash,
        found: mediaType,
        wanted: 'an entry that shows it',
      });
  }
  return { ...report, attached, problems };
}

/** Hashes of attachments that entries want and that are not here. */
export async function attachmentsMissing(keeping: ExchangeKeeping): Promise<readonly string[]> {
  const { entries } = await keeping.read();
  const here = new Set((await keeping.attachments()).map(({ hash }) => hash));
  return attachmentsOf(entries).wanted.filter((hash) => !here.has(hash));
}
