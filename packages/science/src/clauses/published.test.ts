import { convert } from '@loamwright/units';
import { describe, expect, it } from 'vitest';
import { createDraws } from '../estimate/index.ts';
import { allMaterials, doubtfulInputs } from '../material/index.ts';
import { clauseCheck } from './clause-check.ts';
import type { Clause, ClauseCheck, ClauseFinding, HeapFacts, LocalCode } from './clause-check-io.ts';
import { fallsUnder, stuffOf } from './stuff.ts';

const ft = (value: number): number => convert(value, 'ft', 'm');
const ft2 = (value: number): number => convert(value, 'ft2', 'm2');
const ft3 = (value: number): number => convert(value, 'ft3', 'm3');

const town = (of: string, clauses: readonly Clause[]): LocalCode => ({ of, whose: 'town', clauses });

// LaGrange, Ohio, codified ordinances (codelibrary.amlegal.com, lagrange_oh 0-0-0-20878), told second hand.
const lagrange = town('LaGrange, Ohio', [
  { kind: 'from-line', least_m: ft(5) },
  { kind: 'from-house', least_m: ft(15) },
  { kind: 'height', most_m: ft(4) },
  { kind: 'lot-share', most_pctOfLot: 1 },
  { kind: 'footprint', most_m2: ft2(75) },
  { kind: 'bars', stuff: ['animal-droppings'] },
]);
// A city code of 1991 to 2010 (ecode360.com/27565863; the town is not shown), seen in part.
const city = town('A city', [
  { kind: 'volume', most_m3: ft3(150), perLot_m2: ft2(10_000) },
  { kind: 'height', most_m: ft(5) },
  { kind: 'from-line', least_m: ft(3) },
  { kind: 'from-house', least_m: ft(20) },
  { kind: 'scraps-buried' },
]);
// Rochester Hills, Michigan, the city's page on composting (rochesterhills.org, NID 860).
const rochesterHills = town('Rochester Hills, Michigan', [
  { kind: 'from-line', least_m: ft(5) },
  { kind: 'sides', long_m: ft(8), short_m: ft(4) },
  { kind: 'height', most_m: ft(4) },
  { kind: 'allows', stuff: ['horse-manure'] },
]);
// Elk Grove Village, Illinois, village code (codelibrary.amlegal.com, elkgrovevillage_il 0-0-0-4070).
const elkGrove = town('Elk Grove Village, Illinois', [
  { kind: 'rear-yard' },
  { kind: 'height', most_m: ft(5) },
  { kind: 'footprint', most_m2: ft2(100) },
  { kind: 'bars', stuff: ['pet-waste'] },
]);

/** The plan of the grower's question: one bay of 4 ft with kitchen scraps and rabbit droppings behind the house. */
const bay: HeapFacts = {
  width_m: ft(4),
  depth_m: ft(4),
  height_m: ft(4),
  lot_m2: ft2(8000),
  fromLine_m: ft(6),
  fromHouse_m: ft(25),
  stuff: ['kitchen-scraps', 'rabbit-droppings'],
  rearYard: true,
};

function checked(codes: readonly LocalCode[], heap: HeapFacts, logMeets?: boolean): ClauseCheck {
  const found = clauseCheck.run({ codes, heap, ...(logMeets !== undefined && { logMeets }) }, { draws: createDraws() });
  if (!found.ok) throw new Error(JSON.stringify(found.problems));
  return found.value;
}

function findingsOf(code: LocalCode, heap: HeapFacts = bay): readonly ClauseFinding[] {
  return checked([code], heap).codes.flatMap(({ findings }) => findings);
}

const sizeAndPlace = new Set(['volume', 'height', 'footprint', 'lot-share', 'sides', 'from-line', 'from-house']);

