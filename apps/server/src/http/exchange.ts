import type { ExchangeMessage } from '@loamwright/daybook';
import type { Outcome, Problem } from '@loamwright/science';
import { type Answered, type AnswerLine, maxMessage_bytes } from '@loamwright/sync';
import { type Context, Hono } from 'hono';
import { bodyLimit } from 'hono/body-limit';
import { asStream, FILE_TYPE, refuse } from './answer.ts';
import type { DaybookEvent } from './daybook.ts';
import { noForms } from './guard.ts';

/** The daybook as a side of an exchange: by position, a message at a time. */
export interface Answering {
  /** What is held here; null for a daybook that has not been begun. */
  offer(): Promise<ExchangeMessage | null>;
  answer(message: unknown): Promise<Outcome<Answered>>;
}

/**
 * `GET` gives what is held here, as an offer (204 when there is none yet). `POST` takes one message of an exchange and
 * answers it, a JSON value to a line: first what was kept of it, which is then on the disk, and then the messages that
 * answer. Nothing is remembered between requests, so a lost answer costs nothing but asking again.
 */
export function exchangeRoutes(
  side: Answering,
  log: (event: DaybookEvent) => void,
  mostBytes: number = maxMessage_bytes,
): Hono {
  const routes = new Hono();
  routes.get('/', async (context) => {
    const offer = await side.offer();
    const headers = { 'cache-control': 'no-store' };
    return offer === null ? context.body(null, 204, headers) : context.json(offer, 200, headers);
  });
  const tooLarge = (context: Context): Response =>
    refuse(context, 413, { code: 'message-too-large', path: '', found: '', wanted: String(mostBytes) });
  routes.post('/', noForms(), bodyLimit({ maxSize: mostBytes, onError: tooLarge }), async (context) => {
    const answered = await side.answer(parsed(await context.req.text()));
    if (!answered.ok) {
      log({ what: 'refused', code: answered.problems[0]?.code ?? '' });
      return refuse(context, statusOf(answered.problems), ...answered.problems);
    }
    const { kept, attached, lines } = answered.value;
    if (kept + attached > 0) log({ what: 'exchanged', kept, attached });
    return context.body(asStream(texts(lines)), 200, { 'content-type': FILE_TYPE, 'cache-control': 'no-store' });
  });
  return routes;
}

/** What is no JSON is no message either, and is refused as such. */
function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return text.slice(0, 60);
  }
}

async function* texts(lines: AsyncIterable<AnswerLine>): AsyncGenerator<string> {
  for await (const line of lines) yield `${JSON.stringify(line)}\n`;
}

function statusOf(problems: readonly Problem[]): 400 | 409 {
  return problems.some(({ code }) => code === 'exchange-other-holding') ? 409 : 400;
}
