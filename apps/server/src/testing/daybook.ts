import type { ExchangeMessage } from '@loamwright/daybook';
import { bad, good } from '@loamwright/science';
import type { AnswerLine } from '@loamwright/sync';
import type { Parts } from '../app.ts';
import type { DaybookEvent, Exchange } from '../http/daybook.ts';
import type { Answering } from '../http/exchange.ts';
import { builtFiles } from './built-app.ts';
import { asking, testServer } from './server.ts';

/** What the daybook of this server says that it took in. */
export const report = { kept: 2, there: 1, conflicts: [], attached: 0, problems: [] };

async function* lines(): AsyncGenerator<string> {
  yield '{"daybook":1}\n';
  yield '{"end":1}\n';
}

/** A daybook of one entry that takes in `{}`, and refuses what is of another holding or is rubbish. */
export const exchange: Exchange = {
  take: async () => ({ lines: lines(), entries: 1 }),
  bring: async (text) => {
    if (text === '{}') return good(report);
    return bad({
      code: text === 'other' ? 'bundle-other-holding' : 'bundle-not-ours',
      path: '',
      found: '',
      wanted: '',
    });
  },
};

/** What this server offers to begin an exchange. */
export const offer: ExchangeMessage = { type: 'offer', v: 1, holding: 'quarry-lane', held: [], conflicts: [] };

async function* answerLines(): AsyncGenerator<AnswerLine> {
  yield { type: 'took', v: 1, ...report };
  yield offer;
}

async function* noMessages(): AsyncGenerator<ExchangeMessage> {}

/** An exchange that takes in an offer and nothing else. */
export const answering: Answering = {
  offer: async () => offer,
  answer: async (message) => {
    const { type } = message as { readonly type?: string };
    if (type === 'offer') return good({ ...report, send: noMessages(), lines: answerLines() });
    return bad({
      code: type === 'other' ? 'exchange-other-holding' : 'exchange-no-message',
      path: '',
      found: '',
      wanted: '',
    });
  },
};

const files = builtFiles();

/** Asks a server with that daybook and a built app, without a socket; what it tells of goes to the events. */
export function askingOf(
  parts: Partial<Parts> = {},
  events: DaybookEvent[] = [],
): (path: string, init?: RequestInit) => Promise<Response> {
  return asking(
    testServer({
      files,
      exchange,
      answering,
      reckoner: { reckon: async () => 'failed', stop: async () => undefined },
      hosts: () => ['localhost', '127.0.0.1', '192.168.1.20'],
      log: (event) => events.push(event),
      ...parts,
    }),
  );
}

/** The headers of a body in JSON. */
export const json = { 'content-type': 'application/json' };

/** The code of the first problem of a refusal. */
export async function codeOf(response: Response): Promise<string | undefined> {
  const { problems } = (await response.json()) as { readonly problems: readonly { readonly code: string }[] };
  return problems[0]?.code;
}
