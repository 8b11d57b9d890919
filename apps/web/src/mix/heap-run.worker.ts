import { check, createDraws, type HeapRunAnswer, type HeapRunInput, heapRun, type Outcome } from '@loamwright/science';
import { expose } from 'comlink';

const draws = createDraws();

/** What the page may ask of this worker. */
export interface HeapRunWorker {
  follow(input: HeapRunInput): Outcome<HeapRunAnswer>;
}

const worker: HeapRunWorker = {
  follow: (input) => {
    const checked = check<HeapRunInput>(heapRun.input, input);
    return checked.ok ? heapRun.run(checked.value, { draws }) : checked;
  },
};

expose(worker);
