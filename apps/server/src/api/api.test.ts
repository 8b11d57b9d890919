import { catalogue } from '@loamwright/science';
import { createSpeaker } from '@loamwright/words';
import { Ajv2020, type ErrorObject } from 'ajv/dist/2020.js';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Reckoner } from '../reckon/crew.ts';
import officialSchema from '../testing/openapi-3.1.schema.json' with { type: 'json' };
import { asking, realReckoner, testKey, testLan, testServer } from '../testing/server.ts';
import { openApi } from './openapi.ts';
import { operations } from './operations.ts';

interface Document {
  readonly paths: Readonly<Record<string, Readonly<Record<string, { readonly operationId: string }>>>>;
}

const speaker = createSpeaker({ locale: 'en', system: 'metric' });
const authorization = `Bearer ${testKey}`;

/** Formats say how a text is to be read; what they refuse is no fault of structure. */
const ajv = (): Ajv2020 => new Ajv2020({ strict: false, allErrors: true, validateFormats: false });

let reckoner: Reckoner;
beforeAll(async () => {
  reckoner = await realReckoner();
});

describe.each([false, true])('the OpenAPI document, on the local network: %s', (isLan) => {
  const document = openApi({ version: '0.1.0', speaker, isLan }) as Document;
  const validator = ajv().addSchema(document, 'openapi', false, false);

  /** What the described schema of an answer finds wrong with it. */
  function faults(path: string, method: string, status: number, value: unknown): readonly ErrorObject[] {
    const at = ['paths', path, method, 'responses', String(status), 'content', 'application/json', 'schema'];
    const pointer = at.map((key) => encodeURIComponent(key.replaceAll('~', '~0').replaceAll('/', '~1'))).join('/');
    const validate = validator.compile({ $ref: `openapi#/${pointer}` });
    return validate(value) ? [] : (validate.errors ?? []);
  }

  it('is valid by the schema that the OpenAPI Initiative publishes', () => {
    const validate = ajv().compile(officialSchema);
    validate(document);
    expect(validate.errors ?? []).toEqual([]);
    expect(validate({ ...document, paths: { api: {} } })).toBe(false);
  });

  it('is what the server hands out', async () => {
    const ask = asking(testServer({ reckoner, lan: isLan ? testLan() : undefined }));
    expect(await (await ask('/api/openapi.json')).json()).toEqual(JSON.parse(JSON.stringify(document)));
  });

  it('describes every route that there is, and none that there is not', () => {
    const { routes } = testServer({ reckoner, lan: isLan ? testLan() : undefined });
    const there = routes.filter(({ method, path }) => method !== 'ALL' && path !== '*' && path !== '/*');
    const expanded = there.flatMap(({ method, path }) => {
      const paths = path.includes(':id') ? catalogue.map(({ id }) => path.replace(':id', id)) : [path];
      return paths.map((one) => `${method.toLowerCase()} ${one}`);
    });
    const described = Object.entries(document.paths).flatMap(([path, item]) =>
      Object.keys(item).map((method) => `${method} ${path}`),
    );
    expect([...described].sort()).toEqual([...new Set(expanded)].sort());
  });

  it('gives every operation a name of its own', () => {
    const ids = operations(speaker, isLan).map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it.each(catalogue)('describes what $id answers: its example, a bad input, and itself', async ({ id, example }) => {
    const ask = asking(testServer({ reckoner, lan: isLan ? testLan() : undefined }));
    const path = `/api/reckon/${id}`;
    const headers = { 'content-type': 'application/json', authorization };
    const good = await ask(path, { method: 'POST', body: JSON.stringify(example), headers });
    expect(good.status).toBe(200);
    const answer = await good.json();
    expect(faults(path, 'post', 200, answer)).toEqual([]);
    expect(faults(path, 'post', 200, { ...(answer as object), value: 'nothing' })).not.toEqual([]);
    const bad = await ask(path, { method: 'POST', body: '[]', headers });
    expect(bad.status).toBe(422);
    expect(faults(path, 'post', 422, await bad.json())).toEqual([]);
    expect(faults(path, 'get', 200, await (await ask(path)).json())).toEqual([]);
    const input = validator.compile({ $ref: `openapi#/components/schemas/${id}.input` });
    expect(input(example)).toBe(true);
  });

  it.each<readonly [string, RequestInit, number, string]>([
    ['/api/about', {}, 200, 'get'],
    ['/api/reckon', {}, 200, 'get'],
    ['/api/daybook', { method: 'POST', body: '{}', headers: { 'content-type': 'application/json' } }, 200, 'post'],
    ['/api/daybook', { method: 'POST', body: '{}', headers: { 'content-type': 'text/plain' } }, 415, 'post'],
    ['/api/exchange', { method: 'POST', body: '{}', headers: { origin: 'http://elsewhere' } }, 403, 'post'],
    ['/api/reckon', { method: 'DELETE' }, 405, 'get'],
    ['/api/about', { headers: { host: 'evil.example' } }, 421, 'get'],
  ])('describes %s %j as %i', async (path, init, status, method) => {
    const ask = asking(testServer({ reckoner, lan: isLan ? testLan() : undefined }));
    const response = await ask(path, { ...init, headers: { authorization, ...init.headers } });
    expect(response.status).toBe(status);
    expect(faults(path, method, status, await response.json())).toEqual([]);
  });
});

describe('the pages to read', () => {
  it('list every calculation, without a script', async () => {
    const ask = asking(testServer({ reckoner }));
    const response = await ask('/api');
    expect(response.headers.get('content-type')).toContain('text/html');
    const text = await response.text();
    expect(text).not.toContain('<script');
    for (const { id } of catalogue) expect(text).toContain(`href="/api/page/${id}"`);
  });

  it.each(catalogue)('show $id with its example worked, its fields, and a line for a terminal', async (calculation) => {
    const ask = asking(testServer({ reckoner }));
    const response = await ask(`/api/page/${calculation.id}`);
    expect(response.status).toBe(200);
    const text = await response.text();
    expect(text).not.toMatch(/<script|undefined|\[object/u);
    expect(text).toContain(`http://localhost:4380/api/reckon/${calculation.id}`);
    for (const name of Object.keys((calculation.inputSchema() as { properties: object }).properties)) {
      expect(text).toContain(`<code>${name}</code>`);
    }
    expect(text).not.toContain(speaker.say('api.page.notNow'));
  });

  it('work an example out once, however many ask at once', async () => {
    let worked = 0;
    const counting: Reckoner = {
      ...reckoner,
      reckon: (id, body) => {
        worked += 1;
        return reckoner.reckon(id, body);
      },
    };
    const ask = asking(testServer({ reckoner: counting }));
    const path = '/api/page/moisture-from-weights';
    const texts = await Promise.all([ask(path), ask(path), ask(path)].map(async (one) => (await one).text()));
    expect(new Set(texts).size).toBe(1);
    await ask(path);
    expect(worked).toBe(1);
  });

  it('are tried again when the thread fell over', async () => {
    let falls = true;
    const falling: Reckoner = {
      ...reckoner,
      reckon: (id, body) => (falls ? Promise.reject(new Error('fell over')) : reckoner.reckon(id, body)),
    };
    const ask = asking(testServer({ reckoner: falling }));
    const path = '/api/page/moisture-from-weights';
    expect((await ask(path)).status).toBe(500);
    falls = false;
    expect((await ask(path)).status).toBe(200);
  });

  it('say so when the computer has too much to do, and try again next time', async () => {
    let isBusy = true;
    const busy: Reckoner = { ...reckoner, reckon: async (id, body) => (isBusy ? 'busy' : reckoner.reckon(id, body)) };
    const ask = asking(testServer({ reckoner: busy }));
    const path = '/api/page/moisture-from-weights';
    expect(await (await ask(path)).text()).toContain(speaker.say('api.page.notNow'));
    isBusy = false;
    expect(await (await ask(path)).text()).not.toContain(speaker.say('api.page.notNow'));
  });

  it('are not there for what is no calculation', async () => {
    expect((await asking(testServer({ reckoner }))('/api/page/nothing')).status).toBe(404);
  });
});
