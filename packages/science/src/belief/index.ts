export {
  type Belief,
  type BeliefId,
  type BeliefQuestion,
  type BeliefTopic,
  beliefs,
  beliefsFor,
} from './belief.ts';
export { type BeliefWords, findBeliefs } from './find.ts';
