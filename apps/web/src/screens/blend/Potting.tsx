import { pottingReport } from '@loamwright/advisor';
import {
  type CompostKnown,
  createDraws,
  type PottingMixInput,
  pottingMix,
  recipeIds,
  useIds,
} from '@loamwright/science';
import { convert } from '@loamwright/units';
import { type ReactNode, useMemo, useState } from 'react';
import { useSettings } from '../../device/settings.ts';
import { sayProblem } from '../../keep/not-written.ts';
import { Choices } from '../../parts/Choices.tsx';
import { QuantityField } from '../../parts/QuantityField.tsx';
import { Sentence } from '../../parts/Sentence.tsx';
import { Sheet } from '../../parts/Sheet.tsx';
import { Steps } from '../../parts/Steps.tsx';
import { Layers } from '../../pictures/Layers.tsx';
import { Page } from '../../shell/Page.tsx';
import { openSheet, useRoute } from '../../shell/route.ts';
import { useSpeaker } from '../../shell/words.tsx';
import { partLayers, TakeButton, Told, Touched } from './BlendAnswer.tsx';
import { CompostFields } from './CompostFields.tsx';

interface Asked {
  readonly use: PottingMixInput['use'];
  readonly recipe: PottingMixInput['recipe'];
  readonly pots: number;
  readonly each_L: number;
  readonly compost: CompostKnown;
}

const draws = createDraws();
const START: Asked = { use: 'potting-on', recipe: undefined, pots: 20, each_L: 3, compost: {} };

/** A mix for so many pots, in a sentence whose quantities can be touched. */
export default function PottingPage(): ReactNode {
  const speaker = useSpeaker();
  const { measures_L } = useSettings();
  const { sheet } = useRoute();
  const [asked, setAsked] = useState(START);
  const mix = useMemo(
    () => pottingMix.run(inputOf(asked, speaker.system === 'us', measures_L), { draws }),
    [asked, speaker.system, measures_L],
  );
  const report = useMemo(() => (mix.ok ? pottingReport(mix.value) : null), [mix]);
  const said = (
    <p className="told">
      <Sentence
        saying={{
          key: 'app.potting.asked',
          places: {
            pots: { figure: asked.each_L, unit: 'L', as: 'liquid' },
            count: { key: 'app.potting.said', places: { count: asked.pots } },
            use: { key: `blend.use.${asked.use}` },
          },
        }}
        touchable={({ place }) => place === 'pots' || place === 'count' || place === 'use'}
        onTouch={() => openSheet('pots')}
      />
    </p>
  );
  return (
    <Page
      question={speaker.say('app.potting.question')}
      act={{ text: speaker.say('app.potting.act'), onAct: () => openSheet('compost') }}
    >
      {mix.ok && report !== null ? (
        <>
          <Touched sayings={[report.answer]} why={speaker.tell(report.recipe)} />
          <figure className="picture">
            <Layers
              label={speaker.say('app.potting.picture')}
              layers={partLayers(report.parts, 1, (part) => speaker.say(`blend.part.${part}`))}
              width_m={1}
              height_m={1}
              marks={[]}
              tallest={180}
            />
          </figure>
          {said}
          <p>{speaker.tell(report.recipe)}</p>
          <Told advice={report.advice} judged={report.judged} cautions={report.cautions} />
        </>
      ) : (
        <>
          {!mix.ok && mix.problems.map((problem) => <p key={problem.path}>{speaker.tell(sayProblem(problem))}</p>)}
          {said}
        </>
      )}
      {sheet === 'pots' && <PotsSheet asked={asked} onTake={setAsked} />}
      {sheet === 'compost' && <CompostSheet asked={asked} onTake={setAsked} />}
    </Page>
  );
}

function inputOf(
  { use, recipe, pots, each_L, compost }: Asked,
  us: boolean,
  ownSizes: PottingMixInput['ownSizes'],
): PottingMixInput {
  return {
    use,
    wanted: [{ count: pots, each_L }],
    compost,
    measure: us ? 'bucket-5gal' : 'bucket-20l',
    ...(recipe !== undefined && { recipe }),
    ...(ownSizes !== undefined && { ownSizes }),
  };
}

interface SheetProperties {
  readonly asked: Asked;
  readonly onTake: (asked: Asked) => void;
}

const LEAST_L = 0.01;
const MOST_L = 10_000;

function PotsSheet({ asked, onTake }: SheetProperties): ReactNode {
  const speaker = useSpeaker();
  const [draft, setDraft] = useState(asked);
  const ready = draft.each_L >= LEAST_L && draft.each_L <= MOST_L;
  return (
    <Sheet title={speaker.say('app.potting.pots')}>
      <div className="stack">
        <Choices
          legend={speaker.say('app.potting.use')}
          options={useIds.map((value) => ({ value, text: speaker.say(`blend.use.${value}`) }))}
          value={draft.use}
          onChange={(use) => setDraft({ ...draft, use, recipe: undefined })}
        />
        <Steps
          label={speaker.say('app.potting.count')}
          value={draft.pots}
          step={1}
          least={1}
          onChange={(count) => setDraft((now) => ({ ...now, pots: Math.min(10_000, count) }))}
        />
        <QuantityField
          label={speaker.say('app.potting.each')}
          shownAs="liquid"
          value={convert(asked.each_L, 'L', 'm3')}
          onChange={(m3) => setDraft((now) => ({ ...now, each_L: m3 === null ? 0 : convert(m3, 'm3', 'L') }))}
        />
        <Choices
          legend={speaker.say('app.potting.recipe')}
          options={recipeIds.map((value) => ({ value, text: speaker.say(`blend.recipe.${value}`) }))}
          value={draft.recipe ?? null}
          onChange={(recipe) => setDraft((now) => ({ ...now, recipe }))}
        />
        <TakeButton ready={ready} onTake={() => onTake(draft)} />
      </div>
    </Sheet>
  );
}

function CompostSheet({ asked, onTake }: SheetProperties): ReactNode {
  const speaker = useSpeaker();
  const [compost, setCompost] = useState(asked.compost);
  return (
    <Sheet title={speaker.say('app.blend.compost')}>
      <div className="stack">
        <CompostFields compost={compost} onChange={setCompost} />
        <TakeButton onTake={() => onTake({ ...asked, compost })} />
      </div>
    </Sheet>
  );
}
