import { describe, expect, it } from 'vitest';
import type { DaybookEvent } from './http/daybook.ts';
import { askingOf, codeOf, json } from './testing/daybook.ts';

describe('every answer', () => {
  it.each(['/', '/api/about', '/api/daybook', '/nothing.png'])('keeps the page to itself: %s', async (path) => {
    const { headers } = await askingOf()(path);
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
        const response = await askingOf()(path, { headers: { host } });
        expect(response.status).toBe(421);
        expect(await codeOf(response)).toBe('wrong-host');
      }
    },
  );

  it.each(['localhost', 'LOCALHOST:9', 'localhost.', 'LocalHost.:4380', '127.0.0.1:4380', '192.168.1.20:4380'])(
    'is one who names this server: %s',
    async (host) => {
      expect((await askingOf()('/api/about', { headers: { host } })).status).toBe(200);
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
    const response = await askingOf({}, events)('/api/daybook', {
      method: 'POST',
      body: '{}',
      headers: { ...json, ...headers },
    });
    expect(response.status).toBe(403);
    expect(await codeOf(response)).toBe('other-origin');
    expect(events).toEqual([]);
  });
});
