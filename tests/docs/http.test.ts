// Runs what docs/http.md shows: each line of curl, on a built server, with the answer below it.
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { root } from '../../scripts/lib/root.mjs';
import { type Served, serve } from '../browser/serve.ts';

const hasCurl = spawnSync('curl', ['--version']).status === 0;
const markdown = readFileSync(join(root, 'docs/http.md'), 'utf8');
const examples = [...markdown.matchAll(/```sh\n(curl .+)\n```\n\n```json\n(.+)\n```/gu)].map(
  ([, line = '', answer = '']) => ({
    line,
    answer,
  }),
);

let served: Served;
beforeAll(async () => {
  served = await serve();
});
afterAll(() => served.stop());

function shell(line: string): string {
  return spawnSync('sh', ['-c', line.replaceAll('http://localhost:4380', served.address)], { encoding: 'utf8' }).stdout;
}

describe.runIf(hasCurl)('docs/http.md', () => {
  it('shows two answers', () => expect(examples).toHaveLength(2));

  it.each(examples)('shows what is answered to $line', ({ line, answer }) => {
    expect(JSON.parse(shell(line))).toEqual(JSON.parse(answer));
  });

  it('leads to pages whose line for a terminal works as it stands', async () => {
    const page = await (await fetch(`${served.address}/api/page/reading-meaning`)).text();
    const line = /<pre>(curl .+?)<\/pre>/su.exec(page)?.[1] ?? '';
    const plain = line
      .replaceAll('&#39;', "'")
      .replaceAll('&quot;', '"')
      .replaceAll('&lt;', '<')
      .replaceAll('&gt;', '>')
      .replaceAll('&amp;', '&');
    expect(JSON.parse(shell(plain))).toMatchObject({ ok: true });
  });
});
