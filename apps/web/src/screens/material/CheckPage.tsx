import { type Check, describedWith, figuresOfCheck, materialName, readCheck } from '@loamwright/advisor';
import { type ReactNode, useState } from 'react';
import type { ToWrite } from '../../keep/book.ts';
import { sayProblem } from '../../keep/not-written.ts';
import type { Happened } from '../../keep/time.ts';
import { useBook } from '../../keep/useBook.ts';
import { needs } from '../../mix/needs.ts';
import { Choices } from '../../parts/Choices.tsx';
import { Problem } from '../../parts/Problem.tsx';
import { WritePage } from '../../parts/WritePage.tsx';
import { to } from '../../shell/route.ts';
import { useSpeaker } from '../../shell/words.tsx';

interface Properties {
  readonly id: string;
  readonly of: 'squeeze' | 'dried' | 'bucket' | 'settled';
  /** Null while something is still missing. */
  readonly check: Check | null;
  /** How it was measured, in words, for the entry. */
  readonly method: string;
  readonly children: ReactNode;
}

/** A check of a material: its fields, and what was believed before it and is believed after. */
export function CheckPage({ id, of, check, method, children }: Properties): ReactNode {
  const speaker = useSpeaker();
  const { holding } = useBook().leaf;
  const [instead, setInstead] = useState(false);
  const name = speaker.tell(materialName(holding, id));
  const read = check === null ? null : readCheck(id, check, { holding, method: method.slice(0, MOST_METHOD), needs });
  const about = [{ type: 'material', id }];
  const thing = (happened: Happened): ToWrite | null => {
    if (read === null || !read.ok) return null;
    const { body } = read.value;
    if (!instead) return { kind: 'material-measured', about, happened, body };
    const described = describedWith(id, figuresOfCheck(body), { holding, name });
    return { kind: 'material-described', about, happened, body: described };
  };
  return (
    <WritePage
      then={to('material', id)}
      question={speaker.say(`app.material.${of}.question`, { material: name })}
      act={speaker.say('app.material.keep')}
      thing={thing}
    >
      <p className="quiet">{speaker.say(`app.material.${of}.how`)}</p>
      {children}
      <div role="status" className="stack">
        {read?.ok === true &&
          read.value.changes.map(({ property, said }) => (
            <p key={property} className="answer">
              {speaker.tell(said)}
            </p>
          ))}
        {read?.ok === true && !read.value.agrees && (
          <>
            <p className="alarm">{speaker.say('known.disagrees')}</p>
            <Choices<'beside' | 'instead'>
              legend={speaker.say('app.material.counts')}
              options={[
                { value: 'beside', text: speaker.say('app.material.beside') },
                { value: 'instead', text: speaker.say('app.material.instead') },
              ]}
              value={instead ? 'instead' : 'beside'}
              onChange={(chosen) => setInstead(chosen === 'instead')}
            />
          </>
        )}
      </div>
      {read?.ok === false && <Problem saying={sayProblem(read.problems[0])} />}
    </WritePage>
  );
}

/** What an entry's short text holds. */
const MOST_METHOD = 120;
