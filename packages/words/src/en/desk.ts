import { apiEn } from './api.ts';
import { bedDeskEn } from './bed-desk.ts';
import { bedYearsEn } from './bed-years.ts';
import { calculationsEn } from './calculations.ts';
import { charEn } from './char.ts';
import { clausesEn } from './clauses.ts';
import { cliEn } from './cli.ts';
import { limeEn } from './lime.ts';
import { needsEn } from './needs.ts';
import { ripeEn } from './ripe.ts';
import { safeEn } from './safe.ts';
import { serverEn } from './server.ts';
import { siftEn } from './sift.ts';
import { sizeEn } from './size.ts';

/** What only the command line, the server and the written pages say. The app is built without it (`no-desk.ts`). */
export const deskEn: typeof apiEn &
  typeof bedDeskEn &
  typeof bedYearsEn &
  typeof calculationsEn &
  typeof clausesEn &
  typeof charEn &
  typeof cliEn &
  typeof limeEn &
  typeof needsEn &
  typeof ripeEn &
  typeof safeEn &
  typeof serverEn &
  typeof siftEn &
  typeof sizeEn = {
  ...apiEn,
  ...bedDeskEn,
  ...bedYearsEn,
  ...calculationsEn,
  ...clausesEn,
  ...charEn,
  ...cliEn,
  ...limeEn,
  ...needsEn,
  ...ripeEn,
  ...safeEn,
  ...serverEn,
  ...siftEn,
  ...sizeEn,
};
