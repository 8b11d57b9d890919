import {
  type BestMeasurement,
  type BestMeasurementInput,
  bestMeasurement,
  createDraws,
  highsSolver,
  type MilpSolver,
  type MixSolution,
  type MixSolveInput,
  mixSolve,
  type Outcome,
  type SpreadRate,
  type SpreadRateInput,
  spreadRate,
} from '@loamwright/science';
import { expose } from 'comlink';
import loadHighs from 'highs';

const draws = createDraws();
let loading: Promise<MilpSolver> | undefined;

/** The solver's WebAssembly, loaded once; after a failure the next question tries again. */
function solver(): Promise<MilpSolver> {
  loading ??= loadHighs().then(highsSolver);
  loading.catch(() => {
    loading = undefined;
  });
  return loading;
}

/** What the page may ask of this worker. */
export interface MixWorker {
  solve(input: MixSolveInput): Promise<Outcome<MixSolution>>;
  measureFirst(input: BestMeasurementInput): Outcome<BestMeasurement>;
  rate(input: SpreadRateInput): Promise<Outcome<SpreadRate>>;
}

const worker: MixWorker = {
  solve: async (input) => mixSolve.run(input, { draws, solver: await solver() }),
  measureFirst: (input) => bestMeasurement.run(input, { draws }),
  rate: async (input) => spreadRate.run(input, { draws, solver: await solver() }),
};

expose(worker);
