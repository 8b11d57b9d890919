// The heap model's step in C, compiled where there is a compiler: bench/heap-twin.c.
import { execFileSync, spawnSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { buildHeap } from '../packages/science/src/heap-twin/build.ts';
import { SOON_share } from '../packages/science/src/heap-twin/drying.ts';
import { AHEAD_share } from '../packages/science/src/heap-twin/implicit.ts';
import { DAY_S, twinParameters } from '../packages/science/src/heap-twin/parameters.ts';
import type { HeapRun } from '../packages/science/src/heap-twin/run.ts';
import { cutShells, outlineOf, withVolume } from '../packages/science/src/heap-twin/shape.ts';
import { changingIds, lastingIds } from '../packages/science/src/heap-twin/state.ts';
import { noWeather } from '../packages/science/src/heap-twin/surroundings.ts';

const SOURCE = 'bench/heap-twin.c';

function figures(): Readonly<Record<string, number>> {
  const p = twinParameters;
  const pools = Object.entries({
    FAST: p.pools.fast,
    HEMI: p.pools.hemicellulose,
    CELL: p.pools.cellulose,
    LIGNIN: p.pools.lignin,
  });
  return {
    ...Object.fromEntries(
      pools.flatMap(([name, pool]) => [
        [`${name}_O2`, pool.oxygen_kgPerKg],
        [`${name}_H2O`, pool.water_kgPerKg],
        [`${name}_C`, pool.carbon_kgPerKg],
      ]),
    ),
    INERT_C: p.pools.inert.carbon_kgPerKg,
    RICHER: p.fastNitrogen_ratio.value,
    COOL_COLDEST: p.coolCurve.coldest_degC,
    COOL_BEST: p.coolCurve.best_degC,
    COOL_HOTTEST: p.coolCurve.hottest_degC,
    SLOW_COLDEST: p.slowCurve.coldest_degC,
    SLOW_BEST: p.slowCurve.best_degC,
    SLOW_HOTTEST: p.slowCurve.hottest_degC,
    SUN_TAKEN: p.sunTaken_share.value,
    WIND_PUSH: p.windPressure_share.value,
    WATER_HEAT: p.waterHeat_JPerKgK.value,
    ICE_HEAT: p.iceHeat_JPerKgK.value,
    MELTING: p.meltingHeat_JPerKg.value,
    SPAN: p.freezingSpan_K.value,
    ORGANIC_HEAT: p.organicHeat_JPerKgK.typical,
    ASH_HEAT: p.ashHeat_JPerKgK.value,
    AIR_HEAT: p.airHeat_JPerKgK.value,
    VAPOUR_AT_ZERO: p.vapourAtZero_JPerKg.value,
    VAPOUR_HEAT: p.vapourHeat_JPerKgK.value,
    WATER_DENSITY: p.waterDensity_kgPerM3.value,
    ORGANIC_DENSITY: p.organicDensity_kgPerM3.value,
    ASH_DENSITY: p.ashDensity_kgPerM3.value,
    PRESSURE: p.airPressure_Pa.value,
    VISCOSITY: p.airViscosity_PaS.value,
    DRY_CONDUCTIVITY: p.conductivity.dry_WPerMK,
    WET_CONDUCTIVITY: p.conductivity.wet_WPerMK,
    HALF_AIR: p.permeabilityRises.atAir_share,
    DRYING: p.waterActivity.u0_kgPerKg,
    OXYGEN_DIFFUSES: p.oxygenDiffusivity.at20_m2PerS,
    VAPOUR_DIFFUSES: p.vapourDiffusivity.at20_m2PerS,
    SURFACE: p.surface_WPerM2K.value,
    WIND_ON_SURFACE: p.windOnSurface_JPerM3K.value,
    SURFACE_VAPOUR: p.surfaceVapour_sPerM.value,
    GROUND_CONDUCTIVITY: p.groundConductivity_WPerMK.value,
    MOISTURE_OFFSET: p.moistureLogistic.offset,
    MOISTURE_SLOPE: p.moistureLogistic.slope,
    AIR_OFFSET: p.airSpaceLogistic.offset,
    AIR_SLOPE: p.airSpaceLogistic.slope,
    BRAKE_LEFT: p.acidBrake.left_share,
    BRAKE_PH: p.acidBrake.belowPH,
    BRAKE_OVER_PH: p.acidBrake.overPH,
    BRAKE_TEMP: p.acidBrake.aboveTemp_degC,
    BRAKE_OVER_TEMP: p.acidBrake.overTemp_degC,
    MINERAL_HALF: p.mineralHalf_kgPerKg.value,
    NITRIFIERS_COLDEST: p.nitrifiers.coldest_degC,
    NITRIFIERS_BEST: p.nitrifiers.best_degC,
    NITRIFIERS_HOTTEST: p.nitrifiers.hottest_degC,
    OXYGEN_PER_NITRIFIED: p.oxygenPerNitrified_kgPerKg.value,
    NITRIFICATION: p.nitrification_perDay.value,
    DENITRIFICATION: p.denitrification_perDay.value,
    SOURING: p.acidity.rate_perDay,
    RIPE_PH: p.acidity.ripePH,
    SOUR_PH: p.acidity.sourPH,
    AMMONIA_RAISES: p.acidity.ammoniaRaises,
    AMMONIA_HALF: p.acidity.ammoniaHalf_kgPerKg,
    AMMONIUM_INTERCEPT: p.ammonium.intercept,
    AMMONIUM_SLOPE: p.ammonium.slope_K,
    HENRY_AT25: p.henry.at25_molPerM3Pa,
    HENRY_SLOPE: p.henry.slope_K,
    DYING: p.dying_perDay.value,
    DORMANT: p.dormant_share.value,
    KILL_TEMP: p.heatKill.above_degC,
    KILLED: p.heatKill.perKAndDay,
    CHAR_HOLDS: p.charHolds_kgPerKg.value,
    DRAINS_H: p.drains_h.value,
    SETTLES_DAY: p.settles_day.value,
    AHEAD: AHEAD_share,
    SOON: SOON_share,
  };
}

/** A run's numbers in the order in which the program reads them: steps of one length, weather as at its start. */
function numbersOf(run: HeapRun): readonly number[] {
  const { traits: t, standing: s, pace } = run;
  const shells = cutShells(outlineOf(withVolume(run.shape, run.stuff.volume_m3)), run.shellCount);
  const { outline } = shells;
  const state = buildHeap(run.stuff, shells);
  const weather = noWeather();
  run.weatherAt(0, weather);
  return [
    pace.step_s,
    Math.round((run.days * DAY_S) / pace.step_s),
    shells.count,
    outline.directions,
    outline.height_m,
    outline.plan_m2,
    outline.top_m2,
    outline.side_m2,
    outline.ground_m2,
    ...shells.plan_share,
    ...shells.inward_perM,
    ...shells.outward_perM,
    t.fast_perS,
    t.hemicellulose_perS,
    t.cellulose_perS,
    t.lignin_perS,
    t.curve.coldest_degC,
    t.curve.best_degC,
    t.curve.hottest_degC,
    t.oxygenHalf_share,
    t.freshFed_share,
    t.growth_perS,
    t.coolPace_ratio,
    t.heat_JPerKgOxygen,
    t.permeability_m2,
    t.plumeContact_share,
    t.holds_kgPerKg,
    t.settling_share,
    t.eatenPerBreathed,
    t.wantedN_kgPerKg,
    t.ammoniaGas_share,
    t.charSorption_LPerKg,
    s.top.insulation_m2KPerW,
    s.top.vapour_sPerM,
    s.side.insulation_m2KPerW,
    s.side.vapour_sPerM,
    s.open_share,
    s.wind_share,
    s.rain_share,
    s.sun_share,
    weather.temp_degC,
    weather.vapour_Pa,
    weather.wind_mPerS,
    weather.rain_kgPerM2S,
    weather.sun_WPerM2,
    weather.ground_degC,
    ...[...changingIds, ...lastingIds, 'built_m3' as const, 'builtDry_kg' as const].flatMap((id) => [...state[id]]),
  ];
}

/** What the compiled step came to. */
export interface Compiled {
  readonly cpu_ms: readonly number[];
  readonly temp_degC: readonly number[];
}

/** Compiles the step into a folder. @returns how to run it; undefined without a compiler. */
export function compileStep(folder: string): ((run: HeapRun, repeats: number) => Compiled) | undefined {
  if (spawnSync('cc', ['--version']).status !== 0) return undefined;
  const header = Object.entries(figures()).map(([name, value]) => `#define ${name} ((double)${value})`);
  writeFileSync(join(folder, 'heap-twin.figures.h'), `${header.join('\n')}\n`);
  const program = join(folder, 'heap-twin');
  execFileSync('cc', ['-O3', '-std=gnu11', `-I${folder}`, '-o', program, SOURCE, '-lm'], { stdio: 'inherit' });
  return (run, repeats) => {
    const problem = join(folder, 'problem.txt');
    writeFileSync(problem, `${numbersOf(run).join('\n')}\n`);
    const [seconds = '', temps = ''] = execFileSync(program, [problem, String(repeats)])
      .toString()
      .split('\n')
      .map((line) => line.trim());
    return {
      cpu_ms: seconds.split(' ').map((text) => 1000 * Number(text)),
      temp_degC: temps.split(' ').map(Number),
    };
  };
}
