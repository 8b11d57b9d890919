import { KeepingError, type KeepingErrorCode } from '@loamwright/daybook';
import { describe, expect, it } from 'vitest';
import { askingOf, codeOf, exchange, json, report } from '../testing/daybook.ts';
import { type DaybookEvent, daybookRoutes, type Exchange } from './daybook.ts';

describe('the daybook', () => {
  it('is handed out as a file, and not kept by caches', async () => {
    const events: DaybookEvent[] = [];
    const response = await askingOf({}, events)('/api/daybook');
    expect(await response.text()).toBe('{"daybook":1}\n{"end":1}\n');
    expect(response.headers.get('content-type')).toBe('application/x-ndjson');
    expect(response.headers.get('cache-control')).toBe('no-store');
    expect(response.headers.get('content-disposition')).toContain('.jsonl');
    expect(events).toEqual([{ what: 'took', entries: 1 }]);
  });

  it.each<Record<string, string>>([{}, { origin: 'http://localhost:4380', 'sec-fetch-site': 'same-origin' }])(
    'takes a file in, and says what was new',
    async (headers) => {
      const response = await askingOf()('/api/daybook', {
        method: 'POST',
        body: '{}',
        headers: { ...json, ...headers },
      });
      expect(response.status).toBe(200);
      expect(await response.json()).toEqual({ ok: true, value: report });
    },
  );

  it.each(['text/plain', 'application/x-www-form-urlencoded', 'multipart/form-data; boundary=x', ''])(
    'takes nothing in that a form could send: %j',
    async (type) => {
      const response = await askingOf()('/api/daybook', {
        method: 'POST',
        body: '{}',
        headers: { 'content-type': type },
      });
      expect(response.status).toBe(415);
    },
  );

  it('that has not been begun is no content', async () => {
    const response = await askingOf({ exchange: { ...exchange, take: async () => null } })('/api/daybook');
    expect(response.status).toBe(204);
    expect(await response.text()).toBe('');
  });

  it.each([
    ['rubbish', 400, 'bundle-not-ours'],
    ['other', 409, 'bundle-other-holding'],
  ])('refuses %s, with the problems', async (body, status, problem) => {
    const response = await askingOf()('/api/daybook', { method: 'POST', body, headers: json });
    expect(response.status).toBe(status);
    expect(await codeOf(response)).toBe(problem);
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
      expect(await codeOf(response)).toBe('too-many-bytes');
    }
  });

  it.each<readonly [KeepingErrorCode, number]>([
    ['busy', 503],
    ['full', 507],
    ['other-holding', 409],
    ['damaged', 500],
  ])('that is %s is told as such', async (errorCode, status) => {
    const broken: Exchange = { ...exchange, bring: () => Promise.reject(new KeepingError(errorCode, 'because')) };
    const response = await askingOf({ exchange: broken })('/api/daybook', {
      method: 'POST',
      body: '{}',
      headers: json,
    });
    expect(response.status).toBe(status);
    expect(await codeOf(response)).toBe(errorCode);
  });

  it('has no other ways', async () => {
    const refused = await askingOf()('/api/daybook', { method: 'DELETE' });
    expect(refused.status).toBe(405);
    expect(refused.headers.get('allow')).toBe('GET, HEAD, POST');
    expect((await askingOf()('/api/daybook/1')).status).toBe(404);
    expect((await askingOf()('/api/else')).status).toBe(404);
  });
});
