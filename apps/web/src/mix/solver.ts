import type { MixSolution, MixSolveInput, Outcome } from '@loamwright/science';
import { type Remote, wrap } from 'comlink';
import type { MixWorker } from './solver.worker.ts';

let remote: Remote<MixWorker> | undefined;

/** Works a mix out beside the page, so that a finger is never kept waiting. Rejects when the solver can't be loaded. */
export function solveMix(input: MixSolveInput): Promise<Outcome<MixSolution>> {
  remote ??= wrap<MixWorker>(
    new Worker(new URL('./solver.worker.ts', import.meta.url), { type: 'module', name: 'mix' }),
  );
  return remote.solve(input);
}
