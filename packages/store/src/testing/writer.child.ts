import { once } from 'node:events';
import { writeSync } from 'node:fs';
import { type Entry, type Keeping, seal } from '@loamwright/daybook';
import { openJsonlKeeping } from '../jsonl.ts';
import { openSqliteKeeping } from '../sqlite.ts';
import { draft } from './entries.ts';

/*
 * A process that writes entries of one device, and says so on its standard output once they are
 * kept: `ACK n sum`, one line for each entry. It begins when something comes on its standard input.
 * The tests kill it.
 *
 * Arguments: sqlite or jsonl, path, device, number of its first id.
 */
const [kind, path = '', device = '', firstId = '1'] = process.argv.slice(2);

const standardOutput = 1;
const tell = (entries: readonly Entry[]): void => {
  for (const { n, sum } of entries) writeSync(standardOutput, `ACK ${n} ${sum}\n`);
};

const keeping: Keeping = kind === 'sqlite' ? await openSqliteKeeping(path) : await openJsonlKeeping(path);
writeSync(standardOutput, 'READY\n');
await once(process.stdin, 'data');
process.stdin.destroy();

let id = Number(firstId);
for (let call = 0; ; call++) {
  const count = 1 + (call % 3);
  const drafts = Array.from({ length: count }, (_, i) =>
    draft(id + i, { device, body: { text: `note ${id + i}`, long: 'x'.repeat(call % 500) } }),
  );
  id += count;
  tell(await keeping.write(device, (tip) => seal(tip, drafts)));
}