describe('clause-check on four town codes', () => {
  it.each([lagrange, city, rochesterHills, elkGrove])('size and distance of the bay pass $of', (code) => {
    const judged = findingsOf(code).filter(({ kind }) => sizeAndPlace.has(kind));
    expect(judged.length).toBeGreaterThan(1);
    for (const { verdict } of judged) expect(verdict).toBe('pass');
  });

  it('the figures are 64 cubic feet, 16 square feet and 0.2 % of the lot', () => {
    const of = (code: LocalCode, kind: string): number | undefined =>
      findingsOf(code).find((finding) => finding.kind === kind)?.have;
    expect(of(city, 'volume')).toBeCloseTo(ft3(64), 9);
    expect(of(lagrange, 'footprint')).toBeCloseTo(ft2(16), 9);
    expect(of(lagrange, 'lot-share')).toBeCloseTo(0.2, 9);
    // 150 cubic feet for each 10,000 square feet is 120 on this lot.
    expect(findingsOf(city).find(({ kind }) => kind === 'volume')?.limit).toBeCloseTo(ft3(120), 9);
  });

  it('rabbit droppings fail the first and are unclear or unspoken of in the others', () => {
    expect(checked([lagrange], bay).standing).toBe('clause-fails');
    expect(findingsOf(lagrange)).toContainEqual({
      kind: 'bars',
      verdict: 'fail',
      why: 'barred',
      stuff: ['rabbit-droppings'],
    });
    for (const code of [city, rochesterHills]) {
      expect(checked([code], bay).standing).toBe('ask-first');
      const silence = findingsOf(code).find(({ kind }) => kind === 'silence');
      expect(silence).toMatchObject({ verdict: 'not-stated', why: 'code-silent' });
      expect(silence?.stuff).toContain('rabbit-droppings');
    }
    expect(checked([elkGrove], bay).standing).toBe('ask-first');
    expect(findingsOf(elkGrove)).toContainEqual({
      kind: 'bars',
      verdict: 'not-stated',
      why: 'unclear',
      stuff: ['rabbit-droppings'],
    });
  });

  it('whether scraps are buried was not told: that is the grower’s silence, not the code’s', () => {
    const buried = (heap: HeapFacts) => findingsOf(city, heap).find(({ kind }) => kind === 'scraps-buried');
    expect(buried(bay)).toMatchObject({ verdict: 'not-stated', why: 'grower-silent' });
    expect(buried({ ...bay, scrapsBuried: false })).toMatchObject({ verdict: 'fail', why: 'otherwise' });
    expect(buried({ ...bay, scrapsBuried: true })).toMatchObject({ verdict: 'pass', why: 'as-asked' });
    expect(buried({ ...bay, stuff: ['garden-stuff'] })).toMatchObject({ verdict: 'pass', why: 'none-of-it' });
  });

  it.each([
    ['a third taller fails where 4 ft are allowed', lagrange, { height_m: ft(4) * (4 / 3) }, 'height', 'fail'],
    ['a third taller fails where 5 ft are allowed', elkGrove, { height_m: ft(4) * (4 / 3) }, 'height', 'fail'],
    ['a third lower passes', lagrange, { height_m: ft(4) * (2 / 3) }, 'height', 'pass'],
    ['a third nearer to the line fails at 5 ft', lagrange, { fromLine_m: ft(4) }, 'from-line', 'fail'],
    ['and passes at 3 ft', city, { fromLine_m: ft(4) }, 'from-line', 'pass'],
    ['a third nearer to the house fails at 20 ft', city, { fromHouse_m: ft(16.7) }, 'from-house', 'fail'],
    ['and passes at 15 ft', lagrange, { fromHouse_m: ft(16.7) }, 'from-house', 'pass'],
    [
      'a third wider both ways passes 4 by 8 ft no more',
      rochesterHills,
      { width_m: ft(5.33), depth_m: ft(5.33) },
      'sides',
      'fail',
    ],
    ['but turned either way 8 by 4 does', rochesterHills, { width_m: ft(8), depth_m: ft(4) }, 'sides', 'pass'],
    ['on a third of the lot the volume is too much', city, { lot_m2: ft2(8000 / 3) }, 'volume', 'fail'],
  ] as const)('%s', (_says, code, changed, kind, verdict) => {
    expect(findingsOf(code, { ...bay, ...changed }).find((finding) => finding.kind === kind)?.verdict).toBe(verdict);
  });

  it('a failed clause outranks a perfect log, and a poor log shows only where all clauses pass', () => {
    expect(checked([lagrange], bay, true).standing).toBe('clause-fails');
    const plants: HeapFacts = { ...bay, stuff: ['garden-stuff'] };
    const plain = town('A town', [
      { kind: 'height', most_m: ft(4) },
      { kind: 'allows', stuff: ['garden-stuff'] },
    ]);
    expect(checked([plain], plants, true).standing).toBe('clauses-pass');
    expect(checked([plain], plants, false).standing).toBe('log-falls-short');
    expect(checked([plain, lagrange], { ...bay }, true).standing).toBe('clause-fails');
  });
});

