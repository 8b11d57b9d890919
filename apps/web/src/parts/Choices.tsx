import { type ReactNode, useId } from 'react';

interface Properties<Value extends string> {
  readonly legend: string;
  /** Whether the legend is only for those who hear the page. */
  readonly legendUnseen?: boolean | undefined;
  readonly options: readonly { readonly value: Value; readonly text: string }[];
  readonly value: Value | null;
  readonly onChange: (value: Value) => void;
}

/** One of a few words: radio buttons that look like words in a row. */
export function Choices<Value extends string>(properties: Properties<Value>): ReactNode {
  const { legend, legendUnseen = false, options, value, onChange } = properties;
  const name = useId();
  return (
    <fieldset>
      <legend className={legendUnseen ? 'unseen' : 'label'}>{legend}</legend>
      <div className="choices">
        {options.map((option) => (
          <label key={option.value} className="choice">
            <input
              type="radio"
              name={name}
              value={option.value}
              checked={option.value === value}
              onChange={() => onChange(option.value)}
            />
            <span>{option.text}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
