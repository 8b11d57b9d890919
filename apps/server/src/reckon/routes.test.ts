import { catalogue } from '@loamwright/science';
import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { asking, realReckoner, testKey, testLan, testServer } from '../testing/server.ts';
import type { Reckoner } from './crew.ts';
import { MOST_INPUT_BYTES } from './routes.ts';

interface Told {
  readonly ok: boolean;
  readonly value?: unknown;
  readonly problems?: readonly { readonly code: string; readonly path: string; readonly words: string }[];
}

const json = { 'content-type': 'application/json' };

let reckoner: Reckoner;
let ask: ReturnType<typeof asking>;
beforeAll(async () => {
  reckoner = await realReckoner();
  ask = asking(testServer({ reckoner }));
});

function post(id: string, body: BodyInit, headers: Readonly<Record<string, string>> = json): Promise<Response> {
  return ask(`/api/reckon/${id}`, { method: 'POST', body, headers });
}

async function told(response: Response | Promise<Response>): Promise<Told> {
  return (await (await response).json()) as Told;
}

describe('the catalogue over HTTP', () => {
  it('is listed in short, with links that lead to each calculation', async () => {
    const { value } = await told(ask('/api/reckon'));
    const list = value as readonly { readonly id: string; readonly links: Readonly<Record<string, string>> }[];
    expect(list.map(({ id }) => id)).toEqual(catalogue.map(({ id }) => id));
    for (const { id, links } of list) {
      expect((await ask(links['calculation'] ?? '')).status).toBe(200);
      const [address = '', pointer = ''] = (links['input'] ?? '').split('#');
      const full = (await told(ask(address))) as unknown;
      const schema = pointer
        .split('/')
        .slice(1)
        .reduce((at, key) => (at as Record<string, unknown>)[key], full);
      expect(schema).toEqual(catalogue.find((one) => one.id === id)?.inputSchema());
    }
  });

  it.each(catalogue)('$id is told in full: schemas, sources spelt out, cautions in words', async (calculation) => {
    const { value } = await told(ask(`/api/reckon/${calculation.id}`));
    expect(value).toMatchObject({
      id: calculation.id,
      example: calculation.example,
      answer: calculation.outputSchema(),
      cautions: calculation.cautions.map((id) => ({ id, words: expect.stringMatching(/ /u) })),
      sources: calculation.sources.map((citation) => ({ ...citation, title: expect.any(String) })),
    });
  });

  it('names the nearest for one it does not know', async () => {
    for (const response of [await ask('/api/reckon/mix-balanse'), await post('mix-balanse', '{}')]) {
      expect(response.status).toBe(404);
      const { problems } = await told(response);
      expect(problems?.[0]).toMatchObject({ code: 'unknown-calculation', found: 'mix-balanse' });
      expect(problems?.[0]?.words).toContain('mix-balance');
    }
  });

  it.each(['__proto__', 'constructor', 'toString', '..%2f..%2fetc', '%00', '🐐'])(
    'has no calculation called %s',
    async (id) => {
      expect((await ask(`/api/reckon/${id}`)).status).toBe(404);
      expect((await post(id, '{}')).status).toBe(404);
    },
  );

  it.each<readonly [string, string, string]>([
    ['DELETE', '/api/reckon', 'GET, HEAD'],
    ['POST', '/api/reckon', 'GET, HEAD'],
    ['PUT', '/api/reckon/mix-balance', 'GET, HEAD, POST'],
    ['OPTIONS', '/api/reckon/mix-balance', 'GET, HEAD, POST'],
    ['POST', '/api/openapi.json', 'GET, HEAD'],
    ['PATCH', '/api', 'GET, HEAD'],
  ])('is not asked for by %s %s', async (method, path, allow) => {
    const response = await ask(path, { method });
    expect(response.status).toBe(405);
    expect(response.headers.get('allow')).toBe(allow);
    expect((await told(response)).problems?.[0]?.code).toBe('method-not-allowed');
  });
});

