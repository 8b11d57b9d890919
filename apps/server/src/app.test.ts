import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { brotliDecompressSync } from 'node:zlib';
import { type ExchangeMessage, KeepingError, type KeepingErrorCode } from '@loamwright/daybook';
import { bad, good } from '@loamwright/science';
import type { AnswerLine } from '@loamwright/sync';
import { createSpeaker } from '@loamwright/words';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { createApp, type Parts } from './app.ts';
import { type DaybookEvent, daybookRoutes, type Exchange } from './http/daybook.ts';
import { type Answering, exchangeRoutes } from './http/exchange.ts';
import { readFiles, type ServedFiles } from './http/files.ts';
import { openAuthority } from './lan/authority.ts';
import { countAttempts } from './lan/key.ts';

const speaker = createSpeaker({ locale: 'en', system: 'metric' });
const page = '<!doctype html><title>Loamwright</title>';

let folder = '';
let files: ServedFiles = new Map();
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'loamwright-app-'));
  const web = join(folder, 'web');
  mkdirSync(join(web, 'assets'), { recursive: true });
  mkdirSync(join(web, '.vite'));
  writeFileSync(join(web, 'index.html'), page);
  writeFileSync(join(web, 'sw.js'), 'self.x = 1');
  writeFileSync(join(web, 'manifest.webmanifest'), '{}');
  writeFileSync(join(web, 'assets', 'index-abc123.js'), 'export {}');
  writeFileSync(join(web, 'assets', 'face-abc123.woff2'), 'font');
  writeFileSync(join(web, '.vite', 'manifest.json'), '{"secret":1}');
  writeFileSync(join(folder, 'outside.html'), 'outside');
  files = readFiles(web);
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const report = { kept: 2, there: 1, conflicts: [], attached: 0, problems: [] };

async function* lines(): AsyncGenerator<string> {
  yield '{"daybook":1}\n';
  yield '{"end":1}\n';
}

const exchange: Exchange = {
  take: async () => ({ lines: lines(), entries: 1 }),
  bring: async (text) => {
    if (text === '{}') return good(report);
    return bad({
      code: text === 'other' ? 'bundle-other-holding' : 'bundle-not-ours',
      path: '',
      found: '',
      wanted: '',
    });
  },
};

const offer: ExchangeMessage = { type: 'offer', v: 1, holding: 'quarry-lane', held: [], conflicts: [] };

async function* answerLines(): AsyncGenerator<AnswerLine> {
  yield { type: 'took', v: 1, ...report };
  yield offer;
}

async function* noMessages(): AsyncGenerator<ExchangeMessage> {}

const answering: Answering = {
  offer: async () => offer,
  answer: async (message) => {
    const { type } = message as { readonly type?: string };
    if (type === 'offer') return good({ ...report, send: noMessages(), lines: answerLines() });
    return bad({
      code: type === 'other' ? 'exchange-other-holding' : 'exchange-no-message',
      path: '',
      found: '',
      wanted: '',
    });
  },
};

function app(parts: Partial<Parts> = {}, events: DaybookEvent[] = []) {
  const served = createApp({
    version: '0.1.0',
    speaker,
    files,
    exchange,
    answering,
    reckoner: { reckon: async () => 'failed', stop: async () => undefined },
    demo: false,
    hosts: () => ['localhost', '127.0.0.1', '192.168.1.20'],
    log: (event) => events.push(event),
    ...parts,
  });
  return (path: string, init: RequestInit = {}) =>
    served.request(`http://localhost:4380${path}`, { ...init, headers: { host: 'localhost:4380', ...init.headers } });
}

const json = { 'content-type': 'application/json' };

async function code(response: Response): Promise<string | undefined> {
  const { problems } = (await response.json()) as { readonly problems: readonly { readonly code: string }[] };
  return problems[0]?.code;
}

