import '@loamwright/words/later';
import {
  bedArea_m2,
  buildUpReport,
  seasonOf,
  soilCarbonReport,
  stuffed,
  yearsAnswer,
  yearsAsked,
  yearsFrom,
  yearsRecords,
} from '@loamwright/advisor';
import type { Bed } from '@loamwright/daybook';
import {
  type Amount,
  type BuildUp,
  type BuildUpInput,
  bad,
  buildUp,
  check,
  good,
  type Outcome,
  type SoilCarbon,
  type SoilCarbonInput,
  soilCarbon,
  type Yearly,
} from '@loamwright/science';
import { type ReactNode, useMemo, useState } from 'react';
import { type OwnMeasures, useSettings } from '../../device/settings.ts';
import { sayProblem } from '../../keep/not-written.ts';
import { useBook } from '../../keep/useBook.ts';
import { sayAmount, someOf } from '../../mix/amount.ts';
import { ownName } from '../../mix/own-name.ts';
import { likelyVolume_m3 } from '../../mix/science.ts';
import { Cautions } from '../../parts/Cautions.tsx';
import { QuantitySheet } from '../../parts/QuantitySheet.tsx';
import { Sentence, type Touchable } from '../../parts/Sentence.tsx';
import { Page } from '../../shell/Page.tsx';
import { openSheet, to, useRoute } from '../../shell/route.ts';
import { useSpeaker } from '../../shell/words.tsx';
import { AmountSheet } from '../bins/AmountSheet.tsx';
import { Picker } from '../bins/Picker.tsx';
import { Lines } from './Lines.tsx';
import { useMoment } from './moment.ts';
import { YearsPicture } from './YearsPicture.tsx';

interface Found {
  readonly carbon: SoilCarbon;
  readonly up: BuildUp;
}

/** What becomes of a bed on which this year's dressing goes every year, or what else is said. */
export default function BedYears({ bed }: { readonly bed: Bed }): ReactNode {
  const speaker = useSpeaker();
  const { path, sheet } = useRoute();
  const { holding } = useBook().leaf;
  const { measures_L } = useSettings();
  const { now, zone, needs } = useMoment();
  const [changed, setChanged] = useState<readonly Yearly[] | null>(null);
  const [touched, setTouched] = useState<Touchable | null>(null);
  const records = useMemo(
    () => yearsRecords(bed, holding, { season: seasonOf(now, zone), zone, speaker, seasons: 1 }),
    [bed, holding, now, zone, speaker],
  );
  const asked = useMemo(
    () => yearsAsked(changed === null ? {} : { plan: changed }, records.told),
    [changed, records.told],
  );
  const found = useMemo((): Outcome<Found> => {
    const area_m2 = bedArea_m2(bed);
    const carbonInput = check<SoilCarbonInput>(soilCarbon.input, { ...asked.carbon, area_m2, ownSizes: measures_L });
    const upInput = check<BuildUpInput>(buildUp.input, { ...asked.up, area_m2, ownSizes: measures_L });
    if (!carbonInput.ok) return carbonInput;
    if (!upInput.ok) return upInput;
    const carbon = soilCarbon.run(carbonInput.value, needs);
    const up = buildUp.run(upInput.value, needs);
    if (!carbon.ok) return bad(...carbon.problems);
    return up.ok ? good({ carbon: carbon.value, up: up.value }) : up;
  }, [bed, asked, measures_L, needs]);
  const { plan } = asked.carbon;
  const without = (material: string): readonly Yearly[] => plan.filter((one) => one.material !== material);
  const [, material] = /^amount:(.+)$/u.exec(sheet ?? '') ?? [];
  const before = plan.find((one) => one.material === material);
  const isTested = asked.carbon.organicMatter_pctDry !== undefined;
  return (
    <Page
      question={speaker.say('yearsPage.question', { bed: bed.setUp.body.name })}
      act={
        isTested
          ? { text: speaker.say('yearsPage.act.rate'), href: to('bed', bed.id, 'rate') }
          : { text: speaker.say('yearsPage.act.tested'), href: to('bed', bed.id, 'tested') }
      }
    >
      {found.ok ? (
        <Answer
          found={found.value}
          plan={plan}
          bed={bed}
          onTouch={(part) => {
            const index = Number(/^stuff\[(\d+)\]/u.exec(part.place)?.[1] ?? -1);
            setTouched(part);
            openSheet(index < 0 ? 'figure' : `amount:${plan[index]?.material ?? ''}`);
          }}
        />
      ) : (
        <p className="answer" role="alert">
          {found.problems.map((problem) => speaker.tell(sayProblem(problem))).join(' ')}
        </p>
      )}
      <p className="words-row">
        <button type="button" className="word" onClick={() => openSheet('add')}>
          {speaker.say(plan.length === 0 ? 'yearsPage.add' : 'yearsPage.more')}
        </button>
        {changed !== null && (
          <button type="button" className="word" onClick={() => setChanged(null)}>
            {speaker.say('yearsPage.asWritten')}
          </button>
        )}
      </p>
      {found.ok && (
        <>
          <Lines title={speaker.say('yearsPage.nutrients')} sayings={buildUpReport(found.value.up)} />
          <Lines
            title={speaker.say('yearsPage.why')}
            sayings={[
              ...yearsFrom(asked, records, { holding, speaker }),
              ...soilCarbonReport(found.value.carbon).lines,
              ...soilCarbonReport(found.value.carbon).notes,
            ]}
          />
          <Cautions ids={found.value.carbon.cautions} />
        </>
      )}
      {sheet === 'figure' && touched !== null && found.ok && (
        <QuantitySheet
          title={touched.place === 'end' ? speaker.say('yearsPage.organic') : touched.text}
          figure={touched.figure}
        >
          <Behind place={touched.place} found={found.value} />
        </QuantitySheet>
      )}
      {sheet === 'add' && <Picker path={path} here={plan.map((one) => one.material)} />}
      {material !== undefined && (
        <AmountSheet
          key={material}
          material={material}
          name={ownName(holding, material)}
          before={before && counted(before, measures_L)}
          onPut={(amount) =>
            setChanged(
              before === undefined
                ? [...plan, { ...stuffed(material, [], holding), amount }]
                : plan.flatMap((one) =>
                    one === before ? [{ ...one, amount }] : one.material === material ? [] : [one],
                  ),
            )
          }
          onTakeOut={() => setChanged(without(material))}
        />
      )}
    </Page>
  );
}

