import { bedFillReport } from '@loamwright/advisor';
import { type BedFillInput, bedFill, type CompostKnown, createDraws, standsOnIds } from '@loamwright/science';
import { type ReactNode, useMemo, useState } from 'react';
import { useSettings } from '../../device/settings.ts';
import { sayProblem } from '../../keep/not-written.ts';
import { Choices } from '../../parts/Choices.tsx';
import { NumberField } from '../../parts/NumberField.tsx';
import { QuantityField } from '../../parts/QuantityField.tsx';
import { Sentence } from '../../parts/Sentence.tsx';
import { Sheet } from '../../parts/Sheet.tsx';
import { type DrawnLayer, Layers } from '../../pictures/Layers.tsx';
import { marksFor } from '../../pictures/marks.ts';
import { Page } from '../../shell/Page.tsx';
import { openSheet, useRoute } from '../../shell/route.ts';
import { useSpeaker } from '../../shell/words.tsx';
import { partLayers, TakeButton, Told, Touched, woodLook } from './BlendAnswer.tsx';
import { CompostFields } from './CompostFields.tsx';

interface Asked {
  readonly length_m: number;
  readonly width_m: number;
  readonly depth_m: number;
  /** Woody stuff at the foot; 0 for none. */
  readonly foot_m: number;
  readonly compost_pctVolume: number;
  readonly standsOn: NonNullable<BedFillInput['standsOn']>;
  readonly compost: CompostKnown;
}

const draws = createDraws();
const START: Asked = {
  length_m: 2.4,
  width_m: 1.2,
  depth_m: 0.4,
  foot_m: 0,
  compost_pctVolume: 33,
  standsOn: 'ground',
  compost: {},
};

/** What fills a bed, in a sentence whose quantities can be touched. */
export default function FillBedPage(): ReactNode {
  const speaker = useSpeaker();
  const { measures_L } = useSettings();
  const { sheet } = useRoute();
  const [asked, setAsked] = useState(START);
  const filled = useMemo(() => bedFill.run(inputOf(asked, measures_L), { draws }), [asked, measures_L]);
  const report = useMemo(() => (filled.ok ? bedFillReport(filled.value) : null), [filled]);
  const length = (figure: number) => ({ figure, unit: 'm', as: 'length' }) as const;
  const said = (
    <p className="told">
      <Sentence
        saying={{
          key: 'app.bed.asked',
          places: {
            length: length(asked.length_m),
            width: length(asked.width_m),
            depth: { figure: asked.depth_m, unit: 'm', as: 'depth' },
            compost: { key: 'app.bed.said', places: { share: asked.compost_pctVolume } },
          },
        }}
        touchable={() => true}
        onTouch={({ place }) => openSheet(place === 'compost' ? 'compost' : 'bed')}
      />
    </p>
  );
  return (
    <Page
      question={speaker.say('app.bed.question')}
      act={{ text: speaker.say('app.bed.act'), onAct: () => openSheet('bed') }}
    >
      {filled.ok && report !== null ? (
        <>
          <Touched
            sayings={[...(report.base === null ? [] : [report.base]), report.answer]}
            why={speaker.tell(report.judged[0] ?? report.answer)}
          />
          <figure className="picture">
            <Layers
              label={speaker.say('app.bed.picture')}
              layers={[
                ...footLayer(asked, speaker.say('blend.base.wood-chips')),
                ...partLayers(report.parts, asked.depth_m - asked.foot_m, (part) => speaker.say(`blend.part.${part}`)),
              ]}
              width_m={asked.width_m}
              height_m={asked.depth_m}
              marks={marksFor(speaker, asked.depth_m)}
              tallest={180}
            />
          </figure>
          {said}
          <Told advice={report.advice} judged={report.judged} cautions={report.cautions} />
        </>
      ) : (
        <>
          {!filled.ok &&
            filled.problems.map((problem) => <p key={problem.path}>{speaker.tell(sayProblem(problem))}</p>)}
          {said}
        </>
      )}
      {sheet === 'bed' && <BedSheet asked={asked} onTake={setAsked} />}
      {sheet === 'compost' && <CompostSheet asked={asked} onTake={setAsked} />}
    </Page>
  );
}

function footLayer({ foot_m }: Asked, name: string): readonly DrawnLayer[] {
  return foot_m > 0 ? [{ material: woodLook, thickness_m: foot_m, name, amount: '' }] : [];
}

function inputOf(asked: Asked, ownSizes: BedFillInput['ownSizes']): BedFillInput {
  const { length_m, width_m, depth_m, foot_m, compost_pctVolume, standsOn, compost } = asked;
  return {
    bed: { length_m, width_m, depth_m },
    compost_pctVolume,
    standsOn,
    compost,
    ...(foot_m > 0 && { base: { stuff: 'wood-chips', depth_m: foot_m } }),
    ...(ownSizes !== undefined && { ownSizes }),
  };
}

interface SheetProperties {
  readonly asked: Asked;
  readonly onTake: (asked: Asked) => void;
}

const sides = ['length_m', 'width_m', 'depth_m', 'foot_m'] as const;

function BedSheet({ asked, onTake }: SheetProperties): ReactNode {
  const speaker = useSpeaker();
  const [draft, setDraft] = useState(asked);
  const ready =
    bedFill.input.safeParse(inputOf(draft, undefined)).success && bedFill.run(inputOf(draft, undefined), { draws }).ok;
  return (
    <Sheet title={speaker.say('app.bed.size')}>
      <div className="stack">
        {sides.map((side) => (
          <QuantityField
            key={side}
            label={speaker.say(`app.bed.${side}`)}
            shownAs={side === 'depth_m' || side === 'foot_m' ? 'depth' : 'length'}
            value={asked[side]}
            onChange={(value) => setDraft((now) => ({ ...now, [side]: value ?? 0 }))}
          />
        ))}
        <Choices
          legend={speaker.say('app.bed.standsOn')}
          options={standsOnIds.map((value) => ({ value, text: speaker.say(`app.bed.standsOn.${value}`) }))}
          value={draft.standsOn}
          onChange={(standsOn) => setDraft((now) => ({ ...now, standsOn }))}
        />
        <TakeButton ready={ready} onTake={() => onTake(draft)} />
      </div>
    </Sheet>
  );
}

function CompostSheet({ asked, onTake }: SheetProperties): ReactNode {
  const speaker = useSpeaker();
  const [draft, setDraft] = useState(asked);
  return (
    <Sheet title={speaker.say('app.blend.compost')}>
      <div className="stack">
        <NumberField
          label={speaker.say('app.bed.compost')}
          hint={speaker.say('app.bed.compost.hint')}
          most={100}
          value={draft.compost_pctVolume}
          onChange={(value) => setDraft((now) => ({ ...now, compost_pctVolume: value ?? asked.compost_pctVolume }))}
        />
        <CompostFields compost={draft.compost} onChange={(compost) => setDraft((now) => ({ ...now, compost }))} />
        <TakeButton onTake={() => onTake(draft)} />
      </div>
    </Sheet>
  );
}
