import { spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { bad, good, type Outcome } from '@loamwright/science';
import type { Answer } from '../answer.ts';
import type { Session } from '../session.ts';

export interface StartOptions {
  readonly port?: string | undefined;
  readonly host?: string | undefined;
  readonly lan?: boolean | undefined;
}

/**
 * `loamwright start`: runs the server as a process of its own until it ends or is stopped. What it prints is its own.
 * Problem: `server-missing`.
 */
export async function start(options: StartOptions, session: Session): Promise<Outcome<Answer>> {
  const { serverFile, folder, demo, json } = session;
  if (!existsSync(serverFile)) return bad({ code: 'server-missing', path: serverFile, found: '', wanted: '' });
  const args = [
    ...(options.port === undefined ? [] : ['--port', options.port]),
    ...(options.host === undefined ? [] : ['--host', options.host]),
    ...(options.lan === true ? ['--lan'] : []),
    ...(demo ? ['--demo'] : []),
    ...(json ? ['--json'] : []),
    '--data',
    folder.path,
  ];
  const code = await untilEnded(serverFile, args);
  // Where it went wrong, the server has said so.
  return good({ value: undefined, text: '', quiet: true, code: code === 0 || code === 2 ? code : 1 });
}

/**
 * The channel between the two processes carries no messages: when this process dies, even by force, the channel closes
 * and the server stops.
 */
function untilEnded(file: string, args: readonly string[]): Promise<number> {
  const server = spawn(process.execPath, [file, ...args], { stdio: ['ignore', 'inherit', 'inherit', 'ipc'] });
  // A terminal's Ctrl+C reaches both; this process only waits for the other to close the daybook.
  const wait = (): void => undefined;
  const passOn = (signal: NodeJS.Signals): void => void server.kill(signal);
  process.on('SIGINT', wait).on('SIGTERM', passOn).on('SIGHUP', passOn);
  return new Promise((resolve) => {
    server.once('error', () => resolve(1));
    server.once('exit', (code) => {
      process.off('SIGINT', wait).off('SIGTERM', passOn).off('SIGHUP', passOn);
      resolve(code ?? 1);
    });
  });
}
