import { describe, expect, it } from 'vitest';
import type { LanParts } from '../app.ts';
import { page } from '../testing/built-app.ts';
import { askingOf, codeOf, json } from '../testing/daybook.ts';
import { testKey, testLan } from '../testing/server.ts';

describe('on the network', () => {
  const key = testKey;

  function lan(address = () => '192.168.1.30'): { readonly lan: LanParts } {
    return { lan: { ...testLan(), addressOf: address, origin: () => 'https://192.168.1.20:4380' } };
  }

  it('the daybook asks for the key, everything else does not', async () => {
    const ask = askingOf(lan());
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
    expect(await codeOf(refused)).toBe('key-needed');
    expect((await ask('/api/daybook', { headers: { authorization: `Bearer ${key}` } })).status).toBe(200);
    const post = { method: 'POST', body: '{}', headers: json };
    expect((await ask('/api/daybook', post)).status).toBe(401);
    expect((await ask('/api/daybook', { ...post, headers: { ...json, authorization: `Bearer ${key}` } })).status).toBe(
      200,
    );
  });

  it('ten wrong keys shut an address out, with the time to wait; another address is not', async () => {
    let address = '192.168.1.66';
    const ask = askingOf(lan(() => address));
    const wrong = { headers: { authorization: `Bearer ${'B'.repeat(22)}` } };
    for (let i = 0; i < 10; i++) expect(await codeOf(await ask('/api/daybook', wrong))).toBe('key-wrong');
    const refused = await ask('/api/daybook', { headers: { authorization: `Bearer ${key}` } });
    expect(refused.status).toBe(429);
    expect(refused.headers.get('retry-after')).toBe('600');
    address = '192.168.1.30';
    expect((await ask('/api/daybook', { headers: { authorization: `Bearer ${key}` } })).status).toBe(200);
  });

  it('a page explains trust without a script, and without the key', async () => {
    const parts = lan();
    const response = await askingOf(parts)('/trust');
    expect(response.headers.get('content-type')).toContain('text/html');
    const text = await response.text();
    expect(text).toContain(parts.lan.authority.fingerprint);
    expect(text).toContain('Loamwright on shed-pc');
    expect(text).toContain('<svg');
    expect(text).toContain('https://192.168.1.20:4380/trust');
    expect(text).not.toContain('<script');
    expect(text).not.toContain(key);
  });

  it('the certificate can be fetched, as a phone knows it', async () => {
    const parts = lan();
    const response = await askingOf(parts)('/trust/loamwright-ca.crt');
    expect(response.headers.get('content-type')).toBe('application/x-x509-ca-cert');
    const bytes = new Uint8Array(await response.arrayBuffer());
    expect(bytes).toEqual(new Uint8Array(parts.lan.authority.certificate_der));
  });

  it('there is no such page when only this computer is served', async () => {
    expect(await (await askingOf()('/trust')).text()).toBe(page);
    expect((await askingOf()('/trust/loamwright-ca.crt')).status).toBe(404);
  });
});
