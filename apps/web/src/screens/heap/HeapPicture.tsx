import type { HeapReport } from '@loamwright/advisor';
import { likely } from '@loamwright/science';
import { convert, unitFor, unitTable } from '@loamwright/units';
import type { ReactNode } from 'react';
import { sayDate, sayShortDay } from '../../parts/dates.ts';
import { Series } from '../../pictures/Series.tsx';
import { useSpeaker } from '../../shell/words.tsx';

/** The heap's temperatures as a line. Of each moment only the hottest place is drawn: the others stand in the daybook. */
export function HeapPicture({ report }: { readonly report: HeapReport }): ReactNode {
  const speaker = useSpeaker();
  const unit = unitFor('temperature', speaker.system);
  const inReaders = (temp_degC: number): number => convert(temp_degC, 'degC', unit);
  const inside = report.series.filter(({ where }) => where === 'core' || where === 'middle');
  const drawn = inside.length > 0 ? inside : report.series;
  const [first] = drawn;
  const last = drawn.at(-1);
  if (first === undefined || last === undefined) return null;
  const from_ms = Date.parse(first.instant);
  const acts = report.acts
    .map(({ instant, said }) => ({ at_ms: Date.parse(instant), word: speaker.tell(said) }))
    .filter(({ at_ms }) => at_ms >= from_ms - LEAD_MS);
  const frequent = frequentWords(acts.map(({ word }) => word));
  return (
    <figure className="picture">
      <Series
        label={speaker.say('app.heap.picture', {
          heap: report.name,
          first: sayDate(speaker, first.instant),
          last: sayDate(speaker, last.instant),
          unit: unitTable[unit].symbol,
          latest: speaker.likely(last.temp_degC, 'degC', 'temperature'),
        })}
        points={drawn.map(({ instant, temp_degC }) => ({
          at_ms: Date.parse(instant),
          temp: inReaders(likely(temp_degC)),
        }))}
        acts={acts.map((act) => (frequent.has(act.word) ? { ...act, word: '' } : act))}
        lines={report.lines.map(({ temp_degC, said }) => ({ temp: inReaders(temp_degC), words: speaker.tell(said) }))}
        unit={unitTable[unit].symbol}
        sayDay={(at_ms) => sayShortDay(speaker, at_ms)}
      />
      {frequent.size > 0 && (
        <figcaption>
          {speaker.say('app.heap.strokes', {
            what: speaker.list(
              [...frequent].map(([word, count]) => speaker.say('app.heap.strokes.of', { what: word, count })),
            ),
          })}
        </figcaption>
      )}
    </figure>
  );
}

/** What was done up to a week before the first reading belongs into the picture: the build above all. */
const LEAD_MS = 7 * 86_400_000;

/** What was done more often than this is drawn as strokes at the foot, and said once under the picture. */
const MOST_WORDS = 5;

/** Words that come too often to be written each time, with how often. */
function frequentWords(words: readonly string[]): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const word of words) counts.set(word, (counts.get(word) ?? 0) + 1);
  return new Map([...counts].filter(([, count]) => count > MOST_WORDS));
}
