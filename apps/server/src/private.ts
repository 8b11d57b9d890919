import { chmodSync, mkdirSync, renameSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';

/** Writes a small file that only its owner can read: whole or not at all, its folder likewise closed to others. */
export function keepPrivately(file: string, content: string): void {
  const folder = dirname(file);
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  chmodSync(folder, 0o700);
  const draft = `${file}.new`;
  writeFileSync(draft, content, { mode: 0o600, flush: true });
  chmodSync(draft, 0o600);
  renameSync(draft, file);
}
