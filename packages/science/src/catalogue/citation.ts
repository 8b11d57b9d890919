/** Whether a figure was read in a copy of its source, recalled, or worked out from cited figures. */
export type Mark = 'seen' | 'memory' | 'derived';

/** Where a method or figure comes from: an id of `reference/sources.json` and the place in it. */
export interface Citation {
  readonly source: string;
  readonly place: string;
  readonly mark: Mark;
}
