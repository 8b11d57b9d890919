import type { CheckReport } from '@loamwright/daybook';
import { type ReactNode, useState } from 'react';
import type { Book } from '../../keep/book.ts';
import { useSpeaker } from '../../shell/words.tsx';
import { checkFindings } from './check-findings.ts';

/** Reads every entry again and works out every sum anew: was anything changed, is anything missing? */
export function ChainCheck({ book }: { readonly book: Book }): ReactNode {
  const speaker = useSpeaker();
  const [report, setReport] = useState<CheckReport | null>(null);
  const [failed, setFailed] = useState(false);
  const check = (): void => {
    setFailed(false);
    book.look((keeping) => keeping.check()).then(setReport, () => setFailed(true));
  };
  const findings = report === null ? [] : checkFindings(report);
  return (
    <section className="section">
      <h2>{speaker.say('app.check.title')}</h2>
      <p className="small quiet">{speaker.say('app.check.told')}</p>
      <button type="button" className="word" onClick={check}>
        {speaker.say('app.check.act')}
      </button>
      <div role="status">
        {failed && <p>{speaker.say('app.check.failed')}</p>}
        {report !== null && findings.length === 0 && <p>{speaker.say('app.check.sound', { count: report.counted })}</p>}
        {findings.map(({ key, count }) => (
          <p key={key}>{speaker.say(key, { count })}</p>
        ))}
      </div>
    </section>
  );
}
