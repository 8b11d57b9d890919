import { existsSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { bad, check, good, type Outcome } from '@loamwright/science';
import { z } from 'zod';

/** The computer that is exchanged with, as it is remembered in a data folder. */
export interface Partner {
  /** `https://…` with its port, without a path; plain `http://` only for this computer. */
  readonly origin: string;
  /** The key to its daybook, where it asks for one. */
  readonly key?: string | undefined;
  /** Its own authority, PEM, once its fingerprint was compared; without it, those that this computer trusts. */
  readonly authority?: string | undefined;
}

const partnerSchema: z.ZodType<Partner> = z.strictObject({
  origin: z.string(),
  key: z.string().optional(),
  authority: z.string().optional(),
});

/** Null when none was exchanged with. Problems: `partner-broken`. */
export function readPartner(file: string): Outcome<Partner | null> {
  if (!existsSync(file)) return good(null);
  try {
    const checked = check(partnerSchema, JSON.parse(readFileSync(file, 'utf8')));
    if (checked.ok) return checked;
  } catch {
    // Told below, as what parses and is none.
  }
  return bad({ code: 'partner-broken', path: file, found: '', wanted: '' });
}

/** Remembers it, readable by its owner alone: it holds the key. Problems: `folder-unusable`. */
export function writePartner(file: string, partner: Partner): Outcome<Partner> {
  try {
    writeFileSync(`${file}.new`, `${JSON.stringify(partner, null, 2)}\n`, { mode: 0o600, flush: true });
    renameSync(`${file}.new`, file);
    return good(partner);
  } catch (error) {
    const found = error instanceof Error ? error.message : String(error);
    return bad({ code: 'folder-unusable', path: file, found, wanted: '' });
  }
}

const loopback: readonly string[] = ['localhost', '127.0.0.1', '[::1]'];

/**
 * Reads an address as it was printed or scanned; a scanned one carries the key behind its `#`.
 * Problems: `address-wrong`, `address-open` for plain HTTP over a network.
 */
export function readAddress(typed: string): Outcome<Pick<Partner, 'origin' | 'key'>> {
  const address = URL.canParse(typed) ? new URL(typed) : null;
  if (address === null || !['http:', 'https:'].includes(address.protocol))
    return bad({ code: 'address-wrong', path: 'address', found: typed.slice(0, 100), wanted: '' });
  if (address.protocol === 'http:' && !loopback.includes(address.hostname))
    return bad({ code: 'address-open', path: 'address', found: address.origin, wanted: `https://${address.host}` });
  const key = /^#key=([\w-]{1,200})$/u.exec(address.hash)?.[1];
  return good({ origin: address.origin, ...(key === undefined ? {} : { key }) });
}
