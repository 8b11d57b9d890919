import { type DoubtWords, doubtWords } from '@loamwright/advisor';
import type { Heap, Point, Smell, Squeeze } from '@loamwright/daybook';
import { likely, plausibilityOf, type TypedReading } from '@loamwright/science';
import { readQuantity, unitFor, unitTable } from '@loamwright/units';
import { type ReactNode, useRef, useState } from 'react';
import type { ToWrite } from '../../../keep/book.ts';
import type { Happened } from '../../../keep/time.ts';
import { Pick } from '../../../parts/Pick.tsx';
import { QuantityField } from '../../../parts/QuantityField.tsx';
import { closeSheet, openSheet, useRoute } from '../../../shell/route.ts';
import { useSpeaker } from '../../../shell/words.tsx';
import { AskAgain } from './AskAgain.tsx';
import { aboutHeap, LogPage } from './LogPage.tsx';
import { TemperatureField } from './TemperatureField.tsx';

const points: readonly Point[] = ['core', 'middle', 'edge', 'top', 'bottom'];
const squeezes: readonly Squeeze[] = ['streams', 'drops', 'holds', 'crumbles', 'dusty'];
const smells: readonly Smell[] = ['none', 'earthy', 'ammonia', 'sour', 'rotten', 'musty', 'smoke'];

/** A reading: the thermometer's figure first, and what the hand and the nose say if anybody asked them. */
export default function LogReading({ heap }: { readonly heap: Heap }): ReactNode {
  const speaker = useSpeaker();
  const { sheet } = useRoute();
  const [typed, setTyped] = useState('');
  const [point, setPoint] = useState<Point | null>('core');
  const [depth_m, setDepth] = useState<number | null>(null);
  const [squeeze, setSqueeze] = useState<Squeeze | null>(null);
  const [smell, setSmell] = useState<Smell | null>(null);
  const [asked, setAsked] = useState<DoubtWords | null>(null);
  /** What stands without being asked again: taken from what was offered, or kept in spite of doubt. */
  const stands = useRef<{ readonly typed: string; readonly doubted: boolean } | null>(null);
  const [goOn, setGoOn] = useState(0);
  const unit = unitFor('temperature', speaker.system);
  const read = readQuantity(typed, 'temperature', unit);

  const thing = (happened: Happened): ToWrite | null => {
    if (typed.trim() !== '' && read === undefined) return null;
    if (read === undefined && squeeze === null && smell === null) return null;
    return {
      kind: 'reading',
      about: aboutHeap(heap.id),
      happened,
      body: {
        ...(read === undefined ? {} : { temp_degC: read.si, ...(point === null ? {} : { point }) }),
        ...(read !== undefined && stands.current?.typed === typed && stands.current.doubted && { doubted: true }),
        ...(depth_m === null || read === undefined ? {} : { depth_m }),
        ...(squeeze === null ? {} : { squeeze }),
        ...(smell === null ? {} : { smell }),
      },
      ...(read === undefined ? {} : { entered: { '/temp_degC': { amount: read.value, unit: read.unit } } }),
    };
  };

  const ask = (happened: Happened): boolean => {
    if (read === undefined || stands.current?.typed === typed) return true;
    const reading: TypedReading = {
      value: read.value,
      unit: read.unit === 'degF' ? 'degF' : 'degC',
      unitTyped: /[a-z°]/iu.test(typed),
      ...lastReading(heap, point, happened.instant),
    };
    const doubt = doubtWords(plausibilityOf(reading), reading);
    if (doubt === undefined) return true;
    setAsked(doubt);
    openSheet('ask');
    return false;
  };

  return (
    <LogPage
      heap={heap.id}
      question={speaker.say('app.log.reading.question', { heap: heap.name })}
      act={speaker.say('app.log.reading.act')}
      thing={thing}
      ask={ask}
      goOn={goOn}
    >
      <TemperatureField typed={typed} unit={unit} onType={setTyped} />
      <Pick
        label={speaker.say('app.log.point')}
        options={points.map((value) => ({ value, text: speaker.say(`reading.where.${value}`) }))}
        value={point}
        onChange={setPoint}
      />
      <details>
        <summary>{speaker.say('app.log.more')}</summary>
        <div className="stack">
          <QuantityField label={speaker.say('app.log.depth')} shownAs="depth" value={depth_m} onChange={setDepth} />
          <Pick
            label={speaker.say('app.log.squeeze')}
            options={squeezes.map((value) => ({ value, text: speaker.say(`advisor.squeeze.${value}`) }))}
            value={squeeze}
            onChange={setSqueeze}
          />
          <Pick
            label={speaker.say('app.log.smell')}
            options={smells.map((value) => ({ value, text: speaker.say(`advisor.smell.${value}`) }))}
            value={smell}
            onChange={setSmell}
          />
        </div>
      </details>
      {sheet === 'ask' && asked !== null && read !== undefined && (
        <AskAgain
          doubt={asked}
          typed={`${speaker.figure(read.value)} ${unitTable[read.unit].symbol}`}
          onMeant={(meant) => {
            const again = meant.unit === unit ? String(meant.value) : `${meant.value} ${unitTable[meant.unit].symbol}`;
            stands.current = { typed: again, doubted: false };
            setTyped(again);
            closeSheet();
          }}
          onChange={closeSheet}
          onStands={() => {
            stands.current = { typed, doubted: true };
            setGoOn((times) => times + 1);
            closeSheet();
          }}
        />
      )}
    </LogPage>
  );
}

const DAY_MS = 86_400_000;

/** The last reading in the same place before this one that was not doubted itself, and whether the heap was worked on since. */
function lastReading(
  heap: Heap,
  point: Point | null,
  before: string,
): Pick<TypedReading, 'last_degC' | 'last_daysAgo' | 'workedSince'> {
  const last = heap.readings.findLast(
    ({ body, entry }) =>
      body.temp_degC !== undefined &&
      body.doubted !== true &&
      (body.point ?? 'core') === (point ?? 'core') &&
      entry.happened < before,
  );
  if (last?.body.temp_degC === undefined) return {};
  const daysAgo = (Date.parse(before) - Date.parse(last.entry.happened)) / DAY_MS;
  return {
    last_degC: likely(last.body.temp_degC),
    last_daysAgo: Math.max(daysAgo, Number.MIN_VALUE),
    workedSince: heap.acts.some(
      ({ kind, entry }) =>
        (kind === 'turned' || kind === 'watered' || kind === 'heap-fed') &&
        entry.happened >= last.entry.happened &&
        entry.happened <= before,
    ),
  };
}
