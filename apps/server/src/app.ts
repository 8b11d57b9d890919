import type { Speaker } from '@loamwright/words';
import { type Context, Hono } from 'hono';
import { apiRoutes } from './api/routes.ts';
import { refuse } from './http/answer.ts';
import { type DaybookEvent, daybookRoutes, type Exchange, keepingProblem } from './http/daybook.ts';
import { type Answering, exchangeRoutes } from './http/exchange.ts';
import { type ServedFiles, serveFiles } from './http/files.ts';
import { keyNeeded, ownHostOnly, ownOriginOnly, securityHeaders } from './http/guard.ts';
import type { Authority } from './lan/authority.ts';
import type { Attempts } from './lan/key.ts';
import type { Reckoner } from './reckon/crew.ts';
import { reckonRoutes } from './reckon/routes.ts';
import { CERTIFICATE_FILE, trustPage } from './trust/page.ts';

/** What the server's answers are made of. */
export interface Parts {
  readonly version: string;
  readonly speaker: Speaker;
  readonly files: ServedFiles;
  readonly exchange: Exchange;
  readonly answering: Answering;
  readonly reckoner: Reckoner;
  /** Whether this is the demo garden, which no phone's own daybook should meet. */
  readonly demo: boolean;
  /** The names that a request may name as its host: they change with the network. */
  readonly hosts: () => readonly string[];
  /** Only on the network. */
  readonly lan?: LanParts | undefined;
  readonly log: (event: DaybookEvent) => void;
}

export interface LanParts {
  readonly authority: Authority;
  readonly key: string;
  readonly attempts: Attempts;
  /** Where a request came from. */
  readonly addressOf: (context: Context) => string;
  /** Where a phone finds this server: `https://…`, without a path. */
  readonly origin: () => string;
}

/** All of the server's answers, without a socket. */
export function createApp(parts: Parts): Hono {
  const { lan, speaker, reckoner } = parts;
  const app = new Hono();
  app.use(securityHeaders(), ownHostOnly(parts.hosts), ownOriginOnly());
  app.get('/api/about', (context) =>
    context.json({ program: 'loamwright', version: parts.version, key: lan !== undefined, demo: parts.demo }, 200, {
      'cache-control': 'no-store',
    }),
  );
  const needsKey = lan && keyNeeded(lan.key, lan.attempts, lan.addressOf);
  if (lan !== undefined && needsKey !== undefined) {
    app.use('/api/daybook', needsKey);
    app.use('/api/exchange', needsKey);
    app.get('/trust', async (context) => {
      context.header('cache-control', 'no-store');
      return context.html(await trustPage(parts.speaker, lan.authority, `${lan.origin()}/trust`));
    });
    app.get(`/trust/${CERTIFICATE_FILE}`, (context) =>
      context.body(Uint8Array.from(lan.authority.certificate_der), 200, {
        'content-type': 'application/x-x509-ca-cert',
        'content-disposition': `attachment; filename="${CERTIFICATE_FILE}"`,
        'cache-control': 'no-store',
      }),
    );
  }
  app.route('/api/daybook', daybookRoutes(parts.exchange, parts.log));
  app.route('/api/exchange', exchangeRoutes(parts.answering, parts.log));
  app.route('/api/reckon', reckonRoutes({ reckoner, speaker, guard: needsKey }));
  app.route('/api', apiRoutes({ version: parts.version, speaker, isLan: lan !== undefined }, reckoner));
  for (const [path, methods] of methodsByPath(app)) {
    app.all(path, (context) => {
      context.header('allow', methods.join(', '));
      const found = context.req.method;
      return refuse(context, 405, { code: 'method-not-allowed', path: '', found, wanted: methods.join(', ') });
    });
  }
  app.all('/api/*', (context) => notFound(context));
  app.get('*', serveFiles(parts.files));
  app.notFound(notFound);
  app.onError((error, context) => {
    const { status, problem } = keepingProblem(error);
    parts.log({ what: 'refused', code: problem.code });
    return refuse(context, status, problem);
  });
  return app;
}

function notFound(context: Context): Response {
  return refuse(context, 404, { code: 'not-found', path: '', found: context.req.path.slice(0, 100), wanted: '' });
}

/** How each path may be asked for, from the routes as they stand. What answers `GET` answers `HEAD` too. */
function methodsByPath(app: Hono): ReadonlyMap<string, readonly string[]> {
  const paths = new Map<string, readonly string[]>();
  for (const { method, path } of app.routes) {
    if (method === 'ALL') continue;
    const allowed = method === 'GET' ? ['GET', 'HEAD'] : [method];
    paths.set(path, [...new Set([...(paths.get(path) ?? []), ...allowed])]);
  }
  return paths;
}
