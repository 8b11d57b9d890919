import type { Meant } from '@loamwright/science';

/** What a name surely or maybe means and is not offered, because it is there already. */
export function alreadyThere(said: Meant | null, without: readonly string[]): readonly string[] {
  if (said?.is === 'material') return without.includes(said.id) ? [said.id] : [];
  return said?.is === 'which' ? said.ids.filter((id) => without.includes(id)) : [];
}
