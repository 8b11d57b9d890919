// What scripts/heap-sensitivity.mjs asks of the heap model.
export * from '../../packages/science/src/heap-twin/parameters.ts';
export { runHeap, USUAL_PACE } from '../../packages/science/src/heap-twin/run.ts';
export * from '../../packages/science/src/heap-twin/state.ts';
export { lineOf, runLike, stillAir, stuffLike } from '../../packages/science/src/heap-twin/testing/heaps.ts';
export { constantWeather } from '../../packages/science/src/heap-twin/weather.ts';
