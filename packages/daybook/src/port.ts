/**
 * The two ports of the daybook. `store` fills Keeping, `sync` fills Exchange.
 * The rules they must hold to are numbered in `PORTS.md` (K1 …, X1 …).
 */
import type { Entry, Tip } from './entry/entry.ts';
import type { CheckedChain, Conflict } from './entry/verify.ts';
import type { Head, HeldOfDevice } from './held.ts';

/** Place in the order of arrival at one keeping: a whole number, 0 before the first entry. Means nothing elsewhere. */
export type Position = number;

/** What became of a batch handed to `keep`. */
export interface KeepReport {
  /** Entries that are new here and are now durable. */
  readonly kept: number;
  /** Entries that were already here, with the same sum. */
  readonly there: number;
  /** Ids of this batch that are now kept with more than one sum (the new version counts as kept). */
  readonly conflicts: readonly Conflict[];
}

/** Entries in order of arrival, and where to read on. */
export interface Page {
  readonly entries: readonly Entry[];
  /** Position of the last entry given; the `after` that was asked for if there was none. */
  readonly position: Position;
}

/** The last entry of one device. */
export interface DeviceTip extends Tip {
  readonly device: string;
}

/** A stretch of one device's entries, both ends included. */
export interface Stretch {
  readonly device: string;
  readonly from: number;
  readonly to: number;
}

/** A photo, or a chunk of a series, without its bytes. */
export interface AttachmentNote {
  /** SHA-256 of the bytes, lower-case hex: the attachment's name. */
  readonly hash: string;
  readonly mediaType: string;
  readonly size_bytes: number;
}

/** A photo, or a chunk of a series. Never changes: another content has another name. */
export interface Attachment {
  readonly hash: string;
  readonly mediaType: string;
  readonly bytes: Uint8Array;
}

/** What `check` found after reading everything kept and working out every sum anew. */
export interface CheckReport extends CheckedChain {
  /** Positions whose record could not be read as an entry at all, with the reason. */
  readonly unreadable: readonly { readonly position: Position; readonly why: string }[];
  /** Attachments whose bytes no longer have the hash they are named by. */
  readonly attachmentsChanged: readonly string[];
  /** Attachments that a kept entry refers to and that are not here (and were not removed by an entry). */
  readonly attachmentsMissing: readonly string[];
}

/** Why a keeping refused; `message` says it in words. */
export type KeepingErrorCode =
  | 'other-holding'
  | 'broken-chain'
  | 'id-taken'
  | 'wrong-hash'
  | 'too-large'
  | 'full'
  | 'busy'
  | 'damaged'
  | 'closed';

/** Rejection of a keeping. Nothing of the refused call has been kept. */
export class KeepingError extends Error {
  override readonly name: string = 'KeepingError';
  readonly code: KeepingErrorCode;
  constructor(code: KeepingErrorCode, message: string, options?: ErrorOptions) {
    super(message, options);
    this.code = code;
  }
}

/** Keeps the daybook of one holding. Every promise rejects with {@link KeepingError} when it can't do its work. */
export interface Keeping {
  /**
   * Adds entries by union of (id, sum), all or nothing. When the promise resolves they are
   * durable: a power cut one instant later loses none. The entries come from `readEntry` or
   * `seal`; their sums are not worked out again here.
   */
  keep(entries: readonly Entry[]): Promise<KeepReport>;

  /**
   * Writes new entries of `device`: reads the device's tip, hands it to `compose`, and appends
   * what that returns, in one exclusive transaction, so that two processes on the same keeping
   * never give out the same `n`. `compose` is synchronous and is called at most once per
   * attempt; when it throws, nothing is written and the error passes through. What it returns
   * must continue the chain (`continues`), else `broken-chain`, with ids not kept yet, else `id-taken`:
   * a caller who tries again after an unknown outcome thus learns that the first attempt had come through.
   */
  write(device: string, compose: (tip: Tip | null) => readonly Entry[]): Promise<readonly Entry[]>;

  /** Entries in order of arrival after `after` (default 0, the start), at most `limit` (default: all). */
  read(options?: { readonly after?: Position | undefined; readonly limit?: number | undefined }): Promise<Page>;

  /** All versions kept within the stretches, ordered by device, n, sum; each once. For giving. */
  pick(stretches: readonly Stretch[]): Promise<readonly Entry[]>;

  /** Per device its highest n and that entry's sum (at a doubled n the lowest sum), ordered by device. */
  tips(): Promise<readonly DeviceTip[]>;

  /** Where every version kept stands in its chain, ordered by device, n, sum. `heldOf` makes an offer's `held` of it. */
  heads(): Promise<readonly Head[]>;

  /** The holding whose daybook this is; null until the first entry is kept. */
  holding(): Promise<string | null>;

  /** Keeps bytes under their hash. Refuses `wrong-hash`; the same bytes again change nothing. Durable when it resolves. */
  attach(hash: string, bytes: Uint8Array, mediaType: string): Promise<void>;

  /** The attachment of that name, or null when it is not here. */
  attachment(hash: string): Promise<Attachment | null>;

  /** Every attachment kept, without bytes, ordered by hash. */
  attachments(): Promise<readonly AttachmentNote[]>;

  /**
   * Lets go of an attachment's bytes. Only for a removal that an entry in force tells of (kind `attachment-removed`), or
   * where no entry shows it because writing that entry failed.
   */
  detach(hash: string): Promise<void>;

  /** Reads everything again, works out every sum and hash anew, and reports what is changed, missing or in conflict. */
  check(): Promise<CheckReport>;

  /** Ends the use of this keeping. Later calls reject with `closed`; closing twice is fine. */
  close(): Promise<void>;
}

/** "This is what I hold." Two sides whose offers are equal hold the same entries. */
export interface Offer {
  readonly type: 'offer';
  readonly v: 1;
  readonly holding: string;
  /** Per device the runs held, and the versions beside them. Ordered by device. */
  readonly held: readonly HeldOfDevice[];
  /** Ids kept with more than one sum, ordered by id: so that a conflict is seen on every device. */
  readonly conflicts: readonly Conflict[];
}

/** "Give me these." */
export interface Ask {
  readonly type: 'ask';
  readonly v: 1;
  readonly holding: string;
  readonly stretches: readonly Stretch[];
  /** Hashes of attachments wanted. */
  readonly attachments: readonly string[];
}

/** An attachment on its way: JSON can't carry bytes, so they travel as base64 (RFC 4648 section 4). */
export interface GivenAttachment {
  readonly hash: string;
  readonly mediaType: string;
  readonly bytes_base64: string;
}

/** "Here they are", perhaps in several gives; `last` is false while more follow for the same ask. */
export interface Give {
  readonly type: 'give';
  readonly v: 1;
  readonly holding: string;
  readonly entries: readonly Entry[];
  readonly attachments: readonly GivenAttachment[];
  readonly last: boolean;
}

/** The messages of an exchange. All are plain JSON. */
export type ExchangeMessage = Offer | Ask | Give;
