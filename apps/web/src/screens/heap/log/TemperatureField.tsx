import { readQuantity, type Unit, unitTable } from '@loamwright/units';
import { type ReactNode, useId } from 'react';
import { useSpeaker } from '../../../shell/words.tsx';

interface Properties {
  readonly typed: string;
  /** Unit of a bare number. */
  readonly unit: Unit;
  readonly onType: (typed: string) => void;
}

/** The thermometer's figure, large; "64 C" is understood in a °F house and the other way round. */
export function TemperatureField({ typed, unit, onType }: Properties): ReactNode {
  const speaker = useSpeaker();
  const id = useId();
  const wrong = typed.trim() !== '' && readQuantity(typed, 'temperature', unit) === undefined;
  return (
    <div className="field">
      <label className="label" htmlFor={id}>
        {speaker.say('app.log.temperature')}
      </label>
      <div className="with-unit">
        <input
          id={id}
          className="line large"
          inputMode="decimal"
          autoComplete="off"
          value={typed}
          aria-invalid={wrong}
          aria-describedby={`${id}-hint`}
          onChange={(event) => onType(event.target.value)}
        />
        <span className="unit">{unitTable[unit].symbol}</span>
      </div>
      <span id={`${id}-hint`} className="hint">
        {wrong ? speaker.say('app.field.unread', { typed, forms: '148 F, 64.5 C' }) : null}
      </span>
    </div>
  );
}
