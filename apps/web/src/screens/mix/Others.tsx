import { tradeOffWords } from '@loamwright/advisor';
import type { Aim, MixSolveInput } from '@loamwright/science';
import type { ReactNode } from 'react';
import { useBook } from '../../keep/useBook.ts';
import { putAim } from '../../mix/draft.ts';
import { useOthers } from '../../mix/mix.ts';
import { Choices } from '../../parts/Choices.tsx';
import { useSpeaker } from '../../shell/words.tsx';

interface Properties {
  readonly input: MixSolveInput;
  readonly aim: Aim | null;
}

const FIRST = 'first';

/** The answers there are, a sentence each: the one that is chosen is the mix that is laid. They come when they are found. */
export function Others({ input, aim }: Properties): ReactNode {
  const speaker = useSpeaker();
  const { holding } = useBook().leaf;
  const others = useOthers(input);
  if (others.length === 0) return null;
  return (
    <section className="section">
      <Choices<Aim | typeof FIRST>
        legend={speaker.say('app.mix.others')}
        options={[
          { value: FIRST, text: speaker.say('app.mix.first') },
          ...others.map((other) => ({ value: other.aim, text: speaker.tell(tradeOffWords(other, holding)) })),
        ]}
        value={others.find((other) => other.aim === aim)?.aim ?? FIRST}
        onChange={(chosen) => putAim(chosen === FIRST ? null : chosen)}
      />
    </section>
  );
}
