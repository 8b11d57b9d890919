import { KeepingError } from '@loamwright/daybook';
import { describe, expect, it } from 'vitest';
import { answering, askingOf, codeOf, json, offer, report } from '../testing/daybook.ts';
import type { DaybookEvent } from './daybook.ts';
import { type Answering, exchangeRoutes } from './exchange.ts';

describe('an exchange by request and answer', () => {
  it('begins with what is held here, or with nothing', async () => {
    const response = await askingOf()('/api/exchange');
    expect(await response.json()).toEqual(offer);
    expect(response.headers.get('cache-control')).toBe('no-store');
    expect((await askingOf({ answering: { ...answering, offer: async () => null } })('/api/exchange')).status).toBe(
      204,
    );
  });

  it('answers a message line by line, first what was kept of it', async () => {
    const events: DaybookEvent[] = [];
    const body = JSON.stringify(offer);
    const response = await askingOf({}, events)('/api/exchange', { method: 'POST', body, headers: json });
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
    const response = await askingOf()('/api/exchange', { method: 'POST', body, headers: json });
    expect(response.status).toBe(status);
    expect(await codeOf(response)).toBe(problem);
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
    expect(await codeOf(response)).toBe('message-too-large');
  });

  it('is guarded as the daybook’s file is', async () => {
    const post = { method: 'POST', body: JSON.stringify(offer) };
    const foreign = { ...json, origin: 'https://evil.example' };
    expect((await askingOf()('/api/exchange', { ...post, headers: foreign })).status).toBe(403);
    expect((await askingOf()('/api/exchange', { ...post, headers: { 'content-type': 'text/plain' } })).status).toBe(
      415,
    );
    expect((await askingOf()('/api/exchange', { headers: { host: 'evil.example' } })).status).toBe(421);
    const full: Answering = { ...answering, answer: () => Promise.reject(new KeepingError('full', 'because')) };
    expect((await askingOf({ answering: full })('/api/exchange', { ...post, headers: json })).status).toBe(507);
  });
});
