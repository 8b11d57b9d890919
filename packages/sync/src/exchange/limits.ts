/** Most devices, runs, sides, conflicts, stretches, hashes, entries or attachments in one message, all together. A holding needs some dozens. */
export const maxItems: number = 100_000;

/** Most problems told of one message or file: more would help no one. */
export const maxProblems: number = 100;
