// One catalogue, two ways to it: the command line and HTTP must say the same.
import { catalogue } from '@loamwright/science';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Garden, garden } from '../apps/cli/src/testing/garden.ts';
import { asking, realReckoner, testServer } from '../apps/server/src/testing/server.ts';

let home: Garden;
let ask: ReturnType<typeof asking>;
beforeAll(async () => {
  home = garden();
  ask = asking(testServer({ reckoner: await realReckoner() }));
});
afterAll(() => home.remove());

interface Told {
  readonly ok: boolean;
  readonly value?: unknown;
  readonly problems?: readonly Readonly<Record<string, unknown>>[];
}

async function overHttp(id: string, body: string): Promise<Told> {
  const headers = { 'content-type': 'application/json' };
  const told = (await (await ask(`/api/reckon/${id}`, { method: 'POST', body, headers })).json()) as Told;
  // HTTP tells a problem in words beside the data; the command line tells it one way or the other.
  const problems = told.problems?.map(({ words: _words, ...problem }) => problem);
  return problems === undefined ? told : { ...told, problems };
}

/** The example with something wrong in it, in ways that every input has. */
function spoilt(example: object): readonly object[] {
  const [first = ''] = Object.keys(example);
  return [{}, { ...example, strange: 1 }, { ...example, [first]: null }, { ...example, [first]: 'nonsense' }];
}

describe.each(catalogue)('$id', ({ id, example }) => {
  it('answers its example alike at the command line and over HTTP', async () => {
    const input = JSON.stringify(example);
    const told = await overHttp(id, input);
    expect(told.ok).toBe(true);
    expect(told).toEqual(await home.json(['reckon', id], { input }));
  });

  it('finds the same problems in both', async () => {
    for (const one of spoilt(example as object)) {
      const input = JSON.stringify(one);
      const told = await overHttp(id, input);
      expect(told).toEqual(await home.json(['reckon', id], { input }));
    }
  });
});
