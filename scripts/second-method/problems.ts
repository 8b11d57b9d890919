// The problems as plain numbers, for the other program: printed as JSON.
import { buildHeap } from '../../packages/science/src/heap-twin/build.ts';
import { cutShells, outlineOf, withVolume } from '../../packages/science/src/heap-twin/shape.ts';
import { noWeather } from '../../packages/science/src/heap-twin/surroundings.ts';
import { type Problem, problems } from '../../packages/science/src/heap-twin/testing/problems.ts';

function numbersOf(held: object): unknown {
  return Object.fromEntries(
    Object.entries(held).map(([key, part]) => [key, part instanceof Float64Array ? Array.from(part) : part]),
  );
}

function written({ name, run, shown_day }: Problem): unknown {
  const shells = cutShells(outlineOf(withVolume(run.shape, run.stuff.volume_m3)), run.shellCount);
  const weather = noWeather();
  run.weatherAt(0, weather);
  const { flat: _all, ...state } = buildHeap(run.stuff, shells);
  return {
    name,
    shells: numbersOf(shells),
    traits: run.traits,
    standing: run.standing,
    weather,
    state: numbersOf(state),
    days: shown_day.at(-1),
    shown_day,
  };
}

process.stdout.write(JSON.stringify(problems.map(written)));
