import '@loamwright/words/later';
import { bedReckoned, spreadReport, stuffed } from '@loamwright/advisor';
import type { Bed } from '@loamwright/daybook';
import type { Amount, Outcome, SpreadRate, SpreadRateInput } from '@loamwright/science';
import type { Saying } from '@loamwright/words';
import { type ReactNode, useEffect, useMemo, useState } from 'react';
import { useSettings } from '../../device/settings.ts';
import { sayProblem } from '../../keep/not-written.ts';
import { useBook } from '../../keep/useBook.ts';
import { sayAmount, someOf } from '../../mix/amount.ts';
import { ownName } from '../../mix/own-name.ts';
import { rateSpread } from '../../mix/solver.ts';
import { Cautions } from '../../parts/Cautions.tsx';
import { Choices } from '../../parts/Choices.tsx';
import { Sentence } from '../../parts/Sentence.tsx';
import { Page } from '../../shell/Page.tsx';
import { openSheet, to, useRoute } from '../../shell/route.ts';
import { useSpeaker } from '../../shell/words.tsx';
import { AmountSheet } from '../bins/AmountSheet.tsx';
import { Picker } from '../bins/Picker.tsx';
import { carriedPath, type Lying, layings } from './carried.ts';
import { useMoment } from './moment.ts';

interface OnHand {
  readonly material: string;
  readonly amount: Amount;
}

/** How much of what is on hand may go on a bed, and what stops more. */
export default function Rate({ bed }: { readonly bed: Bed }): ReactNode {
  const speaker = useSpeaker();
  const { path, sheet } = useRoute();
  const { holding } = useBook().leaf;
  const { measures_L } = useSettings();
  const moment = useMoment();
  const name = bed.setUp.body.name;
  const [lies, setLies] = useState<Lying>('dug');
  const [onHand, setOnHand] = useState<readonly OnHand[]>([]);
  const reckoned = useMemo(() => bedReckoned(bed, holding, moment), [bed, holding, moment]);
  const input = useMemo((): SpreadRateInput | null => {
    if (reckoned === undefined || onHand.length === 0) return null;
    const products = onHand.map(({ material, amount }) => ({
      ...stuffed(material, [], holding),
      onHand: amount,
      ...(lies === 'top' && { placed: 'mulched' as const }),
    }));
    return { ...reckoned.input, products, ownSizes: measures_L };
  }, [reckoned, onHand, lies, holding, measures_L]);
  const found = useRate(input);
  const [, material] = /^amount:(.+)$/u.exec(sheet ?? '') ?? [];
  return (
    <Page
      question={speaker.say('ratePage.question', { bed: name })}
      act={
        reckoned === undefined
          ? { text: speaker.say('bedPage.sow'), href: to('bed', bed.id, 'sown') }
          : found === null
            ? { text: speaker.say('ratePage.add'), onAct: () => openSheet('add') }
            : { text: speaker.say('ratePage.act'), href: to('bed', bed.id, 'put', ...carriedPath(lies, toPut(found))) }
      }
    >
      {reckoned === undefined ? (
        <p className="answer">{speaker.say('ratePage.noCrop', { bed: name })}</p>
      ) : (
        <>
          <Answer asked={input !== null} found={found} />
          {reckoned.ground.map((said) => (
            <p key={said.key}>{speaker.tell(said)}</p>
          ))}
          {onHand.length > 0 && (
            <p className="told">
              <Sentence
                saying={{
                  key: 'ratePage.of',
                  places: {
                    stuff: onHand.map((one) =>
                      someOf(speaker, one.material, sayAmount(speaker, one.amount), ownName(holding, one.material)),
                    ),
                  },
                }}
                touchable={({ place }) => place.endsWith('.amount')}
                onTouch={({ place }) => {
                  const index = Number(/\[(\d+)\]/u.exec(place)?.[1] ?? -1);
                  openSheet(`amount:${onHand[index]?.material ?? ''}`);
                }}
              />
            </p>
          )}
          <button type="button" className="word" onClick={() => openSheet('add')}>
            {speaker.say('ratePage.add')}
          </button>
          <Choices
            legend={speaker.say('bedPage.put.how')}
            options={layings.map((value) => ({ value, text: speaker.say(`bedPage.put.${value}`) }))}
            value={lies}
            onChange={setLies}
          />
        </>
      )}
      {sheet === 'add' && <Picker path={path} here={onHand.map((one) => one.material)} />}
      {material !== undefined && (
        <AmountSheet
          key={material}
          material={material}
          name={ownName(holding, material)}
          before={onHand.find((one) => one.material === material)?.amount}
          onPut={(amount) =>
            setOnHand((now) => [...now.filter((one) => one.material !== material), { material, amount }])
          }
          onTakeOut={() => setOnHand((now) => now.filter((one) => one.material !== material))}
        />
      )}
    </Page>
  );
}

/** What was reckoned to go on. */
function toPut(found: Outcome<SpreadRate>): SpreadRate['products'] {
  return found.ok ? found.value.products.filter(({ count }) => count > 0) : [];
}

/** The answer to what was asked last; null while there is none. */
function useRate(input: SpreadRateInput | null): Outcome<SpreadRate> | null {
  const [found, setFound] = useState<{ readonly of: SpreadRateInput; readonly outcome: Outcome<SpreadRate> } | null>(
    null,
  );
  useEffect(() => {
    if (input === null) return;
    let stale = false;
    void rateSpread(input).then((outcome) => {
      if (!stale) setFound({ of: input, outcome });
    });
    return () => {
      stale = true;
    };
  }, [input]);
  return found !== null && found.of === input ? found.outcome : null;
}

function Answer({ asked, found }: { readonly asked: boolean; readonly found: Outcome<SpreadRate> | null }): ReactNode {
  const speaker = useSpeaker();
  const { holding } = useBook().leaf;
  if (found === null) {
    return <p className="answer">{speaker.say(asked ? 'ratePage.working' : 'ratePage.none')}</p>;
  }
  if (!found.ok) {
    return (
      <p className="answer" role="alert">
        {found.problems.map((problem) => speaker.tell(sayProblem(problem))).join(' ')}
      </p>
    );
  }
  const report = spreadReport(found.value, holding);
  const lines: readonly Saying[] = [...report.notes, ...report.alone];
  return (
    <>
      <p className="answer">{speaker.tell(report.answer)}</p>
      <p>{speaker.tell(report.stops)}</p>
      <ul className="lines">
        {lines
          .map((said) => speaker.tell(said))
          .map((line) => (
            <li key={line}>{line}</li>
          ))}
      </ul>
      <Cautions ids={report.cautions} />
    </>
  );
}
