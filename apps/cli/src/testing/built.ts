import { type ChildProcess, spawn } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { bundle } from '../../../../scripts/lib/bundle.mjs';

const root = fileURLToPath(new URL('../../../..', import.meta.url));

type Environment = Readonly<Record<string, string>>;

/** The command line and the server as they are shipped, built from the sources as they stand. */
export interface Built {
  /** The command line's file. */
  readonly program: string;
  /** Starts the command line; the process is the caller's to end. */
  start(args: readonly string[], environment?: Environment): ChildProcess;
  /** Runs a command line to its end. */
  run(args: readonly string[], environment?: Environment, input?: string): Promise<Ended>;
  /** Runs a line of a POSIX shell, in which `$loamwright` stands for the command line. */
  shell(line: string, environment?: Environment): Promise<Ended>;
  remove(): void;
}

/** What a process printed, and how it ended. */
export interface Ended {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/**
 * Bundles both programs as `npm run build` does, into a folder where they find one another and the packages that stay
 * outside.
 */
export async function built(): Promise<Built> {
  const cache = join(root, 'node_modules', '.cache', 'loamwright');
  mkdirSync(cache, { recursive: true });
  const folder = mkdtempSync(join(cache, 'programs-'));
  const program = join(folder, 'cli', 'dist', 'loamwright.mjs');
  await bundle(join(root, 'apps/cli/src/main.ts'), program);
  await bundle(join(root, 'apps/server/src/main.ts'), join(folder, 'server', 'dist', 'server.mjs'));
  const around = (environment: Environment = {}): NodeJS.ProcessEnv => ({
    PATH: process.env['PATH'] ?? '',
    LANG: 'C.UTF-8',
    TZ: 'UTC',
    ...environment,
  });
  const start: Built['start'] = (args, environment) =>
    spawn(process.execPath, [program, ...args], { env: around(environment) });
  return {
    program,
    start,
    run: (args, environment, input) => ended(start(args, environment), input),
    shell: (line, environment) => {
      const env = { ...around(environment), loamwright: `${process.execPath} ${program}` };
      return ended(spawn('sh', ['-c', line], { env }));
    },
    remove: () => rmSync(folder, { recursive: true, force: true }),
  };
}

/** Waits for a process to end. */
export function ended(child: ChildProcess, input?: string): Promise<Ended> {
  const printed = { out: '', err: '' };
  child.stdout?.setEncoding('utf8').on('data', (text: string) => {
    printed.out += text;
  });
  child.stderr?.setEncoding('utf8').on('data', (text: string) => {
    printed.err += text;
  });
  // Who does not read its input may be gone before it is written.
  child.stdin?.on('error', () => undefined).end(input);
  return new Promise((resolve) => child.once('close', (code) => resolve({ code, ...printed })));
}
