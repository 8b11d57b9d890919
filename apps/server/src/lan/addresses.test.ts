import type { NetworkInterfaceInfo } from 'node:os';
import { describe, expect, it } from 'vitest';
import { isPrivate, reachOf, shortName } from './addresses.ts';

function card(address: string, family: 'IPv4' | 'IPv6' = 'IPv4', internal = false): NetworkInterfaceInfo {
  const rest = { address, netmask: '', mac: '', cidr: null, internal };
  return family === 'IPv4' ? { ...rest, family } : { ...rest, family, scopeid: 0 };
}

describe('the addresses of a computer', () => {
  it('are its private ones, those of containers and tunnels last', () => {
    const reach = reachOf('Shed-PC.example.org', {
      lo: [card('127.0.0.1', 'IPv4', true)],
      docker0: [card('172.17.0.1')],
      eth0: [card('fe80::1', 'IPv6'), card('203.0.113.9')],
      wlan0: [card('192.168.1.20')],
    });
    expect(reach).toEqual({ addresses: ['192.168.1.20', '172.17.0.1'], names: ['shed-pc.local', 'shed-pc'] });
  });

  // RFC 1918 section 3, RFC 6598 section 7, RFC 3927 section 2.1, RFC 1122 section 3.2.1.3: first and last of each block.
  it.each([
    ['10.0.0.0', true],
    ['10.255.255.255', true],
    ['11.0.0.0', false],
    ['172.15.255.255', false],
    ['172.16.0.0', true],
    ['172.31.255.255', true],
    ['172.32.0.0', false],
    ['192.168.0.0', true],
    ['192.168.255.255', true],
    ['192.169.0.0', false],
    ['100.63.255.255', false],
    ['100.64.0.0', true],
    ['100.127.255.255', true],
    ['100.128.0.0', false],
    ['169.254.1.1', true],
    ['127.255.255.255', true],
    ['8.8.8.8', false],
  ])('%s is private: %s', (address, expected) => {
    expect(isPrivate(address)).toBe(expected);
  });

  it.each([
    ['Grannys Läptop', 'grannys-l-ptop'],
    ['-..-', 'computer'],
    ['', 'computer'],
    ['PC.local', 'pc'],
  ])('the name %j becomes %j', (hostname, expected) => {
    expect(shortName(hostname)).toBe(expected);
  });
});
