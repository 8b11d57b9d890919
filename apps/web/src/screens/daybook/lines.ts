import { type DaybookLine, daybookLines } from '@loamwright/advisor';
import { useMemo } from 'react';
import { useBook } from '../../keep/useBook.ts';
import { picturesIn, type Shown } from '../../photo/things.ts';

/** Every line of the open daybook, the newest first. */
export function useLines(): readonly DaybookLine[] {
  const { entries, holding } = useBook().leaf;
  return useMemo(() => daybookLines(entries, holding), [entries, holding]);
}

/** Every picture in force, by the line that keeps it and by the line it belongs to. */
export function usePictures(): ReadonlyMap<string, readonly Shown[]> {
  const { entries, holding } = useBook().leaf;
  return useMemo(() => picturesIn(entries, holding), [entries, holding]);
}
