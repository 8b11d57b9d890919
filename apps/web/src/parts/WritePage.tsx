import { type ReactNode, useState } from 'react';
import type { ToWrite } from '../keep/book.ts';
import { type Happened, resolved, type When } from '../keep/time.ts';
import { useWriting } from '../keep/useWriting.ts';
import { Page } from '../shell/Page.tsx';
import { goInstead } from '../shell/route.ts';
import { Problem } from './Problem.tsx';
import { WhenField } from './WhenField.tsx';
import { showWrongField } from './wrong-field.ts';

interface Properties {
  /** Address of the page that follows, once it is kept. */
  readonly then: string;
  readonly question: string;
  readonly act: string;
  /** What would be written, one entry or several at once; null while something is still missing. */
  readonly thing: (happened: Happened) => ToWrite | readonly ToWrite[] | null;
  readonly children: ReactNode;
}

/** One thing that happened: its fields, when it was, and the one act that keeps it. */
export function WritePage({ then, question, act, thing, children }: Properties): ReactNode {
  const [when, setWhen] = useState<When>('now');
  const { write, busy, problem } = useWriting();
  const ready = thing(resolved(when)) !== null && !busy;
  const keep = async (): Promise<void> => {
    if (showWrongField()) return;
    const written = thing(resolved(when));
    if (written !== null && (await write([written].flat()))) goInstead(then);
  };
  return (
    <Page question={question} act={{ text: act, ready, onAct: () => void keep() }}>
      <div className="stack">
        {children}
        <WhenField value={when} onChange={setWhen} />
        <Problem saying={problem} />
      </div>
    </Page>
  );
}
