import { type ReactNode, useId } from 'react';
import './slider.css';

interface Properties {
  readonly label: string;
  readonly most: number;
  readonly value: number;
  /** What a value means, for those who hear it. */
  readonly sayValue: (value: number) => string;
  readonly onChange: (value: number) => void;
}

/** A place along a line, from 0: the platform's own slider, for finger, keys and screen reader. */
export function Slider({ label, most, value, sayValue, onChange }: Properties): ReactNode {
  const id = useId();
  return (
    <div className="slider">
      <label className="unseen" htmlFor={id}>
        {label}
      </label>
      <input
        id={id}
        type="range"
        min={0}
        max={most}
        step={1}
        value={value}
        aria-valuetext={sayValue(value)}
        onChange={(event) => onChange(event.target.valueAsNumber)}
      />
    </div>
  );
}
