import { keyToComputer } from './key.ts';
import { changeSettings } from './settings.ts';

const keyInAddress = /^#key=([\w-]{1,200})$/u;

/**
 * A scanned code carries the key to the computer's daybook in the address: it is remembered, and leaves the address.
 * Whoever scans it wants to exchange with that computer.
 */
export function takeKeyFromAddress(): void {
  const key = keyInAddress.exec(location.hash)?.[1];
  if (key === undefined) return;
  keyToComputer.set(key);
  changeSettings({ exchanges: 'by-itself' });
  history.replaceState(null, '', '#/');
}
