import table from '@loamwright/reference/measure-next.json' with { type: 'json' };
import type { Figure } from '../mix/parameters.ts';

/** The parameters of which check is worth a minute; see `docs/models/best-measurement.md`. */
export interface MeasureNextParameters {
  readonly decision: Readonly<
    Record<
      | 'mostLoss_softEdges'
      | 'goal_pctWet'
      | 'dryChange_share'
      | 'waterSteps'
      | 'drySteps'
      | 'worthwhile_softEdges'
      | 'changes_share'
      | 'chanceGain_share'
      | 'mostAsked',
      Figure
    >
  >;
  /** How well each check is read, nine times in ten. */
  readonly errors: Readonly<Record<'bucket_times' | 'chop_times' | 'count_times' | 'settled_share', Figure>>;
  readonly method: Readonly<Record<'outcomes' | 'shuffles' | 'surely_errors', Figure>>;
}

/** Every parameter with its source, from `reference/measure-next.json`. */
export const measureNextParameters: MeasureNextParameters = table as unknown as MeasureNextParameters;
