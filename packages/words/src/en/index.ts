import { deskEn } from '#desk';
import { laterEn } from '#later';
import { advisorEn } from './advisor.ts';
import { appEn } from './app.ts';
import { appMaterialEn } from './app-material.ts';
import { beliefsEn } from './beliefs.ts';
import { blendEn } from './blend.ts';
import { cautionsEn } from './cautions.ts';
import { cliProblemsEn } from './cli-problems.ts';
import { coreEn } from './core.ts';
import { daybookEn } from './daybook.ts';
import { exchangeEn } from './exchange.ts';
import { materialsEn } from './materials.ts';
import { measuresEn } from './measures.ts';
import { mixEn } from './mix.ts';
import { pailEn } from './pail.ts';
import { photosEn } from './photos.ts';
import { problemsEn } from './problems.ts';
import { readingEn } from './reading.ts';
import { serverProblemsEn } from './server-problems.ts';

type En = typeof advisorEn &
  typeof appEn &
  typeof appMaterialEn &
  typeof beliefsEn &
  typeof blendEn &
  typeof cautionsEn &
  typeof cliProblemsEn &
  typeof coreEn &
  typeof daybookEn &
  typeof deskEn &
  typeof exchangeEn &
  typeof laterEn &
  typeof materialsEn &
  typeof measuresEn &
  typeof mixEn &
  typeof pailEn &
  typeof photosEn &
  typeof problemsEn &
  typeof readingEn &
  typeof serverProblemsEn;

/** Every English message. */
export const en: En = {
  ...advisorEn,
  ...appEn,
  ...appMaterialEn,
  ...beliefsEn,
  ...blendEn,
  ...cautionsEn,
  ...cliProblemsEn,
  ...coreEn,
  ...daybookEn,
  ...deskEn,
  ...exchangeEn,
  ...laterEn,
  ...materialsEn,
  ...measuresEn,
  ...mixEn,
  ...pailEn,
  ...photosEn,
  ...problemsEn,
  ...readingEn,
  ...serverProblemsEn,
};
