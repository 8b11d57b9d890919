import { maxGive_bytes } from '@loamwright/daybook';
import { maxLine } from '../bundle/format.ts';

/** Most devices, runs, sides, conflicts, stretches, hashes, entries or attachments in one message, all together. A holding needs some dozens. */
export const maxItems: number = 100_000;

/** Most problems told of one message or file: more would help no one. */
export const maxProblems: number = 100;

/** Largest message as JSON in UTF-8: a part of a give, or one attachment alone in ASCII letters. An offer has some hundred bytes. */
export const maxMessage_bytes: number = Math.max(maxGive_bytes, maxLine);
