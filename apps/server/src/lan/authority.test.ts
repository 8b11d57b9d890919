import { generateKeyPairSync, randomBytes, X509Certificate } from 'node:crypto';
import { mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:https';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { checkServerIdentity, connect, type PeerCertificate } from 'node:tls';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { reachOf } from './addresses.ts';
import { type Authority, type Leaf, makeLeaf, openAuthority } from './authority.ts';
import { type SubjectName, serverCertificate } from './certificate.ts';

const DAY_MS = 86_400_000;
const now = new Date();

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'loamwright-lan-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

function open(hostname = 'shed-pc', at = now): Authority {
  const opened = openAuthority(folder, hostname, at);
  if (!opened.ok) throw new Error(JSON.stringify(opened.problems));
  return opened.value;
}

const reach = { addresses: ['192.168.1.20', '10.0.0.7'], names: ['shed-pc.local', 'shed-pc'] };

/** Serves with a leaf and lets OpenSSL, as Node uses it, judge the chain for a name: `undefined` when it trusts it. */
async function judged(leaf: Leaf, authority: Authority, name: string): Promise<string | undefined> {
  const server = createServer(leaf);
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as AddressInfo;
  try {
    return await new Promise((resolve) => {
      const socket = connect({
        host: '127.0.0.1',
        port,
        ca: authority.certificate_pem,
        checkServerIdentity: (_, certificate: PeerCertificate) => checkServerIdentity(name, certificate),
      });
      socket.once('secureConnect', () => resolve(undefined));
      // Node has no code of its own for a name constraint that is not met: OpenSSL's words say it.
      socket.once('error', (error: NodeJS.ErrnoException) =>
        resolve(error.code === 'UNSPECIFIED' ? error.message : error.code),
      );
      socket.once('close', () => socket.destroy());
    });
  } finally {
    server.closeAllConnections();
    server.close();
  }
}

/** A leaf as a thief of the authority's key might sign it. */
function stolenLeaf(authority: Authority, names: readonly SubjectName[]): Leaf {
  const { publicKey, privateKey } = generateKeyPairSync('ec', { namedCurve: 'P-256' });
  const facts = {
    commonName: 'x',
    publicKey,
    serial: randomBytes(8),
    notBefore: new Date(now.getTime() - DAY_MS),
    notAfter: new Date(now.getTime() + DAY_MS),
    names,
  };
  const key = String(privateKey.export({ type: 'pkcs8', format: 'pem' }));
  return { cert: serverCertificate(facts, authority), key };
}

describe('the authority', () => {
  it('is made once and then kept', () => {
    const first = open();
    expect(open().fingerprint).toBe(first.fingerprint);
    expect(first.fingerprint).toMatch(/^(?:[0-9A-F]{2}:){31}[0-9A-F]{2}$/u);
  });

  it('leaves its key to its owner alone', () => {
    open();
    expect(statSync(join(folder, 'authority.key')).mode & 0o777).toBe(0o600);
    expect(statSync(folder).mode & 0o777).toBe(0o700);
  });

  // RFC 5280 sections 4.1 and 4.2.1; read back by OpenSSL through Node's X509Certificate.
  it('is a certificate authority signed by itself, for ten years', () => {
    const certificate = new X509Certificate(open().certificate_pem);
    expect(certificate.ca).toBe(true);
    expect(certificate.subject).toBe('CN=Loamwright on shed-pc');
    expect(certificate.issuer).toBe(certificate.subject);
    expect(certificate.verify(certificate.publicKey)).toBe(true);
    const years = (Date.parse(certificate.validTo) - now.getTime()) / (365.25 * DAY_MS);
    expect(years).toBeGreaterThan(9.9);
    expect(years).toBeLessThan(10.1);
  });

  it('is refused when its key belongs to another, with what would do', () => {
    open();
    const { privateKey } = generateKeyPairSync('ec', { namedCurve: 'P-256' });
    writeFileSync(join(folder, 'authority.key'), String(privateKey.export({ type: 'pkcs8', format: 'pem' })));
    expect(openAuthority(folder, 'shed-pc', now)).toMatchObject({
      ok: false,
      problems: [{ code: 'authority-broken' }],
    });
  });

  it.each(['authority.key', 'authority.crt'])('is refused when %s is damaged or gone', (name) => {
    open();
    writeFileSync(join(folder, name), 'rubbish');
    expect(openAuthority(folder, 'shed-pc', now)).toMatchObject({
      ok: false,
      problems: [{ code: 'authority-broken' }],
    });
    rmSync(join(folder, name));
    expect(openAuthority(folder, 'shed-pc', now)).toMatchObject({
      ok: false,
      problems: [{ code: 'authority-broken' }],
    });
    expect(readFileSync(join(folder, name === 'authority.key' ? 'authority.crt' : 'authority.key'), 'utf8')).toContain(
      'BEGIN',
    );
  });

  it('is refused once it has ended', () => {
    open();
    const later = new Date(now.getTime() + 4000 * DAY_MS);
    expect(openAuthority(folder, 'shed-pc', later)).toMatchObject({
      ok: false,
      problems: [{ code: 'authority-broken' }],
    });
  });
});

describe('a leaf', () => {
  it('names where the computer is reached, for at most 397 days', () => {
    const leaf = new X509Certificate(makeLeaf(open(), reach, now).cert);
    expect(leaf.ca).toBe(false);
    expect(leaf.subjectAltName).toBe(
      'DNS:shed-pc.local, DNS:shed-pc, DNS:localhost, IP Address:192.168.1.20, IP Address:10.0.0.7, IP Address:127.0.0.1',
    );
    expect(leaf.keyUsage).toEqual(['1.3.6.1.5.5.7.3.1']);
    const days = (Date.parse(leaf.validTo) - Date.parse(leaf.validFrom)) / DAY_MS;
    expect(days).toBeLessThanOrEqual(397);
  });

  it.each(['192.168.1.20', 'shed-pc.local', 'shed-pc', 'localhost', '127.0.0.1'])('is trusted for %s', async (name) => {
    const authority = open();
    expect(await judged(makeLeaf(authority, reach, now), authority, name)).toBeUndefined();
  });

  it('is not trusted for an address it does not name', async () => {
    const authority = open();
    expect(await judged(makeLeaf(authority, reach, now), authority, '192.168.1.21')).toBe(
      'ERR_TLS_CERT_ALTNAME_INVALID',
    );
  });

  it('still holds after the computer was renamed', async () => {
    open();
    const renamed = open('greenhouse');
    const leaf = makeLeaf(renamed, reachOf('greenhouse', {}), now);
    expect(await judged(leaf, renamed, 'greenhouse.local')).toBeUndefined();
    expect(new X509Certificate(leaf.cert).subjectAltName).not.toContain('DNS:greenhouse,');
  });
});

describe('a stolen authority', () => {
  // RFC 5280 section 4.2.1.10, as OpenSSL enforces it.
  it.each<readonly [string, readonly SubjectName[]]>([
    ['a public name', [{ dns: 'bank.example' }]],
    ['a name under a public one', [{ dns: 'local.example.org' }]],
    ['a public address', [{ ip: Uint8Array.of(8, 8, 8, 8) }]],
    ['an address of version 6', [{ ip: new Uint8Array(16).fill(0x20) }]],
  ])('can’t vouch for %s', async (_, names) => {
    const authority = open();
    const [first] = names;
    const name = first !== undefined && 'dns' in first ? first.dns : '8.8.8.8';
    expect(await judged(stolenLeaf(authority, names), authority, name)).toBe('permitted subtree violation');
  });

  it('could vouch for a private address, which is what trusting it means', async () => {
    const authority = open();
    expect(await judged(stolenLeaf(authority, [{ dns: 'printer.local' }]), authority, 'printer.local')).toBeUndefined();
  });
});
