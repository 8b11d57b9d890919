import type { About, Attachment, Holding } from '@loamwright/daybook';
import { attachmentsOf, type Entry } from '@loamwright/daybook';
import type { ToWrite } from '../keep/book.ts';
import type { Happened } from '../keep/time.ts';

/** A picture that is about to be kept, and what it shows in the person's words. */
export interface NewPhoto extends Attachment {
  readonly caption: string;
}

/** What a line says it is about when it belongs to another line. */
const LINE = 'entry';

interface Of {
  /** Id of the line that the pictures belong to. */
  readonly entry: string;
  readonly about: readonly About[];
  readonly happened: Happened;
}

/** The lines that keep pictures beside another line. A picture that was taken away before comes back. */
export function photoThings(photos: readonly NewPhoto[], of: Of, holding: Holding): readonly ToWrite[] {
  const about = [...of.about.filter(({ type }) => type !== LINE), { type: LINE, id: of.entry }];
  return photos.flatMap(({ hash, mediaType, caption }): readonly ToWrite[] => [
    ...removalsOf(hash, holding).map(
      (removal): ToWrite => ({
        kind: 'withdrawal',
        about: removal.about,
        happened: of.happened,
        body: {},
        withdraws: removal.id,
      }),
    ),
    {
      kind: 'photo',
      about,
      happened: of.happened,
      body: { attachment: hash, mediaType, ...(caption.trim() === '' ? {} : { caption: caption.trim() }) },
    },
  ]);
}

function removalsOf(hash: string, { inForce }: Holding): readonly Entry[] {
  return inForce.filter(({ kind, body }) => kind === 'attachment-removed' && body['attachment'] === hash);
}

/** A picture that a line shows. */
export interface Shown {
  /** The line that keeps it. */
  readonly entry: string;
  readonly hash: string;
  readonly caption: string | undefined;
  /** The keeper has let it go: its line stays, its bytes do not. */
  readonly removed: boolean;
}

/** Every picture in force by the id of its own line, and by that of the line it belongs to. */
export function picturesIn(entries: readonly Entry[], holding: Holding): ReadonlyMap<string, readonly Shown[]> {
  const byLine = new Map<string, Shown[]>();
  if (holding.photos.length === 0) return byLine;
  const removed = new Set(attachmentsOf(entries).removed);
  for (const { entry, body } of holding.photos) {
    const shown = {
      entry: entry.id,
      hash: body.attachment,
      caption: body.caption,
      removed: removed.has(body.attachment),
    };
    for (const line of [entry.id, ...entry.about.flatMap(({ type, id }) => (type === LINE ? [id] : []))])
      byLine.set(line, [...(byLine.get(line) ?? []), shown]);
  }
  return byLine;
}
