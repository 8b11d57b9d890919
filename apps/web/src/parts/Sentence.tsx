import type { Saying, SentencePart } from '@loamwright/words';
import { Fragment, type ReactNode } from 'react';
import { useSpeaker } from '../shell/words.tsx';

/** A piece of a sentence that lies over a quantity, a chance, or a word that can be changed. */
export interface Touchable extends SentencePart {
  readonly place: string;
}

interface Properties {
  readonly saying: Saying;
  /** Called with the piece that was touched. Without it the sentence is plain text. */
  readonly onTouch?: ((part: Touchable) => void) | undefined;
  /** Which pieces can be touched; those with a figure or a chance behind them, where nothing else is said. */
  readonly touchable?: ((part: Touchable) => boolean) | undefined;
  /** What a touch opens: a sheet over the page, or another page. */
  readonly opens?: 'sheet' | 'page' | undefined;
}

const hasQuantity = (part: Touchable): boolean => part.figure !== undefined || part.chance !== undefined;

/** A sentence of the answer: every quantity in it is a button that opens what lies behind it. */
export function Sentence({ saying, onTouch, touchable = hasQuantity, opens = 'sheet' }: Properties): ReactNode {
  const parts = keyed(useSpeaker().tellParts(saying));
  return parts.map(({ key, part }) => {
    const { place } = part;
    const piece: Touchable | undefined = place === undefined ? undefined : { ...part, place };
    if (onTouch === undefined || piece === undefined || !touchable(piece))
      return <Fragment key={key}>{part.text}</Fragment>;
    return (
      <button
        key={key}
        type="button"
        className="quantity"
        aria-haspopup={opens === 'sheet' ? 'dialog' : undefined}
        onClick={() => onTouch(piece)}
      >
        {part.text}
      </button>
    );
  });
}

/** Pieces with a name of their own: their place, and how often it has come before. */
function keyed(parts: readonly SentencePart[]): readonly { key: string; part: SentencePart }[] {
  const seen = new Map<string, number>();
  return parts.map((part) => {
    const name = part.place ?? '';
    const times = seen.get(name) ?? 0;
    seen.set(name, times + 1);
    return { key: `${name}#${times}`, part };
  });
}
