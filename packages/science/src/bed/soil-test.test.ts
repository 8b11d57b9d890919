import { describe, expect, it } from 'vitest';
import { createDraws } from '../estimate/index.ts';
import { type SoilFigure, type SoilRead, soilTestRead } from './soil-test.ts';

function read(figure: SoilFigure): SoilRead {
  const outcome = soilTestRead.run({ figures: [figure] }, { draws: createDraws() });
  if (!outcome.ok) throw new RangeError('an answer');
  const [one] = outcome.value.figures;
  if (one === undefined) throw new RangeError('a figure');
  return one;
}

const phosphorus = (value: number, method: SoilFigure['method'], unit: SoilFigure['unit']): SoilRead =>
  read({ element: 'phosphorus', value, method, unit });
const by = ({ judged }: SoilRead, table: string) => judged.find((one) => one.table === table)?.class;

describe('what a soil test says', () => {
  // Rutgers Soil Testing Laboratory, Mehlich-3, lb/ac: 0-24, 25-45, 46-71, 72-137 (optimum), above 137.
  it.each([
    [45, 'low'],
    [46, 'medium'],
    [72, 'optimum'],
    [137, 'optimum'],
    [138, 'high'],
  ])('Mehlich-3 %d lb/ac is %s at Rutgers', (value, grade) => {
    expect(by(phosphorus(value, 'mehlich-3', 'lb/ac'), 'rutgers-p')).toBe(grade);
    // ppm = lb/ac / 2 (the same page).
    expect(by(phosphorus(value / 2, 'mehlich-3', 'ppm'), 'rutgers-p')).toBe(grade);
  });

  // Sims et al. 2002: to 50 below optimum, 51-100 optimum, above 100 above it, above 150 a danger. Ohio State: 20, 50, 120.
  it('shows tables of one method side by side, and takes the higher class', () => {
    const found = phosphorus(90, 'mehlich-3', 'mg/kg');
    expect(by(found, 'delaware-p')).toBe('optimum');
    expect(by(found, 'ohio-p')).toBe('high');
    expect(found).toMatchObject({ differ: true, taken: 'high', unit: 'ppm' });
  });

  // Midwest Vegetable Guide: none above 80 ppm Bray-1. Ohio State: harvests lower it 2 to 4 ppm a year, none gained above 50.
  it.each([
    [100, 12.5, 25],
    [84, 8.5, 17],
  ])('Bray-1 %d ppm takes %d to %d years of harvests to come down to 50', (value, least, most) => {
    const found = phosphorus(value, 'bray-1', 'ppm');
    expect(found.taken).toBe('excessive');
    expect(found.runDown_years).toEqual({ least, most, to_ppm: 50 });
  });

  // SR 2019/81 Schedule 5: Olsen, mg/L: 0-9, 10-15, 16-20, 21-25, 26-45, 46-70.
  it.each([
    [9, 'low'],
    [16, 'medium'],
    [25, 'optimum'],
    [26, 'high'],
    [46, 'excessive'],
  ])('Olsen %d mg/L is %s by the index of the United Kingdom', (value, grade) => {
    expect(by(phosphorus(value, 'olsen', 'mg/L'), 'uk-olsen-p')).toBe(grade);
  });

  it('turns neither a method nor milligrams in a litre into anything else', () => {
    expect(phosphorus(60, 'olsen', 'ppm').judged.map(({ table }) => table)).not.toContain('uk-olsen-p');
    expect(phosphorus(60, 'bray-1', 'ppm').judged.map(({ table }) => table)).toEqual(['midwest-p', 'oregon-bray-p']);
    expect(phosphorus(60, 'bray-1', 'mg/L')).toMatchObject({ judged: [], differ: false });
  });

  it('asks for method and unit where they are missing, and judges nothing', () => {
    const found = read({ element: 'phosphorus', value: 79.1 });
    expect(found).toEqual({ element: 'phosphorus', ask: ['method', 'unit'], judged: [], differ: false });
  });

  it('reads oxides as their element', () => {
    const oxide = read({ element: 'phosphorus', value: 229.14, unit: 'ppm', method: 'mehlich-3', asOxide: true });
    expect(oxide.value).toBeCloseTo(100, 6);
    expect(oxide.judged).toEqual(phosphorus(100, 'mehlich-3', 'ppm').judged);
  });
});
