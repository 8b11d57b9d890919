import '@loamwright/words/later';
import { type HeapRunAnswer, heapLimits_degC } from '@loamwright/science';
import type { ReactNode } from 'react';
import { QuantitySheet } from '../../parts/QuantitySheet.tsx';
import { Sheet } from '../../parts/Sheet.tsx';
import { useSpeaker } from '../../shell/words.tsx';
import { degrees, temperature } from './said.ts';

/** Quantities of the answer that open what lies behind them. */
export const touchedPlaces = ['chance', 'peak'] as const;
type TouchedPlace = (typeof touchedPlaces)[number];

interface Properties {
  readonly place: TouchedPlace;
  readonly answer: HeapRunAnswer;
}

/** What lies behind a quantity of the answer: what was counted, or its range. */
export function FigureSheet({ place, answer }: Properties): ReactNode {
  const speaker = useSpeaker();
  const { heats, peak_degC } = answer;
  if (place === 'peak')
    return <QuantitySheet title={speaker.say('wouldPage.sheet.peak')} figure={temperature(speaker, peak_degC)} />;
  const hot = degrees(speaker, heapLimits_degC.sanitisingDay);
  return (
    <Sheet title={speaker.say('wouldPage.sheet.heats')}>
      <p>{speaker.say('wouldPage.sheet.heatsWhy', { met: heats.met, of: heats.of, hot })}</p>
    </Sheet>
  );
}
