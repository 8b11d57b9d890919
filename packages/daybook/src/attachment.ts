import type { Entry } from './entry/entry.ts';
import { sha256Hex } from './entry/sum.ts';
import { settle } from './fold/force.ts';

const sha256Form = /^[0-9a-f]{64}$/u;

/** The name of a photo or a chunk of a series: the SHA-256 of its bytes. The same bytes have the same name everywhere. */
export function attachmentName(bytes: Uint8Array): string {
  return sha256Hex(bytes);
}

/** Which attachments a set of entries asks to be kept, and which the keeper has let go. Both ordered. */
export interface AttachmentsOf {
  readonly wanted: readonly string[];
  readonly removed: readonly string[];
}

/**
 * Reads from entries which attachments belong to them. Any body with a hash under `attachment` refers to one, so that
 * those of kinds not known here travel along too; also entries out of force do, for the record shows them.
 * What an `attachment-removed` in force names is no longer wanted.
 */
export function attachmentsOf(entries: readonly Entry[]): AttachmentsOf {
  const removed = new Set<string>();
  for (const entry of settle(entries).inForce) {
    const hash = hashIn(entry);
    if (entry.kind === 'attachment-removed' && hash !== undefined) removed.add(hash);
  }
  const wanted = new Set<string>();
  for (const entry of entries) {
    const hash = hashIn(entry);
    if (entry.kind !== 'attachment-removed' && hash !== undefined && !removed.has(hash)) wanted.add(hash);
  }
  return { wanted: [...wanted].sort(), removed: [...removed].sort() };
}

function hashIn(entry: Entry): string | undefined {
  const { attachment } = entry.body;
  return typeof attachment === 'string' && sha256Form.test(attachment) ? attachment : undefined;
}
