import { z } from 'zod';
import { maxAbout, maxEntered } from '../limits.ts';
import { isInstant } from '../time.ts';
import type { About, Draft, Entered, Entry, JsonObject } from './entry.ts';

/** UUID version 7, variant 10, lower case (RFC 9562 section 5.7). */
const uuidv7 = /^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/u;
/** Name of a holding, device, person or subject: a UUID or a plain word. */
const name = /^[a-z0-9](?:[a-z0-9-]{0,62}[a-z0-9])?$/u;
const kebab = /^[a-z](?:[a-z0-9-]{0,62}[a-z0-9])?$/u;
const hash = /^[0-9a-f]{64}$/u;
/** The form of an IANA zone name. Whether a machine knows the zone is not asked here: an older one must not refuse a newer zone. */
const zone = /^[A-Za-z][A-Za-z0-9_+-]{0,31}(?:\/[A-Za-z0-9_+-]{1,31}){0,2}$/u;
/** JSON Pointer (RFC 6901) to something inside the body. */
const pointer = /^(?:\/(?:[^~/]|~[01])*)+$/u;

function text(pattern: RegExp, wanted: string): z.ZodType<string> {
  return z.string().refine((value) => pattern.test(value), { params: { wanted } });
}

/** Id of an entry. */
const entryIdSchema: z.ZodType<string> = text(uuidv7, 'a UUIDv7 in lower case');
/** Id of a holding, device, person or subject. */
export const nameSchema: z.ZodType<string> = text(name, 'lower-case letters, digits and hyphens, at most 64');
/** SHA-256 in hex. */
export const hashSchema: z.ZodType<string> = text(hash, '64 lower-case hex digits (SHA-256)');
/** Instant in UTC with three decimals. */
export const instantSchema: z.ZodType<string> = z
  .string()
  .refine(isInstant, { params: { wanted: 'an instant in UTC such as 2026-03-01T07:30:00.000Z' } });

const kebabSchema = text(kebab, 'lower-case letters, digits and hyphens, at most 64');

const aboutSchema: z.ZodType<About> = z.strictObject({ type: kebabSchema, id: nameSchema });

const enteredSchema: z.ZodType<Entered> = z
  .strictObject({
    amount: z.number().optional(),
    unit: z.string().min(1).max(40).optional(),
    words: z.string().min(1).max(200).optional(),
  })
  .refine((entered) => entered.amount !== undefined || entered.words !== undefined, {
    params: { wanted: 'an amount or words' },
  });

const enteredByPointer: z.ZodType<{ readonly [pointer: string]: Entered }> = z
  .record(text(pointer, 'a JSON Pointer into the body, such as /temp_degC'), enteredSchema)
  .refine((entered) => Object.keys(entered).length <= maxEntered, {
    params: { wanted: `at most ${maxEntered} amounts` },
  });

/** Its inside is the kind's affair; that it is plain JSON has been checked before. */
const bodySchema: z.ZodType<JsonObject> = z.custom<JsonObject>(
  (body) => typeof body === 'object' && body !== null && !Array.isArray(body),
  { params: { wanted: 'an object' } },
);

const draftShape = {
  id: entryIdSchema,
  holding: nameSchema,
  device: nameSchema,
  by: nameSchema,
  happened: instantSchema,
  zone: text(zone, 'an IANA zone such as Europe/London'),
  precision: z.enum(['minute', 'hour', 'day', 'week']),
  written: instantSchema,
  kind: kebabSchema,
  kv: z.int().min(1),
  about: z.array(aboutSchema).max(maxAbout),
  body: bodySchema,
  entered: enteredByPointer.optional(),
  amends: entryIdSchema.optional(),
  withdraws: entryIdSchema.optional(),
} as const;

const entryShape = {
  ...draftShape,
  n: z.int().min(1),
  prev: hashSchema.nullable(),
  sum: hashSchema,
} as const;

const notBoth = { path: ['withdraws'], params: { wanted: 'either amends or withdraws, not both' } };
const notItself = { path: ['id'], params: { wanted: 'another entry to amend or withdraw than itself' } };
const firstHasNoPrev = { path: ['prev'], params: { wanted: 'null for n = 1, else the sum of entry n − 1' } };

/** Schema of a draft's header. */
export const draftSchema: z.ZodType<Draft> = z
  .strictObject(draftShape)
  .refine((draft) => draft.amends === undefined || draft.withdraws === undefined, notBoth)
  .refine((draft) => draft.amends !== draft.id && draft.withdraws !== draft.id, notItself);

/** Schema of header version 1: no field beside those it knows. */
export const entrySchema: z.ZodType<Entry> = z
  .strictObject({ v: z.literal(1), ...entryShape })
  .refine((entry) => entry.amends === undefined || entry.withdraws === undefined, notBoth)
  .refine((entry) => entry.amends !== entry.id && entry.withdraws !== entry.id, notItself)
  .refine((entry) => (entry.n === 1) === (entry.prev === null), firstHasNoPrev);

/**
 * Schema of a newer header. It keeps every field of version 1 with its meaning and may add
 * others; they are kept and passed on, and the entry is shown as unread.
 */
export const newerEntrySchema: z.ZodType<Entry> = z
  .looseObject({ v: z.int().min(2), ...entryShape })
  .refine((entry) => (entry.n === 1) === (entry.prev === null), firstHasNoPrev);