/** What lies behind a figure of the answer. */
function Behind({ place, found: { carbon, up } }: { readonly place: string; readonly found: Found }): ReactNode {
  const speaker = useSpeaker();
  const isNutrient = place.startsWith('phosphate') || place.startsWith('potash');
  const sayings = isNutrient ? buildUpReport(up) : soilCarbonReport(carbon).lines;
  return sayings
    .map((said, i) => ({ line: speaker.tell(said), key: `${i} ${said.key}` }))
    .map(({ line, key }) => <p key={key}>{line}</p>);
}

interface AnswerProperties {
  readonly found: Found;
  readonly plan: readonly Yearly[];
  readonly bed: Bed;
  readonly onTouch: (part: Touchable) => void;
}

/** Places of the answer that open what lies behind them. */
const openable = /^(?:stuff\[\d+\]\.amount|end|.*(?:gain|range|kg))$/u;

function Answer({ found: { carbon, up }, plan, bed, onTouch }: AnswerProperties): ReactNode {
  const speaker = useSpeaker();
  const { holding } = useBook().leaf;
  const { measures_L } = useSettings();
  const stuff = plan.map((one) =>
    someOf(speaker, one.material, sayAmount(speaker, counted(one, measures_L)), ownName(holding, one.material)),
  );
  const { soil, nutrients } = yearsAnswer(carbon, up, { stuff, area_m2: bedArea_m2(bed) });
  const touchable = ({ place }: Touchable): boolean => openable.test(place);
  return (
    <>
      <p className="answer">
        <Sentence saying={soil} touchable={touchable} onTouch={onTouch} />
      </p>
      <p className="told">
        <Sentence saying={nutrients} touchable={touchable} onTouch={onTouch} />
      </p>
      <YearsPicture carbon={carbon} isBare={plan.length === 0} />
    </>
  );
}

/** In barrows what is kept as a mass or a volume: so it is carried. What comes to less than half a barrow stays as it is. */
function counted({ material, like, amount }: Yearly, measures_L: OwnMeasures): Amount {
  if (!('mass_kg' in amount || 'volume_m3' in amount)) return amount;
  const of = like ?? material;
  const volume_m3 = likelyVolume_m3(of, amount, measures_L);
  const barrow_m3 = likelyVolume_m3(of, { measure: 'barrow', count: 1 }, measures_L);
  if (volume_m3 === null || barrow_m3 === null) return amount;
  const count = Math.round((2 * volume_m3) / barrow_m3) / 2;
  return count > 0 ? { measure: 'barrow', count } : amount;
}
