import { fold } from '@loamwright/daybook';
import { arbitraryDaybook, testWriter } from '@loamwright/daybook/testing';
import { isEstimate, likely, materialById } from '@loamwright/science';
import { createSpeaker } from '@loamwright/words';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stockReport } from './index.ts';

const metric = createSpeaker({ locale: 'en', system: 'metric' });
const at = (day: number): string => `2026-05-${String(day).padStart(2, '0')}T12:00:00.000Z`;
const sack = { p10: 8, p50: 10, p90: 13 };

describe('the store', () => {
  it('keeps the range of what is left, the oldest used first', () => {
    const writer = testWriter();
    writer.write('stock-in', 'coffee-grounds', { mass_kg: sack }, { happened: at(1) });
    writer.write('stock-in', 'coffee-grounds', { mass_kg: sack }, { happened: at(8) });
    writer.write('stock-out', 'coffee-grounds', { mass_kg: 15, why: 'used' }, { happened: at(9) });
    const [line] = stockReport(fold(writer.entries), at(10)).lines;
    expect(line?.mass_kg).toEqual({ p10: 4, p50: 5, p90: 6.5 });
    expect(line?.oldest_days).toBe(2);
    // Storage life of the table of materials, beside its source there.
    expect(line?.left_days).toBe((materialById('coffee-grounds')?.values.storageLife_days?.typical ?? 0) - 2);
  });

  it('puts what spoils soonest first, and says so', () => {
    const writer = testWriter();
    writer.write('stock-in', 'straw', { mass_kg: 40 }, { happened: at(1) });
    writer.write('stock-in', 'coffee-grounds', { mass_kg: 10 }, { happened: at(1) });
    writer.write('stock-in', 'grass-clippings', { mass_kg: 20 }, { happened: at(5) });
    const { lines } = stockReport(fold(writer.entries), at(10));
    expect(lines.map(({ said }) => metric.tell(said))).toEqual([
      '20 kg of grass clippings',
      '10 kg of coffee grounds',
      '40 kg of straw',
    ]);
    expect(lines.map(({ keeping }) => (keeping === null ? '' : metric.tell(keeping)).slice(0, 14))).toEqual([
      'Use it first: ',
      'Use it within ',
      'The oldest of ',
    ]);
  });

  it('says when the book does not add up', () => {
    const writer = testWriter();
    writer.write('stock-out', 'straw', { mass_kg: 5, why: 'used' }, { happened: at(1) });
    const [line] = stockReport(fold(writer.entries), at(2)).lines;
    expect(line?.mass_kg).toBe(-5);
    expect(line?.oldest_days).toBeNull();
    expect(metric.tell(line?.keeping ?? { key: 'advisor.stock.none' })).toContain('count it');
  });

  it('agrees with the book, whatever was written', () => {
    fc.assert(
      fc.property(arbitraryDaybook(), (entries) => {
        const holding = fold(entries);
        for (const { material, mass_kg } of stockReport(holding, '2026-03-01T12:00:00.000Z').lines) {
          // Less than 50 g of a batch is dropped as a rounding, and there are at most 40 batches.
          const booked = holding.stock.get(material)?.mass_kg ?? Number.NaN;
          expect(Math.abs(likely(mass_kg) - booked)).toBeLessThan(40 * 0.05);
          if (isEstimate(mass_kg)) expect(mass_kg.p10).toBeLessThan(mass_kg.p90);
        }
      }),
      { seed: 11, numRuns: 100 },
    );
  });
});
