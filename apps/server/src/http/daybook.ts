import { KeepingError } from '@loamwright/daybook';
import type { Outcome, Problem } from '@loamwright/science';
import type { BringReport } from '@loamwright/sync';
import { type Context, Hono } from 'hono';
import { bodyLimit } from 'hono/body-limit';
import type { ContentfulStatusCode } from 'hono/utils/http-status';
import { asStream, FILE_TYPE, refuse } from './answer.ts';
import { noForms } from './guard.ts';

/** The daybook as the server hands it out and takes it in: the same file as `take` writes and `bring` reads. */
export interface Exchange {
  /** Null for a daybook that has not been begun. */
  take(): Promise<{ readonly lines: AsyncIterable<string>; readonly entries: number } | null>;
  bring(text: string): Promise<Outcome<BringReport>>;
}

/** What happened, for the log: no names, no contents. */
export type DaybookEvent =
  | { readonly what: 'exchanged'; readonly kept: number; readonly attached: number }
  | { readonly what: 'took'; readonly entries: number }
  | { readonly what: 'brought'; readonly kept: number; readonly there: number }
  | { readonly what: 'refused'; readonly code: string };

/** Largest daybook file that is taken in: ten busy years with their photos are well below it. */
const MOST_BYTES: number = 256 * 1024 * 1024;

const DAYBOOK_FILE = 'loamwright-daybook.jsonl';

/**
 * `GET` hands the daybook out as a file (204 when there is none yet), `POST` takes one in and reports what was new.
 */
export function daybookRoutes(
  exchange: Exchange,
  log: (event: DaybookEvent) => void,
  mostBytes: number = MOST_BYTES,
): Hono {
  const routes = new Hono();
  routes.get('/', async (context) => {
    const taken = await exchange.take();
    if (taken === null) return context.body(null, 204, { 'cache-control': 'no-store' });
    log({ what: 'took', entries: taken.entries });
    return context.body(asStream(taken.lines), 200, {
      'content-type': FILE_TYPE,
      'content-disposition': `attachment; filename="${DAYBOOK_FILE}"`,
      'cache-control': 'no-store',
    });
  });
  const tooLarge = (context: Context): Response =>
    refuse(context, 413, { code: 'too-many-bytes', path: '', found: '', wanted: String(mostBytes) });
  routes.post('/', noForms(), bodyLimit({ maxSize: mostBytes, onError: tooLarge }), async (context) => {
    const outcome = await exchange.bring(await context.req.text());
    if (!outcome.ok) {
      log({ what: 'refused', code: outcome.problems[0]?.code ?? '' });
      return refuse(context, statusOf(outcome.problems), ...outcome.problems);
    }
    const { kept, there } = outcome.value;
    log({ what: 'brought', kept, there });
    return context.json({ ok: true, value: outcome.value }, 200, { 'cache-control': 'no-store' });
  });
  return routes;
}

function statusOf(problems: readonly Problem[]): ContentfulStatusCode {
  return problems.some(({ code }) => code === 'bundle-other-holding') ? 409 : 400;
}

/** What to answer when the daybook's file could not do it. */
export function keepingProblem(error: unknown): { status: ContentfulStatusCode; problem: Problem } {
  const found = error instanceof Error ? error.message : String(error);
  if (!(error instanceof KeepingError))
    return { status: 500, problem: { code: 'server-failed', path: '', found, wanted: '' } };
  const status = { 'other-holding': 409, busy: 503, full: 507, 'too-large': 413 } as const;
  const known = error.code in status ? status[error.code as keyof typeof status] : 500;
  return { status: known, problem: { code: error.code, path: '', found, wanted: '' } };
}
