import { describe, expect, it } from 'vitest';
import { clauseOf, NO_FIGURES, withFigure } from './asked.ts';

describe('a clause as it is asked', () => {
  it('names no figure where none is filled in', () => {
    expect(clauseOf('lot-share', NO_FIGURES)).toEqual({ kind: 'lot-share' });
    expect(clauseOf('lot-share', withFigure(NO_FIGURES, 'limit', 1, false))).toEqual({
      kind: 'lot-share',
      most_pctOfLot: 1,
    });
  });

  it('is none while a figure of it can’t be read, and is there again once that is mended or left empty', () => {
    const wrong = withFigure(withFigure(NO_FIGURES, 'limit', 4, false), 'perLot_m2', null, true);
    expect(clauseOf('volume', wrong)).toBeNull();
    expect(clauseOf('volume', withFigure(wrong, 'limit', 5, false))).toBeNull();
    expect(clauseOf('volume', withFigure(wrong, 'perLot_m2', 100, false))).toEqual({
      kind: 'volume',
      most_m3: 4,
      perLot_m2: 100,
    });
    expect(clauseOf('volume', withFigure(wrong, 'perLot_m2', null, false))).toEqual({ kind: 'volume', most_m3: 4 });
  });
});
