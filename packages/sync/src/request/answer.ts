import type { ExchangeMessage } from '@loamwright/daybook';
import { bad, good, type Outcome } from '@loamwright/science';
import type { ExchangeKeeping } from '../bring.ts';
import { offerOf } from '../exchange/offer.ts';
import { readMessage } from '../exchange/read-message.ts';
import { createExchange, type Taken } from '../exchange.ts';
import { type TookLine, tookLine } from './took.ts';

/** One line of an answer: what became of the message, or a message that answers it. */
export type AnswerLine = TookLine | ExchangeMessage;

/** What a message has brought, and the answer to it. */
export interface Answered extends Taken {
  /** To send back in this order, first the `took`. Large answers are made part by part, while this is read. */
  readonly lines: AsyncIterable<AnswerLine>;
}

/**
 * Answers one message of an exchange by request and answer. Nothing is remembered between two requests: whoever asks
 * drives the exchange, and begins again after any loss (rule X9). What the `took` counts is durable.
 *
 * While nothing is kept here, the holding of the first message that brings something is taken on.
 *
 * @returns the problems of `readMessage` for a message that is none: nothing of it was kept
 * @throws KeepingError as the keeping does
 */
export async function answerRequest(keeping: ExchangeKeeping, message: unknown): Promise<Outcome<Answered>> {
  const holding = (await keeping.holding()) ?? holdingIn(message);
  const read = readMessage(message, holding);
  if (!read.ok) return bad(...read.problems);
  const taken = await createExchange(keeping, holding).receive(message);
  return good({ ...taken, lines: linesFor(taken) });
}

async function* linesFor(taken: Taken): AsyncGenerator<AnswerLine> {
  yield tookLine(taken);
  yield* taken.send;
}

/** What is held here, for one who has nothing and wants to know of which holding this is; null while nothing is kept. */
export async function standingOffer(keeping: ExchangeKeeping): Promise<ExchangeMessage | null> {
  const holding = await keeping.holding();
  return holding === null ? null : offerOf(holding, await keeping.heads());
}

/** The holding a message names; a wrong name is told by `readMessage`. */
export function holdingIn(message: unknown): string {
  const named = typeof message === 'object' && message !== null && 'holding' in message ? message.holding : '';
  return typeof named === 'string' ? named : '';
}
