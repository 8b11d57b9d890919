import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  chance,
  createDraws,
  drawsOf,
  type Estimate,
  fraction,
  free,
  fromPublished,
  insideScale,
  narrow,
  percent,
  positive,
  positiveQuantity,
  type Scale,
  shareOf,
  summarise,
  valueAt,
  withSpread,
} from './index.ts';
import { normalQuantile } from './normal.ts';
import { sobolIntegers } from './sobol.ts';

const scales: readonly Scale[] = [positive, percent, fraction, free, { kind: 'share', lower: -20, upper: 90 }];

/** Three ordered points strictly inside a scale. */
function estimateInside(scale: Scale): fc.Arbitrary<Estimate> {
  const bounds =
    scale.kind === 'share'
      ? { min: scale.lower + 1e-6, max: scale.upper - 1e-6 }
      : scale.kind === 'positive'
        ? { min: 1e-9, max: 1e9 }
        : { min: -1e6, max: 1e6 };
  return fc
    .array(fc.double({ ...bounds, noNaN: true }), { minLength: 3, maxLength: 3 })
    .map((points) => points.sort((a, b) => a - b))
    .map(([p10 = 0, p50 = 0, p90 = 0]) => ({ p10, p50, p90 }));
}

describe('the normal quantile', () => {
  // Values of scipy 1.17.1, scipy.stats.norm.ppf; 1e-14 relative is a few units in the last place.
  it.each([
    [1e-10, -6.361340902404056],
    [0.001, -3.090232306167813],
    [0.02425, -1.972961051311885],
    [0.1, -1.2815515655446004],
    [0.3, -0.5244005127080409],
    [0.75, 0.6744897501960817],
    [0.95, 1.6448536269514722],
    [0.999999, 4.753424308817087],
  ])('at %d agrees with scipy', (u, z) => {
    expect(Math.abs(normalQuantile(u) / z - 1)).toBeLessThan(1e-14 * (u > 0.99 ? 1e3 : 1));
  });
});

describe('the Sobol points', () => {
  // Points 1, 2, 3, 7, 100 and 255 times 2^32, from scipy 1.17.1, scipy.stats.qmc.Sobol(24, scramble=False, bits=32).
  it.each([
    [0, [2147483648, 3221225472, 1073741824, 536870912, 1778384896, 16777216]],
    [1, [2147483648, 1073741824, 3221225472, 2684354560, 1107296256, 4278190080]],
    [5, [2147483648, 3221225472, 1073741824, 1610612736, 3187671040, 4211081216]],
    [12, [2147483648, 1073741824, 3221225472, 2684354560, 2046820352, 855638016]],
    [23, [2147483648, 1073741824, 3221225472, 536870912, 2113929216, 956301312]],
  ] as const)('of dimension %d agree with scipy', (dimension, expected) => {
    const points = sobolIntegers(dimension, 256);
    expect([1, 2, 3, 7, 100, 255].map((i) => points[i])).toEqual(expected);
  });
});

describe('draws', () => {
  it('fill each of 256 equal slices exactly once, whatever the name', () => {
    fc.assert(
      fc.property(fc.string(), (name) => {
        const slices = new Set(
          createDraws()
            .shares(name)
            .map((share) => Math.floor(share * 256)),
        );
        expect(slices.size).toBe(256);
      }),
      { seed: 1, numRuns: 200 },
    );
  });

  it('are the same for the same name in two calculations, asked in any order', () => {
    const first = createDraws();
    const second = createDraws();
    second.shares('hay/moisture_pctWet');
    second.shares('leaves/carbonToNitrogen_ratio');
    expect(first.shares('straw/moisture_pctWet')).toEqual(second.shares('straw/moisture_pctWet'));
  });

  it('of different names are all but uncorrelated', () => {
    const subjects = ['straw', 'hay', 'leaves', 'grass-clippings', 'coffee-grounds', 'goat-bedding', 'my own stuff'];
    const properties = ['moisture_pctWet', 'carbonToNitrogen_ratio', 'densityLoose_kgPerM3AsIs', 'anything else'];
    const names = subjects.flatMap((subject) => properties.map((property) => `${subject}/${property}`));
    const draws = createDraws();
    const correlations = names.flatMap((a, i) =>
      names.slice(i + 1).map((b) => Math.abs(correlation(draws.shares(a), draws.shares(b)))),
    );
    // Random pairing of 256 runs has correlations of standard deviation 1/16; of 378 pairs the largest
    // stays below four of them with a chance of about 98 %. The draws are fixed, so this is no lottery.
    expect(Math.max(...correlations)).toBeLessThan(0.25);
  });

  it('never leave the bounds of their scale', () => {
    for (const scale of scales) {
      fc.assert(
        fc.property(estimateInside(scale), fc.string(), (estimate, name) => {
          const values = drawsOf(createDraws(), name, estimate, scale);
          expect(values.every((value) => insideScale(value, scale))).toBe(true);
        }),
        { seed: 2, numRuns: 200 },
      );
    }
  });

  it('give back the estimate they came from', () => {
    const estimate = { p10: 8, p50: 12, p90: 27 };
    const back = summarise(drawsOf(createDraws(), 'straw/moisture_pctWet', estimate, percent));
    // 256 evenly filled slices place a percentile within one slice: here under 3 % of the value.
    expect(back.p10 / estimate.p10).toBeCloseTo(1, 1);
    expect(back.p50 / estimate.p50).toBeCloseTo(1, 1);
    expect(back.p90 / estimate.p90).toBeCloseTo(1, 1);
  });
});

