import { type Ask, type Attachment, attachmentsOf, type Entry, type ExchangeMessage } from '@loamwright/daybook';
import type { Problem } from '@loamwright/science';
import { attachmentsMissing, type BringReport, bring, type ExchangeKeeping } from './bring.ts';
import type { Own } from './exchange/ask.ts';
import { givesFor } from './exchange/give.ts';
import * as machine from './exchange/machine.ts';

/** What a message has brought. */
export interface Taken extends BringReport {
  /** To send back, in this order. Large answers are made part by part, while this is read. */
  readonly send: AsyncIterable<ExchangeMessage>;
}

/** One side of an exchange with one other side. */
export interface Exchange {
  /**
   * Begins, or begins again after a loss: gives the messages to send. One of the two sides begins,
   * as the one that opens a connection does; the other only answers.
   */
  begin(): Promise<readonly ExchangeMessage[]>;
  /**
   * Takes a message of the other side, keeps what it brings, and answers. A message that is none
   * gives problems and changes nothing.
   * @throws KeepingError when the keeping can't keep: the exchange may be begun again later
   */
  receive(message: unknown): Promise<Taken>;
}

/**
 * An exchange between a keeping and the other side, wherever that is: over a socket, by request and
 * answer, or by hand. Afterwards both hold the same. It has no clock and no network: when nothing
 * comes back, the caller begins again.
 *
 * @param holding the holding that the keeping is for, also while it is empty
 */
export function createExchange(keeping: ExchangeKeeping, holding: string): Exchange {
  let state = machine.idle(holding);

  const own = async (): Promise<Own> => ({
    holding,
    heads: await keeping.heads(),
    attachmentsMissing: await attachmentsMissing(keeping),
  });

  const said = (saying: machine.Saying): readonly ExchangeMessage[] => {
    state = saying.state;
    return saying.send;
  };

  const receive = async (message: unknown): Promise<Taken> => {
    const step = machine.receive(state, message);
    state = step.state;
    const brought = await bring(keeping, step.keep);
    const saying: readonly ExchangeMessage[] =
      step.after === null ? [] : said(machine.goOn(state, await own(), step.after));
    const problems: readonly Problem[] = [...step.problems, ...brought.problems];
    return { ...brought, problems, send: sending(saying, step.answer) };
  };

  async function* sending(messages: readonly ExchangeMessage[], answer: Ask | null): AsyncGenerator<ExchangeMessage> {
    yield* messages;
    if (answer !== null) yield* givesFor(answer, await picked(answer), attached(answer));
  }

  const picked = async ({ stretches }: Ask): Promise<readonly Entry[]> =>
    stretches.length === 0 ? [] : await keeping.pick(stretches);

  /** What the keeper has let go is not given, even where its bytes are still here (rule X13). */
  async function* attached({ attachments }: Ask): AsyncGenerator<Attachment> {
    if (attachments.length === 0) return;
    const removed = new Set(attachmentsOf((await keeping.read()).entries).removed);
    for (const hash of new Set(attachments)) {
      const attachment = removed.has(hash) ? null : await keeping.attachment(hash);
      if (attachment !== null) yield attachment;
    }
  }

  return {
    begin: async () => said(machine.begin(await own())),
    receive,
  };
}
