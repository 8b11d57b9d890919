import { createSpeaker } from '@loamwright/words';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findMaterials, type MaterialWords, matchKinds } from './find.ts';
import { allMaterials } from './material.ts';

const speaker = createSpeaker({ locale: 'en', system: 'metric' });
const english: readonly MaterialWords[] = allMaterials.map(({ id }) => ({
  id,
  name: speaker.sayIf(`material.${id}.name`, ''),
  words: speaker.sayIf(`material.${id}.words`, ''),
}));
const first = (text: string): string | undefined => findMaterials(text, english)[0]?.id;
const namesOf = ({ name, words }: MaterialWords): readonly string[] => [name, ...words.split(',').map((w) => w.trim())];

describe('the words of the materials', () => {
  it('lead from each name and each other word to one material only', () => {
    const owners = new Map<string, string>();
    for (const material of english) {
      for (const name of namesOf(material)) {
        expect(name, material.id).not.toBe('');
        const exact = findMaterials(name, english).filter(({ match }) => match === 'exact');
        expect(
          exact.map(({ id }) => id),
          name,
        ).toEqual([material.id]);
        owners.set(name, material.id);
      }
    }
    expect(owners.size).toBeGreaterThan(3 * english.length);
  });

  // Regional pairs, common practice, no source: American, British, Irish, Australian, Indian English, Channel Islands.
  it.each([
    ['corn stalks', 'maize-stalks'],
    ['maize stalk', 'maize-stalks'],
    ['corncobs', 'maize-cobs'],
    ['pine bedding', 'wood-shavings'],
    ['mowings', 'grass-clippings'],
    ['lawn clippings', 'grass-clippings'],
    ['grass cuttings', 'grass-clippings'],
    ['muck', 'farmyard-manure'],
    ['FYM', 'farmyard-manure'],
    ['chook litter', 'poultry-litter'],
    ['vraic', 'seaweed'],
    ['wrack', 'seaweed'],
    ['brash', 'prunings'],
    ['alfalfa', 'legume-greens'],
    ['lucerne hay', 'hay-legume'],
    ['leaf mold', 'leaf-mould'],
    ['linden leaves', 'lime-tree-leaves'],
    ['zucchini plants', 'squash-vines'],
    ['eggplant plants', 'pepper-plants'],
    ['burlap', 'cotton-rags'],
    ['hessian', 'cotton-rags'],
    ['dried blood', 'blood-meal'],
    ['garden lime', 'ground-limestone'],
    ['fall leaves', 'autumn-leaves'],
    ['draff', 'brewers-grains'],
    ['donkey manure', 'horse-manure-straw'],
    ['horse muck', 'horse-manure-straw'],
    ['lawn mowings', 'grass-clippings'],
    ['wet grass', 'grass-clippings'],
    ['pine straw', 'pine-needles'],
    ['gobar', 'cattle-manure'],
    ['bhusa', 'wheat-straw'],
    ['brinjal plants', 'pepper-plants'],
    ['neem cake', 'seed-meal'],
    ['praties', 'potatoes'],
    ['shaws', 'potato-tops'],
    ['feamainn', 'seaweed'],
    ['scraws', 'turf'],
    ['gum leaves', 'oak-leaves'],
    ['silverbeet', 'salad-leaves'],
    ['kumara', 'root-vegetables'],
    ['chook poo', 'hen-manure'],
    ['lucerne mulch', 'hay-legume'],
    ['gunny bags', 'cotton-rags'],
    ['scraps', 'kitchen-scraps'],
  ])('“%s” is %s', (typed, id) => {
    expect(findMaterials(typed, english)[0]).toMatchObject({ id, match: 'exact' });
  });
});

describe('a search', () => {
  it('puts exact before prefix before word', () => {
    const found = findMaterials('hay', english);
    expect(found[0]).toEqual({ id: 'hay-grass', word: 'hay', match: 'exact' });
    const ranks = found.map(({ match }) => matchKinds.indexOf(match));
    expect(ranks).toEqual([...ranks].sort((a, b) => a - b));
    expect(found).toContainEqual({ id: 'spoiled-hay', word: 'spoiled hay', match: 'word' });
  });

  it('puts the name before another word that begins alike', () => {
    const own: readonly MaterialWords[] = [
      { id: 'a', name: 'stable sweepings', words: 'pony bedding' },
      { id: 'b', name: 'pony muck', words: '' },
    ];
    expect(findMaterials('pony', own).map(({ id }) => id)).toEqual(['b', 'a']);
  });

  it('takes the words in any order, whole or begun', () => {
    expect(findMaterials('straw wheat', english)[0]).toMatchObject({ id: 'wheat-straw', match: 'word' });
    expect(findMaterials('horse shav', english).map(({ id }) => id)).toEqual(['horse-manure-shavings']);
  });

  it.each([
    ['  Straw ', 'straw'],
    ['GRASS-CLIPPINGS', 'grass-clippings'],
    ['cafe grounds', 'coffee-grounds'],
    ['coffee ground', 'coffee-grounds'],
    ['ashes (cold)', 'wood-ash'],
  ])('makes nothing of capitals, hyphens, accents, plurals or brackets: “%s”', (typed, id) => {
    expect(first(typed)).toBe(id);
  });

  it.each([
    ['cardbord', 'corrugated-cardboard'],
    ['sawdsut', 'sawdust'],
    ['chiken manure', 'hen-manure'],
    ['comfry', 'comfrey'],
    ['seewead', 'seaweed'],
  ])('guesses what “%s” was meant for', (typed, id) => {
    const found = findMaterials(typed, english);
    expect(found[0]).toMatchObject({ id, match: 'near' });
    expect(found.length).toBeLessThanOrEqual(5);
  });

  it.each(['', '   ', '()', 'xqzzt'])('finds nothing for “%s”', (typed) => {
    expect(findMaterials(typed, english)).toEqual([]);
  });

  it('finds a grower’s own name beside the published ones', () => {
    const own = { id: 'our-mulch', name: 'Quarry Lane mulch', words: '' };
    expect(findMaterials('quarry', [own, ...english])[0]).toEqual({
      id: 'our-mulch',
      word: 'Quarry Lane mulch',
      match: 'prefix',
    });
  });

  it('never throws, never repeats a material and is the same each time, whatever is typed', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 30 }), (typed) => {
        const found = findMaterials(typed, english);
        expect(new Set(found.map(({ id }) => id)).size).toBe(found.length);
        expect(findMaterials(typed, english)).toEqual(found);
      }),
      { seed: 11, numRuns: 100 },
    );
  });
});