describe('the app’s files', () => {
  it.each(['/', '/index.html', '/sw.js', '/manifest.webmanifest'])(
    '%s is asked for anew each time, cheaply',
    async (path) => {
      const first = await app()(path);
      expect(first.status).toBe(200);
      expect(first.headers.get('cache-control')).toBe('no-cache');
      const etag = first.headers.get('etag') ?? '';
      const second = await app()(path, { headers: { 'if-none-match': etag } });
      expect(second.status).toBe(304);
      expect(await second.text()).toBe('');
    },
  );

  it('with a hash in their names are kept for ever', async () => {
    const response = await app()('/assets/index-abc123.js');
    expect(response.headers.get('cache-control')).toBe('public, max-age=31536000, immutable');
    expect(response.headers.get('content-type')).toBe('text/javascript; charset=utf-8');
  });

  it('go compressed to those who can read it, unless they are so already', async () => {
    const response = await app()('/', { headers: { 'accept-encoding': 'gzip, br' } });
    expect(response.headers.get('content-encoding')).toBe('br');
    expect(brotliDecompressSync(Buffer.from(await response.arrayBuffer())).toString()).toBe(page);
    const font = await app()('/assets/face-abc123.woff2', { headers: { 'accept-encoding': 'br' } });
    expect(font.headers.get('content-encoding')).toBeNull();
  });

  it('answer for every page of the app, but not for a file that is not there', async () => {
    expect(await (await app()('/heaps/one')).text()).toBe(page);
    expect((await app()('/assets/gone-000.js')).status).toBe(404);
    expect((await app()('/favicon.ico')).status).toBe(404);
  });

  it.each([
    '/../outside.html',
    '/%2e%2e/outside.html',
    '/..%2foutside.html',
    '/assets/../../outside.html',
    '/.vite/manifest.json',
  ])('are all that can be had: not %s', async (path) => {
    const response = await app()(path);
    expect(response.status).toBe(404);
    expect(await response.text()).not.toMatch(/outside<|secret/u);
  });

  it('are none when the app has not been built', async () => {
    expect((await app({ files: readFiles(join(folder, 'nowhere')) })('/')).status).toBe(404);
  });
});

describe('every answer', () => {
  it.each(['/', '/api/about', '/api/daybook', '/nothing.png'])('keeps the page to itself: %s', async (path) => {
    const { headers } = await app()(path);
    const policy = headers.get('content-security-policy') ?? '';
    expect(policy).toContain("script-src 'self' 'wasm-unsafe-eval';");
    expect(policy).toContain("frame-ancestors 'none'");
    expect(headers.get('x-content-type-options')).toBe('nosniff');
    expect(headers.get('referrer-policy')).toBe('no-referrer');
    expect(headers.get('cross-origin-resource-policy')).toBe('same-origin');
    expect(headers.get('access-control-allow-origin')).toBeNull();
  });
});

describe('who is answered', () => {
  it.each(['evil.example', 'evil.example:4380', 'localhost.evil.example', ''])(
    'is not a page whose name was pointed here: %j',
    async (host) => {
      for (const path of ['/', '/api/daybook', '/api/about']) {
        const response = await app()(path, { headers: { host } });
        expect(response.status).toBe(421);
        expect(await code(response)).toBe('wrong-host');
      }
    },
  );

  it.each(['localhost', 'LOCALHOST:9', 'localhost.', 'LocalHost.:4380', '127.0.0.1:4380', '192.168.1.20:4380'])(
    'is one who names this server: %s',
    async (host) => {
      expect((await app()('/api/about', { headers: { host } })).status).toBe(200);
    },
  );

  it.each<readonly [string, Record<string, string>]>([
    ['another origin', { origin: 'https://evil.example' }],
    ['another port', { origin: 'http://localhost:9999' }],
    ['a page without an origin', { origin: 'null' }],
    ['what the browser calls cross-site', { 'sec-fetch-site': 'cross-site' }],
    ['what the browser calls same-site', { origin: 'http://localhost:4380', 'sec-fetch-site': 'same-site' }],
  ])('may not change the daybook from %s', async (_, headers) => {
    const events: DaybookEvent[] = [];
    const response = await app({}, events)('/api/daybook', {
      method: 'POST',
      body: '{}',
      headers: { ...json, ...headers },
    });
    expect(response.status).toBe(403);
    expect(await code(response)).toBe('other-origin');
    expect(events).toEqual([]);
  });
});