describe('distances from wells and lines', () => {
  // Michigan State University Extension, isolation distances to protect water quality: manure stored 150 ft from a
  // single-family well. Southern Nevada Health District: 100 ft. Klickitat County, Washington: 50 to 100 ft to the line.
  it.each([
    ['Michigan', { kind: 'from-water', least_m: ft(150) }, { fromWater_m: ft(149) }, 'fail'],
    ['Michigan', { kind: 'from-water', least_m: ft(150) }, { fromWater_m: ft(150) }, 'pass'],
    ['Southern Nevada', { kind: 'from-water', least_m: ft(100) }, { fromWater_m: ft(149) }, 'pass'],
    ['Klickitat County', { kind: 'from-line', least_m: ft(50) }, { fromLine_m: 15.2 }, 'fail'],
    ['Klickitat County', { kind: 'from-line', least_m: ft(50) }, { fromLine_m: 15.24 }, 'pass'],
    ['Klickitat County', { kind: 'from-line' }, { fromLine_m: 15.24 }, 'not-stated'],
    ['Southern Nevada', { kind: 'from-water', least_m: ft(100) }, {}, 'not-stated'],
  ] as const)('%s %j, heap %j: %s', (of, clause, heap, verdict) => {
    expect(checked([town(of, [clause])], heap).codes[0]?.verdict).toBe(verdict);
  });

  it('tells whose silence it is', () => {
    const [code] = findingsOf(town('One', [{ kind: 'height' }]));
    const [grower] = findingsOf(town('Two', [{ kind: 'height', most_m: 1 }]), {});
    expect([code?.why, grower?.why]).toEqual(['code-silent', 'grower-silent']);
  });
});

describe('sorts of stuff', () => {
  it('every manure of the materials is droppings of a kind, and no plant is', () => {
    for (const { id, class: kind, permitReason } of allMaterials) {
      const isManure = permitReason === 'manure-is-raw-until-proved';
      expect(fallsUnder(stuffOf(id, kind), 'animal-droppings') === 'is', id).toBe(isManure);
    }
  });

  it('what stands among the doubtful is sorted where a code would name it', () => {
    const sortsOf = Object.fromEntries(doubtfulInputs.map(({ id }) => [id, stuffOf(id)]));
    expect(sortsOf).toMatchObject({
      'human-waste': 'human-waste',
      'dog-cat-waste': 'dog-or-cat-waste',
      'meat-fish-dairy': 'meat-or-fish',
      carcasses: 'meat-or-fish',
    });
  });

  it('an allowed list that is the whole of it shuts out the rest; one that names is silent on the rest', () => {
    const names = (only: boolean) => findingsOf(town('One', [{ kind: 'allows', stuff: ['garden-stuff'], only }]));
    expect(names(true)).toMatchObject([{ verdict: 'fail', why: 'not-named' }]);
    expect(names(false)).toMatchObject([{ verdict: 'pass' }, { kind: 'silence', verdict: 'not-stated' }]);
  });
});
