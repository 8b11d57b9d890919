import type { UnitSystem } from '@loamwright/units';
import { useSyncExternalStore } from 'react';
import { asRecord, stored } from './stored.ts';

/** How the page looks; `auto` follows the phone. */
export type Theme = 'auto' | 'light' | 'dark' | 'sunlight';

/** Which daybook is open; null before the first choice. */
export type OpenBook = 'own' | 'demo' | null;

/** The grower's own sizes of their measures, litres, by measure id; a measure that isn't named has its usual size. */
export type OwnMeasures = Readonly<Record<string, number>>;

export interface Settings {
  readonly system: UnitSystem;
  readonly theme: Theme;
  /** The person's name as they write it. */
  readonly person: string;
  readonly measures_L: OwnMeasures;
  readonly book: OpenBook;
  /** Whether an own daybook was ever begun here: that is where the way out of the demo leads. */
  readonly begun: boolean;
  /** Id of the own holding, made when the daybook is begun and taken over by its first entry. */
  readonly holding: string | null;
  /** Whether the daybook is exchanged with the computer without asking; null before it was ever exchanged. */
  readonly exchanges: 'by-itself' | 'when-told' | null;
}

const themes: readonly Theme[] = ['auto', 'light', 'dark', 'sunlight'];

const kept = stored('loamwright.settings', (raw): Settings => {
  const found = asRecord(raw);
  return {
    system: found['system'] === 'us' || found['system'] === 'metric' ? found['system'] : usualSystem(),
    theme: themes.find((theme) => theme === found['theme']) ?? 'auto',
    person: typeof found['person'] === 'string' ? found['person'] : '',
    measures_L: sizes(found['measures_L']),
    book: found['book'] === 'own' || found['book'] === 'demo' ? found['book'] : null,
    begun: found['begun'] === true,
    holding: typeof found['holding'] === 'string' ? found['holding'] : null,
    exchanges: found['exchanges'] === 'by-itself' || found['exchanges'] === 'when-told' ? found['exchanges'] : null,
  };
});

/** A first guess only: the first screen asks. */
function usualSystem(): UnitSystem {
  return /-(?:US|LR|MM)$/u.test(navigator.language) ? 'us' : 'metric';
}

function sizes(raw: unknown): OwnMeasures {
  return Object.fromEntries(
    Object.entries(asRecord(raw)).filter((pair): pair is [string, number] => {
      const size_L = pair[1];
      return typeof size_L === 'number' && size_L > 0 && Number.isFinite(size_L);
    }),
  );
}

export function settings(): Settings {
  return kept.get();
}

export function changeSettings(change: Partial<Settings>): void {
  kept.set({ ...kept.get(), ...change });
}

export function useSettings(): Settings {
  return useSyncExternalStore(kept.subscribe, kept.get);
}

/** The person as an entry names them: a plain word made of their name. */
export function personId(person: string): string {
  const word = person
    .normalize('NFD')
    .toLowerCase()
    .replace(/\p{M}/gu, '')
    .replace(/[^a-z0-9]+/gu, '-')
    .slice(0, 60)
    .replace(/^-+|-+$/gu, '');
  return word === '' ? 'keeper' : word;
}

/** Calls back whenever the settings change. */
export function onSettings(listener: () => void): () => void {
  return kept.subscribe(listener);
}
