import table from '@loamwright/reference/nitrogen-loss.json' with { type: 'json' };

/** A range of published losses, % of the nitrogen. */
export interface PublishedLoss {
  readonly low: number;
  readonly high: number;
}

/** What trials of mixes of such a C:N lost: the narrowest row of the table that holds it. */
export function publishedNitrogenLoss(carbonToNitrogen_ratio: number): PublishedLoss {
  const row =
    table.byCarbonToNitrogen.find(({ below_ratio }) => carbonToNitrogen_ratio < below_ratio) ??
    table.byCarbonToNitrogen.at(-1);
  if (row === undefined) throw new RangeError('the table of nitrogen losses is empty');
  return { low: row.low_pctNitrogen, high: row.high_pctNitrogen };
}
