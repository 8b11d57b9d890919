import { tradeOffWords } from '@loamwright/advisor';
import type { Aim, MixSolveInput } from '@loamwright/science';
import type { ReactNode } from 'react';
import { useBook } from '../../keep/useBook.ts';
import { putAim } from '../../mix/draft.ts';
import { useOthers } from '../../mix/mix.ts';
import { useSpeaker } from '../../shell/words.tsx';

interface Properties {
  readonly input: MixSolveInput;
  readonly aim: Aim | null;
}

/** Other answers, a sentence each; touching one lays it in the place of the first. They come when they are found. */
export function Others({ input, aim }: Properties): ReactNode {
  const speaker = useSpeaker();
  const { holding } = useBook().leaf;
  const others = useOthers(input);
  if (others.length === 0) return null;
  return (
    <section className="section">
      <h2>{speaker.say('app.mix.others')}</h2>
      <ul className="lines">
        {aim !== null && (
          <li>
            <button type="button" onClick={() => putAim(null)}>
              {speaker.say('app.mix.first')}
            </button>
          </li>
        )}
        {others
          .filter((other) => other.aim !== aim)
          .map((other) => (
            <li key={other.aim}>
              <button type="button" onClick={() => putAim(other.aim)}>
                {speaker.tell(tradeOffWords(other, holding))}
              </button>
            </li>
          ))}
      </ul>
    </section>
  );
}
