import type { NetworkInterfaceInfo } from 'node:os';
import type { SubjectName, Subtree } from './certificate.ts';

/** Where this computer can be reached on its own network. */
export interface Reach {
  /** Private IPv4 addresses, the likeliest for a phone first. */
  readonly addresses: readonly string[];
  /** Names, `NAME.local` first. */
  readonly names: readonly string[];
}

/**
 * Networks that no address of the public internet lies in. A computer whose only address is public gets none:
 * it must not be reached from there.
 *
 * Sources: 10/8, 172.16/12, 192.168/16: RFC 1918 section 3; 100.64/10 (shared by carriers and private overlays):
 * RFC 6598 section 7; 169.254/16 (given to itself): RFC 3927 section 2.1; 127/8: RFC 1122 section 3.2.1.3.
 */
const privateNetworks: readonly { readonly network: string; readonly bits: number }[] = [
  { network: '10.0.0.0', bits: 8 },
  { network: '172.16.0.0', bits: 12 },
  { network: '192.168.0.0', bits: 16 },
  { network: '100.64.0.0', bits: 10 },
  { network: '169.254.0.0', bits: 16 },
  { network: '127.0.0.0', bits: 8 },
];

/**
 * Names that the public DNS never gives out: `.local` (RFC 6762 section 3), `.internal` (reserved by ICANN in 2024),
 * `.home.arpa` (RFC 8375), and `.lan`, which routers use though nothing reserves it (common practice, no source).
 */
const privateNames: readonly string[] = ['local', 'internal', 'home.arpa', 'lan', 'localhost'];

/** Interfaces of virtual machines, containers and tunnels: a phone seldom reaches them, so they come last. */
const virtual = /^(?:docker|br-|veth|virbr|vmnet|vboxnet|tun|tap|utun|zt|wg|tailscale|bridge)/u;

/** A host as names are compared: case makes no difference (RFC 4343), nor does the root's dot at the end (RFC 1034 3.1). */
export function plainHost(host: string): string {
  return host.toLowerCase().replace(/\.$/u, '');
}

/** The first part of a computer's name, in the form DNS allows; `computer` when nothing is left of it. */
export function shortName(hostname: string): string {
  const [first = ''] = hostname.toLowerCase().split('.');
  const cleaned = first
    .replace(/[^a-z0-9-]+/gu, '-')
    .replace(/^-+|-+$/gu, '')
    .slice(0, 63);
  return cleaned === '' ? 'computer' : cleaned;
}

/** Where a computer of this name with these network interfaces can be reached. */
export function reachOf(
  hostname: string,
  interfaces: Readonly<Record<string, readonly NetworkInterfaceInfo[] | undefined>>,
): Reach {
  const found = Object.entries(interfaces).flatMap(([card, infos = []]) =>
    infos
      .filter(({ family, internal, address }) => family === 'IPv4' && !internal && isPrivate(address))
      .map(({ address }) => ({ address, last: virtual.test(card) || address.startsWith('169.254.') })),
  );
  const addresses = [...found.filter(({ last }) => !last), ...found.filter(({ last }) => last)];
  const name = shortName(hostname);
  return { addresses: [...new Set(addresses.map(({ address }) => address))], names: [`${name}.local`, name] };
}

/**
 * The names a leaf certificate vouches for: where the computer is reached, and itself. One name that its authority
 * does not permit would spoil the whole certificate, so a computer renamed since then goes without its bare name.
 */
export function namesOf(reach: Reach, nameThen: string): readonly SubjectName[] {
  return [
    ...reach.names.filter((name) => name.endsWith('.local') || name === nameThen).map((dns) => ({ dns })),
    { dns: 'localhost' },
    ...[...reach.addresses, '127.0.0.1'].map((address) => ({ ip: addressBytes(address) })),
  ];
}

/** What an authority made on a computer of this name may ever vouch for. */
export function permittedFor(hostname: string): readonly Subtree[] {
  return [
    ...[...privateNames, shortName(hostname)].map((dns) => ({ dns })),
    ...privateNetworks.map(({ network, bits }) => ({ ip: addressBytes(network), mask: maskBytes(bits) })),
  ];
}

/** Whether an IPv4 address lies in one of the private networks. */
export function isPrivate(address: string): boolean {
  const asked = addressBytes(address);
  return privateNetworks.some(({ network, bits }) => {
    const mask = maskBytes(bits);
    return addressBytes(network).every((byte, i) => byte === ((asked[i] ?? 0) & (mask[i] ?? 0)));
  });
}

function addressBytes(address: string): Uint8Array {
  return Uint8Array.from(address.split('.').map(Number));
}

function maskBytes(bits: number): Uint8Array {
  return Uint8Array.from([0, 8, 16, 24], (before) => 0xff << (8 - Math.min(8, Math.max(0, bits - before))));
}
