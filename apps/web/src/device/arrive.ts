import { rememberKey } from '../keep/server.ts';

const keyInAddress = /^#key=([\w-]{1,200})$/u;

/** A scanned code carries the key to the server's daybook in the address: it is remembered, and leaves the address. */
export function takeKeyFromAddress(): void {
  const key = keyInAddress.exec(location.hash)?.[1];
  if (key === undefined) return;
  rememberKey(key);
  history.replaceState(null, '', '#/');
}
