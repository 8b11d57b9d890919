import type { Holding } from '@loamwright/daybook';
import type { BestMeasurement, ValuedCheck } from '@loamwright/science';
import type { Saying } from '@loamwright/words';
import { materialName } from './names.ts';
import { say, sayOf } from './saying.ts';

/** The checks worth a minute, and where the first is written down. */
export interface FirstChecks {
  readonly said: readonly Saying[];
  readonly first: ValuedCheck;
}

/** The checks worth a minute before a mix is laid, in words; null where none is. */
export function firstChecks(found: BestMeasurement, holding: Holding): FirstChecks | null {
  const [first] = found.ask;
  return first === undefined ? null : { said: measureNextWords(found, holding), first };
}

/**
 * Which checks are worth a minute before a mix is laid, in at most two sentences; none where none is.
 *
 * @param holding gives the names of the grower's own materials; a folded empty daybook will do.
 */
export function measureNextWords({ ask }: BestMeasurement, holding: Holding): readonly Saying[] {
  const [first, ...more] = ask;
  if (first === undefined) return [];
  const { now_share, then_share } = first.inBands;
  return [
    say('measureNext.first', {
      check: checkWords(first, holding),
      before: Math.round(100 * now_share),
      after: Math.round(100 * then_share),
    }),
    ...(more.length === 0 ? [] : [say('measureNext.more', { checks: more.map((one) => checkWords(one, holding)) })]),
  ];
}

function checkWords({ check, material }: ValuedCheck, holding: Holding): Saying {
  return sayOf('measureNext', check, material === undefined ? {} : { material: materialName(holding, material) });
}
