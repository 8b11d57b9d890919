import type { HeapBuilt, LayerPut, MixAnswer } from '@loamwright/daybook';
import type { BuildCard, BuildCardInput, CardPart, MixSolution } from '@loamwright/science';
import { type ReactNode, useState } from 'react';
import { v7 } from 'uuid';
import { useSettings } from '../../device/settings.ts';
import type { ToWrite } from '../../keep/book.ts';
import { type Happened, resolved, type When } from '../../keep/time.ts';
import { useBook } from '../../keep/useBook.ts';
import { useWriting } from '../../keep/useWriting.ts';
import { nameOf, sayAmount } from '../../mix/amount.ts';
import { type BinBay, type Bins, clearBins, putBay } from '../../mix/draft.ts';
import { enteredOf, layerOf } from '../../mix/put.ts';
import { Problem } from '../../parts/Problem.tsx';
import { Sheet } from '../../parts/Sheet.tsx';
import { WhenField } from '../../parts/WhenField.tsx';
import { goInstead, to } from '../../shell/route.ts';
import { useSpeaker } from '../../shell/words.tsx';

interface Properties {
  readonly card: BuildCard;
  readonly input: BuildCardInput;
  readonly solution: MixSolution;
  readonly bins: Bins;
}

const NEW_BAY = 'new';
const NO_BAY = 'none';

/** Writes the heap into the daybook as it was built: its layers, its bay, and what it was reckoned to be. */
export function BuiltSheet({ card, input, solution, bins }: Properties): ReactNode {
  const speaker = useSpeaker();
  const { measures_L } = useSettings();
  const { holding } = useBook().leaf;
  const { write, busy, problem } = useWriting();
  const [when, setWhen] = useState<When>('now');
  const [name, setName] = useState(() => usualName());
  const [bay, setBay] = useState(bins.bay.id ?? NEW_BAY);
  const [bayName, setBayName] = useState(() => speaker.say('app.built.usualBay', { n: holding.bays.size + 1 }));
  const laid = layersOf();
  const unweighed = laid.find(({ put }) => put === null);

  const keep = async (): Promise<void> => {
    const layers = laid.flatMap(({ put }) => (put === null ? [] : [put]));
    if (layers.length < laid.length) return;
    const bayId = bay === NEW_BAY ? v7() : bay === NO_BAY ? null : bay;
    const heap = v7();
    const happened = resolved(when);
    const built: ToWrite = {
      kind: 'heap-built',
      about: [{ type: 'heap', id: heap }, ...(bayId === null ? [] : [{ type: 'bay', id: bayId }])],
      happened,
      body: body(layers, bayId),
      entered: Object.fromEntries(laid.map(({ entered }, i) => [`/layers/${i}/mass_kg`, entered])),
    };
    const things = bay === NEW_BAY && bayId !== null ? [bayThing(bayId, happened), built] : [built];
    if (!(await write(things))) return;
    if (bayId !== null) putBay({ ...bins.bay, id: bayId });
    clearBins();
    goInstead(to('heap', heap));
  };

  return (
    <Sheet title={speaker.say('app.built.title')}>
      <div className="stack">
        <label className="field">
          <span className="label">{speaker.say('app.built.name')}</span>
          <input className="line" value={name} maxLength={120} onChange={(event) => setName(event.target.value)} />
        </label>
        <label className="field">
          <span className="label">{speaker.say('app.built.bay')}</span>
          <select className="line" value={bay} onChange={(event) => setBay(event.target.value)}>
            {[...holding.bays.values()].map(({ id, setUp }) => (
              <option key={id} value={id}>
                {setUp.body.name}
              </option>
            ))}
            <option value={NEW_BAY}>{speaker.say('app.built.newBay')}</option>
            <option value={NO_BAY}>{speaker.say('app.built.noBay')}</option>
          </select>
        </label>
        {bay === NEW_BAY && (
          <label className="field">
            <span className="label">{speaker.say('app.built.bayName')}</span>
            <input
              className="line"
              value={bayName}
              maxLength={120}
              onChange={(event) => setBayName(event.target.value)}
            />
          </label>
        )}
        <WhenField value={when} onChange={setWhen} />
        <Problem
          saying={
            unweighed === undefined
              ? problem
              : { key: 'app.built.unweighed', places: { material: nameOf(speaker, unweighed.material) } }
          }
        />
        <button
          type="button"
          className="plain-act strong"
          aria-disabled={busy || name.trim() === '' || unweighed !== undefined}
          onClick={() => name.trim() !== '' && void keep()}
        >
          {speaker.say('app.built.act')}
        </button>
      </div>
    </Sheet>
  );

  function usualName(): string {
    const month = new Intl.DateTimeFormat(speaker.locale, { month: 'long' }).format(new Date());
    return speaker.say('app.built.usualName', { month });
  }

  /** The layers of the card from the ground up, each material weighed by itself. */
  function layersOf() {
    return card.layers.flatMap((layer) => [
      ...layer.parts.map((part) => ({ ...weigh(part, partOf(layer.role)), material: part.material })),
      ...(layer.starter === undefined
        ? []
        : [{ ...weigh({ ...layer.starter, line: -1 }, 'starter'), material: layer.starter.material }]),
    ]);
  }

  function weigh({ line, material, measure, count }: CardPart, part: LayerPut['part']) {
    const { fill, packed } = input.mix[line] ?? {};
    const amount = {
      measure,
      count,
      ...(fill === undefined ? {} : { fill }),
      ...(packed === undefined ? {} : { packed }),
    };
    const put = layerOf(material, amount, measures_L, holding);
    return { put: put === null ? null : { ...put, part }, entered: enteredOf(amount, sayAmount(speaker, amount)) };
  }

  function body(layers: readonly LayerPut[], bayId: string | null): HeapBuilt {
    const { width_m, depth_m } = bins.bay;
    return {
      name: name.trim(),
      ...(bayId === null ? {} : { bay: bayId }),
      layers,
      ...(card.water_L > 0 ? { water_L: card.water_L } : {}),
      size: { width_m, depth_m, height_m: card.height_m },
      ...(solution.balance === undefined ? {} : { mix: answerOf(solution.balance) }),
    };
  }

  function bayThing(id: string, happened: Happened): ToWrite {
    const { width_m, depth_m, height_m, wall }: BinBay = bins.bay;
    return {
      kind: 'bay-set-up',
      about: [{ type: 'bay', id }],
      happened,
      body: { name: bayName.trim() === '' ? id : bayName.trim(), width_m, depth_m, height_m, wall },
    };
  }
}

function partOf(role: BuildCard['layers'][number]['role']): LayerPut['part'] {
  return role === 'base' || role === 'cover' ? role : 'body';
}

/** What the mix was reckoned to be, kept as it was answered on the day. */
function answerOf(balance: NonNullable<MixSolution['balance']>): MixAnswer {
  const { carbonToNitrogen_ratio, moisture_pctWet, density_kgPerM3AsIs, freeAirSpace_pctVolume } = balance;
  return {
    ...(carbonToNitrogen_ratio === undefined ? {} : { carbonToNitrogen: carbonToNitrogen_ratio.value }),
    moisture_pctWet: moisture_pctWet.value,
    density_kgPerM3AsIs: density_kgPerM3AsIs.value,
    freeAirSpace_pct: freeAirSpace_pctVolume.value,
    volume_m3: balance.volume_m3,
    ...(balance.height_m === undefined ? {} : { height_m: balance.height_m }),
  };
}