describe('the daybook', () => {
  it('is handed out as a file, and not kept by caches', async () => {
    const events: DaybookEvent[] = [];
    const response = await app({}, events)('/api/daybook');
    expect(await response.text()).toBe('{"daybook":1}\n{"end":1}\n');
    expect(response.headers.get('content-type')).toBe('application/x-ndjson');
    expect(response.headers.get('cache-control')).toBe('no-store');
    expect(response.headers.get('content-disposition')).toContain('.jsonl');
    expect(events).toEqual([{ what: 'took', entries: 1 }]);
  });

  it.each<Record<string, string>>([{}, { origin: 'http://localhost:4380', 'sec-fetch-site': 'same-origin' }])(
    'takes a file in, and says what was new',
    async (headers) => {
      const response = await app()('/api/daybook', { method: 'POST', body: '{}', headers: { ...json, ...headers } });
      expect(response.status).toBe(200);
      expect(await response.json()).toEqual({ ok: true, value: report });
    },
  );

  it.each(['text/plain', 'application/x-www-form-urlencoded', 'multipart/form-data; boundary=x', ''])(
    'takes nothing in that a form could send: %j',
    async (type) => {
      const response = await app()('/api/daybook', { method: 'POST', body: '{}', headers: { 'content-type': type } });
      expect(response.status).toBe(415);
    },
  );

  it('that has not been begun is no content', async () => {
    const response = await app({ exchange: { ...exchange, take: async () => null } })('/api/daybook');
    expect(response.status).toBe(204);
    expect(await response.text()).toBe('');
  });

  it.each([
    ['rubbish', 400, 'bundle-not-ours'],
    ['other', 409, 'bundle-other-holding'],
  ])('refuses %s, with the problems', async (body, status, problem) => {
    const response = await app()('/api/daybook', { method: 'POST', body, headers: json });
    expect(response.status).toBe(status);
    expect(await code(response)).toBe(problem);
  });

  it('refuses more bytes than a daybook has', async () => {
    const routes = daybookRoutes(exchange, () => undefined, 1000);
    const body = 'x'.repeat(1001);
    const sized = await routes.request('/', { method: 'POST', body, headers: { ...json, 'content-length': '1001' } });
    const streamed = await routes.request('/', {
      method: 'POST',
      body: new Blob([body]).stream(),
      headers: json,
      duplex: 'half',
    } as RequestInit);
    for (const response of [sized, streamed]) {
      expect(response.status).toBe(413);
      expect(await code(response)).toBe('too-many-bytes');
    }
  });

  it.each<readonly [KeepingErrorCode, number]>([
    ['busy', 503],
    ['full', 507],
    ['other-holding', 409],
    ['damaged', 500],
  ])('that is %s is told as such', async (errorCode, status) => {
    const broken: Exchange = { ...exchange, bring: () => Promise.reject(new KeepingError(errorCode, 'because')) };
    const response = await app({ exchange: broken })('/api/daybook', { method: 'POST', body: '{}', headers: json });
    expect(response.status).toBe(status);
    expect(await code(response)).toBe(errorCode);
  });

  it('has no other ways', async () => {
    const refused = await app()('/api/daybook', { method: 'DELETE' });
    expect(refused.status).toBe(405);
    expect(refused.headers.get('allow')).toBe('GET, HEAD, POST');
    expect((await app()('/api/daybook/1')).status).toBe(404);
    expect((await app()('/api/else')).status).toBe(404);
  });
});

describe('an exchange by request and answer', () => {
  it('begins with what is held here, or with nothing', async () => {
    const response = await app()('/api/exchange');
    expect(await response.json()).toEqual(offer);
    expect(response.headers.get('cache-control')).toBe('no-store');
    expect((await app({ answering: { ...answering, offer: async () => null } })('/api/exchange')).status).toBe(204);
  });

  it('answers a message line by line, first what was kept of it', async () => {
    const events: DaybookEvent[] = [];
    const body = JSON.stringify(offer);
    const response = await app({}, events)('/api/exchange', { method: 'POST', body, headers: json });
    expect(response.headers.get('content-type')).toBe('application/x-ndjson');
    const lines = (await response.text()).trimEnd().split('\n');
    expect(lines.map((line) => JSON.parse(line))).toEqual([{ type: 'took', v: 1, ...report }, offer]);
    expect(events).toEqual([{ what: 'exchanged', kept: 2, attached: 0 }]);
  });

  it.each([
    ['{"type":"other"}', 409, 'exchange-other-holding'],
    ['{"type":"else"}', 400, 'exchange-no-message'],
    ['no JSON', 400, 'exchange-no-message'],
  ])('refuses %s with its problem', async (body, status, problem) => {
    const response = await app()('/api/exchange', { method: 'POST', body, headers: json });
    expect(response.status).toBe(status);
    expect(await code(response)).toBe(problem);
  });

  it('refuses more bytes than a message has, without reading them', async () => {
    const routes = exchangeRoutes(answering, () => undefined, 1000);
    const response = await routes.request('/', {
      method: 'POST',
      body: new Blob(['x'.repeat(1001)]).stream(),
      headers: json,
      duplex: 'half',
    } as RequestInit);
    expect(response.status).toBe(413);
    expect(await code(response)).toBe('message-too-large');
  });

  it('is guarded as the daybook’s file is', async () => {
    const post = { method: 'POST', body: JSON.stringify(offer) };
    const foreign = { ...json, origin: 'https://evil.example' };
    expect((await app()('/api/exchange', { ...post, headers: foreign })).status).toBe(403);
    expect((await app()('/api/exchange', { ...post, headers: { 'content-type': 'text/plain' } })).status).toBe(415);
    expect((await app()('/api/exchange', { headers: { host: 'evil.example' } })).status).toBe(421);
    const full: Answering = { ...answering, answer: () => Promise.reject(new KeepingError('full', 'because')) };
    expect((await app({ answering: full })('/api/exchange', { ...post, headers: json })).status).toBe(507);
  });
});

