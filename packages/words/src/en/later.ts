import { balanceEn } from './balance.ts';
import { bedEn } from './bed.ts';
import { bedYearsEn } from './bed-years.ts';
import { bedsEn } from './beds.ts';
import { clausesEn } from './clauses.ts';
import { coldEn } from './cold.ts';
import { cropsEn } from './crops.ts';
import { heapRunEn } from './heap-run.ts';
import { inputsEn } from './inputs.ts';
import { intervalEn } from './interval.ts';
import { measureNextEn } from './measure-next.ts';
import { readyPagesEn } from './ready-pages.ts';
import { recordEn } from './record.ts';
import { ripeEn } from './ripe.ts';
import { sanitationEn } from './sanitation.ts';
import { soilTestEn } from './soil-test.ts';
import { spreadEn } from './spread.ts';
import { wouldPageEn } from './would-page.ts';

type Later = typeof balanceEn &
  typeof bedEn &
  typeof bedYearsEn &
  typeof bedsEn &
  typeof clausesEn &
  typeof coldEn &
  typeof cropsEn &
  typeof heapRunEn &
  typeof inputsEn &
  typeof intervalEn &
  typeof measureNextEn &
  typeof readyPagesEn &
  typeof recordEn &
  typeof ripeEn &
  typeof sanitationEn &
  typeof soilTestEn &
  typeof spreadEn &
  typeof wouldPageEn;

/**
 * What is said only by what is fetched when it is wanted: beds, cold heaps, safety, spreading, the check worth a
 * minute, what a heap would do. The first screen is built without it.
 */
export const laterEn: Later = {
  ...balanceEn,
  ...bedEn,
  ...bedYearsEn,
  ...bedsEn,
  ...clausesEn,
  ...coldEn,
  ...cropsEn,
  ...heapRunEn,
  ...inputsEn,
  ...intervalEn,
  ...measureNextEn,
  ...readyPagesEn,
  ...recordEn,
  ...ripeEn,
  ...sanitationEn,
  ...soilTestEn,
  ...spreadEn,
  ...wouldPageEn,
};
