import { type Amount, allMeasures, type FillId, fillIds, vagueIds } from '@loamwright/science';
import { type ReactNode, useState } from 'react';
import { settings } from '../../device/settings.ts';
import { nameOf } from '../../mix/amount.ts';
import { Choices } from '../../parts/Choices.tsx';
import { QuantityField } from '../../parts/QuantityField.tsx';
import { Sheet } from '../../parts/Sheet.tsx';
import { Steps } from '../../parts/Steps.tsx';
import { closeSheet, to } from '../../shell/route.ts';
import { useSpeaker } from '../../shell/words.tsx';

type Way = 'measured' | 'vague' | 'weighed';

interface Properties {
  readonly material: string;
  /** The name of one of the holding's own. */
  readonly name?: string | undefined;
  /** The amount it had; undefined for a material that is new. */
  readonly before: Amount | undefined;
  readonly onPut: (amount: Amount) => void;
  readonly onTakeOut: () => void;
}

/** How much of a material there is: in measures, in a word, or weighed. */
export function AmountSheet({ material, name: own, before, onPut, onTakeOut }: Properties): ReactNode {
  const speaker = useSpeaker();
  const [amount, setAmount] = useState<Amount>(before ?? { measure: usualMeasure(material), count: 1 });
  const way: Way = 'vague' in amount ? 'vague' : 'measure' in amount ? 'measured' : 'weighed';
  const name = nameOf(speaker, material, own);
  return (
    <Sheet title={speaker.say('app.amount.title', { material: name })}>
      <div className="stack">
        <Choices<Way>
          legend={speaker.say('app.amount.way')}
          legendUnseen
          options={[
            { value: 'measured', text: speaker.say('app.amount.measured') },
            { value: 'vague', text: speaker.say('app.amount.byEye') },
            { value: 'weighed', text: speaker.say('app.amount.weighed') },
          ]}
          value={way}
          onChange={(chosen) => setAmount(firstAmount(chosen, material))}
        />
        {'measure' in amount && <Measured amount={amount} onChange={setAmount} />}
        {'vague' in amount && (
          <Choices
            legend={speaker.say('app.amount.vague')}
            options={vagueIds.map((value) => ({ value, text: speaker.say(`measure.vague.${value}`) }))}
            value={amount.vague}
            onChange={(vague) => setAmount({ ...amount, vague })}
          />
        )}
        {'mass_kg' in amount && (
          <QuantityField
            label={speaker.say('app.amount.mass')}
            shownAs="mass"
            value={typeof amount.mass_kg === 'number' ? amount.mass_kg : amount.mass_kg.p50}
            onChange={(mass_kg) => mass_kg !== null && mass_kg > 0 && setAmount({ ...amount, mass_kg })}
          />
        )}
        <Choices<'loose' | 'packed'>
          legend={speaker.say('app.amount.lies')}
          options={[
            { value: 'loose', text: speaker.say('measure.loose') },
            { value: 'packed', text: speaker.say('measure.packed') },
          ]}
          value={amount.packed === true ? 'packed' : 'loose'}
          onChange={(lies) => setAmount({ ...amount, packed: lies === 'packed' })}
        />
        <button
          type="button"
          className="plain-act strong"
          onClick={() => {
            onPut(amount);
            closeSheet();
          }}
        >
          {before === undefined ? speaker.say('app.amount.put') : speaker.say('app.amount.change')}
        </button>
        {before !== undefined && (
          <button
            type="button"
            className="word"
            onClick={() => {
              onTakeOut();
              closeSheet();
            }}
          >
            {speaker.say('app.amount.takeOut', { material: name })}
          </button>
        )}
        <a className="word" href={to('material', material)}>
          {speaker.say('app.material.known', { material: name })}
        </a>
      </div>
    </Sheet>
  );
}

type MeasuredAmount = Extract<Amount, { readonly measure: string }>;

function Measured(properties: {
  readonly amount: MeasuredAmount;
  readonly onChange: (amount: Amount) => void;
}): ReactNode {
  const { amount, onChange } = properties;
  const speaker = useSpeaker();
  const count = typeof amount.count === 'number' ? amount.count : 1;
  const isContainer = allMeasures.find(({ id }) => id === amount.measure)?.kind === 'container';
  return (
    <>
      <Steps
        label={speaker.say('app.amount.howMany')}
        value={count}
        step={count < HALVES_BELOW ? 0.5 : 1}
        least={0.5}
        onChange={(next) => onChange({ ...amount, count: next })}
      />
      <label className="field">
        <span className="label">{speaker.say('app.amount.measure')}</span>
        <select
          className="line"
          value={amount.measure}
          onChange={(event) => onChange({ ...amount, measure: event.target.value, fill: undefined })}
        >
          {offered().map((id) => (
            <option key={id} value={id}>
              {speaker.sayIf(`measure.${id}.name`, id)}
            </option>
          ))}
        </select>
      </label>
      {isContainer && (
        <label className="field">
          <span className="label">{speaker.say('app.amount.fill')}</span>
          <select
            className="line"
            value={amount.fill ?? 'level'}
            onChange={(event) => onChange({ ...amount, fill: fillIds.find((id) => id === event.target.value) })}
          >
            {fillIds.map((fill: FillId) => (
              <option key={fill} value={fill}>
                {speaker.say(`measure.fill.${fill}`)}
              </option>
            ))}
          </select>
        </label>
      )}
    </>
  );
}

/** Below this many, half measures count. */
const HALVES_BELOW = 3;

/** The measures of one's own system first. */
function offered(): readonly string[] {
  const first =
    settings().system === 'us'
      ? ['bucket-5gal', 'barrow', 'leaf-bag-30gal', 'pail', 'straw-bale']
      : ['bucket-20l', 'bucket-14l', 'barrow', 'bin-bag', 'pail', 'straw-bale'];
  return [...first, ...allMeasures.map(({ id }) => id).filter((id) => !first.includes(id))];
}

function usualMeasure(material: string): string {
  if (material === 'straw' || material.startsWith('hay-')) return 'straw-bale';
  return settings().system === 'us' ? 'bucket-5gal' : 'bucket-20l';
}

function firstAmount(way: Way, material: string): Amount {
  switch (way) {
    case 'measured':
      return { measure: usualMeasure(material), count: 1 };
    case 'vague':
      return { vague: 'some' };
    case 'weighed':
      return { mass_kg: 10 };
  }
}
