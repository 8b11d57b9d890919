import '@loamwright/words/later';
import { type Estimate, type HeapRunAnswer, heapLimits_degC } from '@loamwright/science';
import type { ReactNode } from 'react';
import { Sheet } from '../../parts/Sheet.tsx';
import { Range } from '../../pictures/Range.tsx';
import { useSpeaker } from '../../shell/words.tsx';
import { degrees, percent, whole } from './said.ts';

/** Quantities of the answer that open what lies behind them. */
export const touchedPlaces = ['heats.count', 'peakDay', 'turn.day', 'peak', 'volume', 'nitrogen', 'dry'] as const;
type TouchedPlace = (typeof touchedPlaces)[number];

interface Properties {
  readonly place: TouchedPlace;
  readonly answer: HeapRunAnswer;
}

/** What lies behind a quantity of the answer: its range, and why it is so. */
export function FigureSheet({ place, answer }: Properties): ReactNode {
  const speaker = useSpeaker();
  const hot = degrees(speaker, heapLimits_degC.sanitisingDay);
  const sayDay = (day: number): string => speaker.say('wouldPage.sheet.dayMark', { day: whole(day) });
  const { heats, publishedNitrogenLost_pctNitrogen: published } = answer;
  switch (place) {
    case 'heats.count':
      return (
        <Sheet title={speaker.say('wouldPage.sheet.heats')}>
          <p>{speaker.say('wouldPage.sheet.heatsWhy', { met: heats.met, of: heats.of, hot })}</p>
        </Sheet>
      );
    case 'peak':
      return (
        <Sheet title={speaker.say('wouldPage.sheet.peak')}>
          <Spread of={answer.peak_degC} sayValue={(value) => degrees(speaker, value)} />
        </Sheet>
      );
    case 'peakDay':
      return (
        <Sheet title={speaker.say('wouldPage.sheet.peakDay')}>
          <Spread of={answer.peak_day} sayValue={sayDay} />
        </Sheet>
      );
    case 'turn.day':
      return (
        <Sheet title={speaker.say('wouldPage.sheet.turn')}>
          {answer.firstTurn_day !== undefined && <Spread of={answer.firstTurn_day} sayValue={sayDay} />}
          <p>{speaker.say('wouldPage.sheet.turnWhy', { hot, turning: degrees(speaker, heapLimits_degC.turning) })}</p>
        </Sheet>
      );
    case 'volume':
      return (
        <Sheet title={speaker.say('wouldPage.sheet.volume')}>
          <Spread of={answer.volumeLost_pctVolume} sayValue={percent} />
        </Sheet>
      );
    case 'nitrogen':
      return (
        <Sheet title={speaker.say('wouldPage.sheet.nitrogen')}>
          <Spread of={answer.nitrogenLost_pctNitrogen} sayValue={percent} />
          <p>{speaker.say('wouldPage.why.nitrogen', { low: whole(published.low), high: whole(published.high) })}</p>
        </Sheet>
      );
    case 'dry':
      return (
        <Sheet title={speaker.say('wouldPage.sheet.dry')}>
          <Spread of={answer.dryLost_pctDry} sayValue={percent} />
        </Sheet>
      );
  }
}

interface SpreadProperties {
  readonly of: Estimate;
  readonly sayValue: (value: number) => string;
}

function Spread({ of: { p10, p50, p90 }, sayValue }: SpreadProperties): ReactNode {
  const speaker = useSpeaker();
  const places = { low: sayValue(p10), likely: sayValue(p50), high: sayValue(p90) };
  return (
    <>
      <Range
        label={speaker.say('app.quantity.range', places)}
        marks={[
          { value: p10, text: places.low },
          { value: p50, text: places.likely },
          { value: p90, text: places.high },
        ]}
      />
      <p>{speaker.say('app.quantity.range', places)}</p>
    </>
  );
}
