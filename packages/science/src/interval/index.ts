import { type ListedCalculation, listed } from '../catalogue/index.ts';
import { harvestInterval } from './harvest-interval.ts';

/** The calculations about waiting between spreading and harvest. */
export const intervalCalculations: readonly ListedCalculation[] = [listed(harvestInterval)];

export { harvestInterval } from './harvest-interval.ts';
export {
  type HarvestInterval,
  type HarvestIntervalInput,
  type LayId,
  layIds,
  type RuleInterval,
} from './harvest-interval-io.ts';
export { type ContactId, contactIds, type HarvestRuleId, harvestRuleIds, harvestRules } from './parameters.ts';
export { type PutId, putIds, type Tea } from './put.ts';
