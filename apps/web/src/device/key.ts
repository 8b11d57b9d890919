import { type Stored, stored } from './stored.ts';

/** The key to the daybook of the computer that serves this page; null where none was given, or it did not fit. */
export const keyToComputer: Stored<string | null> = stored('loamwright.key', (raw): string | null =>
  typeof raw === 'string' ? raw : null,
);
