import { type BeliefId, type BeliefQuestion, beliefsFor } from '@loamwright/science';
import type { Saying } from '@loamwright/words';
import { sayOf } from './saying.ts';

/** A belief that a question may rest on, met in one sentence that names it. */
export interface BeliefSaid {
  readonly id: BeliefId;
  readonly said: Saying;
}

/** More than two are a lecture. */
const MOST_TOLD = 2;

/** The beliefs that touch a question, the first of them, in words. */
export function beliefWords(question: BeliefQuestion): readonly BeliefSaid[] {
  return beliefsFor(question)
    .slice(0, MOST_TOLD)
    .map((id) => ({ id, said: sayOf('belief', `${id}.says`) }));
}
