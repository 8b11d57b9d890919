import type { ReadingWords } from '@loamwright/advisor';
import type { Saying } from '@loamwright/words';
import type { ReactNode } from 'react';
import { sourceName } from '../../parts/sources.ts';
import { useSpeaker } from '../../shell/words.tsx';

interface Properties {
  readonly words: ReadingWords;
  /** The answer at the top: what stands there is not said again. */
  readonly headline: string;
  /** A minute's work each that would narrow the answer. */
  readonly checks: readonly Saying[];
}

/** What the last reading means, beside the published bands and beside what growers seek. */
export function ReadingMeaning({ words, headline, checks }: Properties): ReactNode {
  const speaker = useSpeaker();
  const degrees = (temp_degC: number): string => speaker.likely(temp_degC, 'degC', 'temperature');
  return (
    <section className="section stack">
      <h2>{speaker.say('app.heap.meaning')}</h2>
      {[words.state, ...words.trend, ...words.views, words.sanitising, ...words.notes]
        .map((said) => speaker.tell(said))
        .filter((text) => !headline.includes(text))
        .map((text) => (
          <p key={text}>{text}</p>
        ))}
      {checks.length > 0 && (
        <>
          <h2>{speaker.say('app.heap.checks')}</h2>
          <ul className="lines">
            {checks.map((check) => (
              <li key={check.key}>{speaker.tell(check)}</li>
            ))}
          </ul>
        </>
      )}
      {words.bands.length > 0 && (
        <details>
          <summary>{speaker.say('app.heap.bands')}</summary>
          <ul className="lines small">
            {words.bands.map(({ said, low_degC, high_degC, source }) => (
              <li key={`${said.key} ${source}`}>
                {bandLine({
                  low: low_degC === null ? null : degrees(low_degC),
                  high: high_degC === null ? null : degrees(high_degC),
                  words: speaker.tell(said),
                  source: sourceName(source),
                })}
              </li>
            ))}
          </ul>
        </details>
      )}
    </section>
  );

  function bandLine(band: { low: string | null; high: string | null; words: string; source: string }): string {
    const { low, high, ...rest } = band;
    if (low !== null && high !== null) return speaker.say('app.heap.band', { low, high, ...rest });
    if (low !== null) return speaker.say('app.heap.bandAbove', { low, ...rest });
    return speaker.say('app.heap.bandBelow', { high: high ?? '', ...rest });
  }
}
