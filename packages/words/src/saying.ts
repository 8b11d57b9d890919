import type { ShownAs, Unit } from '@loamwright/units';
import type { MessageKey } from './messages.ts';
import type { Shown } from './number.ts';

/** A quantity standing in a sentence: told in the reader's unit, its range one touch away. */
export interface Figure {
  readonly figure: Shown;
  /** The SI unit the figure is held in (°C for temperatures). */
  readonly unit: Unit;
  /** What the figure is, which decides the unit it is read in. */
  readonly as: ShownAs;
  /** Tell the range in the sentence itself; the likely value otherwise. */
  readonly asRange?: boolean | undefined;
}

/** A chance counted over draws. */
export interface ChancePlace {
  readonly chance: { readonly met: number; readonly of: number };
}

/** What may fill a place of a message. */
export type Place = string | number | Figure | ChancePlace | Saying | readonly Saying[];

/**
 * A sentence before it is put into anybody's language and units: which message, and what fills its
 * places. Reports are made of these, so that the screen and the command line tell the same thing.
 */
export interface Saying {
  readonly key: MessageKey;
  readonly places?: Readonly<Record<string, Place>> | undefined;
}

/** A piece of a told sentence: plain words, or what fills one of its places (so that it can be touched). */
export interface SentencePart {
  readonly text: string;
  /** Where it stands, such as `water` or `stuff[2].amount`; absent for the outermost sentence's own words. */
  readonly place?: string | undefined;
  /** The quantity behind the text, where there is one. */
  readonly figure?: Figure | undefined;
  /** The chance behind the text, where there is one. */
  readonly chance?: ChancePlace['chance'] | undefined;
}
