import { attachmentsOf, type Keeping } from '@loamwright/daybook';

/**
 * Lets go of the bytes of every attachment that an entry in force has removed (rule X13), as when the keeper took a
 * photo away on another device. The entries stay. Gives back how many were let go.
 * @throws KeepingError as the keeping does
 */
export async function letGoOfRemoved(keeping: Pick<Keeping, 'read' | 'attachments' | 'detach'>): Promise<number> {
  const here = await keeping.attachments();
  if (here.length === 0) return 0;
  const removed = new Set(attachmentsOf((await keeping.read()).entries).removed);
  const going = here.filter(({ hash }) => removed.has(hash));
  for (const { hash } of going) await keeping.detach(hash);
  return going.length;
}
