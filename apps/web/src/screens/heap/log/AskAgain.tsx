import type { DoubtWords } from '@loamwright/advisor';
import type { ReactNode } from 'react';
import { Cautions } from '../../../parts/Cautions.tsx';
import { Sheet } from '../../../parts/Sheet.tsx';
import { useSpeaker } from '../../../shell/words.tsx';

interface Properties {
  readonly doubt: DoubtWords;
  /** The figure as it was typed. */
  readonly typed: string;
  readonly onMeant: (meant: { readonly value: number; readonly unit: 'degC' | 'degF' }) => void;
  readonly onChange: () => void;
  readonly onStands: () => void;
}

/** An odd reading is asked about, never refused: what may have been meant, to change it, or that it is kept and marked. */
export function AskAgain({ doubt, typed, onMeant, onChange, onStands }: Properties): ReactNode {
  const speaker = useSpeaker();
  return (
    <Sheet title={speaker.say('app.ask.title')}>
      <div className="stack">
        {doubt.odd.map((odd) => (
          <p key={odd.key}>{speaker.tell(odd)}</p>
        ))}
        {doubt.suggestions.map(({ said, suggested }) =>
          suggested === undefined ? (
            <p key={said.key}>{speaker.tell(said)}</p>
          ) : (
            <button key={said.key} type="button" className="plain-act" onClick={() => onMeant(suggested)}>
              {speaker.tell(said)}
            </button>
          ),
        )}
        <button type="button" className="plain-act strong" onClick={onChange}>
          {speaker.say('app.ask.change')}
        </button>
        <button type="button" className="plain-act" onClick={onStands}>
          {speaker.say('app.ask.stands', { typed })}
        </button>
        <p className="small quiet">{speaker.say('app.ask.marked')}</p>
        <Cautions ids={doubt.cautions} />
      </div>
    </Sheet>
  );
}
