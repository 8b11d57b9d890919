import type { ExchangeMessage } from '@loamwright/daybook';
import type { Problem } from '@loamwright/science';
import { jsonLines, type OtherSide } from '@loamwright/sync';
import { keyToComputer } from '../device/key.ts';
import { asRecord } from '../device/stored.ts';
import { Refused } from './book.ts';

/** The computer that served this page, if it keeps a daybook. */
export interface Server {
  /** Whether it asks for its key, as it does on a local network. */
  readonly asksKey: boolean;
}

/** Why the computer that serves the page could not take part. */
export class ServerRefused extends Refused {
  override readonly name: string = 'ServerRefused';
  readonly problem: Problem;
  constructor(problem: Problem, options?: ErrorOptions) {
    super(problem.code, options);
    this.problem = problem;
  }
}

const WAIT_MS = 4000;

/**
 * Looks whether the host of this page keeps a daybook: `none` for a plain static host and for the demo garden's, which no
 * own daybook should meet; `silent` when nobody answers, as with no signal.
 */
export async function findServer(): Promise<Server | 'none' | 'silent'> {
  try {
    const answer = await fetch(apiAddress('about'), { signal: AbortSignal.timeout(WAIT_MS), cache: 'no-store' });
    if (!answer.ok || !(answer.headers.get('content-type') ?? '').includes('json')) return 'none';
    const about = asRecord(await answer.json());
    if (about['program'] !== 'loamwright' || about['demo'] === true) return 'none';
    return { asksKey: about['key'] === true };
  } catch {
    return 'silent';
  }
}

function apiAddress(name: string): URL {
  return new URL(`api/${name}`, document.baseURI);
}

/** The computer as the other side of an exchange. Its ways reject with {@link ServerRefused}. */
export const computer: OtherSide = {
  offer: async () => {
    const answer = await ask({ method: 'GET' }, patience());
    return answer.status === NO_CONTENT ? null : answer.json();
  },
  send: async function* (message: ExchangeMessage) {
    const waiting = patience();
    const headers = { 'content-type': 'application/json' };
    const answer = await ask({ method: 'POST', body: JSON.stringify(message), headers }, waiting);
    yield* jsonLines(pieces(answer, waiting));
  },
};

const NO_CONTENT = 204;

/** Gives up when nothing has come for so long. A slow network may take all the time it needs while something comes. */
const STALL_MS = 60_000;

interface Patience {
  readonly signal: AbortSignal;
  /** Something has come. */
  again(): void;
  end(): void;
}

function patience(): Patience {
  const control = new AbortController();
  const start = (): number => window.setTimeout(() => control.abort(), STALL_MS);
  let timer = start();
  return {
    signal: control.signal,
    again: () => {
      clearTimeout(timer);
      timer = start();
    },
    end: () => clearTimeout(timer),
  };
}

async function ask(request: RequestInit, waiting: Patience): Promise<Response> {
  const key = keyToComputer.get();
  const headers = { ...request.headers, ...(key === null ? {} : { authorization: `Bearer ${key}` }) };
  const answer = await reached(() =>
    fetch(apiAddress('exchange'), { ...request, headers, cache: 'no-store', signal: waiting.signal }),
  );
  waiting.again();
  if (answer.ok) return answer;
  waiting.end();
  const problem = problemIn(await answer.json().catch(() => null), answer.status);
  // A key that does not fit is forgotten, so that it is asked for again.
  if (problem.code === 'key-wrong') keyToComputer.set(null);
  throw new ServerRefused(problem);
}

function problemIn(body: unknown, status: number): Problem {
  const { problems } = asRecord(body);
  const first = Array.isArray(problems) ? asRecord(problems[0]) : {};
  const text = (field: string): string => (typeof first[field] === 'string' ? first[field] : '');
  return { code: text('code') || String(status), path: text('path'), found: text('found'), wanted: text('wanted') };
}

/** The text of an answer as it comes. */
async function* pieces(answer: Response, waiting: Patience): AsyncGenerator<string> {
  const reader = answer.body?.pipeThrough(new TextDecoderStream()).getReader();
  try {
    for (;;) {
      const piece = await reached(async () => reader?.read());
      waiting.again();
      if (piece?.value === undefined) return;
      yield piece.value;
    }
  } finally {
    waiting.end();
    // Whoever stops reading early wants no more of it.
    reader?.cancel().catch(() => undefined);
  }
}

async function reached<Result>(work: () => Promise<Result>): Promise<Result> {
  try {
    return await work();
  } catch (cause) {
    throw new ServerRefused({ code: 'unreachable', path: '', found: '', wanted: '' }, { cause });
  }
}
