import { describe, expect, it } from 'vitest';
import { createDraws } from '../estimate/index.ts';
import { type BestMeasurement, type BestMeasurementInput, bestMeasurement } from './best-measurement.ts';

const draws = createDraws();

function found(input: BestMeasurementInput): BestMeasurement {
  const outcome = bestMeasurement.run(input, { draws });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

const all = ({ ask, others }: BestMeasurement) => [...ask, ...others];

describe('which check is worth a minute', () => {
  it('asks for no more than three, best first, each worth its minute', () => {
    const { ask, others, perfect_softEdges } = found(bestMeasurement.example);
    expect(ask.length).toBeGreaterThan(0);
    expect(ask.length).toBeLessThanOrEqual(3);
    const gains = ask.map(({ gain_softEdges }) => gain_softEdges);
    expect(gains).toEqual(gains.toSorted((a, b) => b - a));
    for (const one of [...ask, ...others]) expect(one.gain_softEdges).toBeLessThanOrEqual(perfect_softEdges);
    for (const { inBands } of ask) expect(inBands.then_share).toBeGreaterThan(inBands.now_share);
  });

  it('has a heap of grass that nobody counted counted before anything else', () => {
    const { ask } = found({
      ingredients: [
        { material: 'grass-clippings', amount: { vague: 'a-lot' } },
        { material: 'autumn-leaves', amount: { measure: 'bin-bag', count: 4 } },
      ],
    });
    expect(ask[0]).toMatchObject({ check: 'count-again', material: 'grass-clippings' });
  });

  it('does not ask to count what was counted', () => {
    const checks = all(found(bestMeasurement.example)).map(({ check }) => check);
    expect(checks).not.toContain('count-again');
  });

  it('has nothing to ask of what is known to the digit', () => {
    const known = {
      carbonToNitrogen_ratio: 80,
      moisture_pctWet: 12,
      volatileSolids_pctDry: 94,
      densityLoose_kgPerM3AsIs: 50,
    };
    const input: BestMeasurementInput = {
      ingredients: [
        { material: 'straw', described: known, amount: { mass_kg: 20 } },
        { material: 'grass-clippings', amount: { measure: 'bucket-20l', count: 8 } },
      ],
    };
    const checks = all(found(input)).map(({ check, material }) => `${check} ${material}`);
    expect(checks).not.toContain('squeeze straw');
    expect(checks).not.toContain('weigh-bucket straw');
    expect(checks).toContain('weigh-bucket grass-clippings');
  });

  it('does not ask for a bucket to be shaken down where it was, and never for one figure of a material twice', () => {
    const shaken = all(found({ ...bestMeasurement.example, packing_share: 0.8 })).map(({ check }) => check);
    expect(shaken).not.toContain('settle');
    const { ask } = found(bestMeasurement.example);
    const densities = ask.filter(({ check }) => check === 'weigh-bucket' || check === 'look-at-chop');
    expect(new Set(densities.map(({ ingredient }) => ingredient)).size).toBe(densities.length);
  });

  it('asks for nothing that would not lift the chance by one in a hundred: straw alone is too dry and poor, whatever it weighs', () => {
    const { ask, others } = found({
      ingredients: [{ material: 'straw', amount: { measure: 'straw-bale', count: 2 } }],
    });
    expect(ask).toEqual([]);
    expect(others.length).toBeGreaterThan(0);
  });

  it('asks nothing where nothing could be done otherwise', () => {
    // Grass by itself: it wants no water, and there is no dry stuff to lay more or less of.
    expect(found({ ingredients: [{ material: 'grass-clippings', amount: { mass_kg: 50 } }] })).toMatchObject({
      ask: [],
    });
  });
});
