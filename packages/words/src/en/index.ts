import { cautionsEn } from './cautions.ts';
import { coreEn } from './core.ts';
import { problemsEn } from './problems.ts';

type En = typeof cautionsEn & typeof coreEn & typeof problemsEn;

/** Every English message. */
export const en: En = { ...cautionsEn, ...coreEn, ...problemsEn };
