import { existsSync, mkdirSync } from 'node:fs';
import { createServer as createHttpServer, type Server } from 'node:http';
import { createServer as createHttpsServer, type Server as SecureServer } from 'node:https';
import { join } from 'node:path';
import { createAdaptorServer } from '@hono/node-server';
import { getConnInfo } from '@hono/node-server/conninfo';
import { KeepingError } from '@loamwright/daybook';
import { bad, good, type Outcome } from '@loamwright/science';
import { openSqliteKeeping } from '@loamwright/store/sqlite';
import type { Speaker } from '@loamwright/words';
import packageFacts from '../package.json' with { type: 'json' };
import { announceFacts, announceLan, lanOrigin, phoneOrigin } from './announce.ts';
import { createApp } from './app.ts';
import { answeringOn, exchangeOn } from './exchange.ts';
import { type DaybookEvent, keepingProblem } from './http/daybook.ts';
import { readFiles } from './http/files.ts';
import { countAttempts } from './lan/key.ts';
import { type LocalNetwork, openLocalNetwork } from './lan/network.ts';
import type { Options } from './options.ts';
import { openReckoner } from './reckon/crew.ts';

/** Where the server prints, and what it is told from outside. */
export interface Surroundings {
  readonly speaker: Speaker;
  /** Prints one line. */
  readonly print: (line: string) => void;
  readonly now: () => Date;
  /** Folder of the built app. */
  readonly web: string;
  /** The built program of the thread that runs calculations. */
  readonly reckonThread: string;
  readonly terminal: { readonly columns: number; readonly drawsCodes: boolean };
}

/** A server that is answering. */
export interface Running {
  readonly port: number;
  /** Answers what has been asked, closes the daybook, and is gone. */
  stop(): Promise<void>;
}

/** Requests under way get this long to end. */
const GRACE_MS = 5000;
/** How often the network is looked at: a phone that comes back to a changed address shouldn't wait long. */
const LOOK_MS = 60_000;

/** Opens the daybook, starts to answer, and says where. */
export async function run(options: Options, surroundings: Surroundings): Promise<Outcome<Running>> {
  const { speaker, print, now } = surroundings;
  const file = join(options.data, options.demo ? 'demo.sqlite' : 'daybook.sqlite');
  const opened = await openKeeping(options.data, file);
  if (!opened.ok) return opened;
  const keeping = opened.value;
  const network = options.lan ? openNetwork(options.data, now()) : good(undefined);
  if (!network.ok) {
    await keeping.close();
    return network;
  }
  const lan = network.value;
  const files = readFiles(surroundings.web);
  const reckoner = openReckoner(surroundings.reckonThread);
  let port = options.port;
  const app = createApp({
    version: packageFacts.version,
    speaker,
    files,
    exchange: exchangeOn(keeping),
    answering: answeringOn(keeping),
    reckoner,
    demo: options.demo,
    hosts: () => hostsOf(options, lan),
    lan: lan && {
      authority: lan.authority,
      key: lan.key,
      attempts: countAttempts(() => now().getTime()),
      addressOf: (context) => getConnInfo(context).remote.address ?? '',
      origin: () => phoneOrigin(lan, port),
    },
    log: (event) =>
      print(options.json ? JSON.stringify(event) : `${now().toTimeString().slice(0, 5)} ${told(speaker, event)}`),
  });
  const server = lan === undefined ? plainServer(app.fetch) : secureServer(app.fetch, lan);
  const listening = await listen(server, options);
  if (!listening.ok) {
    await keeping.close();
    return listening;
  }
  port = listening.value;
  for (const line of announce(options, surroundings, lan, port)) print(line);
  if (files.size === 0 && !options.json) print(speaker.say('server.notBuilt'));
  const watch =
    lan &&
    watchNetwork(
      server as SecureServer,
      lan,
      () => {
        const addresses = lan.reach.addresses.map((host) => lanOrigin(host, port));
        print(
          options.json
            ? JSON.stringify({ what: 'renewed', addresses })
            : speaker.say('server.lan.renewed', { addresses: addresses.join(', ') }),
        );
      },
      now,
    );
  return good({
    port,
    stop: async () => {
      clearInterval(watch);
      await closed(server);
      await reckoner.stop();
      await keeping.close();
    },
  });
}

