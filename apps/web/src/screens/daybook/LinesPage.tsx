import type { DaybookLine } from '@loamwright/advisor';
import type { Saying } from '@loamwright/words';
import { type ReactNode, useState } from 'react';
import { useSettings } from '../../device/settings.ts';
import { sayAgo, sayDay, sayTime } from '../../parts/dates.ts';
import { NotExchanged } from '../../parts/NotExchanged.tsx';
import { Picture } from '../../photo/Picture.tsx';
import { Page } from '../../shell/Page.tsx';
import { to } from '../../shell/route.ts';
import { useSpeaker } from '../../shell/words.tsx';
import { useLines, usePictures } from './lines.ts';

/** Kinds that tell of another line rather than of the garden. */
const besides: readonly string[] = ['withdrawal', 'photo', 'attachment-removed'];

/** How many lines are shown before "older". */
const AT_ONCE = 60;

/** The daybook as lines, the newest first. Nothing is left out: what does not count says so. */
export function LinesPage(): ReactNode {
  const speaker = useSpeaker();
  const lines = useLines();
  const { exchanges, book } = useSettings();
  const [shown, setShown] = useState(AT_ONCE);
  const odd = lines.filter(({ status }) => status !== 'in-force' && status !== 'amended' && status !== 'withdrawn');
  const warned = lines.filter(
    ({ status, remarks, entry }) => status === 'in-force' && remarks.length > 0 && !isAmendment(entry),
  );
  return (
    <Page
      question={speaker.say('app.daybook.question')}
      act={{ text: speaker.say('app.daybook.kept'), href: to('daybook', 'kept') }}
    >
      <p className="answer">{speaker.tell(headline())}</p>
      {exchanges !== null && book === 'own' && <NotExchanged />}
      {odd.length + warned.length > 0 && (
        <details className="section">
          <summary>{speaker.say('app.daybook.odd', { count: odd.length + warned.length })}</summary>
          <Lines lines={[...odd, ...warned]} />
        </details>
      )}
      {byDay(lines.slice(0, shown)).map((day) => (
        <section key={day.date} className="section">
          <h2>{sayDay(speaker, day.date)}</h2>
          <Lines lines={day.lines} />
        </section>
      ))}
      {lines.length > shown && (
        <button type="button" className="word" onClick={() => setShown(shown + AT_ONCE)}>
          {speaker.say('app.daybook.older')}
        </button>
      )}
    </Page>
  );

  /** The last thing that was done and counts. */
  function headline(): Saying {
    const last = lines.find(({ status, kind }) => status === 'in-force' && !besides.includes(kind));
    if (last === undefined) return { key: 'app.daybook.answer', places: { count: lines.length } };
    return {
      key: 'app.daybook.last',
      places: { said: last.said, ago: sayAgo(speaker, last.happened), count: lines.length },
    };
  }

  /** An amendment carries a remark that is nothing odd. */
  function isAmendment(id: string): boolean {
    return lines.some(({ outBy, status }) => status === 'amended' && outBy === id);
  }
}

function Lines({ lines }: { readonly lines: readonly DaybookLine[] }): ReactNode {
  const speaker = useSpeaker();
  const pictures = usePictures();
  return (
    <ul className="lines">
      {lines.map((line) => (
        <li key={`${line.entry} ${line.sum}`} className={line.status === 'in-force' ? undefined : 'quiet'}>
          <a href={to('daybook', line.entry)}>
            {speaker.tell(line.said)}
            <span className="small quiet block">
              {[
                ...(line.precision === 'minute' || line.precision === 'hour' ? [sayTime(speaker, line.happened)] : []),
                ...(isLate(line)
                  ? [speaker.say('app.daybook.writtenLater', { day: sayDay(speaker, line.written) })]
                  : []),
                ...line.typed.map((typed) => speaker.tell(typed)),
                ...line.remarks.map((remark) => speaker.tell(remark)),
              ].join(' · ')}
            </span>
            {line.kind === 'photo' &&
              pictures.get(line.entry)?.map((shown) => <Picture key={shown.hash} shown={shown} size="thumbnail" />)}
          </a>
        </li>
      ))}
    </ul>
  );
}

const DAY_MS = 86_400_000;

/** A line written a day or more after it happened says so. */
function isLate({ happened, written }: DaybookLine): boolean {
  return Date.parse(written) - Date.parse(happened) > DAY_MS;
}

interface Day {
  /** An instant of that day. */
  readonly date: string;
  readonly lines: readonly DaybookLine[];
}

/** Lines that follow one another, by the day on which they happened here. */
function byDay(lines: readonly DaybookLine[]): readonly Day[] {
  const days: { date: string; lines: DaybookLine[] }[] = [];
  for (const line of lines) {
    const last = days.at(-1);
    if (last !== undefined && new Date(last.date).toDateString() === new Date(line.happened).toDateString()) {
      last.lines.push(line);
    } else days.push({ date: line.happened, lines: [line] });
  }
  return days;
}
