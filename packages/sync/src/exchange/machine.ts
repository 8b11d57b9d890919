import type { Ask, ExchangeMessage, Offer } from '@loamwright/daybook';
import type { Problem } from '@loamwright/science';
import { askFor, type Own } from './ask.ts';
import { type Received, readGive } from './give.ts';
import { offerOf } from './offer.ts';
import { readMessage } from './read-message.ts';

/**
 * Where one side of an exchange stands. Plain data: it may be thrown away at any moment, and the
 * exchange begun again (rule X9), for all that counts is in the keeping.
 */
export interface ExchangeState {
  readonly holding: string;
  /** Whether this side began: then its offer has gone out. A side that did not answers every offer with its own. */
  readonly began: boolean;
  /** The other side's latest offer. */
  readonly theirs: Offer | null;
  /** What was asked last, to see whether an answer has brought anything. */
  readonly asked: Ask | null;
}

/** What an exchange goes on after: the other side's offer, or the last part of its answer. */
export type After = 'offer' | 'give';

/** What to do after a message. */
export interface Step {
  readonly state: ExchangeState;
  /** To keep before anything else is done. */
  readonly keep: Pick<Received, 'entries' | 'attachments'>;
  /** To answer: pick what is held of this, and send `givesFor` it. */
  readonly answer: Ask | null;
  /** When not null: keep, then look up what is held, and call `goOn` with it. */
  readonly after: After | null;
  readonly problems: readonly Problem[];
}

/** What to send, in this order. */
export interface Saying {
  readonly state: ExchangeState;
  readonly send: readonly ExchangeMessage[];
}

const noKeep = { entries: [], attachments: [] } as const;

/** Before the first message. */
export function idle(holding: string): ExchangeState {
  return { holding, began: false, theirs: null, asked: null };
}

/** Begins an exchange, or begins it again: forgets what came before and offers. */
export function begin(own: Own): Saying {
  return { state: { ...idle(own.holding), began: true }, send: [offerOf(own.holding, own.heads)] };
}

/** Takes one message of the other side. A faulty one gives problems and changes nothing. */
export function receive(state: ExchangeState, input: unknown): Step {
  const read = readMessage(input, state.holding);
  if (!read.ok) return { state, keep: noKeep, answer: null, after: null, problems: read.problems };
  const message = read.value;
  switch (message.type) {
    case 'offer':
      return {
        state: { ...state, theirs: message, asked: null },
        keep: noKeep,
        answer: null,
        after: 'offer',
        problems: [],
      };
    case 'ask':
      return { state, keep: noKeep, answer: message, after: null, problems: [] };
    case 'give': {
      const { problems, ...keep } = readGive(message);
      return { state, keep, answer: null, after: message.last ? 'give' : null, problems };
    }
  }
}

/**
 * Asks for what is missing here. First comes what is plainly missing, then what turns out not to be
 * linked. After an offer the own one goes along, unless this side began.
 */
export function goOn(state: ExchangeState, own: Own, after: After): Saying {
  const ask = state.theirs === null ? null : askFor(own, state.theirs);
  // Asked once is enough: also when the answer has brought nothing, and when the network says everything twice.
  const isNew = ask !== null && !isSame(ask, state.asked);
  return {
    state: { ...state, asked: isNew ? ask : state.asked },
    send: [...(isNew ? [ask] : []), ...(after === 'offer' && !state.began ? [offerOf(own.holding, own.heads)] : [])],
  };
}

/** Both were made by `askFor`: fields and stretches stand in the same order. */
function isSame(ask: Ask, before: Ask | null): boolean {
  return JSON.stringify(ask) === JSON.stringify(before);
}
