import { type ReactNode, useEffect, useId, useState } from 'react';
import { useSpeaker } from '../shell/words.tsx';

interface Properties {
  readonly label: string;
  readonly value: number;
  readonly step: number;
  readonly least: number;
  readonly onChange: (value: number) => void;
}

/** A figure with a large step down and a large step up; it can also be typed. */
export function Steps({ label, value, step, least, onChange }: Properties): ReactNode {
  const speaker = useSpeaker();
  const id = useId();
  const [typed, setTyped] = useState(String(value));
  useEffect(() => setTyped(String(value)), [value]);
  const move = (by: number): void => onChange(Math.max(least, value + by));
  const settle = (): void => {
    const read = Number(typed.replace(',', '.'));
    if (Number.isFinite(read) && read >= least) onChange(read);
    else setTyped(String(value));
  };
  return (
    <div>
      <label className="label" htmlFor={id}>
        {label}
      </label>
      <div className="steps">
        <button type="button" aria-label={speaker.say('app.less', { of: label })} onClick={() => move(-step)}>
          −
        </button>
        <input
          id={id}
          inputMode="decimal"
          autoComplete="off"
          value={typed}
          onChange={(event) => setTyped(event.target.value)}
          onBlur={settle}
          onKeyDown={(event) => event.key === 'Enter' && settle()}
        />
        <button type="button" aria-label={speaker.say('app.more', { of: label })} onClick={() => move(step)}>
          +
        </button>
      </div>
    </div>
  );
}
