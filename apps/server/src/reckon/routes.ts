import {
  type CautionId,
  catalogue,
  type ListedCalculation,
  nearest,
  type Problem,
  sourceOf,
} from '@loamwright/science';
import { type Speaker, tellProblem } from '@loamwright/words';
import { type Context, Hono, type MiddlewareHandler } from 'hono';
import { bodyLimit } from 'hono/body-limit';
import type { ContentfulStatusCode } from 'hono/utils/http-status';
import type { Reckoner } from './crew.ts';

/** A year of hourly readings is well below this. */
export const MOST_INPUT_BYTES: number = 4 * 1024 * 1024;

const JSON_TYPE = 'application/json';
/** After so many seconds a busy server is worth asking again. */
const BUSY_S = 5;

export interface ReckonParts {
  readonly reckoner: Reckoner;
  readonly speaker: Speaker;
  /** Who may have a calculation run; the catalogue itself may be read by all. */
  readonly guard?: MiddlewareHandler | undefined;
}

/** The catalogue of calculations: read with `GET`, run with `POST`. */
export function reckonRoutes({ reckoner, speaker, guard }: ReckonParts): Hono {
  const routes = new Hono();
  routes.get('/', (context) => told(context, catalogue.map(inShort)));
  routes.get('/:id', (context) => {
    const calculation = find(context);
    return calculation === undefined ? unknown(context) : told(context, inFull(calculation, speaker));
  });
  const tooLarge = (context: Context): Response =>
    refuse(context, 413, problem('too-many-bytes', 'body', '', String(MOST_INPUT_BYTES)));
  const limit = bodyLimit({ maxSize: MOST_INPUT_BYTES, onError: tooLarge });
  routes.post('/:id', guard ?? ((_context, next) => next()), jsonOnly(), limit, async (context) => {
    const calculation = find(context);
    if (calculation === undefined) return unknown(context);
    const body = new Uint8Array(await context.req.arrayBuffer());
    const worked = await reckoner.reckon(calculation.id, body);
    switch (worked) {
      case 'busy':
        context.header('retry-after', String(BUSY_S));
        return refuse(context, 503, problem('reckon-busy', calculation.id, '', String(BUSY_S)));
      case 'too-long':
        return refuse(context, 503, problem('reckon-too-long', calculation.id, '', ''));
      case 'failed':
        return refuse(context, 500, problem('reckon-failed', calculation.id, '', ''));
    }
    if (!worked.ok) return refuse(context, statusOf(worked.problems), ...worked.problems);
    return context.body(`{"ok":true,"value":${worked.json}}`, 200, {
      'content-type': JSON_TYPE,
      'cache-control': 'no-store',
    });
  });
  return routes;

  /** A problem goes out as data and in words: who asks from a program may want to show it. */
  function refuse(context: Context, status: ContentfulStatusCode, ...problems: readonly Problem[]): Response {
    const worded = problems.map((one) => ({ ...one, words: tellProblem(speaker, one, { names: true }) }));
    const headers = { 'cache-control': 'no-store', 'content-language': speaker.locale };
    return context.json({ ok: false, problems: worded }, status, headers);
  }

  function unknown(context: Context): Response {
    const id = context.req.param('id') ?? '';
    const ids = catalogue.map((one) => one.id);
    return refuse(context, 404, problem('unknown-calculation', '', id.slice(0, 60), nearest(id, ids).join(', ')));
  }

  function jsonOnly(): MiddlewareHandler {
    return async (context, next) => {
      const type = context.req.header('content-type') ?? '';
      // A form of another page can't send this type without asking first.
      if (type.split(';')[0]?.trim().toLowerCase() === JSON_TYPE) return next();
      return refuse(context, 415, problem('wrong-media-type', 'Content-Type', type.slice(0, 60), JSON_TYPE));
    };
  }
}

function find(context: Context): ListedCalculation | undefined {
  return catalogue.find(({ id }) => id === context.req.param('id'));
}

function told(context: Context, value: unknown): Response {
  return context.json({ ok: true, value }, 200, { 'cache-control': 'no-cache' });
}

function inShort({ id, title, summary, sources, cautions }: ListedCalculation): object {
  const address = `/api/reckon/${id}`;
  const links = {
    calculation: address,
    page: `/api/page/${id}`,
    input: `${address}#/value/input`,
    answer: `${address}#/value/answer`,
  };
  return { id, title, summary, sources, cautions, links };
}

function inFull(calculation: ListedCalculation, speaker: Speaker): object {
  const { id, title, summary, sources, cautions, example } = calculation;
  return {
    id,
    title,
    summary,
    sources: sources.map((citation) => ({ ...citation, ...sourceOf(citation) })),
    cautions: cautions.map((caution: CautionId) => ({ id: caution, words: speaker.say(`caution.${caution}`) })),
    input: calculation.inputSchema(),
    answer: calculation.outputSchema(),
    example,
  };
}

/** What can't be read is a bad request; what can be read and does not do is told by its content. */
function statusOf(problems: readonly Problem[]): ContentfulStatusCode {
  return problems.some(({ code }) => code === 'not-text' || code === 'not-json-text') ? 400 : 422;
}

function problem(code: string, path: string, found: string, wanted: string): Problem {
  return { code, path, found, wanted };
}
