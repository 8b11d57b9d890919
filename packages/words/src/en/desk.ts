import { apiEn } from './api.ts';
import { calculationsEn } from './calculations.ts';
import { cliEn } from './cli.ts';
import { cropsEn } from './crops.ts';
import { needsEn } from './needs.ts';
import { safeEn } from './safe.ts';
import { serverEn } from './server.ts';
import { sizeEn } from './size.ts';

/** What only the command line, the server and the written pages say. The app is built without it (`no-desk.ts`). */
export const deskEn: typeof apiEn &
  typeof calculationsEn &
  typeof cliEn &
  typeof cropsEn &
  typeof needsEn &
  typeof safeEn &
  typeof serverEn &
  typeof sizeEn = {
  ...apiEn,
  ...calculationsEn,
  ...cliEn,
  ...cropsEn,
  ...needsEn,
  ...safeEn,
  ...serverEn,
  ...sizeEn,
};
