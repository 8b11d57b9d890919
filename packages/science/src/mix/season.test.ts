import loadHighs from 'highs';
import { describe, expect, it } from 'vitest';
import { createDraws } from '../estimate/index.ts';
import { materialById } from '../material/index.ts';
import { highsSolver, type MilpSolver } from '../solver/index.ts';
import { mixSolve } from './mix-solve.ts';
import { mixParameters } from './parameters.ts';
import { commonMends, type Season } from './season.ts';
import type { MixSolution, MixSolveInput } from './solution.ts';

const solver: MilpSolver = highsSolver(await loadHighs());
const needs = { draws: createDraws(), solver };

function solve(input: MixSolveInput): MixSolution {
  const outcome = mixSolve.run(input, needs);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

/** Everything that an answer sends somebody to fetch. */
const fetched = ({ mends, alternatives }: MixSolution): readonly string[] =>
  [...mends, ...alternatives].flatMap(({ fetch }) =>
    fetch.flatMap(({ material, onHand }) => (onHand ? [] : [material])),
  );

const woody: MixSolveInput = { stock: [{ material: 'wood-chips', amount: { measure: 'barrow', count: 8 } }] };

// Which month things are to be had in: common practice, no source (`reference/mix.json`, inSeason).
describe('what is to be had nearby', () => {
  const january: Season = { month: 1, hemisphere: 'north' };

  it('nobody mows in January, and nobody rakes leaves in July', () => {
    expect(commonMends(january).outOfSeason).toContain('grass-clippings');
    expect(commonMends(january).mends).not.toContain('grass-clippings');
    expect(commonMends({ month: 7, hemisphere: 'north' }).outOfSeason).toContain('autumn-leaves');
    expect(commonMends({ month: 7, hemisphere: 'north' }).mends).toContain('nettles');
  });

  it('south of the equator the seasons are half a year apart', () => {
    for (let month = 1; month <= 12; month++) {
      const there = { month: ((month + 5) % 12) + 1, hemisphere: 'south' as const };
      expect(commonMends(there)).toEqual(commonMends({ month, hemisphere: 'north' }));
    }
  });

  it('where the season is not known nothing is passed over', () => {
    expect(commonMends(undefined)).toEqual({ mends: mixParameters.mends, outOfSeason: [] });
  });

  it('every month leaves something rich and something dry to fetch', () => {
    for (let month = 1; month <= 12; month++) {
      const classes = commonMends({ month, hemisphere: 'north' }).mends.map((id) => materialById(id)?.class);
      expect(classes).toContain('nitrogen-rich');
      expect(classes).toContain('carbon-rich');
    }
  });

  it('a poor mix in January is mended without grass, and that is told', () => {
    const winter = solve({ ...woody, season: january });
    expect(winter.mends.length).toBeGreaterThan(0);
    expect(fetched(winter)).not.toContain('grass-clippings');
    expect(winter.outOfSeason).toContain('grass-clippings');
    expect(solve(woody).outOfSeason).toEqual([]);
  });

  it('nothing is told as passed over where nothing was to be fetched, is on hand, or was named by the grower', () => {
    expect(solve({ ...mixSolve.example, season: january, alternatives: false }).outOfSeason).toEqual([]);
    expect(solve({ ...woody, season: january, mend: false }).outOfSeason).toEqual([]);
    expect(solve({ ...woody, season: january, candidates: ['hen-manure'] }).outOfSeason).toEqual([]);
    const stock = [...woody.stock, { material: 'grass-clippings', amount: { measure: 'bucket-20l', count: 1 } }];
    expect(solve({ stock, season: january }).outOfSeason).not.toContain('grass-clippings');
  });
});
