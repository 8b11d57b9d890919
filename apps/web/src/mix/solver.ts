import type {
  BestMeasurement,
  BestMeasurementInput,
  MixSolution,
  MixSolveInput,
  Outcome,
  SpreadRate,
  SpreadRateInput,
} from '@loamwright/science';
import { type Remote, wrap } from 'comlink';
import type { MixWorker } from './solver.worker.ts';

let remote: Remote<MixWorker> | undefined;

function worker(): Remote<MixWorker> {
  remote ??= wrap<MixWorker>(
    new Worker(new URL('./solver.worker.ts', import.meta.url), { type: 'module', name: 'mix' }),
  );
  return remote;
}

/** Works a mix out beside the page, so that a finger is never kept waiting. Rejects when the solver can't be loaded. */
export function solveMix(input: MixSolveInput): Promise<Outcome<MixSolution>> {
  return worker().solve(input);
}

/** Which check of a minute would change a mix most, worked out beside the page after the mix itself. */
export function measureFirst(input: BestMeasurementInput): Promise<Outcome<BestMeasurement>> {
  return worker().measureFirst(input);
}

/** How much of what there is goes on a bed, worked out beside the page. */
export function rateSpread(input: SpreadRateInput): Promise<Outcome<SpreadRate>> {
  return worker().rate(input);
}
