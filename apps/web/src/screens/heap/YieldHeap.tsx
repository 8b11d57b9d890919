import '@loamwright/words/later';
import { heapYieldInput, measureVolume_m3, yieldReport } from '@loamwright/advisor';
import type { Heap } from '@loamwright/daybook';
import {
  check,
  type HeapYield,
  likely,
  type Outcome,
  type ShelterId,
  shelterIds,
  type YieldInput,
  yieldBounds,
  yieldEstimate,
} from '@loamwright/science';
import type { Saying, Speaker } from '@loamwright/words';
import { type ReactNode, useMemo, useState } from 'react';
import { useSettings } from '../../device/settings.ts';
import { sayProblem } from '../../keep/not-written.ts';
import { now } from '../../keep/time.ts';
import { useBook } from '../../keep/useBook.ts';
import { needs } from '../../mix/needs.ts';
import { Cautions } from '../../parts/Cautions.tsx';
import { Choices } from '../../parts/Choices.tsx';
import { NumberField } from '../../parts/NumberField.tsx';
import { QuantityField } from '../../parts/QuantityField.tsx';
import { QuantitySheet } from '../../parts/QuantitySheet.tsx';
import { readMeasures } from '../../parts/read-measures.ts';
import { Sentence, type Touchable } from '../../parts/Sentence.tsx';
import { Flows } from '../../pictures/Flows.tsx';
import { type Act, Page } from '../../shell/Page.tsx';
import { openSheet, to, useRoute } from '../../shell/route.ts';
import { useSpeaker } from '../../shell/words.tsx';

const measures = ['barrow', 'bucket-5gal'] as const;

/** What was measured, as far as the page asks it. */
interface Measured {
  readonly built_m3: number | null;
  readonly ready_m3: number | null;
  readonly readyAsh_pctDry: number | null;
  readonly readyMoisture_pctWet: number | null;
  readonly readyDensity_kgPerM3AsIs: number | null;
}

/** How much compost a heap comes to, and what is in it. */
export default function YieldHeap({ heap }: { readonly heap: Heap }): ReactNode {
  const speaker = useSpeaker();
  const { holding } = useBook().leaf;
  const { measures_L } = useSettings();
  const known = useMemo(() => heapYieldInput(heap, holding, now()), [heap, holding]);
  const [measure, setMeasure] = useState<(typeof measures)[number]>('barrow');
  const [shelter, setShelter] = useState<ShelterId>('unknown');
  const [measured, setMeasured] = useState<Measured>({
    built_m3: known?.built_m3 === undefined ? null : likely(known.built_m3),
    ready_m3: known?.ready_m3 ?? null,
    readyAsh_pctDry: null,
    readyMoisture_pctWet: null,
    readyDensity_kgPerM3AsIs: null,
  });
  const put = (change: Partial<Measured>): void => setMeasured((before) => ({ ...before, ...change }));
  const reckoned = useMemo(() => {
    if (known === undefined && measured.built_m3 === null) return null;
    const { built_m3: _built, ready_m3: _ready, ...stuff } = known ?? {};
    const reckon = (all: Measured): Outcome<HeapYield> => {
      const told = Object.fromEntries(Object.entries(all).filter(([, value]) => value !== null));
      const input = check<YieldInput>(yieldEstimate.input, {
        ...stuff,
        ...told,
        measure,
        shelter,
        ownSizes: measures_L,
      });
      return input.ok ? yieldEstimate.run(input.value, needs) : input;
    };
    const found = reckon(measured);
    const isGrown = !found.ok && measured.ready_m3 !== null && found.problems.every(({ path }) => path === 'ready_m3');
    return { isGrown, found: isGrown ? reckon({ ...measured, ready_m3: null }) : found };
  }, [known, measured, measure, shelter, measures_L]);
  const found = reckoned?.found ?? null;
  const inMeasures = (typed: string): { readonly si: number; readonly words: string } | undefined => {
    const read = readMeasures(typed, measures, speaker);
    if (read === undefined) return undefined;
    const each_m3 = measureVolume_m3(read.measure, measures_L, needs);
    return each_m3.ok ? { si: read.count * each_m3.value, words: typed } : undefined;
  };
  return (
    <Page question={speaker.say('yieldPage.question', { heap: heap.name })} act={actOn(heap, speaker)}>
      {heap.phase === 'gone' && found !== null && <p>{speaker.say('yieldPage.gone')}</p>}
      {found === null && <p className="answer">{speaker.say('yieldPage.nothing')}</p>}
      {found !== null && !found.ok && (
        <p className="answer" role="alert">
          {found.problems.map((problem) => speaker.tell(sayProblem(problem))).join(' ')}
        </p>
      )}
      {found?.ok === true && <Answer found={found.value} />}
      {reckoned?.isGrown === true && found?.ok === true && measured.ready_m3 !== null && (
        <p role="alert">
          {speaker.tell({
            key: 'yieldPage.grown',
            places: {
              built: { figure: builtOf(found.value), unit: 'm3', as: 'bulkVolume' },
              ready: { figure: measured.ready_m3, unit: 'm3', as: 'bulkVolume' },
            },
          })}
        </p>
      )}
      <div className="section stack">
        <Choices
          legend={speaker.say('yieldPage.measure')}
          options={measures.map((value) => ({ value, text: speaker.say(`measure.${value}.name`) }))}
          value={measure}
          onChange={setMeasure}
        />
        <Choices
          legend={speaker.say('yieldPage.shelter')}
          options={shelterIds.map((value) => ({ value, text: speaker.say(`yieldPage.shelter.${value}`) }))}
          value={shelter}
          onChange={setShelter}
        />
        <details open={known === undefined}>
          <summary>{speaker.say('yieldPage.known')}</summary>
          <div className="stack">
            <QuantityField
              label={speaker.say('yieldPage.built')}
              shownAs="bulkVolume"
              value={measured.built_m3}
              {...yieldBounds.volume_m3}
              alsoRead={inMeasures}
              onChange={(built_m3) => put({ built_m3 })}
            />
            <QuantityField
              label={speaker.say('yieldPage.ready')}
              shownAs="bulkVolume"
              value={measured.ready_m3}
              {...yieldBounds.volume_m3}
              alsoRead={inMeasures}
              onChange={(ready_m3) => put({ ready_m3 })}
            />
            <NumberField
              label={speaker.say('yieldPage.ash')}
              least={1}
              most={99}
              onChange={(readyAsh_pctDry) => put({ readyAsh_pctDry })}
            />
            <NumberField
              label={speaker.say('yieldPage.moisture')}
              least={1}
              most={95}
              onChange={(readyMoisture_pctWet) => put({ readyMoisture_pctWet })}
            />
            <QuantityField
              label={speaker.say('yieldPage.density')}
              shownAs="bulkDensity"
              value={null}
              {...yieldBounds.density_kgPerM3AsIs}
              onChange={(readyDensity_kgPerM3AsIs) => put({ readyDensity_kgPerM3AsIs })}
            />
          </div>
        </details>
      </div>
      <p>
        <a className="word" href={to('heap', heap.id, 'ripe')}>
          {speaker.say('yieldPage.ripe')}
        </a>
      </p>
      <Cautions ids={yieldEstimate.cautions} />
    </Page>
  );
}

