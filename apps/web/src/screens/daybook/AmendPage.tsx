import type { Entry } from '@loamwright/daybook';
import { type Told, tell } from '@loamwright/daybook';
import { likely } from '@loamwright/science';
import { convert } from '@loamwright/units';
import { type ReactNode, useState } from 'react';
import type { ToWrite } from '../../keep/book.ts';
import { resolved, type When } from '../../keep/time.ts';
import { useBook } from '../../keep/useBook.ts';
import { useWriting } from '../../keep/useWriting.ts';
import { Problem } from '../../parts/Problem.tsx';
import { QuantityField } from '../../parts/QuantityField.tsx';
import { WhenField } from '../../parts/WhenField.tsx';
import { Page } from '../../shell/Page.tsx';
import { goInstead, to } from '../../shell/route.ts';
import { useSpeaker } from '../../shell/words.tsx';

/** Writes what an entry should have said. The first wording stays in the daybook beside it. */
export function AmendPage({ id }: { readonly id: string }): ReactNode {
  const speaker = useSpeaker();
  const { holding } = useBook().leaf;
  const entry = holding.inForce.find((one) => one.id === id);
  const told = entry === undefined ? null : tell(entry);
  if (entry === undefined || told === null || !told.ok) {
    return (
      <Page
        question={speaker.say('app.amend.question')}
        act={{ text: speaker.say('app.entry.back'), href: to('daybook') }}
      >
        <p className="answer">{speaker.say('app.amend.cannot')}</p>
      </Page>
    );
  }
  return <Amending entry={entry} told={told.value} />;
}

function Amending({ entry, told }: { readonly entry: Entry; readonly told: Told }): ReactNode {
  const speaker = useSpeaker();
  const { write, problem } = useWriting();
  const [when, setWhen] = useState<When>({ instant: entry.happened, precision: entry.precision });
  const [changed, setChanged] = useState<Told | null>(told);
  const keep = async (): Promise<void> => {
    if (changed === null) return;
    const { kind, body } = changed;
    // The kind and its body come as a pair out of `tell`, which the type of a spread can't say.
    const thing = {
      kind,
      body,
      about: entry.about,
      happened: resolved(when),
      amends: entry.id,
      ...enteredStill(entry, told, changed),
    } as ToWrite;
    if (await write([thing])) goInstead(to('daybook'));
  };
  return (
    <Page
      question={speaker.say('app.amend.question')}
      act={{ text: speaker.say('app.amend.act'), ready: changed !== null, onAct: () => void keep() }}
    >
      <div className="stack">
        <p>{speaker.say('app.amend.told')}</p>
        <Figures told={told} onChange={setChanged} />
        <WhenField first="other" value={when} onChange={setWhen} />
        <Problem saying={problem} />
      </div>
    </Page>
  );
}

interface FiguresProperties {
  readonly told: Told;
  /** Null while what is written can't be read. */
  readonly onChange: (told: Told | null) => void;
}

/** The one figure that is most often mistyped, by kind. Other kinds are amended in their time only. */
function Figures({ told, onChange }: FiguresProperties): ReactNode {
  const speaker = useSpeaker();
  switch (told.kind) {
    case 'reading':
      if (told.body.temp_degC === undefined) return null;
      return (
        <QuantityField
          large
          label={speaker.say('app.log.temperature')}
          shownAs="temperature"
          value={likely(told.body.temp_degC)}
          // The doubt was about the figure that is amended here.
          onChange={(temp_degC) =>
            onChange(temp_degC === null ? null : { ...told, body: { ...told.body, temp_degC, doubted: undefined } })
          }
        />
      );
    case 'watered':
      return (
        <QuantityField
          large
          label={speaker.say('app.log.watered.howMuch')}
          shownAs="liquid"
          value={convert(likely(told.body.volume_L), 'L', 'm3')}
          onChange={(volume_m3) =>
            onChange(
              volume_m3 === null ? null : { ...told, body: { ...told.body, volume_L: convert(volume_m3, 'm3', 'L') } },
            )
          }
        />
      );
    case 'note':
      return (
        <label className="field">
          <span className="label">{speaker.say('app.log.note.text')}</span>
          <textarea
            className="line"
            defaultValue={told.body.text}
            onChange={(event) =>
              onChange(event.target.value.trim() === '' ? null : { ...told, body: { text: event.target.value.trim() } })
            }
          />
        </label>
      );
    default:
      return null;
  }
}

/** The amounts as they were given stay beside the body as long as the body stays. */
function enteredStill(entry: Entry, before: Told, after: Told): Pick<ToWrite, 'entered'> {
  return entry.entered === undefined || before !== after ? {} : { entered: entry.entered };
}
