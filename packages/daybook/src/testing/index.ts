export { arbitraryDaybook, arbitraryTroubledDaybook, sealByDevice } from './arbitrary.ts';
export { minutesIn2026, testId } from './ids.ts';
export { chain, draft, holding, idOf, must, otherVersion } from './notes.ts';
export { stateText } from './state.ts';
export { testWriter, type Writer, type WriterOptions } from './writer.ts';