describe('the two-piece normal', () => {
  it('passes through its three points on every scale', () => {
    for (const scale of scales) {
      fc.assert(
        fc.property(estimateInside(scale), (estimate) => {
          // Rounding of exp and log: a part in 10^9 of the largest point is a thousand times more than is lost.
          const tolerance = 1e-9 * Math.max(Math.abs(estimate.p10), Math.abs(estimate.p90), 1);
          expect(Math.abs(valueAt(estimate, scale, 0.1) - estimate.p10)).toBeLessThan(tolerance);
          expect(Math.abs(valueAt(estimate, scale, 0.5) - estimate.p50)).toBeLessThan(tolerance);
          expect(Math.abs(valueAt(estimate, scale, 0.9) - estimate.p90)).toBeLessThan(tolerance);
        }),
        { seed: 3, numRuns: 200 },
      );
    }
  });

  it('reads a published range as 5th, 50th and 95th percentile', () => {
    const estimate = fromPublished({ low: 4, typical: 12, high: 27 }, percent);
    expect(valueAt(estimate, percent, 0.05)).toBeCloseTo(4, 10);
    expect(valueAt(estimate, percent, 0.95)).toBeCloseTo(27, 10);
  });

  it('draws a range that touches a bound just inside it', () => {
    const estimate = fromPublished({ low: 0, typical: 10, high: 30 }, percent);
    expect(estimate.p10).toBeGreaterThan(0);
  });

  it('spreads a lone value by its documented factor', () => {
    const estimate = withSpread(100, Math.log(1.5), positive);
    expect(valueAt(estimate, positive, 0.95)).toBeCloseTo(150, 10);
    expect(valueAt(estimate, positive, 0.05)).toBeCloseTo(100 / 1.5, 10);
  });
});

describe('narrowing by a measurement', () => {
  it('agrees with the closed form for two normals', () => {
    // Prior N(10, 2²), measurement N(13, 1²): posterior N(12.4, 0.8) (Gelman et al. 2013, Bayesian Data
    // Analysis, 3rd ed., eq. 2.9-2.10). The grid's step is 0.006, its error below a thousandth.
    const z = normalQuantile(0.9);
    const normal = (mean: number, sd: number) => ({ p10: mean - z * sd, p50: mean, p90: mean + z * sd });
    const posterior = narrow(normal(10, 2), normal(13, 1), free) as Estimate;
    expect(posterior.p50).toBeCloseTo(12.4, 3);
    expect(posterior.p90 - posterior.p50).toBeCloseTo(z * Math.sqrt(0.8), 3);
  });

  it('stays inside the bounds and never comes out wider than the measurement or the prior alone', () => {
    fc.assert(
      fc.property(estimateInside(percent), fc.double({ min: 1, max: 99, noNaN: true }), (prior, measured) => {
        const posterior = narrow(prior, withSpread(measured, 0.3, percent), percent) as Estimate;
        expect(posterior.p10).toBeGreaterThanOrEqual(0);
        expect(posterior.p90).toBeLessThanOrEqual(100);
        expect(posterior.p10).toBeLessThanOrEqual(posterior.p50);
        expect(posterior.p50).toBeLessThanOrEqual(posterior.p90);
      }),
      { seed: 4, numRuns: 300 },
    );
  });

  it('leaves a certain prior alone and takes a certain measurement as it stands', () => {
    const wide = { p10: 1, p50: 2, p90: 3 };
    expect(narrow(5, wide, positive)).toBe(5);
    expect(narrow(wide, 5, positive)).toBe(5);
  });
});

describe('schemas of quantities', () => {
  const mass = positiveQuantity('a mass, kg');
  it.each([3, 0, { p10: 1, p50: 2, p90: 3 }, { p10: 2, p50: 2, p90: 2 }])('take %j', (good) => {
    expect(mass.safeParse(good).success).toBe(true);
  });
  it.each([
    -1,
    Number.NaN,
    Number.POSITIVE_INFINITY,
    '3',
    null,
    { p10: 3, p50: 2, p90: 1 },
    { p10: 0, p50: 1, p90: 2 },
    { p10: 1, p50: 2 },
    { p10: 1, p50: 2, p90: 3, p99: 4 },
  ])('refuse %j', (bad) => {
    expect(mass.safeParse(bad).success).toBe(false);
  });
});

describe('chances', () => {
  it('never claim certainty', () => {
    expect(shareOf(chance([1, 1, 1], (x) => x === 1))).toBeLessThan(1);
    expect(shareOf(chance([1, 1, 1], (x) => x === 2))).toBeGreaterThan(0);
  });
  it('refuse to summarise what is not a number', () => {
    expect(() => summarise([1, Number.NaN])).toThrow(RangeError);
    expect(() => summarise([])).toThrow(RangeError);
  });
});

function correlation(a: Float64Array, b: Float64Array): number {
  const n = a.length;
  const mean = (x: Float64Array) => x.reduce((s, v) => s + v, 0) / n;
  const [ma, mb] = [mean(a), mean(b)];
  let ab = 0;
  let aa = 0;
  let bb = 0;
  for (let i = 0; i < n; i++) {
    const [da, db] = [(a[i] ?? 0) - ma, (b[i] ?? 0) - mb];
    ab += da * db;
    aa += da * da;
    bb += db * db;
  }
  return ab / Math.sqrt(aa * bb);
}
