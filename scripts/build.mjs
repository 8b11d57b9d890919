// Builds the app (a static folder), the server and the command line, where they are missing or stale.
import { ensureBuilt } from './lib/build.mjs';
import { prepare } from './lib/prepare.mjs';

await prepare(ensureBuilt);
