import { type DaybookLine, daybookLines } from '@loamwright/advisor';
import { useMemo } from 'react';
import { useBook } from '../../keep/useBook.ts';

/** Every line of the open daybook, the newest first. */
export function useLines(): readonly DaybookLine[] {
  const { entries, holding } = useBook().leaf;
  return useMemo(() => daybookLines(entries, holding), [entries, holding]);
}
