import type { CautionId } from '@loamwright/science';
import type { ReactNode } from 'react';
import { useSpeaker } from '../shell/words.tsx';

interface Properties {
  readonly ids: readonly CautionId[];
  /** Shown open where it may hurt someone now. */
  readonly open?: boolean | undefined;
}

/** The cautions that apply here, in the table's order: what can hurt soonest first. */
export function Cautions({ ids, open = true }: Properties): ReactNode {
  const speaker = useSpeaker();
  if (ids.length === 0) return null;
  return (
    <details className="section" open={open}>
      <summary>{speaker.say('app.cautions')}</summary>
      <ul className="lines">
        {ids.map((id) => (
          <li key={id}>{speaker.say(`caution.${id}`)}</li>
        ))}
      </ul>
    </details>
  );
}
