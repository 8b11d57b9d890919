import type { JudgedWords } from '@loamwright/advisor';
import type { ReactNode } from 'react';
import { Sheet } from '../../parts/Sheet.tsx';
import { sourceName } from '../../parts/sources.ts';
import { Range } from '../../pictures/Range.tsx';
import { to } from '../../shell/route.ts';
import { useSpeaker } from '../../shell/words.tsx';

/** A figure of the mix: its range as a mound, and the chance that it lies in every source's own band. */
export function JudgedSheet({ words }: { readonly words: JudgedWords }): ReactNode {
  const speaker = useSpeaker();
  const { value, bands } = words.judged;
  const told = (figure: number): string => speaker.figure(figure);
  return (
    <Sheet title={speaker.say(`app.judged.${words.quantity}`)}>
      <div className="stack">
        <Range
          label={speaker.say('app.quantity.range', {
            low: told(value.p10),
            likely: told(value.p50),
            high: told(value.p90),
          })}
          marks={[
            { value: value.p10, text: told(value.p10) },
            { value: value.p50, text: told(value.p50) },
            { value: value.p90, text: told(value.p90) },
          ]}
        />
        <p>{speaker.tell(words.said)}</p>
        <h3 className="label">{speaker.say('app.judged.bands')}</h3>
        <ul className="lines small">
          {bands.map(({ source, kind, low, high, chance, mark }) => (
            <li key={`${source} ${kind} ${low} ${high}`}>
              {speaker.say('app.judged.band', {
                source: sourceName(source),
                low: low === undefined ? '…' : told(low),
                high: high === undefined ? '…' : told(high),
                kind: speaker.say(`app.judged.${kind}`),
                chance: speaker.chance(chance.met, chance.of),
              })}{' '}
              <a className="quiet" href={to('about', source)}>
                {speaker.say(`mark.${mark}`)}
              </a>
            </li>
          ))}
        </ul>
      </div>
    </Sheet>
  );
}
