/**
 * What is not as it should be in a folder of generated pages.
 * @param {ReadonlyMap<string, string>} wanted the pages by name
 * @param {ReadonlyMap<string, string>} found
 * @returns {readonly { name: string, what: 'missing' | 'stale' | 'orphaned' }[]}
 */
export function differences(wanted, found) {
  /** @type {{ name: string, what: 'missing' | 'stale' | 'orphaned' }[]} */
  const all = [];
  for (const [name, page] of wanted) {
    const there = found.get(name);
    if (there === undefined) all.push({ name, what: 'missing' });
    else if (there !== page) all.push({ name, what: 'stale' });
  }
  for (const name of found.keys()) if (!wanted.has(name)) all.push({ name, what: 'orphaned' });
  return all;
}
