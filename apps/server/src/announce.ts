import { stripVTControlCharacters } from 'node:util';
import type { Speaker } from '@loamwright/words';
import { beside, codeLines } from './lan/code.ts';
import type { LocalNetwork } from './lan/network.ts';

/** An `https` address of this server. */
export function lanOrigin(host: string, port: number): string {
  return `https://${host}:${port}`;
}

/** The address that phones are pointed to: the likeliest one, or the computer's name while there is none. */
export function phoneOrigin(network: LocalNetwork, port: number): string {
  return lanOrigin(network.reach.addresses[0] ?? network.reach.names[0] ?? 'localhost', port);
}

/** What a program that starts the server wants to know, for `--json`. */
export function announceFacts(network: LocalNetwork | undefined, address: string, port: number): object {
  if (network === undefined) return { address, port };
  const { reach, authority, key } = network;
  const addresses = [...reach.addresses, ...reach.names].map((host) => lanOrigin(host, port));
  return { address, port, addresses, trust: `${address}/trust`, fingerprint: authority.fingerprint, key };
}

/** What is printed when the local network is served. */
export function announceLan(
  speaker: Speaker,
  network: LocalNetwork,
  port: number,
  terminal: { readonly columns: number; readonly drawsCodes: boolean },
): readonly string[] {
  const { say } = speaker;
  const origin = phoneOrigin(network, port);
  const { addresses, names } = network.reach;
  const others = [...addresses.slice(1), ...names]
    .map((host) => lanOrigin(host, port))
    .filter((other) => other !== origin);
  return [
    say('server.at', { address: origin }),
    say('server.lan.also', { addresses: others.join(', ') }),
    ...(addresses.length === 0 ? [say('server.lan.none')] : []),
    '',
    say('server.lan.trustFirst', { address: `${origin}/trust` }),
    say('server.lan.open'),
    say('server.lan.key', { key: network.key }),
    say('server.lan.fingerprint'),
    network.authority.fingerprint,
    ...(terminal.drawsCodes
      ? ['', ...codes(`${origin}/trust`, `${origin}/#key=${network.key}`, terminal.columns)]
      : []),
    '',
    say('server.lan.keepPort'),
  ];
}

function codes(trust: string, open: string, columns: number): readonly string[] {
  const [left, right] = [codeLines(trust), codeLines(open)];
  const [leftWidth, rightWidth] = [width(left), width(right)];
  const gap = '  ';
  if (leftWidth + gap.length + rightWidth > columns) return [...left, '', ...right];
  return beside(left, right, gap, leftWidth);
}

/** How many columns a code takes: its colour codes take none. */
function width(lines: readonly string[]): number {
  const [first = ''] = lines;
  return stripVTControlCharacters(first).length;
}
