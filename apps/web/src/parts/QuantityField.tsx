import { convert, readArea, readQuantity, type ShownAs, siUnitOf, unitFor, unitTable } from '@loamwright/units';
import { type ReactNode, useId, useState } from 'react';
import { useSpeaker } from '../shell/words.tsx';

interface Properties {
  readonly label: string;
  readonly hint?: string | undefined;
  readonly shownAs: ShownAs;
  /** In the SI unit of what is shown (°C for temperatures); null while nothing has been written. */
  readonly value: number | null;
  /** How it was written before, shown in place of the bare figure. */
  readonly words?: string | undefined;
  /**
   * Called with every figure that can be read, and with null where none can; `words` is what was written, with its unit. What stands there
   * is wrong where something does and none can be read.
   */
  readonly onChange: (value: number | null, words: string, isWrong: boolean) => void;
  readonly large?: boolean | undefined;
  /** In the SI unit of what is shown: what lies beyond is told and handed on as null. */
  readonly least?: number | undefined;
  readonly most?: number | undefined;
  /** What else is understood here, such as a count of barrows. */
  readonly alsoRead?: ((typed: string) => { readonly si: number; readonly words: string } | undefined) | undefined;
}

/** One line to write a quantity on: a bare number is in the reader's unit, and "148 F", "4 ft" or, as an area, "4x8ft" is understood too. */
export function QuantityField(properties: Properties): ReactNode {
  const { label, hint, shownAs, value, words, onChange, large = false, alsoRead } = properties;
  const { least = Number.NEGATIVE_INFINITY, most = Number.POSITIVE_INFINITY } = properties;
  const speaker = useSpeaker();
  const id = useId();
  const unit = unitFor(shownAs, speaker.system);
  const { dimension, symbol } = unitTable[unit];
  const [typed, setTyped] = useState(
    () => words ?? (value === null ? '' : String(Number(convert(value, siUnitOf(dimension), unit).toPrecision(4)))),
  );
  const readIn = (text: string): { readonly si: number; readonly words: string } | undefined => {
    if (dimension === 'area') {
      const area = readArea(text, speaker.system);
      return area === undefined ? undefined : { si: area.m2, words: area.words };
    }
    const quantity = readQuantity(text, dimension, unit);
    if (quantity === undefined) return alsoRead?.(text);
    return { si: quantity.si, words: `${quantity.value} ${unitTable[quantity.unit].symbol}` };
  };
  const read = readIn(typed);
  const inside = (si: number): boolean => si >= least && si <= most;
  const wrong = typed.trim() !== '' && (read === undefined || !inside(read.si));
  const fault = (): string => {
    const bound = (si: number): string => speaker.likely(si, siUnitOf(dimension), shownAs);
    if (read !== undefined && read.si < least) return speaker.say('app.field.low', { typed, least: bound(least) });
    if (read !== undefined) return speaker.say('app.field.high', { typed, most: bound(most) });
    const sides = speaker.system === 'us' ? '4x8ft' : '1.2x2.4m';
    const forms = [`4 ${symbol}`, ...(dimension === 'area' ? [sides] : [])].join(', ');
    return speaker.say('app.field.unread', { typed, forms });
  };
  return (
    <div className="field">
      <label className="label" htmlFor={id}>
        {label}
      </label>
      <div className="with-unit">
        <input
          id={id}
          className={large ? 'line large' : 'line'}
          // The keys for numbers have no x for the sides of an area.
          inputMode={dimension === 'area' ? 'text' : 'decimal'}
          autoComplete="off"
          value={typed}
          aria-invalid={wrong}
          aria-describedby={`${id}-hint`}
          onChange={(event) => {
            setTyped(event.target.value);
            const now = readIn(event.target.value);
            const taken = now !== undefined && inside(now.si);
            onChange(taken ? now.si : null, taken ? now.words : '', !taken && event.target.value.trim() !== '');
          }}
        />
        <span className="unit">{symbol}</span>
      </div>
      <span id={`${id}-hint`} className="hint">
        {wrong ? fault() : hint}
      </span>
    </div>
  );
}
