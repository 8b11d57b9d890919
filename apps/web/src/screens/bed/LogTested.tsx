import '@loamwright/words/later';
import { soilReport } from '@loamwright/advisor';
import type { Bed } from '@loamwright/daybook';
import {
  type SoilFigure,
  type SoilMethod,
  type SoilUnit,
  soilMethods,
  soilTestRead,
  soilUnits,
} from '@loamwright/science';
import { Fragment, type ReactNode, useState } from 'react';
import { needs } from '../../mix/needs.ts';
import { Choices } from '../../parts/Choices.tsx';
import { NumberField } from '../../parts/NumberField.tsx';
import { Pick } from '../../parts/Pick.tsx';
import { WritePage } from '../../parts/WritePage.tsx';
import { to } from '../../shell/route.ts';
import { useSpeaker } from '../../shell/words.tsx';
import { aboutBed } from './moment.ts';

const elements = ['phosphorus', 'potassium'] as const;
type Element = (typeof elements)[number];

interface Copied {
  readonly phosphorus: number | null;
  readonly potassium: number | null;
  readonly pH: number | null;
  readonly organic: number | null;
}

const NOTHING: Copied = { phosphorus: null, potassium: null, pH: null, organic: null };

/** A soil test, copied as the lab printed it, and what its own tables say of it. Labs may draw out P and K by different methods. */
export default function LogTested({ bed }: { readonly bed: Bed }): ReactNode {
  const speaker = useSpeaker();
  const [copied, setCopied] = useState(NOTHING);
  const [method, setMethod] = useState<Readonly<Record<Element, SoilMethod | null>>>({
    phosphorus: null,
    potassium: null,
  });
  const [unit, setUnit] = useState<SoilUnit | null>(null);
  const [printed, setPrinted] = useState<'element' | 'oxides'>('element');
  const [laboratory, setLaboratory] = useState('');
  const figures = elements.flatMap((element): readonly SoilFigure[] => {
    const value = copied[element];
    const own = method[element];
    if (value === null) return [];
    return [
      {
        element,
        value,
        ...(unit !== null && { unit }),
        ...(own !== null && { method: own }),
        ...(printed === 'oxides' && { asOxide: true }),
      },
    ];
  });
  const read = figures.length === 0 ? null : soilTestRead.run({ figures }, needs);
  const set = (change: Partial<Copied>): void => setCopied((before) => ({ ...before, ...change }));
  const bodyOf = {
    ...(copied.pH !== null && { pH: copied.pH }),
    ...(copied.organic !== null && { organicMatter_pctDry: copied.organic }),
    ...(figures.length > 0 && { figures }),
  };
  return (
    <WritePage
      then={to('bed', bed.id)}
      question={speaker.say('bedPage.tested.question', { bed: bed.setUp.body.name })}
      act={speaker.say('bedPage.tested.act')}
      thing={(happened) =>
        Object.keys(bodyOf).length === 0
          ? null
          : {
              kind: 'soil-tested',
              about: aboutBed(bed.id),
              happened,
              body: { ...bodyOf, ...(laboratory.trim() !== '' && { laboratory: laboratory.trim() }) },
            }
      }
    >
      {read?.ok === true ? (
        soilReport(
          read.value,
          figures.map(({ value }) => `${speaker.figure(value)} ${unit ?? ''}`.trim()),
        ).map((said) => {
          const line = speaker.tell(said);
          return <p key={line}>{line}</p>;
        })
      ) : (
        <p className="quiet">{speaker.say('bedPage.tested.hint')}</p>
      )}
      {elements.map((element) => (
        <Fragment key={element}>
          <NumberField
            label={speaker.say(`bedPage.tested.${element}`)}
            most={100_000}
            onChange={(value) => set({ [element]: value })}
          />
          <Pick
            label={speaker.say(`bedPage.tested.method.${element}`)}
            options={soilMethods.map((value) => ({ value, text: speaker.say(`soil.method.${value}`) }))}
            value={method[element]}
            onChange={(value) => setMethod((before) => ({ ...before, [element]: value }))}
          />
        </Fragment>
      ))}
      <Pick
        label={speaker.say('bedPage.tested.unit')}
        options={soilUnits.map((value) => ({ value, text: value }))}
        value={unit}
        onChange={setUnit}
      />
      <Choices
        legend={speaker.say('bedPage.tested.oxide')}
        options={(['element', 'oxides'] as const).map((value) => ({
          value,
          text: speaker.say(`bedPage.tested.${value}`),
        }))}
        value={printed}
        onChange={setPrinted}
      />
      <NumberField label={speaker.say('bedPage.tested.pH')} least={2} most={12} onChange={(pH) => set({ pH })} />
      <NumberField label={speaker.say('bedPage.tested.organic')} most={100} onChange={(organic) => set({ organic })} />
      <label className="field">
        <span className="label">{speaker.say('bedPage.tested.lab')}</span>
        <input
          className="line"
          value={laboratory}
          maxLength={120}
          onChange={(event) => setLaboratory(event.target.value)}
        />
      </label>
    </WritePage>
  );
}
