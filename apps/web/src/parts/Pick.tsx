import type { ReactNode } from 'react';
import { useSpeaker } from '../shell/words.tsx';

interface Properties<Value extends string> {
  readonly label: string;
  readonly options: readonly { readonly value: Value; readonly text: string }[];
  readonly value: Value | null;
  readonly onChange: (value: Value | null) => void;
}

/** One of a list, or nothing said. */
export function Pick<Value extends string>({ label, options, value, onChange }: Properties<Value>): ReactNode {
  const speaker = useSpeaker();
  return (
    <label className="field">
      <span className="label">{label}</span>
      <select
        className="line"
        value={value ?? ''}
        onChange={(event) => onChange(options.find((option) => option.value === event.target.value)?.value ?? null)}
      >
        <option value="">{speaker.say('app.notSaid')}</option>
        {options.map((option) => (
          <option key={option.value} value={option.value}>
            {option.text}
          </option>
        ))}
      </select>
    </label>
  );
}
