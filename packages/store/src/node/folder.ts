import { closeSync, fsyncSync, openSync } from 'node:fs';

/**
 * Makes the names in a folder durable: a new file could otherwise be lost with a power cut although
 * its content was not. Windows can't open folders and keeps names in its journal by itself.
 */
export function syncFolder(folder: string): void {
  if (process.platform === 'win32') return;
  const handle = openSync(folder, 'r');
  try {
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
}
