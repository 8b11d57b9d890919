import { balanceLaws } from './balance-laws.ts';
import { bedLaws } from './bed-laws.ts';
import { blendLaws } from './blend-laws.ts';
import { clauseLaws } from './clause-laws.ts';
import { curingLaws } from './curing-laws.ts';
import { heapLaws } from './heap-laws.ts';
import { heapTwinLaws } from './heap-twin-laws.ts';
import { inputLaws } from './input-laws.ts';
import { intervalLaws } from './interval-laws.ts';
import type { LawsOf } from './law.ts';
import { materialLaws } from './material-laws.ts';
import { measureLaws } from './measure-laws.ts';
import { mixLaws } from './mix-laws.ts';
import { pailLaws } from './pail-laws.ts';
import { sanitationLaws } from './sanitation-laws.ts';
import { spreadLaws } from './spread-laws.ts';
import { yearsLaws } from './years-laws.ts';

/** The laws of every calculation, by its id: one that stands in the catalogue stands here. */
export const lawTable: Readonly<Record<string, LawsOf>> = {
  ...materialLaws,
  ...mixLaws,
  ...measureLaws,
  ...pailLaws,
  ...heapLaws,
  ...heapTwinLaws,
  ...blendLaws,
  ...inputLaws,
  ...intervalLaws,
  ...sanitationLaws,
  ...spreadLaws,
  ...bedLaws,
  ...balanceLaws,
  ...yearsLaws,
  ...clauseLaws,
  ...curingLaws,
};
