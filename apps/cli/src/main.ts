import { fileURLToPath } from 'node:url';
import { v7 as newId } from 'uuid';
import { runProgram } from './program.ts';
import { processTerminal } from './terminal.ts';

process.exitCode = await runProgram(process.argv.slice(2), {
  environment: process.env,
  platform: process.platform,
  terminal: processTerminal(process.env),
  now: () => new Date(),
  zone: Intl.DateTimeFormat().resolvedOptions().timeZone,
  newId,
  // Beside both the source and the built file: apps/cli/{src,dist} and apps/server/dist.
  serverFile: fileURLToPath(new URL('../../server/dist/server.mjs', import.meta.url)),
});
