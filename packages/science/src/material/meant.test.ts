import { createSpeaker } from '@loamwright/words';
import { describe, expect, it } from 'vitest';
import type { MaterialWords } from './find.ts';
import { allMaterials, doubtfulInputs, generalNames } from './material.ts';
import { meant, type Vocabulary } from './meant.ts';

const speaker = createSpeaker({ locale: 'en', system: 'metric' });
const words = (kind: string, id: string): MaterialWords => ({
  id,
  name: speaker.sayIf(`${kind}.${id}.name`, id.replaceAll('-', ' ')),
  words: speaker.sayIf(`${kind}.${id}.words`, ''),
});
const english: Vocabulary = {
  own: [],
  materials: allMaterials.map(({ id }) => words('material', id)),
  doubtful: doubtfulInputs.map(({ id }) => words('doubtful', id)),
  general: generalNames.map(({ id, materials }) => ({ ...words('general', id), materials })),
};

describe('what a name means', () => {
  it('is one thing, whichever of the three lists it stands in', () => {
    const owners = new Map<string, string>();
    for (const list of ['materials', 'doubtful', 'general'] as const) {
      for (const { id, name, words: others } of english[list]) {
        for (const word of new Set([name, ...others.split(',').map((one) => one.trim())])) {
          // The one name that is both: as a material it is laid, and after a plus it says what is in another.
          if (word === 'weeds in seed') continue;
          if (word === id.replaceAll('-', ' ') && owners.get(word) === id) continue;
          expect(owners.get(word), word).toBeUndefined();
          owners.set(word, id);
        }
      }
    }
    expect(owners.size).toBeGreaterThan(1500);
  });

  it.each(generalNames)('$id is too general, and asks which of some known ones', ({ id, materials }) => {
    for (const word of words('general', id).words.split(',')) {
      expect(meant(word, english), word).toEqual({ is: 'which', ids: materials });
    }
    for (const one of materials) expect(allMaterials.map((material) => material.id)).toContain(one);
  });

  it.each([
    ['meat', 'meat-fish-dairy'],
    ['fish', 'meat-fish-dairy'],
    ['some old cheese', 'meat-fish-dairy'],
    ['cooking oil', 'meat-fish-dairy'],
    ['kitty litter', 'dog-cat-waste'],
    ['tanalised timber', 'treated-wood'],
    ['weedkiller grass', 'treated-lawn-clippings'],
    ['club root', 'quarantine-disease'],
    ['powdery mildew', 'diseased-plants'],
  ])('“%s” is met with its caution, not with a guess at its spelling', (typed, id) => {
    expect(meant(typed, english)).toEqual({ is: 'doubtful', id });
  });

  it('of which one material alone has a part is that material; of more it asks', () => {
    expect(meant('stinging', english)).toEqual({ is: 'material', id: 'nettles' });
    const horse = meant('horse', english);
    expect(horse.is === 'which' && horse.ids).toContain('horse-droppings');
  });

  it('goes to the holding’s own material first', () => {
    const own = [{ id: 'our-muck', name: 'muck', words: '' }];
    expect(meant('muck', { ...english, own })).toEqual({ is: 'material', id: 'our-muck' });
    expect(meant('muck', english)).toEqual({ is: 'material', id: 'farmyard-manure' });
  });

  it('asks where two of the holding’s own go by one name', () => {
    const own = ['a', 'b'].map((id) => ({ id, name: 'pit muck', words: '' }));
    expect(meant('pit muck', { ...english, own })).toEqual({ is: 'which', ids: ['a', 'b'] });
  });

  it('is a slip of the pen only when nothing knows it, and then something near is offered', () => {
    const slip = meant('cardbord', english);
    expect(slip.is === 'unknown' && slip.near[0]).toBe('corrugated-cardboard');
    const nonsense = meant('xqzzt', english);
    expect(nonsense.is === 'unknown' && nonsense.near.length).toBeGreaterThan(0);
  });
});
