/**
 * The few forms of DER (ITU-T X.690) that a certificate is made of. Only written, never read: what comes from
 * outside is read by Node's own `X509Certificate`.
 */

/** One tag, its length and its contents. */
export function der(tag: number, ...contents: readonly Uint8Array[]): Uint8Array {
  const body = concat(contents);
  return concat([Uint8Array.of(tag, ...lengthOf(body.length)), body]);
}

export function sequence(...items: readonly Uint8Array[]): Uint8Array {
  return der(0x30, ...items);
}

export function setOf(item: Uint8Array): Uint8Array {
  return der(0x31, item);
}

export function octets(bytes: Uint8Array): Uint8Array {
  return der(0x04, bytes);
}

/** A whole number of 0 or more, big-endian; leading zeros go, and one comes back where the top bit would read as a sign. */
export function integer(bytes: Uint8Array): Uint8Array {
  const first = bytes.findIndex((byte) => byte !== 0);
  const trimmed = first < 0 ? Uint8Array.of(0) : bytes.subarray(first);
  return der(0x02, (trimmed[0] ?? 0) >= 0x80 ? Uint8Array.of(0) : new Uint8Array(), trimmed);
}

/** Bits, the last `unused` of which are padding. */
export function bits(bytes: Uint8Array, unused = 0): Uint8Array {
  return der(0x03, Uint8Array.of(unused), bytes);
}

export function yes(): Uint8Array {
  return der(0x01, Uint8Array.of(0xff));
}

export function utf8(text: string): Uint8Array {
  return der(0x0c, new TextEncoder().encode(text));
}

/** An object identifier from its dotted form. */
export function oid(dotted: string): Uint8Array {
  const [first = 0, second = 0, ...rest] = dotted.split('.').map(Number);
  return der(0x06, Uint8Array.from([first * 40 + second, ...rest].flatMap(base128)));
}

/** A moment, to the second: UTCTime up to 2049, GeneralizedTime from 2050 on (RFC 5280 section 4.1.2.5). */
export function time(moment: Date): Uint8Array {
  const digits = `${moment.toISOString().slice(0, 19).replace(/[-T:]/gu, '')}Z`;
  const ascii = new TextEncoder().encode(moment.getUTCFullYear() < 2050 ? digits.slice(2) : digits);
  return der(moment.getUTCFullYear() < 2050 ? 0x17 : 0x18, ascii);
}

function base128(value: number): readonly number[] {
  const low = value & 0x7f;
  const groups = [low];
  for (let rest = Math.floor(value / 128); rest > 0; rest = Math.floor(rest / 128))
    groups.unshift((rest & 0x7f) | 0x80);
  return groups;
}

function lengthOf(length: number): readonly number[] {
  if (length < 0x80) return [length];
  const bytes: number[] = [];
  for (let rest = length; rest > 0; rest = Math.floor(rest / 256)) bytes.unshift(rest & 0xff);
  return [0x80 | bytes.length, ...bytes];
}

function concat(parts: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}
