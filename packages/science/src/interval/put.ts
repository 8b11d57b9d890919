import type { TreatmentId } from './parameters.ts';

/** What was put on the bed. */
export const putIds = [
  'raw-manure',
  'unproven-compost',
  'proven-compost',
  'plant-compost',
  'plant-stuff',
  'worm-castings',
  'leachate',
  'manure-tea',
  'compost-tea',
  'ash-or-char',
  'human-or-pet-waste',
] as const;
export type PutId = (typeof putIds)[number];

/** What a tea was made of, where it is one. */
export interface Tea {
  readonly of: 'proven-compost' | 'unproven-compost' | 'plant-compost';
  /** Molasses, kelp or other food for microbes. */
  readonly fed: boolean;
  /** Whether its water was tested without E. coli, came untreated from a pond or stream, or is not known. */
  readonly water: 'clean' | 'untreated-surface' | 'unknown';
}

/** Why it counts as it does; the message `interval.because.ID`. */
export const becauseIds = [
  'raw',
  'log-short',
  'log-meets',
  'plants-only',
  'castings-unproven',
  'leachate-is-raw',
  'extract-of-raw',
  'tea-fed',
  'tea-water',
  'tea-of-unproven',
  'tea-sound',
  'mineral',
  'never',
] as const;
export type BecauseId = (typeof becauseIds)[number];

/** How the law looks on something, and why. */
export interface Standing {
  readonly treatment: TreatmentId;
  readonly because: BecauseId;
}

const standings: Readonly<Record<Exclude<PutId, 'compost-tea'>, Standing>> = {
  'raw-manure': { treatment: 'untreated', because: 'raw' },
  'unproven-compost': { treatment: 'untreated', because: 'log-short' },
  'proven-compost': { treatment: 'treated', because: 'log-meets' },
  'plant-compost': { treatment: 'plant', because: 'plants-only' },
  'plant-stuff': { treatment: 'plant', because: 'plants-only' },
  'worm-castings': { treatment: 'untreated', because: 'castings-unproven' },
  leachate: { treatment: 'untreated', because: 'leachate-is-raw' },
  'manure-tea': { treatment: 'untreated', because: 'extract-of-raw' },
  'ash-or-char': { treatment: 'plant', because: 'mineral' },
  'human-or-pet-waste': { treatment: 'barred', because: 'never' },
};

/**
 * How the law looks on what was put on. A tea of animal matter counts as treated only where its compost does, its
 * water is clean and nothing was fed to it (21 CFR 112.51); what is not known of it counts against it.
 */
export function standingOf(put: PutId, tea: Tea | undefined): Standing {
  if (put !== 'compost-tea') return standings[put];
  if (tea === undefined || tea.of === 'unproven-compost') return { treatment: 'untreated', because: 'tea-of-unproven' };
  if (tea.water !== 'clean') return { treatment: 'untreated', because: 'tea-water' };
  if (tea.of === 'plant-compost') return { treatment: 'plant', because: 'plants-only' };
  return tea.fed ? { treatment: 'untreated', because: 'tea-fed' } : { treatment: 'treated', because: 'tea-sound' };
}
