import type { Saying } from '@loamwright/words';
import type { ReactNode } from 'react';
import { useSpeaker } from '../../shell/words.tsx';

interface Properties {
  readonly title: string;
  readonly sayings: readonly Saying[];
}

/** What lies behind an answer, a line each. */
export function Lines({ title, sayings }: Properties): ReactNode {
  const speaker = useSpeaker();
  // One sentence may stand for two things, such as two nutrients of which the same is to be done.
  const told = sayings.map((said, i) => ({ line: speaker.tell(said), key: `${i} ${said.key}` }));
  return (
    <section className="section">
      <h2>{title}</h2>
      <ul className="lines">
        {told.map(({ line, key }) => (
          <li key={key}>{line}</li>
        ))}
      </ul>
    </section>
  );
}
