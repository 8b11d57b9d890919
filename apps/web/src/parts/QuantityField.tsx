import { convert, readQuantity, type ShownAs, siUnitOf, unitFor, unitTable } from '@loamwright/units';
import { type ReactNode, useId, useState } from 'react';
import { useSpeaker } from '../shell/words.tsx';

interface Properties {
  readonly label: string;
  readonly hint?: string | undefined;
  readonly shownAs: ShownAs;
  /** In the SI unit of what is shown (°C for temperatures); null while nothing has been written. */
  readonly value: number | null;
  /** Called with every figure that can be read, and with null where none can. */
  readonly onChange: (value: number | null) => void;
  readonly large?: boolean | undefined;
}

/** One line to write a quantity on: a bare number is in the reader's unit, and "148 F" or "4 ft" is understood too. */
export function QuantityField(properties: Properties): ReactNode {
  const { label, hint, shownAs, value, onChange, large = false } = properties;
  const speaker = useSpeaker();
  const id = useId();
  const unit = unitFor(shownAs, speaker.system);
  const { dimension, symbol } = unitTable[unit];
  const [typed, setTyped] = useState(() =>
    value === null ? '' : String(Number(convert(value, siUnitOf(dimension), unit).toPrecision(4))),
  );
  const read = readQuantity(typed, dimension, unit);
  const wrong = typed.trim() !== '' && read === undefined;
  return (
    <div className="field">
      <label className="label" htmlFor={id}>
        {label}
      </label>
      <div className="with-unit">
        <input
          id={id}
          className={large ? 'line large' : 'line'}
          inputMode="decimal"
          autoComplete="off"
          value={typed}
          aria-invalid={wrong}
          aria-describedby={`${id}-hint`}
          onChange={(event) => {
            setTyped(event.target.value);
            onChange(readQuantity(event.target.value, dimension, unit)?.si ?? null);
          }}
        />
        <span className="unit">{symbol}</span>
      </div>
      <span id={`${id}-hint`} className="hint">
        {wrong ? speaker.say('app.field.unread', { typed }) : hint}
      </span>
    </div>
  );
}