async function openKeeping(
  data: string,
  file: string,
): Promise<Outcome<Awaited<ReturnType<typeof openSqliteKeeping>>>> {
  try {
    if (!existsSync(data)) mkdirSync(data, { recursive: true, mode: 0o700 });
    return good(await openSqliteKeeping(file));
  } catch (error) {
    if (error instanceof KeepingError) return bad({ ...keepingProblem(error).problem, path: file });
    return bad({
      code: 'folder-unusable',
      path: data,
      found: error instanceof Error ? error.message : String(error),
      wanted: '',
    });
  }
}

function openNetwork(data: string, now: Date): Outcome<LocalNetwork> {
  try {
    return openLocalNetwork(data, now);
  } catch (error) {
    return bad({
      code: 'folder-unusable',
      path: join(data, 'lan'),
      found: error instanceof Error ? error.message : String(error),
      wanted: '',
    });
  }
}

function hostsOf(options: Options, lan: LocalNetwork | undefined): readonly string[] {
  const own = ['localhost', '127.0.0.1', '[::1]'];
  return lan === undefined ? own : [...lan.reach.addresses, ...lan.reach.names, options.host, ...own];
}

function plainServer(fetch: (request: Request) => Response | Promise<Response>): Server {
  return createAdaptorServer({ fetch, createServer: createHttpServer }) as Server;
}

function secureServer(fetch: (request: Request) => Response | Promise<Response>, lan: LocalNetwork): SecureServer {
  const serverOptions = { ...lan.leaf, minVersion: 'TLSv1.2' as const };
  return createAdaptorServer({ fetch, createServer: createHttpsServer, serverOptions }) as SecureServer;
}

function listen(server: Server | SecureServer, { port, host }: Options): Promise<Outcome<number>> {
  return new Promise((resolve) => {
    server.once('error', (error: NodeJS.ErrnoException) => resolve(listenProblem(error, port, host)));
    server.listen(port, host, () => {
      const address = server.address();
      resolve(good(typeof address === 'object' && address !== null ? address.port : port));
    });
  });
}

function listenProblem(error: NodeJS.ErrnoException, port: number, host: string): Outcome<never> {
  switch (error.code) {
    case 'EADDRINUSE':
      return bad({ code: 'port-taken', path: '--port', found: String(port), wanted: '' });
    case 'EACCES':
      return bad({ code: 'port-forbidden', path: '--port', found: String(port), wanted: '' });
    case 'EADDRNOTAVAIL':
    case 'ENOTFOUND':
    case 'EAI_AGAIN':
      return bad({ code: 'host-unknown', path: '--host', found: host, wanted: '' });
    default:
      return bad({ code: 'server-failed', path: '', found: error.message, wanted: '' });
  }
}

function announce(
  options: Options,
  { speaker, terminal }: Surroundings,
  lan: LocalNetwork | undefined,
  port: number,
): readonly string[] {
  const address =
    lan === undefined ? `http://${options.host === '::1' ? '[::1]' : 'localhost'}:${port}` : phoneOrigin(lan, port);
  if (options.json) return [JSON.stringify({ ok: true, value: announceFacts(lan, address, port) })];
  if (lan === undefined) return [speaker.say('server.at', { address })];
  const before = lan.remember(phoneOrigin(lan, port));
  const moved =
    before === undefined ? [] : ['', speaker.say('server.lan.moved', { before, now: phoneOrigin(lan, port) })];
  return [...announceLan(speaker, lan, port, terminal), ...moved];
}

function watchNetwork(server: SecureServer, lan: LocalNetwork, tell: () => void, now: () => Date): NodeJS.Timeout {
  const look = (): void => {
    if (!lan.renew(now())) return;
    server.setSecureContext(lan.leaf);
    tell();
  };
  return setInterval(look, LOOK_MS).unref();
}

function told(speaker: Speaker, event: DaybookEvent): string {
  switch (event.what) {
    case 'took':
      return speaker.say('server.took', { kept: event.entries });
    case 'exchanged':
      return speaker.say('server.exchanged', { kept: event.kept, attached: event.attached });
    case 'brought':
      return speaker.say('server.brought', { kept: event.kept, there: event.there });
    case 'refused':
      return speaker.say('server.refused', { code: event.code });
  }
}

function closed(server: Server | SecureServer): Promise<void> {
  return new Promise((resolve) => {
    server.close(() => resolve());
    server.closeIdleConnections();
    setTimeout(() => server.closeAllConnections(), GRACE_MS).unref();
  });
}
