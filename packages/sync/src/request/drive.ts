import type { Ask, ExchangeMessage, HeldOfDevice, Offer } from '@loamwright/daybook';
import type { Problem } from '@loamwright/science';
import type { ExchangeKeeping } from '../bring.ts';
import { maxProblems } from '../exchange/limits.ts';
import { readMessage } from '../exchange/read-message.ts';
import { createExchange, type Exchange } from '../exchange.ts';
import { holdingIn } from './answer.ts';
import { readTook } from './took.ts';

/** The other side, as a request reaches it. Both ways reject when nobody answers, or the other side refuses. */
export interface OtherSide {
  /** What it holds, as it says; null while nothing is written there. */
  offer(): Promise<unknown>;
  /** Hands one message over and gives the lines of the answer as they come. */
  send(message: ExchangeMessage): AsyncIterable<unknown>;
}

/** What an exchange has done. */
export interface Exchanged {
  /** Entries and attachments that are new here. */
  readonly kept: number;
  readonly attached: number;
  /** Entries and attachments that are new there. */
  readonly given: number;
  readonly givenAttachments: number;
  /** What was left out on either side, and why. */
  readonly problems: readonly Problem[];
  /**
   * What the other side is known to hold now, when it has everything that was here at the beginning of the last round;
   * null when it would not take all of it.
   */
  readonly held: readonly HeldOfDevice[] | null;
}

/** Two rounds are usual, three with photos; more where chains have branches. */
const mostRounds = 20;

/**
 * Exchanges both ways with a side that answers requests. Every request is one message, and what its answer says to be
 * kept is durable there, so that after a break nothing is lost and the next exchange goes on from what both then hold.
 *
 * A round is an offer, and what follows from it. The other side remembers nothing between requests, so rounds are
 * repeated until it asks for nothing that is here.
 *
 * @throws whatever `other` rejects with; KeepingError as the keeping does. What was kept before stays kept.
 */
export async function exchangeWith(keeping: ExchangeKeeping, other: OtherSide): Promise<Exchanged> {
  const tally = { kept: 0, attached: 0, given: 0, givenAttachments: 0, problems: [] as Problem[] };
  const own = await keeping.holding();
  const offered = own === null ? await other.offer() : null;
  if (own === null && offered === null) return { ...tally, held: [] };
  const holding = own ?? holdingIn(offered);
  const exchange = createExchange(keeping, holding);
  let before: Ask | null = null;
  for (let round = 0; round < mostRounds; round += 1) {
    const { theirs, asked, gave } = await goRound(exchange, other, holding, tally);
    if (theirs === null) break;
    if (asked === null || !gave) return { ...tally, held: theirs.held };
    if (JSON.stringify(asked) === JSON.stringify(before)) break;
    before = asked;
  }
  return { ...tally, held: null };
}

type Tally = { -readonly [Key in Exclude<keyof Exchanged, 'held' | 'problems'>]: number } & { problems: Problem[] };

interface Round {
  readonly theirs: Offer | null;
  /** What the other side lacked when the round began. */
  readonly asked: Ask | null;
  /** Whether anything of that was here. */
  readonly gave: boolean;
}

async function goRound(exchange: Exchange, other: OtherSide, holding: string, tally: Tally): Promise<Round> {
  let theirs: Offer | null = null;
  let asked: Ask | null = null;
  let gave = false;
  const tell = (problems: readonly Problem[]): void => {
    tally.problems.push(...problems.slice(0, Math.max(0, maxProblems - tally.problems.length)));
  };
  /** Answers are given after the answer that asks for them has been read to its end. */
  const waiting: (AsyncIterable<ExchangeMessage> | Iterable<ExchangeMessage>)[] = [await exchange.begin()];
  for (let next = waiting.shift(); next !== undefined; next = waiting.shift()) {
    for await (const message of next) {
      gave ||= message.type === 'give' && message.entries.length + message.attachments.length > 0;
      for await (const line of other.send(message)) {
        const took = readTook(line);
        if (took !== null) {
          tally.given += took.kept;
          tally.givenAttachments += took.attached;
          tell(took.problems);
          continue;
        }
        const read = readMessage(line, holding);
        if (read.ok && read.value.type === 'offer') theirs = read.value;
        if (read.ok && read.value.type === 'ask') asked = read.value;
        const taken = await exchange.receive(line);
        tally.kept += taken.kept;
        tally.attached += taken.attached;
        tell(taken.problems);
        waiting.push(taken.send);
      }
    }
  }
  return { theirs, asked, gave };
}
