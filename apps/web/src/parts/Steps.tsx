import { type ReactNode, useEffect, useId, useState } from 'react';
import { useSpeaker } from '../shell/words.tsx';
import { MOST_COUNT, readCount } from './count.ts';

interface Properties {
  readonly label: string;
  readonly value: number;
  readonly step: number;
  readonly least: number;
  readonly most?: number | undefined;
  /** Parts of one are told and not taken. */
  readonly whole?: boolean | undefined;
  readonly onChange: (value: number) => void;
}

/** A figure with a large step down and a large step up; it can also be typed. What can't be read stays, and is told. */
export function Steps({
  label,
  value,
  step,
  least,
  most = MOST_COUNT,
  whole = false,
  onChange,
}: Properties): ReactNode {
  const speaker = useSpeaker();
  const id = useId();
  const [typed, setTyped] = useState(String(value));
  useEffect(() => setTyped(String(value)), [value]);
  const move = (by: number): void => onChange(Math.min(most, Math.max(least, value + by)));
  const count = readCount(typed, least, most);
  const read = whole && count !== null && !Number.isInteger(count) ? null : count;
  const fault = (): string =>
    whole
      ? speaker.say('app.field.whole', { typed, least, most })
      : speaker.say('app.field.unread', { typed, forms: '3, 2.5, 1/2' });
  const settle = (): void => {
    if (read !== null) onChange(read);
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
          aria-invalid={read === null}
          aria-describedby={`${id}-hint`}
          onChange={(event) => setTyped(event.target.value)}
          onBlur={settle}
          onKeyDown={(event) => event.key === 'Enter' && settle()}
        />
        <button type="button" aria-label={speaker.say('app.more', { of: label })} onClick={() => move(step)}>
          +
        </button>
      </div>
      <span id={`${id}-hint`} className="hint" role="status">
        {read === null ? fault() : null}
      </span>
    </div>
  );
}
