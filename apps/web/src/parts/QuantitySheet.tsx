import { convert, unitFor } from '@loamwright/units';
import type { Figure } from '@loamwright/words';
import type { ReactNode } from 'react';
import { Range } from '../pictures/Range.tsx';
import { useSpeaker } from '../shell/words.tsx';
import { Sheet } from './Sheet.tsx';

interface Properties {
  readonly title: string;
  readonly figure?: Figure | undefined;
  readonly chance?: { readonly met: number; readonly of: number } | undefined;
  /** Why it is so, where it comes from, and how it is changed. */
  readonly children?: ReactNode;
}

/** What lies behind a quantity of the answer: its range, drawn and in words, its reason and its source. */
export function QuantitySheet({ title, figure, chance, children }: Properties): ReactNode {
  const speaker = useSpeaker();
  return (
    <Sheet title={title}>
      <div className="stack">
        {figure !== undefined && <FigureRange figure={figure} />}
        {chance !== undefined && <p>{speaker.say('app.quantity.chance', { met: chance.met, of: chance.of })}</p>}
        {children}
      </div>
    </Sheet>
  );
}

function FigureRange({ figure: { figure, unit, as } }: { readonly figure: Figure }): ReactNode {
  const speaker = useSpeaker();
  if (typeof figure === 'number')
    return <p>{speaker.say('app.quantity.exact', { likely: speaker.likely(figure, unit, as) })}</p>;
  const told = (value: number): string => speaker.likely(value, unit, as);
  const inReaders = (value: number): number => convert(value, unit, unitFor(as, speaker.system));
  const places = { low: told(figure.p10), likely: told(figure.p50), high: told(figure.p90) };
  return (
    <>
      <Range
        label={speaker.say('app.quantity.range', places)}
        marks={[
          { value: inReaders(figure.p10), text: places.low },
          { value: inReaders(figure.p50), text: places.likely },
          { value: inReaders(figure.p90), text: places.high },
        ]}
      />
      <p>{speaker.say('app.quantity.range', places)}</p>
    </>
  );
}
