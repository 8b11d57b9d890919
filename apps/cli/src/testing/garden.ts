import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { bad, good } from '@loamwright/science';
import { v7 } from 'uuid';
import type { ExitCode } from '../answer.ts';
import { runProgram } from '../program.ts';

/** What a command printed, and how it ended. */
export interface Ran {
  readonly code: ExitCode;
  readonly out: string;
  readonly err: string;
}

/** How a command is run: what stands on its standard input, and what a person answers. */
export interface Around {
  readonly input?: string | undefined;
  /** Given, a person is there, and answers so. */
  readonly answers?: readonly string[] | undefined;
  readonly at?: string | undefined;
}

/** A data folder of its own, and the program run on it in this process. */
export interface Garden {
  readonly folder: string;
  run(args: readonly string[], around?: Around): Promise<Ran>;
  /** The answer of a command with `--json`. */
  json(
    args: readonly string[],
    around?: Around,
  ): Promise<{
    readonly ok: boolean;
    readonly value?: unknown;
    readonly problems?: readonly { readonly code: string }[];
  }>;
  remove(): void;
}

/** When the tests happen, unless they say otherwise: a Wednesday. */
const NOON = '2026-07-15T11:00:00.000Z';

export function garden(): Garden {
  const folder = mkdtempSync(join(tmpdir(), 'loamwright-cli-'));
  const run = async (args: readonly string[], { input = '', answers, at = NOON }: Around = {}): Promise<Ran> => {
    const out: string[] = [];
    const err: string[] = [];
    const waiting = [...(answers ?? [])];
    const code = await runProgram(args, {
      environment: { LOAMWRIGHT_DATA: folder, LANG: 'C.UTF-8' },
      platform: 'linux',
      now: () => new Date(at),
      zone: 'UTC',
      newId: () => v7(),
      serverFile: join(folder, 'no-server.mjs'),
      terminal: {
        out: (text) => out.push(text),
        err: (text) => err.push(text),
        columns: 80,
        answers: answers !== undefined,
        ask: async () => waiting.shift() ?? '',
        input: async (most) =>
          input.length > most
            ? bad({ code: 'too-many-bytes', path: '-', found: '', wanted: String(most) })
            : good(input),
      },
    });
    return { code, out: out.join(''), err: err.join('') };
  };
  return {
    folder,
    run,
    json: async (args, around) => JSON.parse((await run([...args, '--json'], around)).out),
    remove: () => rmSync(folder, { recursive: true, force: true }),
  };
}

/** Text with its line breaks as blanks, so that a test does not hang on where a line was broken. */
export function flat(text: string): string {
  return text.replace(/\s+/gu, ' ');
}
