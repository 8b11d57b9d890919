import { fileURLToPath } from 'node:url';
import type { Problem } from '@loamwright/science';
import { createSpeaker, isMessageKey } from '@loamwright/words';
import { readOptions } from './options.ts';
import { run } from './run.ts';

/** Exit codes, the same as the command line's: 0 fine, 1 failed, 2 bad input. */
const FAILED = 1;
const BAD_INPUT = 2;

const speaker = createSpeaker({ locale: 'en', system: 'metric' });

const print = (line: string): void => {
  process.stdout.write(`${line}\n`);
};

function tellProblems(problems: readonly Problem[]): void {
  for (const { code, path, found, wanted } of problems) {
    const key = `problem.${code}`;
    const text = isMessageKey(key) ? speaker.say(key, { path, found, wanted }) : `${code}: ${path} ${found}`;
    process.stderr.write(`${text}\n`);
  }
}

const args = process.argv.slice(2);
if (args.includes('--help')) {
  print(speaker.say('server.usage'));
} else {
  const options = readOptions(args, process.env);
  if (options.ok) await serve(options.value);
  else {
    tellProblems(options.problems);
    process.exitCode = BAD_INPUT;
  }
}

async function serve(options: Parameters<typeof run>[0]): Promise<void> {
  const running = await run(options, {
    speaker,
    print,
    now: () => new Date(),
    // Beside both the source and the built file: apps/server/{src,dist} and apps/web/dist.
    web: fileURLToPath(new URL('../../web/dist', import.meta.url)),
    // Built beside this file.
    reckonThread: fileURLToPath(new URL('./reckon.mjs', import.meta.url)),
    terminal: { columns: process.stdout.columns ?? 80, drawsCodes: process.stdout.isTTY === true },
  });
  if (!running.ok) {
    tellProblems(running.problems);
    process.exitCode = FAILED;
    return;
  }
  let stopping = false;
  const stop = async (): Promise<void> => {
    if (stopping) return;
    stopping = true;
    await running.value.stop();
    if (!options.json) print(speaker.say('server.stopped'));
    // The channel to the command line that started this would keep the process alive.
    process.disconnect?.();
  };
  for (const signal of ['SIGINT', 'SIGTERM'] as const) process.on(signal, () => void stop());
  process.on('disconnect', () => void stop());
}
