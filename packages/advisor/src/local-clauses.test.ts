import { fold } from '@loamwright/daybook';
import { testWriter } from '@loamwright/daybook/testing';
import { type Clause, createDraws, namedIds } from '@loamwright/science';
import { createSpeaker } from '@loamwright/words';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  clausePhrase,
  clauseSaying,
  codesOf,
  daybookLines,
  entriesOfClause,
  heapClauses,
  keptClauses,
  readClause,
} from './index.ts';
import { hotHeap, noonOf, sixteenHotDays } from './testing/hot-heap.ts';

const us = createSpeaker({ locale: 'en', system: 'us' });
const metric = createSpeaker({ locale: 'en', system: 'metric' });

const figure = fc.double({ min: 0.01, max: 5000, noNaN: true });
const clauses: fc.Arbitrary<Clause> = fc.oneof(
  fc.record({ kind: fc.constant('height' as const), most_m: figure }),
  fc.record({ kind: fc.constant('footprint' as const), most_m2: figure }),
  fc.record({ kind: fc.constant('volume' as const), most_m3: figure, perLot_m2: figure }),
  fc.record({ kind: fc.constantFrom('from-line' as const, 'from-house', 'from-water'), least_m: figure }),
  fc.record({ kind: fc.constant('bars' as const), stuff: fc.subarray([...namedIds], { minLength: 1 }) }),
  fc.record({ kind: fc.constantFrom('rear-yard' as const, 'covered', 'volume', 'height', 'footprint', 'lot-share') }),
);

describe('a clause as it is written down', () => {
  // 12 figures are kept: an error of at most 5 in the 12th, and what clause-check calls equal is 1e-9.
  it('means the same to who reads in feet and who reads in metres', () => {
    fc.assert(
      fc.property(
        clauses,
        fc.constantFrom('us' as const, 'metric'),
        fc.constantFrom('us' as const, 'metric'),
        (clause, by, to) => {
          const read = readClause(clausePhrase(clause, by), '', to);
          if (!read.ok) throw new RangeError(JSON.stringify(read.problems));
          const figures = (one: Clause): readonly number[] =>
            Object.values(one).filter((value) => typeof value === 'number');
          const [had, has] = [figures(clause), figures(read.value)];
          expect(has.map((value, i) => Math.abs(value / (had[i] ?? 0) - 1) < 1e-10)).toEqual(had.map(() => true));
          expect({ ...read.value, ...clause }).toEqual(clause);
        },
      ),
    );
  });

  it.each([
    ['height 4ft', 'at most 4 ft high'],
    ['volume 150ft3 per 10000ft2', 'at most 150 ft³ for each 10,000 ft² of lot'],
    ['sides 4x8ft', 'sides of at most 8 ft and 4 ft'],
    ['from-water 100ft', 'at least 100 ft to a well or water'],
    ['lot-share 1%', 'at most 1 % of the lot'],
    ['bars pet-waste, human-waste', 'bars pet waste and human waste'],
    ['allows-only garden-stuff', 'allows garden stuff and nothing else'],
    ['rear-yard', 'it stands behind the house'],
    ['from-house', 'a limit for the distance to the neighbour’s house, without a figure'],
  ])('%s is told as “%s”', (phrase, said) => {
    const read = readClause(phrase, '', 'metric');
    expect(read.ok && us.tell(clauseSaying(read.value))).toBe(said);
  });

  it.each(['height 99999ft', 'from-line 200000m', 'height 0', 'bars dragons'])('%s is refused', (phrase) => {
    expect(readClause(phrase, '', 'metric').ok).toBe(false);
  });
});

const town = (text: string) => ({ title: 'Town', text, source: 'town' });

describe('the clauses of a daybook', () => {
  it('of one name are one code, and what can’t be read is kept apart, not passed over', () => {
    const writer = testWriter();
    writer.write('local-clause', 'one', town('height 4ft\nbars pet-waste'));
    writer.write('local-clause', 'two', town('rear-yard'));
    writer.write('local-clause', 'three', { title: 'The lease', text: 'no smell after noon', source: 'landlord' });
    const kept = keptClauses(fold(writer.entries), 'us');
    expect(kept.map(({ of, whose, clauses: own }) => [of, whose, own.length])).toEqual([
      ['Town', 'town', 3],
      ['The lease', 'landlord', 1],
    ]);
    expect(codesOf(kept)).toMatchObject([
      { of: 'Town', clauses: [{ kind: 'height' }, { kind: 'bars' }, { kind: 'rear-yard' }] },
    ]);
    const told = daybookLines(writer.entries, fold(writer.entries)).map(({ said }) => metric.tell(said));
    expect(told).toContain('Rule of the place, Town: at most 1.2 m high and bars pet waste');
    expect(told).toContain('Rule of the place, The lease: no smell after noon');
  });

  it('once taken back leave nothing of it, however often it was rewritten or amended', () => {
    const writer = testWriter();
    const first = writer.write('local-clause', 'one', town('height 4ft'));
    writer.write('local-clause', 'one', town('height 5ft'), { amends: first.id });
    const later = writer.write('local-clause', 'one', town('height 6ft'));
    writer.write('local-clause', 'two', town('rear-yard'));
    const ids = entriesOfClause('one', fold(writer.entries), writer.entries);
    expect(ids).toEqual([first.id, later.id]);
    for (const id of ids) writer.withdraw(id);
    const kept = keptClauses(fold(writer.entries), 'us');
    expect(kept.flatMap(({ clauses: own }) => own.map(({ phrase }) => phrase))).toEqual(['rear-yard']);
  });

  it('come before the best of logs, and what the grower says before what was built', () => {
    const writer = hotHeap(sixteenHotDays);
    writer.write('local-clause', 'one', town('height 4ft'));
    const holding = fold(writer.entries);
    const heap = holding.heaps.get('heap');
    if (heap === undefined) throw new RangeError('no heap');
    const asked = { now: noonOf(40), draws: createDraws(), kept: keptClauses(holding, 'us') };
    const standing = (height_m: number) => {
      const found = heapClauses(heap, holding, { ...asked, told: { height_m } });
      return found?.ok === true ? [found.value.found.standing, found.value.logMeets] : found;
    };
    expect(standing(1.5)).toEqual(['clause-fails', true]);
    expect(standing(1)).toEqual(['ask-first', true]);
    expect(heapClauses(heap, holding, { ...asked, kept: [], told: {} })).toBeNull();
  });
});
