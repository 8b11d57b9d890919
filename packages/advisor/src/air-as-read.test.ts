import { describe, expect, it } from 'vitest';
import { airAsRead } from './air-as-read.ts';

describe('the air as it was read beside a heap', () => {
  it('lies on straight lines between the readings, and stays as it was read before the first and after the last', () => {
    const air = [
      { at_day: 5, temp_degC: 14 },
      { at_day: 1, temp_degC: 6 },
    ];
    expect(airAsRead(air, 6.5)).toEqual([6, 6, 8, 10, 12, 14, 14, 14]);
  });

  it('is none where nobody read it', () => {
    expect(airAsRead([], 3)).toEqual([]);
  });
});
