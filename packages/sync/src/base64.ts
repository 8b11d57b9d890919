/*
 * Base64 as in RFC 4648 section 4: with padding, without line breaks. Written out here because the
 * core runs where neither Node's nor the browser's converter is at hand. Table by table, since a
 * photo has millions of letters.
 */

const alphabet = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/';
const noLetter = 64;

/** Two letters for every 12 bits. */
const pairs: readonly string[] = [...alphabet].flatMap((a) => [...alphabet].map((b) => a + b));

/** The six bits of each letter by its code; `noLetter` for every other code below 128. */
const valueByCode: Uint8Array = new Uint8Array(128).fill(noLetter);
for (const [value, letter] of [...alphabet].entries()) valueByCode[letter.charCodeAt(0)] = value;

/** How many letters so many bytes take. */
export function base64Length(size_bytes: number): number {
  return 4 * Math.ceil(size_bytes / 3);
}

export function toBase64(bytes: Uint8Array): string {
  const parts: string[] = [];
  const whole = bytes.length - (bytes.length % 3);
  // In pieces: one string that grows by millions of letters would be slow.
  for (let start = 0; start < whole; start += pieceBytes) {
    let text = '';
    for (let at = start; at < Math.min(whole, start + pieceBytes); at += 3) {
      const triple = ((bytes[at] ?? 0) << 16) | ((bytes[at + 1] ?? 0) << 8) | (bytes[at + 2] ?? 0);
      text += `${pairs[triple >> 12]}${pairs[triple & 0xfff]}`;
    }
    parts.push(text);
  }
  const [a, b] = bytes.subarray(whole);
  if (a !== undefined)
    parts.push(b === undefined ? `${pairs[a << 4]}==` : `${pairs[(a << 4) | (b >> 4)]}${alphabet[(b & 15) << 2]}=`);
  return parts.join('');
}

/** A multiple of 3. */
const pieceBytes = 3 * 1024;

/**
 * The bytes of a text, or null where it is no base64: another letter, a wrong length, or bits left
 * over that are not zero (RFC 4648 section 3.5), so that the same bytes have one text only.
 */
export function fromBase64(text: string): Uint8Array | null {
  if (text.length % 4 !== 0) return null;
  const padding = text.endsWith('==') ? 2 : text.endsWith('=') ? 1 : 0;
  const letters = text.length - padding;
  const bytes = new Uint8Array((text.length / 4) * 3 - padding);
  let bits = 0;
  let count = 0;
  let out = 0;
  for (let at = 0; at < letters; at++) {
    const value = valueByCode[text.charCodeAt(at)] ?? noLetter;
    if (value === noLetter) return null;
    bits = ((bits << 6) | value) & 0xfff;
    count += 6;
    if (count < 8) continue;
    count -= 8;
    bytes[out++] = bits >> count;
  }
  const leftOver = bits & ((1 << count) - 1);
  return leftOver === 0 ? bytes : null;
}