/** What is done next with a heap: nothing more with one that is gone. */
function actOn({ id, phase }: Heap, { say }: Speaker): Act {
  if (phase === 'gone') return { text: say('sharePage.back'), href: to('heap', id) };
  return phase === 'finished'
    ? { text: say('yieldPage.act.spread'), href: to('heap', id, 'spread') }
    : { text: say('yieldPage.act.ready'), href: to('heap', id, 'ready') };
}

const counted = ({ place, figure }: Touchable): boolean => figure !== undefined || place === 'count';

function Answer({ found }: { readonly found: HeapYield }): ReactNode {
  const speaker = useSpeaker();
  const { sheet } = useRoute();
  const [touched, setTouched] = useState<Touchable | null>(null);
  const { answer, notes } = yieldReport(found);
  const [mass, moisture, basis, ...more] = notes;
  const told = (saying: Saying): ReactNode => (
    <Sentence
      saying={saying}
      touchable={counted}
      onTouch={(part) => {
        setTouched(part);
        openSheet('figure');
      }}
    />
  );
  return (
    <>
      <p className="answer">{told(answer)}</p>
      {mass !== undefined && moisture !== undefined && (
        <p>
          {told(mass)} {speaker.tell(moisture)}
        </p>
      )}
      <Fate found={found} />
      {basis !== undefined && <p>{speaker.tell(basis)}</p>}
      <section className="section">
        <h2>{speaker.say('yieldPage.because')}</h2>
        <ul className="lines">
          {more.map((saying) => (
            <li key={speaker.tell(saying)}>{told(saying)}</li>
          ))}
        </ul>
      </section>
      {sheet === 'figure' && touched !== null && (
        <QuantitySheet title={touched.text} figure={touched.figure} chance={touched.chance}>
          {touched.place === 'count' && (
            <p>
              {speaker.say('yieldPage.count', {
                low: speaker.figure(found.count.p10),
                high: speaker.figure(found.count.p90),
              })}
            </p>
          )}
          {basis !== undefined && <p>{speaker.tell(basis)}</p>}
        </QuantitySheet>
      )}
    </>
  );
}

/** What it was built to, m³. */
function builtOf({ volume_m3, left_pctVolume }: HeapYield): number {
  return (100 * volume_m3.p50) / left_pctVolume.p50;
}

/** The heap as it was built, and what of it is left. */
function Fate({ found }: { readonly found: HeapYield }): ReactNode {
  const speaker = useSpeaker();
  const left = found.volume_m3.p50;
  const built = builtOf(found);
  const gone = Math.max(0, built - left);
  const flow = (id: 'built' | 'gone' | 'left', from: number, length: number) => ({
    id,
    text: speaker.tell({
      key: `yieldPage.flow.${id}`,
      places: { amount: { figure: length, unit: 'm3', as: 'bulkVolume' } },
    }),
    from,
    length,
    leaks: id === 'gone',
  });
  return (
    <figure className="picture">
      <Flows
        label={speaker.say('yieldPage.picture')}
        flows={[flow('built', 0, built), flow('gone', 0, gone), flow('left', gone, left)]}
      />
    </figure>
  );
}
