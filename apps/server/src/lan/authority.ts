import {
  createPrivateKey,
  createPublicKey,
  generateKeyPairSync,
  type KeyObject,
  randomBytes,
  X509Certificate,
} from 'node:crypto';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { bad, good, type Outcome } from '@loamwright/science';
import { keepPrivately } from '../private.ts';
import { namesOf, permittedFor, type Reach, shortName } from './addresses.ts';
import { authorityCertificate, serverCertificate } from './certificate.ts';

/** The private authority of one data folder: phones that trust it trust this server, and nothing else. */
export interface Authority {
  readonly certificate_pem: string;
  readonly certificate_der: Uint8Array;
  /** SHA-256 of the certificate as pairs of hex digits, as a phone shows it. */
  readonly fingerprint: string;
  /** What it is called in a phone's list of certificates. */
  readonly commonName: string;
  readonly expires: Date;
  readonly privateKey: KeyObject;
  readonly publicKey: KeyObject;
}

/** A server's certificate and its key, as TLS wants them. */
export interface Leaf {
  readonly cert: string;
  readonly key: string;
}

const NAME_PREFIX = 'Loamwright on ';
const DAY_MS = 86_400_000;
/** Phones keep trusting what a person installed until it ends; trusting anew is a chore, so ten years. */
const AUTHORITY_DAYS = 3653;
/** The strictest limit on record for a server's certificate is 398 days (for publicly trusted ones); phones ask 825 of others. */
const LEAF_DAYS = 397;
/** A phone's clock may run behind the computer's. */
const BACKDATED_DAYS = 2;

/** The data folder's authority: read, or made when there is none. Its key is readable by its owner only. */
export function openAuthority(folder: string, hostname: string, now: Date): Outcome<Authority> {
  const certificateFile = join(folder, 'authority.crt');
  const keyFile = join(folder, 'authority.key');
  if (!existsSync(certificateFile) && !existsSync(keyFile)) {
    const made = makeAuthority(hostname, now);
    keepPrivately(keyFile, made.key_pem);
    keepPrivately(certificateFile, made.certificate_pem);
  }
  return readAuthority(certificateFile, keyFile, now);
}

/** A certificate for where the computer can be reached now, signed by its authority. */
export function makeLeaf(authority: Authority, reach: Reach, now: Date): Leaf {
  const { publicKey, privateKey } = generateKeyPairSync('ec', { namedCurve: 'P-256' });
  const facts = {
    commonName: 'Loamwright',
    publicKey,
    serial: serial(),
    notBefore: daysFrom(now, -BACKDATED_DAYS),
    notAfter: daysFrom(now, LEAF_DAYS - BACKDATED_DAYS),
    names: namesOf(reach, authority.commonName.slice(NAME_PREFIX.length)),
  };
  return {
    cert: serverCertificate(facts, authority) + authority.certificate_pem,
    key: String(privateKey.export({ type: 'pkcs8', format: 'pem' })),
  };
}

function makeAuthority(hostname: string, now: Date): { certificate_pem: string; key_pem: string } {
  const { publicKey, privateKey } = generateKeyPairSync('ec', { namedCurve: 'P-256' });
  const facts = {
    commonName: NAME_PREFIX + shortName(hostname),
    publicKey,
    serial: serial(),
    notBefore: daysFrom(now, -BACKDATED_DAYS),
    notAfter: daysFrom(now, AUTHORITY_DAYS),
    permitted: permittedFor(hostname),
  };
  return {
    certificate_pem: authorityCertificate(facts, privateKey),
    key_pem: String(privateKey.export({ type: 'pkcs8', format: 'pem' })),
  };
}

function readAuthority(certificateFile: string, keyFile: string, now: Date): Outcome<Authority> {
  const broken = (found: string): Outcome<Authority> =>
    bad({ code: 'authority-broken', path: certificateFile, found, wanted: keyFile });
  try {
    const certificate = new X509Certificate(readFileSync(certificateFile));
    const privateKey = createPrivateKey(readFileSync(keyFile));
    if (!certificate.checkPrivateKey(privateKey)) return broken('a certificate and a key that do not belong together');
    const expires = new Date(certificate.validTo);
    if (expires <= now) return broken(`a certificate that ended on ${expires.toISOString().slice(0, 10)}`);
    return good({
      certificate_pem: certificate.toString(),
      certificate_der: certificate.raw,
      fingerprint: certificate.fingerprint256,
      commonName: certificate.subject.replace(/^CN=/u, ''),
      expires,
      privateKey,
      publicKey: createPublicKey(privateKey),
    });
  } catch (cause) {
    return broken(cause instanceof Error ? cause.message : String(cause));
  }
}

/** 127 random bits, never zero (RFC 5280 section 4.1.2.2). */
function serial(): Uint8Array {
  const bytes = randomBytes(16);
  bytes[0] = ((bytes[0] ?? 0) & 0x7f) | 0x40;
  return bytes;
}

function daysFrom(moment: Date, days: number): Date {
  return new Date(moment.getTime() + days * DAY_MS);
}