describe('on the network', () => {
  const key = 'A'.repeat(22);

  function lan(address = () => '192.168.1.30', now_ms = () => 0): Pick<Parts, 'lan'> {
    const opened = openAuthority(join(folder, 'lan'), 'shed-pc', new Date());
    if (!opened.ok) throw new Error('no authority');
    const attempts = countAttempts(now_ms);
    return {
      lan: { authority: opened.value, key, attempts, addressOf: address, origin: () => 'https://192.168.1.20:4380' },
    };
  }

  it('the daybook asks for the key, everything else does not', async () => {
    const ask = app(lan());
    expect(await (await ask('/api/about')).json()).toEqual({
      program: 'loamwright',
      version: '0.1.0',
      key: true,
      demo: false,
    });
    expect((await ask('/')).status).toBe(200);
    const refused = await ask('/api/daybook');
    expect(refused.status).toBe(401);
    expect((await ask('/api/exchange')).status).toBe(401);
    expect((await ask('/api/exchange', { method: 'POST', body: '{}', headers: json })).status).toBe(401);
    expect((await ask('/api/exchange', { headers: { authorization: `Bearer ${key}` } })).status).toBe(200);
    expect(refused.headers.get('www-authenticate')).toBe('Bearer');
    expect(await code(refused)).toBe('key-needed');
    expect((await ask('/api/daybook', { headers: { authorization: `Bearer ${key}` } })).status).toBe(200);
    const post = { method: 'POST', body: '{}', headers: json };
    expect((await ask('/api/daybook', post)).status).toBe(401);
    expect((await ask('/api/daybook', { ...post, headers: { ...json, authorization: `Bearer ${key}` } })).status).toBe(
      200,
    );
  });

  it('ten wrong keys shut an address out, with the time to wait; another address is not', async () => {
    let address = '192.168.1.66';
    const ask = app(lan(() => address));
    const wrong = { headers: { authorization: `Bearer ${'B'.repeat(22)}` } };
    for (let i = 0; i < 10; i++) expect(await code(await ask('/api/daybook', wrong))).toBe('key-wrong');
    const refused = await ask('/api/daybook', { headers: { authorization: `Bearer ${key}` } });
    expect(refused.status).toBe(429);
    expect(refused.headers.get('retry-after')).toBe('600');
    address = '192.168.1.30';
    expect((await ask('/api/daybook', { headers: { authorization: `Bearer ${key}` } })).status).toBe(200);
  });

  it('a page explains trust without a script, and without the key', async () => {
    const parts = lan();
    const response = await app(parts)('/trust');
    expect(response.headers.get('content-type')).toContain('text/html');
    const text = await response.text();
    expect(text).toContain(parts.lan?.authority.fingerprint ?? '?');
    expect(text).toContain('Loamwright on shed-pc');
    expect(text).toContain('<svg');
    expect(text).toContain('https://192.168.1.20:4380/trust');
    expect(text).not.toContain('<script');
    expect(text).not.toContain(key);
  });

  it('the certificate can be fetched, as a phone knows it', async () => {
    const parts = lan();
    const response = await app(parts)('/trust/loamwright-ca.crt');
    expect(response.headers.get('content-type')).toBe('application/x-x509-ca-cert');
    const bytes = new Uint8Array(await response.arrayBuffer());
    expect(bytes).toEqual(new Uint8Array(parts.lan?.authority.certificate_der ?? []));
  });

  it('there is no such page when only this computer is served', async () => {
    expect(await (await app()('/trust')).text()).toBe(page);
    expect((await app()('/trust/loamwright-ca.crt')).status).toBe(404);
  });
});
