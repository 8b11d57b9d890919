// Serves the app on this machine: installs and builds what is missing, then runs `loamwright start`.
// Reads HOST, PORT and LOAMWRIGHT_DATA; `npm start -- --lan` and other options are passed on.
import { cliPath, ensureBuilt } from './lib/build.mjs';
import { prepare } from './lib/prepare.mjs';
import { run } from './lib/process.mjs';

await prepare(ensureBuilt);
process.exitCode = await run(process.execPath, [cliPath, 'start', ...process.argv.slice(2)]);
