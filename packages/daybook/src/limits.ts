/**
 * Limits of what an entry and a message may be. They keep a hostile file from filling a phone;
 * each is far above what a holding needs. An entry within the limits of one version stays
 * within those of every later one: limits are only ever raised.
 */

/** Longest canonical JSON of one entry without its sum, in UTF-8 bytes. A built heap of 40 layers takes about 10 kB. */
export const maxEntry_bytes: number = 256 * 1024;

/** Deepest nesting of objects and lists inside a body. The kinds known here need 5. */
export const maxDepth: number = 32;

/** Most subjects in `about`. */
export const maxAbout: number = 64;

/** Most amounts in `entered`. */
export const maxEntered: number = 512;

/** Largest attachment: a photo scaled for a phone, or a chunk of a series. */
export const maxAttachment_bytes: number = 8 * 1024 * 1024;

/** Largest part of a give as JSON, unless it is one attachment alone. */
export const maxGive_bytes: number = 4 * 1024 * 1024;
