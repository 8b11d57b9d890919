import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { carbonOf_kg } from './acts.ts';
import { buildHeap } from './build.ts';
import type { LINE } from './ledger.ts';
import { traitsOf, twinParameters, typicalFigures, uncertainIds } from './parameters.ts';
import { type HeapAct, type HeapRun, runHeap } from './run.ts';
import { cutShells, type HeapShape, outlineOf } from './shape.ts';
import type { HeapState } from './state.ts';
import { daily, inTheOpen, lineOf, runLike, stuffLike } from './testing/heaps.ts';
import { constantWeather } from './weather.ts';

/** Rounding of some ten thousand additions in double precision leaves about 1e-12; a lost flux would be far above. */
const CLOSE = 1e-9;

const sum = (values: Float64Array): number => values.reduce((total, value) => total + value, 0);

function holdings(state: HeapState) {
  return {
    energy_J: sum(state.energy_J),
    water_kg: sum(state.water_kg),
    carbon_kg: carbonOf_kg({
      fast_kg: sum(state.fast_kg),
      hemicellulose_kg: sum(state.hemicellulose_kg),
      cellulose_kg: sum(state.cellulose_kg),
      lignin_kg: sum(state.lignin_kg),
      inert_kg: sum(state.inert_kg),
    }),
    nitrogen_kg: sum(state.organicN_kg) + sum(state.ammoniacalN_kg) + sum(state.nitrateN_kg),
    ash_kg: sum(state.ash_kg),
  };
}

/** How far each balance of a run is from closing, over what passed through it or lies in it. */
function gaps(run: HeapRun) {
  const start = holdings(buildHeap(run.stuff, cutShells(outlineOf(run.shape), run.shellCount)));
  const last = runHeap(run, 86_400, () => undefined);
  const end = holdings(last.state);
  const line = (id: keyof typeof LINE): number => lineOf(last.ledger, id);
  const gap = (change: number, flows: number, scale: number): number => Math.abs(change - flows) / scale;
  return {
    energy: gap(
      end.energy_J - start.energy_J,
      line('heatMade_J') -
        line('heatThroughSurface_J') -
        line('heatToGround_J') -
        line('heatWithAir_J') +
        line('heatWithMatter_J') +
        line('heatWithRain_J') -
        line('heatDrained_J') +
        line('heatAdded_J') -
        line('heatTurnedOut_J'),
      Math.abs(start.energy_J) + line('heatMade_J') + 1e6,
    ),
    water: gap(
      end.water_kg - start.water_kg,
      line('waterFormed_kg') -
        line('waterWithAir_kg') +
        line('waterRained_kg') -
        line('waterDrained_kg') +
        line('waterAdded_kg') -
        line('waterTurnedOut_kg'),
      start.water_kg,
    ),
    carbon: gap(end.carbon_kg - start.carbon_kg, line('carbonAdded_kg') - line('carbonBreathed_kg'), start.carbon_kg),
    nitrogen: gap(
      end.nitrogen_kg - start.nitrogen_kg,
      line('nitrogenAdded_kg') - line('ammoniaGone_kg') - line('nitrogenDrained_kg') - line('nitrogenDenitrified_kg'),
      start.nitrogen_kg,
    ),
    ash: gap(end.ash_kg - start.ash_kg, line('ashAdded_kg'), start.ash_kg),
    oxygen: gap(
      line('oxygenSupplied_kg'),
      line('oxygenEaten_kg') + line('oxygenNitrified_kg'),
      // Tonnes of air may stream through, and kilograms come and go by diffusion, for the less than a gram that a
      // cold heap eats.
      line('oxygenEaten_kg') + line('oxygenDrawnIn_kg') + 0.01,
    ),
  };
}

const shapes: fc.Arbitrary<HeapShape> = fc.constantFrom<HeapShape>(
  { form: 'box', width_m: 1, depth_m: 1.2, height_m: 1 },
  { form: 'dome', diameter_m: 1.6, height_m: 1 },
  { form: 'cone', diameter_m: 2, height_m: 1.2 },
  { form: 'long', width_m: 1.5, height_m: 1, length_m: 6 },
  { form: 'drum', diameter_m: 0.9, length_m: 1.2 },
  { form: 'trench', width_m: 0.5, depth_m: 0.5, length_m: 4 },
);

