import { z } from 'zod';
import { hashSchema, instantSchema } from '../entry/header.ts';
import { longText, shortText } from './amount.ts';
import type { Kind } from './kind.ts';

/** A few words about anything: `note`. */
export interface Note {
  readonly text: string;
}

export const note: Kind<Note> = {
  id: 'note',
  kv: 1,
  subject: null,
  body: z.strictObject({ text: longText }),
};

const mediaType = z
  .string()
  .max(100)
  .refine((text) => /^[a-z]+\/[a-z0-9.+-]+$/u.test(text), {
    params: { wanted: 'a media type such as image/jpeg' },
  });

/** A picture of anything: `photo`. The bytes are an attachment named by `attachment`. */
export interface Photo {
  /** SHA-256 of the bytes. */
  readonly attachment: string;
  readonly mediaType: string;
  readonly caption?: string | undefined;
}

export const photo: Kind<Photo> = {
  id: 'photo',
  kv: 1,
  subject: null,
  body: z.strictObject({ attachment: hashSchema, mediaType, caption: longText.optional() }),
};

/** What a probe or logger wrote down by itself: `series`. The chunk of readings is an attachment and never changes. */
export interface Series {
  /** SHA-256 of the chunk. */
  readonly attachment: string;
  readonly mediaType: string;
  /** Which quantity, named with its unit: `temp_degC`. */
  readonly quantity: string;
  readonly probe: string;
  readonly point?: string | undefined;
  /** First and last reading in the chunk, and how many there are. */
  readonly from: string;
  readonly to: string;
  readonly count: number;
}

export const series: Kind<Series> = {
  id: 'series',
  kv: 1,
  subject: 'heap',
  body: z
    .strictObject({
      attachment: hashSchema,
      mediaType,
      quantity: shortText,
      probe: shortText,
      point: shortText.optional(),
      from: instantSchema,
      to: instantSchema,
      count: z.int().min(1),
    })
    .refine((body) => body.from <= body.to, { path: ['to'], params: { wanted: 'an instant not before from' } }),
};

/** The keeper lets an attachment's bytes go: `attachment-removed`. The entry that showed it stays. */
export interface AttachmentRemoved {
  readonly attachment: string;
  readonly why?: string | undefined;
}

export const attachmentRemoved: Kind<AttachmentRemoved> = {
  id: 'attachment-removed',
  kv: 1,
  subject: null,
  body: z.strictObject({ attachment: hashSchema, why: longText.optional() }),
};

/** Body of an entry that takes another back (`withdraws` in its header): `withdrawal`. */
export interface Withdrawal {
  readonly why?: string | undefined;
}

export const withdrawal: Kind<Withdrawal> = {
  id: 'withdrawal',
  kv: 1,
  subject: null,
  body: z.strictObject({ why: longText.optional() }),
};
