import { type Holding, localDate } from '@loamwright/daybook';
import type { BeanTest, CautionId, HeapKind, InputCheck } from '@loamwright/science';
import { beanTestCalculation, createDraws, inputParameters } from '@loamwright/science';
import type { Place, Saying } from '@loamwright/words';
import { dayWords } from './day-words.ts';
import { depth, say, sayOf } from './saying.ts';

/** Whether something may go in, in sentences. */
export interface InputReport {
  readonly answer: Saying;
  readonly notes: readonly Saying[];
  /** What to do with it instead; a message that may not be there. */
  readonly instead: string;
  readonly cautions: readonly CautionId[];
}

/** The answer of `input-check` in sentences. */
export function inputReport(found: InputCheck, heap: HeapKind): InputReport {
  const { stuff, kind, verdict, sprayed, disputed } = found;
  const wait = sprayed?.wait;
  return {
    answer: sayOf('inputs.verdict', verdict, {
      stuff: sayOf(kind, `${stuff}.name`),
      heap: sayOf('inputs.heap', heap),
      low: wait?.mowings.low ?? 0,
      high: wait?.mowings.high ?? 0,
      weeksLow: wait?.weeks.low ?? 0,
      weeksHigh: wait?.weeks.high ?? 0,
    }),
    notes: [
      say('inputs.because', { reason: sayOf('permit.reason', found.reason) }),
      ...(sprayed === undefined ? [] : [sayOf('inputs.sprayed', sprayed.what)]),
      ...(sprayed === undefined || sprayed.what === 'nothing' ? [] : [say('inputs.label')]),
      ...(disputed === undefined ? [] : [say('inputs.disputed')]),
      ...(stuff === 'dog-cat-waste' ? [petWords()] : []),
    ],
    instead: kind === 'doubtful' && verdict !== 'yes' ? `doubtful.${stuff}.instead` : '',
    cautions: found.cautions,
  };
}

function petWords(): Saying {
  const { deep_m, cover_m } = inputParameters.burial;
  return say('inputs.pets', { deep: depth(deep_m), cover: depth(cover_m) });
}

/** How a test with beans is done. */
export function beanSteps({ how }: BeanTest): readonly Saying[] {
  const places: Readonly<Record<string, Place>> = {
    low: how.pots.low,
    high: how.pots.high,
    small: depth(how.pot_m.low),
    large: depth(how.pot_m.high),
    parts: how.suspectParts,
  };
  return [
    say('beans.how.1'),
    say('beans.how.2', places),
    say('beans.how.3', { seeds: how.seeds }),
    say('beans.how.4', { low: how.weeks.low, high: how.weeks.high }),
    say('beans.meanwhile'),
  ];
}

/** What the last test with beans of a stuff showed; nothing where there was none. */
export function keptBeans(holding: Holding, material: string, zone: string): readonly Saying[] {
  const last = holding.beanTests.findLast(({ entry }) =>
    entry.about.some(({ type, id }) => type === 'material' && id === material),
  );
  const found = last === undefined ? undefined : beanTestCalculation.run(last.body.seen, { draws: createDraws(1) });
  if (last === undefined || found?.ok !== true) return [];
  const day = localDate(last.entry.happened, zone) ?? last.entry.happened.slice(0, 10);
  return [say('beans.kept', { day: dayWords(day), verdict: sayOf('beans.verdict', found.value.verdict) })];
}

/** What a test with beans showed, and what may be done. */
export function beanWords({ verdict }: BeanTest): readonly Saying[] {
  return [
    sayOf('beans.verdict', verdict),
    say('beans.shows'),
    ...(verdict === 'clear' ? [say('beans.note')] : [say('beans.meanwhile')]),
  ];
}
