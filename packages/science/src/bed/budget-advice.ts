import { shareOf, summarise } from '../estimate/index.ts';
import { type BedBudget, type BudgetAdviceId, budgetAdviceIds } from './bed-budget-io.ts';
import type { Supply } from './bed-supply.ts';
import { budgetParameters, type ClassId } from './budget-parameters.ts';

/** Classes of a test on which nothing that brings phosphorus goes on. */
const RICH: readonly (ClassId | undefined)[] = ['high', 'excessive'];

type Facts = Pick<BedBudget, 'elements' | 'salts' | 'lime' | 'phosphorus_years' | 'lockUp' | 'untested'>;

interface Depths {
  /** This season's, all stuffs. */
  readonly deep_m: Float64Array;
  /** Composts of all seasons. */
  readonly alone_m: Float64Array;
  readonly sandy: boolean;
  /** By the soil test. */
  readonly phosphorusClass: ClassId | undefined;
}

const parameters = budgetParameters;
const UNTESTED_ALL = 5;

/** What to do or to mind, the first first; the message `budget.advice.ID`. */
export function adviceOf(
  facts: Facts,
  put: readonly Supply[],
  { deep_m, alone_m, sandy, phosphorusClass }: Depths,
): readonly BudgetAdviceId[] {
  const now = put.filter(({ seasonsAgo }) => seasonsAgo === 0);
  const gives = summarise(deep_m).p50;
  const { salts, lime, lockUp, phosphorus_years, elements, untested } = facts;
  const locking = lockUp !== undefined && lockUp.thisSeason_gPerM2.p50 > 0;
  const atLeastFresh = now.filter(({ put: one }) => one?.dressed.kind.fresh === true);
  const manure = atLeastFresh.filter(({ put: one }) => one?.dressed.cautions.includes('manure-pathogens'));
  const onTop = manure.some(
    ({ put: one }) => one?.given.placed === 'mulched' || (one?.given.workedInAfter_days ?? 0) > 1,
  );
  const carbonOnTop = lockUp !== undefined && lockUp.most_gPerM2.p50 > 0 && !locking;
  const isRich = RICH.includes(phosphorusClass);
  const fed = elements.phosphate.stands === 'over' || elements.phosphate.stands === 'enough';
  const told: Readonly<Record<BudgetAdviceId, boolean>> = {
    'lock-up': locking,
    'leave-on-top': locking || carbonOnTop,
    'compost-first': locking && manure.length > 0,
    'compost-alone': summarise(alone_m).p50 >= parameters.compostAlone_m.value,
    'phosphorus-stop': isRich && (phosphorus_years?.p50 ?? 0) > 0,
    'phosphorus-builds': !isRich && (phosphorus_years?.p50 ?? 0) > parameters.phosphorusMany_years.value,
    'nitrogen-only': fed && elements.nitrogen.stands === 'short',
    'salts-wash': salts.under !== undefined && shareOf(salts.under) < parameters.surely_share.value && now.length > 0,
    'raw-manure': manure.length > 0,
    'on-top-burns': onTop,
    'sandy-washes': sandy && now.length > 0,
    deep: gives > parameters.usualMost_m.value,
    'pH-below': lime.stands === 'below',
    'pH-above': lime.stands === 'above',
    'pH-apart': lime.stands === 'apart',
    'test-first': untested.length === UNTESTED_ALL,
  };
  return budgetAdviceIds.filter((id) => told[id]);
}
