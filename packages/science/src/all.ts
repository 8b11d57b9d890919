import { bedCalculations } from './bed/index.ts';
import { blendCalculations } from './blend/index.ts';
import type { ListedCalculation } from './catalogue/index.ts';
import { clauseCalculations } from './clauses/index.ts';
import { curingCalculations } from './curing/index.ts';
import { heapCalculations } from './heap/index.ts';
import { heapTwinCalculations } from './heap-twin/index.ts';
import { inputCalculations } from './inputs/index.ts';
import { intervalCalculations } from './interval/index.ts';
import { materialCalculations } from './material/index.ts';
import { measureNextCalculations } from './measure-next/index.ts';
import { mixCalculations } from './mix/index.ts';
import { pailCalculations } from './pail/index.ts';
import { sanitationCalculations } from './sanitation/index.ts';

/** Every calculation there is: what `loamwright reckon` offers, and what the reference pages and property tests go through. */
export const catalogue: readonly ListedCalculation[] = [
  ...materialCalculations,
  ...mixCalculations,
  ...measureNextCalculations,
  ...pailCalculations,
  ...heapCalculations,
  ...heapTwinCalculations,
  ...blendCalculations,
  ...inputCalculations,
  ...intervalCalculations,
  ...sanitationCalculations,
  ...clauseCalculations,
  ...curingCalculations,
  ...bedCalculations,
];
