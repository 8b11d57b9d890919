import sources from '@loamwright/reference/sources.json' with { type: 'json' };
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { knownMaterial } from '../index.ts';
import { type BeliefQuestion, beliefs, beliefsFor, findBeliefs } from './index.ts';

const topics = [...new Set(beliefs.flatMap(({ when }) => when.topics ?? []))];
const materials = [...new Set(beliefs.flatMap(({ when }) => when.materials ?? []))];

describe('every belief', () => {
  it.each(beliefs)('$id rests on publications that the table of sources knows, or says that there is none', (one) => {
    expect(one.sources.length).toBeGreaterThan(0);
    for (const { source, place } of one.sources) {
      expect(Object.keys(sources)).toContain(source);
      expect(place).toMatch(/\w/u);
    }
    // What growers hold and what they practise bears a belief out no further than that.
    const published = one.sources.filter(
      ({ source }) => !['common-practice', 'growers-questions', 'own-judgement'].includes(source),
    );
    if (one.evidence === 'none') {
      expect(one.finding).toBe('unknown');
      expect(one.sources.map(({ source }) => source)).toContain('common-practice');
    } else {
      expect(published.filter(({ mark }) => mark === 'seen').length).toBeGreaterThan(0);
      const isRule = published.some(({ source }) => source.startsWith('cfr-'));
      if (one.evidence === 'strong' && !isRule) expect(published.length).toBeGreaterThan(1);
    }
  });

  it.each(beliefs)('$id is called up by something that the program knows', ({ id, when }) => {
    expect(when.topics?.length ?? 0).toBeGreaterThan(0);
    for (const material of when.materials ?? []) expect(knownMaterial(material), material).toBeDefined();
    for (const topic of when.topics ?? []) expect(beliefsFor({ topics: [topic] })).toContain(id);
  });
});

describe('the beliefs of a question', () => {
  it.each<readonly [string, BeliefQuestion, string | undefined]>([
    ['nothing but grass', { materials: ['grass-clippings'] }, 'grass-alone'],
    ['grass with leaves', { materials: ['grass-clippings', 'autumn-leaves'] }, 'mostly-brown'],
    ['coffee grounds', { materials: ['straw', 'coffee-grounds'] }, 'acid-coffee'],
    ['lime', { materials: ['goat-bedding', 'ground-limestone'] }, 'lime-cures-smell'],
    ['a quarter of a cubic metre', { volume_m3: 0.25 }, 'nine-cubic-feet'],
    ['a cubic metre of straw and bedding', { materials: ['straw', 'goat-bedding'], volume_m3: 1 }, undefined],
    ['nothing known', {}, undefined],
  ])('%s', (_what, question, first) => {
    expect(beliefsFor(question)[0]).toBe(first);
  });

  it('does not tell of grass alone where it is not alone', () => {
    expect(beliefsFor({ materials: ['grass-clippings', 'straw'] })).not.toContain('grass-alone');
  });

  it('keeps the order of the table and names none twice, and more said calls up no fewer', () => {
    fc.assert(
      fc.property(
        fc.subarray(materials),
        fc.subarray(topics),
        fc.option(fc.double({ min: 0.01, max: 5, noNaN: true }), { nil: undefined }),
        (some, about, volume_m3) => {
          const found = beliefsFor({ materials: some, topics: about, volume_m3 });
          expect(found).toEqual(beliefs.map(({ id }) => id).filter((id) => found.includes(id)));
          const fewer = beliefsFor({ materials: some, topics: about.slice(1) });
          for (const id of fewer) expect(found).toContain(id);
        },
      ),
      { seed: 31, numRuns: 200 },
    );
  });
});

describe('looking a belief up', () => {
  const known = [
    { id: 'acid-coffee', held: 'Coffee grounds are acid.', words: 'sour, pH' },
    { id: 'tea-for-days', held: 'Brew tea for days.', words: 'molasses' },
    { id: 'coffee-one-fifth', held: 'Never more than 20 % grounds.', words: 'coffee, limit' },
  ] as const;

  it.each([
    ['is coffee acid?', ['acid-coffee']],
    ['COFFEE', ['acid-coffee', 'coffee-one-fifth']],
    ['molas', ['tea-for-days']],
    ['20', ['coffee-one-fifth']],
    ['is it so', []],
    ['', []],
  ])('“%s” finds %j', (text, ids) => {
    expect(findBeliefs(text, known)).toEqual(ids);
  });

  it('never throws', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        expect(findBeliefs(text, known).length).toBeLessThanOrEqual(known.length);
      }),
      { seed: 32 },
    );
  });
});