const acts: fc.Arbitrary<HeapAct> = fc
  .double({ min: 0, max: 12, noNaN: true })
  .chain((at_day) =>
    fc.constantFrom<HeapAct>(
      { at_day, act: 'turn', care: 'thorough', insideOut: true },
      { at_day, act: 'turn', care: 'rough', insideOut: false },
      { at_day, act: 'turn', care: 'rough', insideOut: true, into: { form: 'dome', diameter_m: 2, height_m: 1 } },
      { at_day, act: 'water', water_L: 40, where: 'top' },
      { at_day, act: 'water', water_L: 60, where: 'through' },
      { at_day, act: 'add', stuff: stuffLike({ volume_m3: 0.2, moisture_pctWet: 75 }), mixed: false },
      { at_day, act: 'add', stuff: stuffLike({ volume_m3: 0.1, temp_degC: 3 }), mixed: true },
      { at_day, act: 'stand', standing: { ...inTheOpen, open_share: 0.2, rain_share: 0 } },
    ),
  );

const runs: fc.Arbitrary<HeapRun> = fc
  .record({
    shape: shapes,
    shellCount: fc.integer({ min: 2, max: 16 }),
    moisture_pctWet: fc.double({ min: 15, max: 82, noNaN: true }),
    density_kgPerM3AsIs: fc.double({ min: 120, max: 900, noNaN: true }),
    carbonToNitrogen_ratio: fc.double({ min: 8, max: 90, noNaN: true }),
    temp_degC: fc.double({ min: -8, max: 35, noNaN: true }),
    pH: fc.double({ min: 4.5, max: 9.5, noNaN: true }),
    air_degC: fc.double({ min: -15, max: 38, noNaN: true }),
    rain_mmPerDay: fc.double({ min: 0, max: 30, noNaN: true }),
    wind_mPerS: fc.double({ min: 0, max: 8, noNaN: true }),
    figures: fc.tuple(...uncertainIds.map((id) => fc.constantFrom(twinParameters[id].low, twinParameters[id].high))),
    acts: fc.array(acts, { maxLength: 4 }),
  })
  .map(({ shape, shellCount, air_degC, rain_mmPerDay, wind_mPerS, figures, acts: done, ...blend }) => {
    const { volume_m3 } = outlineOf(shape);
    return runLike({
      shape,
      shellCount,
      stuff: stuffLike({ ...blend, volume_m3 }),
      traits: traitsOf({
        ...typicalFigures(),
        ...Object.fromEntries(uncertainIds.map((id, i) => [id, figures[i] ?? Number.NaN])),
      }),
      standing: { ...inTheOpen, rain_share: 1, wind_share: 1, sun_share: 1 },
      weatherAt: constantWeather({
        temp_degC: air_degC,
        humidity_share: 0.8,
        wind_mPerS,
        rain_mmPerDay,
        sun_WPerM2: 100,
        ground_degC: 8,
      }),
      acts: done,
      days: 14,
    });
  });

describe('a run of a heap', () => {
  it('closes energy, water, carbon, nitrogen, ash and oxygen, whatever the heap and what is done to it', () => {
    fc.assert(
      fc.property(runs, (run) => {
        for (const [what, gap] of Object.entries(gaps(run))) expect(gap, what).toBeLessThan(CLOSE);
      }),
      { numRuns: 150 },
    );
  });

  it('never holds less than nothing, nor swings, whatever the heap', () => {
    fc.assert(
      fc.property(runs, (run) => {
        runHeap(run, 6 * 3600, ({ state }) => {
          for (let k = state.shells; k < state.flat.length; k++) expect(state.flat[k]).toBeGreaterThanOrEqual(0);
        });
      }),
      { numRuns: 40 },
    );
  });

  it('still closes after 400 days', () => {
    const run = runLike({ days: 400 });
    for (const [what, gap] of Object.entries(gaps(run))) expect(gap, what).toBeLessThan(CLOSE);
    const { core_degC } = daily(run);
    // By then it lies near the air.
    expect(core_degC.at(-1)).toBeLessThan(18);
  });
});
