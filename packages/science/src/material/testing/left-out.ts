import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const readme = fileURLToPath(new URL('../../../../../reference/README.md', import.meta.url));

/** The keys of published rows that no material stands for, as `reference/README.md` names them. */
export function leftOutKeys(): readonly string[] {
  const text = readFileSync(readme, 'utf8');
  const section = /\n## Left out\n(.*?)(?:\n## |$)/s.exec(text)?.[1];
  if (section === undefined) throw new Error('reference/README.md has no section "Left out"');
  return [...section.matchAll(/`([a-z_]+)`/g)].map(([, key]) => key ?? '');
}
