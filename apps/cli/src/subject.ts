import type { Holding } from '@loamwright/daybook';
import { bad, good, nearest, type Outcome } from '@loamwright/science';

/** What a person may name. */
export type NamedSubject = 'heap' | 'bay' | 'bed';

/**
 * The id of the heap, bay or bed that a person names: by its name, whatever its case, or by its id. Of several of one name
 * the standing one is meant.
 *
 * Problems: `no-such-heap`, `no-such-bay`, `no-such-bed`, `which-heap`, `which-bay`, `which-bed`.
 */
export function subjectNamed(holding: Holding, type: NamedSubject, typed: string): Outcome<string> {
  const all = listOf[type](holding);
  const asked = plain(typed);
  const byId = all.find(({ id }) => id === typed);
  if (byId !== undefined) return good(byId.id);
  const found = all.filter(({ name }) => plain(name) === asked);
  const standing = found.filter((one) => one.standing);
  const chosen = standing.length > 0 ? standing : found;
  const [only] = chosen;
  if (only !== undefined && chosen.length === 1) return good(only.id);
  if (only !== undefined) {
    const wanted = chosen.map(({ id }) => id).join(', ');
    return bad({ code: `which-${type}`, path: '', found: typed, wanted });
  }
  const names = all.filter((one) => one.standing).map(({ name }) => name);
  return bad({
    code: `no-such-${type}`,
    path: '',
    found: typed.slice(0, 80),
    wanted: nearest(typed, names).join(', '),
  });
}

interface Named {
  readonly id: string;
  readonly name: string;
  readonly standing: boolean;
}

const listOf: Readonly<Record<NamedSubject, (holding: Holding) => readonly Named[]>> = {
  heap: heapsOf,
  bay: baysOf,
  bed: bedsOf,
};

function bedsOf(holding: Holding): readonly Named[] {
  return [...holding.beds.values()].map(({ id, setUp }) => ({ id, name: setUp.body.name, standing: true }));
}

function heapsOf(holding: Holding): readonly Named[] {
  return [...holding.heaps.values()].map(({ id, name, phase }) => ({ id, name, standing: phase !== 'gone' }));
}

function baysOf(holding: Holding): readonly Named[] {
  return [...holding.bays.values()].map(({ id, setUp }) => ({ id, name: setUp.body.name, standing: true }));
}

function plain(name: string): string {
  return name.normalize('NFC').trim().toLowerCase().replace(/\s+/gu, ' ');
}
