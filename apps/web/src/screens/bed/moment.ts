import type { BedMoment } from '@loamwright/advisor';
import { useMemo } from 'react';
import { now, zone } from '../../keep/time.ts';
import { needs } from '../../mix/needs.ts';
import { useSpeaker } from '../../shell/words.tsx';

/** Now, here and in the reader's words, as beds are told of. */
export function useMoment(): BedMoment {
  const speaker = useSpeaker();
  return useMemo(() => ({ now: now(), zone: zone(), speaker, needs }), [speaker]);
}

/** What every entry about a bed says it is about. */
export function aboutBed(bed: string): readonly { readonly type: 'bed'; readonly id: string }[] {
  return [{ type: 'bed', id: bed }];
}
