import { createHash, type KeyObject, sign } from 'node:crypto';
import { bits, der, integer, octets, oid, sequence, setOf, time, utf8, yes } from './der.ts';

/**
 * Certificates as RFC 5280 has them: version 3, ECDSA on P-256 with SHA-256. The section behind each part is
 * named beside it.
 */

/** A name or address that a certificate vouches for. */
export type SubjectName = { readonly dns: string } | { readonly ip: Uint8Array };

/** A family of names: everything under a DNS name, or an address with its mask. */
export type Subtree = { readonly dns: string } | { readonly ip: Uint8Array; readonly mask: Uint8Array };

interface Common {
  readonly commonName: string;
  readonly publicKey: KeyObject;
  readonly serial: Uint8Array;
  readonly notBefore: Date;
  readonly notAfter: Date;
}

/** What an authority's own certificate says. */
export interface AuthorityFacts extends Common {
  /** The only names it may ever vouch for. */
  readonly permitted: readonly Subtree[];
}

/** What a server's certificate says. */
export interface ServerFacts extends Common {
  readonly names: readonly SubjectName[];
}

/** Who signs. */
export interface Signer {
  readonly commonName: string;
  readonly publicKey: KeyObject;
  readonly privateKey: KeyObject;
}

const ECDSA_WITH_SHA256 = sequence(oid('1.2.840.10045.4.3.2'));
const COMMON_NAME = '2.5.4.3';
const SERVER_AUTH = '1.3.6.1.5.5.7.3.1';
/** Bits of KeyUsage, first bit highest (section 4.2.1.3). */
const DIGITAL_SIGNATURE = bits(Uint8Array.of(0b1000_0000), 7);
const CERT_AND_CRL_SIGN = bits(Uint8Array.of(0b0000_0110), 1);

/** An authority's certificate, signed by itself, as PEM. */
export function authorityCertificate(facts: AuthorityFacts, privateKey: KeyObject): string {
  const signer = { commonName: facts.commonName, publicKey: facts.publicKey, privateKey };
  return certificate(facts, signer, [
    // Section 4.2.1.9: an authority under which no other authority may stand.
    extension('2.5.29.19', true, sequence(yes(), integer(Uint8Array.of(0)))),
    extension('2.5.29.15', true, CERT_AND_CRL_SIGN),
    extension('2.5.29.14', false, octets(keyIdentifier(facts.publicKey))),
    extension('2.5.29.30', true, sequence(der(0xa0, ...facts.permitted.map(subtree)))),
  ]);
}

/** A server's certificate, signed by an authority, as PEM. */
export function serverCertificate(facts: ServerFacts, signer: Signer): string {
  return certificate(facts, signer, [
    extension('2.5.29.19', true, sequence()),
    extension('2.5.29.15', true, DIGITAL_SIGNATURE),
    extension('2.5.29.37', false, sequence(oid(SERVER_AUTH))),
    extension('2.5.29.14', false, octets(keyIdentifier(facts.publicKey))),
    extension('2.5.29.35', false, sequence(der(0x80, keyIdentifier(signer.publicKey)))),
    extension('2.5.29.17', false, sequence(...facts.names.map(generalName))),
  ]);
}

/** Section 4.1: what is signed, how, and the signature. */
function certificate(facts: Common, signer: Signer, extensions: readonly Uint8Array[]): string {
  const toBeSigned = sequence(
    der(0xa0, integer(Uint8Array.of(2))),
    integer(facts.serial),
    ECDSA_WITH_SHA256,
    distinguishedName(signer.commonName),
    sequence(time(facts.notBefore), time(facts.notAfter)),
    distinguishedName(facts.commonName),
    spki(facts.publicKey),
    der(0xa3, sequence(...extensions)),
  );
  const signature = sign('sha256', toBeSigned, { key: signer.privateKey, dsaEncoding: 'der' });
  const base64 = Buffer.from(sequence(toBeSigned, ECDSA_WITH_SHA256, bits(signature))).toString('base64');
  return `-----BEGIN CERTIFICATE-----\n${base64.replace(/(.{64})(?=.)/gu, '$1\n')}\n-----END CERTIFICATE-----\n`;
}

function extension(id: string, critical: boolean, value: Uint8Array): Uint8Array {
  return sequence(oid(id), ...(critical ? [yes()] : []), octets(value));
}

function distinguishedName(commonName: string): Uint8Array {
  return sequence(setOf(sequence(oid(COMMON_NAME), utf8(commonName))));
}

function spki(key: KeyObject): Uint8Array {
  return key.export({ type: 'spki', format: 'der' });
}

/** A P-256 public key ends in its point: 0x04 and two coordinates of 32 bytes. */
const POINT_BYTES = 65;

/** RFC 7093 section 2, method 1: the first 160 bits of SHA-256 over the public key's bits. */
function keyIdentifier(key: KeyObject): Uint8Array {
  const point = spki(key).subarray(-POINT_BYTES);
  return createHash('sha256').update(point).digest().subarray(0, 20);
}

/** Section 4.2.1.6: a DNS name is context tag 2, an address context tag 7. */
function generalName(name: SubjectName): Uint8Array {
  return 'dns' in name ? der(0x82, new TextEncoder().encode(name.dns)) : der(0x87, name.ip);
}

/** Section 4.2.1.10: an address of a constraint is followed by its mask. */
function subtree(tree: Subtree): Uint8Array {
  return sequence('dns' in tree ? generalName(tree) : der(0x87, tree.ip, tree.mask));
}
