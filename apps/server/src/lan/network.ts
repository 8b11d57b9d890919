import { existsSync, readFileSync } from 'node:fs';
import { hostname, networkInterfaces } from 'node:os';
import { join } from 'node:path';
import { good, type Outcome } from '@loamwright/science';
import { keepPrivately } from '../private.ts';
import { type Reach, reachOf } from './addresses.ts';
import { type Authority, type Leaf, makeLeaf, openAuthority } from './authority.ts';
import { openKey } from './key.ts';

/** What serving the local network takes, kept in the data folder's `lan` folder. */
export interface LocalNetwork {
  readonly authority: Authority;
  readonly key: string;
  /** Where the computer can be reached now. */
  readonly reach: Reach;
  readonly leaf: Leaf;
  /** Looks again; true when the addresses have changed or the certificate has grown old, and `leaf` is a new one. */
  renew(now: Date): boolean;
  /** The origin that phones opened last time, if it was another; remembers the present one. */
  remember(origin: string): string | undefined;
}

/** A leaf is signed anew well before its 397 days are over: a server may run for years. */
const LEAF_GROWS_OLD_MS = 300 * 86_400_000;

/** Opens the data folder's authority and key, making what is not there yet, and signs a certificate for today's addresses. */
export function openLocalNetwork(data: string, now: Date): Outcome<LocalNetwork> {
  const folder = join(data, 'lan');
  const authority = openAuthority(folder, hostname(), now);
  if (!authority.ok) return authority;
  const key = openKey(join(folder, 'key'));
  if (!key.ok) return key;
  let reach = reachOf(hostname(), networkInterfaces());
  let leaf = makeLeaf(authority.value, reach, now);
  let signed = now;
  return good({
    authority: authority.value,
    key: key.value,
    get reach() {
      return reach;
    },
    get leaf() {
      return leaf;
    },
    renew: (later) => {
      const next = reachOf(hostname(), networkInterfaces());
      const same = JSON.stringify(next) === JSON.stringify(reach);
      if (same && later.getTime() - signed.getTime() < LEAF_GROWS_OLD_MS) return false;
      reach = next;
      leaf = makeLeaf(authority.value, reach, later);
      signed = later;
      return true;
    },
    remember: (origin) => rememberOrigin(join(folder, 'origin'), origin),
  });
}

function rememberOrigin(file: string, origin: string): string | undefined {
  const before = existsSync(file) ? readFileSync(file, 'utf8').trim() : '';
  if (before === origin) return undefined;
  keepPrivately(file, `${origin}\n`);
  return before === '' ? undefined : before.slice(0, 200);
}
