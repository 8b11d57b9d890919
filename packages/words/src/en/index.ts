import { advisorEn } from './advisor.ts';
import { apiEn } from './api.ts';
import { appEn } from './app.ts';
import { appMaterialEn } from './app-material.ts';
import { beliefsEn } from './beliefs.ts';
import { blendEn } from './blend.ts';
import { calculationsEn } from './calculations.ts';
import { cautionsEn } from './cautions.ts';
import { cliEn } from './cli.ts';
import { cliProblemsEn } from './cli-problems.ts';
import { coldEn } from './cold.ts';
import { coreEn } from './core.ts';
import { daybookEn } from './daybook.ts';
import { exchangeEn } from './exchange.ts';
import { materialsEn } from './materials.ts';
import { measuresEn } from './measures.ts';
import { mixEn } from './mix.ts';
import { photosEn } from './photos.ts';
import { problemsEn } from './problems.ts';
import { readingEn } from './reading.ts';
import { serverEn } from './server.ts';
import { sizeEn } from './size.ts';

type En = typeof advisorEn &
  typeof apiEn &
  typeof appEn &
  typeof appMaterialEn &
  typeof beliefsEn &
  typeof blendEn &
  typeof calculationsEn &
  typeof cautionsEn &
  typeof cliEn &
  typeof cliProblemsEn &
  typeof coldEn &
  typeof coreEn &
  typeof daybookEn &
  typeof exchangeEn &
  typeof materialsEn &
  typeof measuresEn &
  typeof mixEn &
  typeof photosEn &
  typeof problemsEn &
  typeof readingEn &
  typeof serverEn &
  typeof sizeEn;

/** Every English message. */
export const en: En = {
  ...advisorEn,
  ...apiEn,
  ...appEn,
  ...appMaterialEn,
  ...beliefsEn,
  ...blendEn,
  ...calculationsEn,
  ...cautionsEn,
  ...cliEn,
  ...cliProblemsEn,
  ...coldEn,
  ...coreEn,
  ...daybookEn,
  ...exchangeEn,
  ...materialsEn,
  ...measuresEn,
  ...mixEn,
  ...photosEn,
  ...problemsEn,
  ...readingEn,
  ...serverEn,
  ...sizeEn,
};
