import { maxAttachment_bytes } from '@loamwright/daybook';
import { base64Length } from '../base64.ts';

/** First word of every file, by which it is known. */
export const bundleFormat: string = 'loamwright-daybook';

/** Version of the file that this version of the program writes. */
export const bundleVersion: number = 1;

/** Longest line read, in UTF-16 code units: the largest attachment as base64, and what stands around it. */
export const maxLine: number = base64Length(maxAttachment_bytes) + 1024;

/** The first line. */
export interface BundleHeader {
  readonly format: string;
  readonly v: number;
  readonly holding: string;
  /** How many entries and attachments follow. */
  readonly entries: number;
  readonly attachments: number;
  /** Digest of the set of entries (`digestOf`): two files with the same hold the same entries. */
  readonly sum: string;
}

/** The last line. */
export interface BundleEnd {
  /** How many lines stand before it. */
  readonly lines: number;
  /** SHA-256 of all of them in UTF-8, each with its line feed. */
  readonly sha256: string;
}
