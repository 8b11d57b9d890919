import { type ReactNode, useState } from 'react';
import { instantOf, localMinute, meant, now, resolved, type When, type WhenWord } from '../keep/time.ts';
import { useSpeaker } from '../shell/words.tsx';
import { Choices } from './Choices.tsx';

const words: readonly WhenWord[] = ['now', 'this-morning', 'yesterday-evening', 'yesterday', 'other'];

interface Properties {
  readonly value: When;
  readonly onChange: (value: When) => void;
  /** The choice that stands first; a time of its own when an entry is amended. */
  readonly first?: WhenWord | undefined;
}

/** When it happened in the garden: now, in a word, or by the clock. */
export function WhenField({ value, onChange, first = 'now' }: Properties): ReactNode {
  const speaker = useSpeaker();
  const [word, setWord] = useState<WhenWord>(first);
  return (
    <div>
      <Choices
        legend={speaker.say('app.when.title')}
        options={words.map((one) => ({ value: one, text: speaker.say(`app.when.${one}`) }))}
        value={word}
        onChange={(chosen) => {
          setWord(chosen);
          onChange(meant(chosen) ?? { instant: resolved(value).instant, precision: 'minute' });
        }}
      />
      {word === 'other' && (
        <label className="field">
          <span className="label">{speaker.say('app.when.clock')}</span>
          <input
            type="datetime-local"
            className="line"
            value={localMinute(resolved(value).instant)}
            max={localMinute(now())}
            onChange={(event) => {
              const instant = instantOf(event.target.value);
              if (instant !== null) onChange({ instant, precision: 'minute' });
            }}
          />
        </label>
      )}
    </div>
  );
}
