import { apiEn } from './api.ts';
import { bedDeskEn } from './bed-desk.ts';
import { calculationsEn } from './calculations.ts';
import { charEn } from './char.ts';
import { clausesDeskEn } from './clauses-desk.ts';
import { cliEn } from './cli.ts';
import { heapRunDeskEn } from './heap-run-desk.ts';
import { limeEn } from './lime.ts';
import { needsEn } from './needs.ts';
import { ripeDeskEn } from './ripe-desk.ts';
import { safeEn } from './safe.ts';
import { serverEn } from './server.ts';
import { siftEn } from './sift.ts';
import { sizeEn } from './size.ts';
import { soilWaterEn } from './soil-water.ts';

/** What only the command line, the server and the written pages say. The app is built without it (`no-desk.ts`). */
export const deskEn: typeof apiEn &
  typeof bedDeskEn &
  typeof calculationsEn &
  typeof clausesDeskEn &
  typeof charEn &
  typeof cliEn &
  typeof heapRunDeskEn &
  typeof limeEn &
  typeof needsEn &
  typeof ripeDeskEn &
  typeof safeEn &
  typeof serverEn &
  typeof siftEn &
  typeof sizeEn &
  typeof soilWaterEn = {
  ...apiEn,
  ...bedDeskEn,
  ...calculationsEn,
  ...clausesDeskEn,
  ...charEn,
  ...cliEn,
  ...heapRunDeskEn,
  ...limeEn,
  ...needsEn,
  ...ripeDeskEn,
  ...safeEn,
  ...serverEn,
  ...siftEn,
  ...sizeEn,
  ...soilWaterEn,
};