describe('a calculation over HTTP', () => {
  it.each<readonly [string, string, number, string]>([
    ['nothing', '', 400, 'not-json-text'],
    ['no JSON', 'straw', 400, 'not-json-text'],
    ['NaN', '{"temp_degC": NaN}', 400, 'not-json-text'],
    ['half of it', '{"temp_degC": 6', 400, 'not-json-text'],
    ['a list', '[]', 422, 'wrong-type'],
    ['null', 'null', 422, 'wrong-type'],
    ['an empty object', '{}', 422, 'missing'],
    ['text for a number', '{"temp_degC": "64"}', 422, 'wrong-type'],
    ['a number beyond numbers', '{"temp_degC": 1e999}', 422, 'wrong-type'],
    ['a key that reaches into objects', '{"temp_degC": 64, "__proto__": {"polluted": 1}}', 422, 'unknown-field'],
    ['a constructor', '{"temp_degC": 64, "constructor": {"prototype": {"polluted": 1}}}', 422, 'unknown-field'],
    ['a negative depth', '{"temp_degC": 64, "depth_m": -1}', 422, 'out-of-bounds'],
    ['an estimate out of order', '{"temp_degC": {"p10": 3, "p50": 2, "p90": 1}}', 422, 'out-of-bounds'],
    ['deep nesting', `${'['.repeat(100_000)}${']'.repeat(100_000)}`, 422, 'wrong-type'],
    ['deep nesting inside', `{"temp_degC": ${'{"a":'.repeat(50_000)}1${'}'.repeat(50_000)}}`, 422, 'unknown-field'],
  ])('refuses %s with what, where and what would do, in words too', async (_, body, status, code) => {
    const response = await post('reading-meaning', body);
    expect(response.status).toBe(status);
    expect(response.headers.get('content-language')).toBe('en');
    const { ok, problems } = await told(response);
    expect(ok).toBe(false);
    expect(problems?.map((problem) => problem.code)).toContain(code);
    for (const { words } of problems ?? []) expect(words).toMatch(/^\S.+\.$/su);
    expect(({} as Record<string, unknown>)['polluted']).toBeUndefined();
  });

  it.each([
    ['carbonToNitrogen_ratio', 1e9],
    ['nitrogen_pctDry', 60],
    ['densityLoose_kgPerM3AsIs', 50_000],
  ])('refuses a %s of %d as a figure of somebody’s own stuff', async (property, figure) => {
    const ingredients = [{ material: 'straw', amount: { mass_kg: 10 }, described: { [property]: figure } }];
    const response = await post('mix-balance', JSON.stringify({ ingredients }));
    expect(response.status).toBe(422);
    const { problems } = await told(response);
    expect(problems).toMatchObject([{ code: 'out-of-bounds', path: `ingredients[0].described.${property}` }]);
  });

  it('refuses two hundred thousand strange fields with the first hundred', async () => {
    const strange = Object.fromEntries(Array.from({ length: 200_000 }, (_, i) => [`x${i}`, 1]));
    const response = await post('reading-meaning', JSON.stringify(strange));
    expect(response.status).toBe(422);
    expect((await told(response)).problems).toHaveLength(100);
  });

  it('refuses what is not UTF-8, and takes a mark at the beginning of what is', async () => {
    expect((await told(post('reading-meaning', new Uint8Array([0x7b, 0xff, 0x7d])))).problems?.[0]?.code).toBe(
      'not-text',
    );
    const example = JSON.stringify(catalogue[0]?.example);
    expect((await post(catalogue[0]?.id ?? '', `\uFEFF${example}`)).status).toBe(200);
  });

  it.each([
    'text/plain',
    'application/x-www-form-urlencoded',
    'multipart/form-data; boundary=x',
    'application/jsonp',
    '',
  ])('takes nothing that a form could send: %j', async (type) => {
    const response = await post('reading-meaning', '{}', { 'content-type': type });
    expect(response.status).toBe(415);
    expect((await told(response)).problems?.[0]?.code).toBe('wrong-media-type');
  });

  it('takes JSON that says its letters', async () => {
    const [first] = catalogue;
    const type = { 'content-type': 'Application/JSON; charset=utf-8' };
    expect((await post(first?.id ?? '', JSON.stringify(first?.example), type)).status).toBe(200);
  });

  it('refuses more than 4 MiB, told beforehand or not', async () => {
    const body = ' '.repeat(MOST_INPUT_BYTES + 1);
    const sized = await post('reading-meaning', body, { ...json, 'content-length': String(body.length) });
    const streamed = await ask('/api/reckon/reading-meaning', {
      method: 'POST',
      body: new Blob([body]).stream(),
      headers: json,
      duplex: 'half',
    } as RequestInit);
    for (const response of [sized, streamed]) {
      expect(response.status).toBe(413);
      expect((await told(response)).problems?.[0]?.code).toBe('too-many-bytes');
    }
  });

  it('never fails, whatever JSON it gets', async () => {
    await fc.assert(
      fc.asyncProperty(fc.constantFrom(...catalogue.map(({ id }) => id)), fc.json(), async (id, body) => {
        expect([200, 422]).toContain((await post(id, body)).status);
      }),
      { seed: 11, numRuns: 100 },
    );
  });

  it.each<readonly ['busy' | 'too-long' | 'failed', number, string]>([
    ['busy', 503, 'reckon-busy'],
    ['too-long', 503, 'reckon-too-long'],
    ['failed', 500, 'reckon-failed'],
  ])('that is %s is told as such', async (answer, status, code) => {
    const broken = asking(testServer({ reckoner: { reckon: async () => answer, stop: async () => undefined } }));
    const response = await broken('/api/reckon/mix-balance', { method: 'POST', body: '{}', headers: json });
    expect(response.status).toBe(status);
    expect((await told(response)).problems?.[0]?.code).toBe(code);
    expect(response.headers.get('retry-after')).toBe(answer === 'busy' ? '5' : null);
  });
});

describe('who may have a calculation run', () => {
  it.each<readonly [string, Record<string, string>, number]>([
    ['a page of another origin', { origin: 'https://evil.example' }, 403],
    ['what the browser calls cross-site', { 'sec-fetch-site': 'cross-site' }, 403],
    ['a page whose name was pointed here', { host: 'evil.example' }, 421],
  ])('is not %s', async (_, headers, status) => {
    expect((await post('mix-balance', '{}', { ...json, ...headers })).status).toBe(status);
  });

  it('is one with the key on the local network; the catalogue and its pages may be read by all', async () => {
    const lan = asking(testServer({ reckoner, lan: testLan() }));
    const request = { method: 'POST', body: JSON.stringify(catalogue[0]?.example) };
    const path = `/api/reckon/${catalogue[0]?.id ?? ''}`;
    expect((await lan(path, { ...request, headers: json })).status).toBe(401);
    const authorization = `Bearer ${testKey}`;
    expect((await lan(path, { ...request, headers: { ...json, authorization } })).status).toBe(200);
    for (const open of ['/api', '/api/openapi.json', '/api/reckon', path, path.replace('reckon', 'page')]) {
      expect((await lan(open)).status).toBe(200);
    }
  });
});
