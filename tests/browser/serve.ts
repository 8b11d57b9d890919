import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtemp, rm } from 'node:fs/promises';
import { request as requestPlain } from 'node:http';
import { request as requestSecure } from 'node:https';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { root } from '../../scripts/lib/root.mjs';

const startingUp_ms = 30_000;
const shuttingDown_ms = 10_000;
const pause_ms = 50;

export interface ServeOptions {
  /** Arguments after the program's own, such as `--lan`. */
  readonly args?: readonly string[];
  /** Settings beside HOST, PORT and LOAMWRIGHT_DATA. */
  readonly env?: Readonly<Record<string, string>>;
  /** A data folder to serve again; else a new one, which goes when the server stops. */
  readonly dataFolder?: string;
  /** The port to serve again; else a free one. A browser keeps a daybook under its address, port included. */
  readonly port?: number;
  /** Whether it is waited for over HTTPS. */
  readonly isSecure?: boolean;
}

export interface Served {
  /** Without a slash at its end, such as `http://127.0.0.1:40123`. */
  readonly address: string;
  readonly dataFolder: string;
  /** What the server has printed so far. */
  printed(): string;
  /** Tells the server to end, as a person would, and waits for it. */
  stop(): Promise<void>;
  /** Ends it as a power cut does, in the middle of whatever it does; its data folder stays. */
  kill(): Promise<void>;
}

/** Starts the built server on a free port of this machine and waits until it answers. */
export async function serve(options: ServeOptions = {}): Promise<Served> {
  const dataFolder = options.dataFolder ?? (await mkdtemp(join(tmpdir(), 'loamwright-served-')));
  const port = options.port ?? (await freePort());
  const program = join(root, 'apps/server/dist/server.mjs');
  const child = spawn(process.execPath, ['--enable-source-maps', program, ...(options.args ?? [])], {
    env: { ...process.env, HOST: '127.0.0.1', PORT: String(port), LOAMWRIGHT_DATA: dataFolder, ...options.env },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  let printed = '';
  for (const stream of [child.stdout, child.stderr]) {
    stream.setEncoding('utf8').on('data', (text: string) => {
      printed += text;
    });
  }
  const address = `${options.isSecure === true ? 'https' : 'http'}://127.0.0.1:${port}`;
  const stop = async () => {
    await end(child);
    if (options.dataFolder === undefined) await rm(dataFolder, { recursive: true, force: true });
  };
  try {
    await untilAnswered(address, child);
  } catch (cause) {
    await stop();
    throw new Error(`The server did not answer at ${address}. It printed:\n${printed}`, { cause });
  }
  const kill = async () => {
    if (child.exitCode !== null || child.signalCode !== null) return;
    const ended = once(child, 'exit');
    child.kill('SIGKILL');
    await ended;
  };
  return { address, dataFolder, printed: () => printed, stop, kill };
}

async function freePort(): Promise<number> {
  const probe = createServer().listen(0, '127.0.0.1');
  await once(probe, 'listening');
  const bound = probe.address();
  probe.close();
  await once(probe, 'close');
  if (bound === null || typeof bound === 'string') throw new Error('A listening socket has no port.');
  return bound.port;
}

async function untilAnswered(address: string, child: ChildProcess): Promise<void> {
  const deadline = Date.now() + startingUp_ms;
  while (!(await answers(address))) {
    if (child.exitCode !== null || child.signalCode !== null) throw new Error('It ended.');
    if (Date.now() > deadline) throw new Error(`No answer within ${startingUp_ms / 1000} s.`);
    await new Promise((resolve) => setTimeout(resolve, pause_ms));
  }
}

function answers(address: string): Promise<boolean> {
  return new Promise((resolve) => {
    // The server's own certificate is made on the spot, so nobody vouches for it yet.
    const asked = address.startsWith('https:')
      ? requestSecure(address, { rejectUnauthorized: false })
      : requestPlain(address);
    asked
      .once('response', (response) => {
        response.resume();
        resolve(true);
      })
      .once('error', () => resolve(false))
      .end();
  });
}

async function end(child: ChildProcess): Promise<void> {
  if (child.exitCode !== null || child.signalCode !== null) return;
  const ended = once(child, 'exit');
  child.kill('SIGTERM');
  const last = setTimeout(() => child.kill('SIGKILL'), shuttingDown_ms);
  await ended;
  clearTimeout(last);
}
