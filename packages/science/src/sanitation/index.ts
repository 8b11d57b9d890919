import { type ListedCalculation, listed } from '../catalogue/index.ts';
import { coldSkin } from './cold-skin.ts';
import { heatKill } from './heat-kill.ts';
import { heatTimeCalculation } from './heat-time.ts';
import { metalsCheck } from './metals-check.ts';
import { sanitationCheck } from './sanitation-check.ts';

/** The calculations about heat, germs and the rules of both. */
export const sanitationCalculations: readonly ListedCalculation[] = [
  listed(sanitationCheck),
  listed(coldSkin),
  listed(heatKill),
  listed(heatTimeCalculation),
  listed(metalsCheck),
];

export { type ColdSkin, coldSkin } from './cold-skin.ts';
export { isLoggable, type LogPoint, type LogReading, logPoints, type SanitationLog } from './log.ts';
export { type HeapMethod, heapMethods, type RuleId, ruleIds } from './parameters.ts';
export { type RecordKeeping, recordKeeping } from './record-keeping.ts';
export {
  bearsOnGardens,
  type CountsAs,
  type SanitationCheck,
  type SanitationInput,
  sanitationCheck,
} from './sanitation-check.ts';
export type { Demand, RuleVerdict, Verdict as SanitationVerdict } from './verdict.ts';
