import { type ReactNode, useState } from 'react';
import { useSpeaker } from '../shell/words.tsx';

interface Properties {
  /** What the act is called; what is asked before it; and the yes. */
  readonly act: string;
  readonly ask: string;
  readonly yes: string;
  readonly onYes: () => void;
}

/** An act that takes something away: asks once before it is done. */
export function AskFirst({ act, ask, yes, onYes }: Properties): ReactNode {
  const speaker = useSpeaker();
  const [asking, setAsking] = useState(false);
  if (!asking) {
    return (
      <button type="button" className="word" onClick={() => setAsking(true)}>
        {act}
      </button>
    );
  }
  return (
    <>
      <p>{ask}</p>
      <p className="words-row">
        <button type="button" className="word" onClick={onYes}>
          {yes}
        </button>
        <button type="button" className="word" onClick={() => setAsking(false)}>
          {speaker.say('app.cancel')}
        </button>
      </p>
    </>
  );
}
