import '@loamwright/words/later';
import {
  type BedMoment,
  bedReckoned,
  compostOf,
  heapLeft,
  heapSpread,
  isPartlyGone,
  spreadsOf,
} from '@loamwright/advisor';
import type { Bed, Heap, Holding } from '@loamwright/daybook';
import { type ReactNode, useMemo, useState } from 'react';
import { useSettings } from '../../device/settings.ts';
import { sayProblem } from '../../keep/not-written.ts';
import { resolved, type When } from '../../keep/time.ts';
import { useBook } from '../../keep/useBook.ts';
import { useWriting } from '../../keep/useWriting.ts';
import { needs } from '../../mix/needs.ts';
import { Cautions } from '../../parts/Cautions.tsx';
import { Choices } from '../../parts/Choices.tsx';
import { Problem } from '../../parts/Problem.tsx';
import { Steps } from '../../parts/Steps.tsx';
import { WhenField } from '../../parts/WhenField.tsx';
import { showWrongField } from '../../parts/wrong-field.ts';
import { Page } from '../../shell/Page.tsx';
import { goInstead, to } from '../../shell/route.ts';
import { useSpeaker } from '../../shell/words.tsx';
import { aboutBed, useMoment } from '../bed/moment.ts';

/** A heap shared among the beds in whole barrows, and written down as spread. */
export default function SpreadHeap({ heap }: { readonly heap: Heap }): ReactNode {
  const speaker = useSpeaker();
  const { holding } = useBook().leaf;
  const { measures_L } = useSettings();
  const moment = useMoment();
  const { write, busy, problem } = useWriting();
  const left = useMemo(
    () => heapLeft(heap, holding, { measure: 'barrow', ownSizes: measures_L, now: moment.now, needs }),
    [heap, holding, measures_L, moment],
  );
  const beds = [...holding.beds.values()];
  const [chosen, setChosen] = useState<readonly string[]>(beds.map(({ id }) => id));
  const [by, setBy] = useState<'need' | 'area'>(() =>
    beds.some((bed) => wants(bed, holding, moment)) ? 'need' : 'area',
  );
  const [lies, setLies] = useState<'dug' | 'top'>('top');
  const [barrows, setBarrows] = useState(Math.max(1, Math.round(left?.count ?? 1)));
  const [carried, setCarried] = useState<number | null>(null);
  const [when, setWhen] = useState<When>('now');
  const asked = {
    heap,
    beds: beds.filter(({ id }) => chosen.includes(id)),
    by,
    measure: 'barrow',
    measures: barrows,
    carried: Math.min(barrows, carried ?? barrows),
    ownSizes: measures_L,
    workedIn: lies === 'dug',
  };
  const found = heapSpread(asked, holding, moment);
  const shares = found.ok ? found.value.shares : [];
  const ready = shares.length > 0 && !busy;
  const keep = async (): Promise<void> => {
    if (showWrongField()) return;
    const happened = resolved(when);
    const things = spreadsOf(asked, shares).map(({ bed, body, entered }) => ({
      kind: 'spread' as const,
      about: aboutBed(bed),
      happened,
      body,
      entered,
    }));
    if (await write(things)) goInstead(to('heap', heap.id));
  };
  if (heap.phase === 'gone' || left?.count === 0) {
    return (
      <Page
        question={speaker.say('sharePage.question', { heap: heap.name })}
        act={{ text: speaker.say('sharePage.back'), href: to('heap', heap.id) }}
      >
        <p className="answer">{speaker.say('sharePage.empty', { heap: heap.name })}</p>
      </Page>
    );
  }
  return (
    <Page
      question={speaker.say('sharePage.question', { heap: heap.name })}
      act={
        beds.length === 0
          ? { text: speaker.say('bedsPage.new'), href: to('beds', 'new') }
          : { text: speaker.say('sharePage.act'), ready, onAct: () => void keep() }
      }
    >
      {beds.length === 0 ? (
        <p className="answer">{speaker.say('sharePage.noBeds')}</p>
      ) : (
        <div className="stack">
          {found.ok ? (
            <>
              {found.value.against
                .map((said) => speaker.tell(said))
                .map((line) => (
                  <p key={line} className="answer">
                    {line}
                  </p>
                ))}
              <p className="answer">{speaker.tell(found.value.answer)}</p>
              {[...found.value.stays, ...shares.flatMap(({ tooMuch }) => (tooMuch === null ? [] : [tooMuch]))]
                .map((said) => speaker.tell(said))
                .map((line) => (
                  <p key={line}>{line}</p>
                ))}
            </>
          ) : (
            <p className="answer" role="alert">
              {found.problems
                .map((one) =>
                  one.code === 'nothing-wanted'
                    ? speaker.say('sharePage.nothing-wanted')
                    : speaker.tell(sayProblem(one)),
                )
                .join(' ')}
            </p>
          )}
          {compostOf(heap) === 'unfinished-compost' && <p>{speaker.say('sharePage.unripe')}</p>}
          <Steps
            label={speaker.say(isPartlyGone(heap) ? 'sharePage.count.left' : 'sharePage.count')}
            value={barrows}
            step={1}
            least={1}
            whole
            onChange={setBarrows}
          />
          <Steps
            label={speaker.say('sharePage.carried')}
            value={Math.min(barrows, carried ?? barrows)}
            step={1}
            least={1}
            most={barrows}
            whole
            onChange={setCarried}
          />
          {left !== undefined && (
            <p className="small quiet">
              {speaker.tell({
                key: left.by === 'record' ? 'sharePage.left' : 'sharePage.reckoned',
                places: {
                  volume: { figure: left.volume_m3, unit: 'm3', as: 'bulkVolume' },
                  range: { figure: left.volume_m3, unit: 'm3', as: 'bulkVolume', asRange: true },
                },
              })}
            </p>
          )}
          <Choices
            legend={speaker.say('sharePage.by')}
            options={(['need', 'area'] as const).map((value) => ({
              value,
              text: speaker.say(`sharePage.by.${value}`),
            }))}
            value={by}
            onChange={setBy}
          />
          <fieldset>
            <legend className="label">{speaker.say('sharePage.beds')}</legend>
            <div className="choices">
              {beds.map(({ id, setUp }) => (
                <label key={id} className="choice">
                  <input
                    type="checkbox"
                    checked={chosen.includes(id)}
                    onChange={(event) =>
                      setChosen((before) =>
                        event.target.checked ? [...before, id] : before.filter((one) => one !== id),
                      )
                    }
                  />
                  <span>{setUp.body.name}</span>
                </label>
              ))}
            </div>
          </fieldset>
          <Choices
            legend={speaker.say('bedPage.put.how')}
            options={(['top', 'dug'] as const).map((value) => ({
              value,
              text: speaker.say(`bedPage.put.${value}`),
            }))}
            value={lies}
            onChange={setLies}
          />
          <WhenField value={when} onChange={setWhen} />
          <Problem saying={problem} />
          {heap.lastRaw !== null && (
            <p>
              {speaker.say('sharePage.raw')}{' '}
              <a className="word" href={to('harvest')}>
                {speaker.say('sharePage.whenHarvest')}
              </a>
            </p>
          )}
          <Cautions ids={['legionella', 'dust-spores']} />
        </div>
      )}
    </Page>
  );
}

/** Whether a bed is short of nitrogen as far as it is written down. */
function wants(bed: Bed, holding: Holding, moment: BedMoment): boolean {
  return (bedReckoned(bed, holding, moment)?.budget.elements.nitrogen.short_kg.p50 ?? 0) > 0;
}
