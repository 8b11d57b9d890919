import { KeepingError, maxAttachment_bytes, sha256Hex } from '@loamwright/daybook';

/** The rejection of every call after `close` (rule K24). */
export function closedError(): KeepingError {
  return new KeepingError('closed', 'this daybook was closed: open it again to go on');
}

/**
 * Refuses bytes that are too many or don't have the hash they are handed in under (rule K18).
 * @throws KeepingError `too-large` or `wrong-hash`
 */
export function guardAttachment(hash: string, bytes: Uint8Array): void {
  if (bytes.length > maxAttachment_bytes)
    throw new KeepingError(
      'too-large',
      `the attachment has ${bytes.length} bytes; at most ${maxAttachment_bytes} are kept: scale the photo down`,
    );
  const found = sha256Hex(bytes);
  if (found !== hash)
    throw new KeepingError(
      'wrong-hash',
      `the bytes have the hash ${found}, not ${hash}: they were changed on their way`,
    );
}
