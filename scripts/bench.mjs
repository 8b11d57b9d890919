// Runs every bench/*.bench.ts and shows what it prints. `npm run bench -- mix` runs those whose name contains "mix".
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { bundle } from './lib/bundle.mjs';
import { prepare } from './lib/prepare.mjs';
import { run } from './lib/process.mjs';
import { root } from './lib/root.mjs';

await prepare();

const ending = '.bench.ts';
const wanted = process.argv.slice(2);
const names = readdirSync(join(root, 'bench'))
  .filter((name) => name.endsWith(ending) && (wanted.length === 0 || wanted.some((text) => name.includes(text))))
  .sort();

if (names.length === 0) {
  process.stderr.write(`No bench/*${ending} ${wanted.length === 0 ? 'here' : `named like ${wanted.join(', ')}`}.\n`);
  process.exitCode = 1;
}
for (const name of names) {
  // Under node_modules, so that the packages a bundle leaves out are found.
  const outfile = join(root, 'node_modules/.cache/loamwright/bench', name.replace(/\.ts$/, '.mjs'));
  const isFine = (await bundle(join(root, 'bench', name), outfile)) && (await run(process.execPath, [outfile])) === 0;
  if (!isFine) process.exitCode = 1;
}
