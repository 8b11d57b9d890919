import type { Entry } from '@loamwright/daybook';
import { letGoOfRemoved } from '@loamwright/sync';
import { type ReactNode, useState } from 'react';
import { now } from '../../keep/time.ts';
import { useBook } from '../../keep/useBook.ts';
import { useWriting } from '../../keep/useWriting.ts';
import { AskFirst } from '../../parts/AskFirst.tsx';
import { Problem } from '../../parts/Problem.tsx';
import { AddPhotos } from '../../photo/AddPhotos.tsx';
import { Picture } from '../../photo/Picture.tsx';
import { type NewPhoto, photoThings, type Shown } from '../../photo/things.ts';
import { useSpeaker } from '../../shell/words.tsx';
import { usePictures } from './lines.ts';

interface Properties {
  readonly entry: Entry;
  readonly inForce: boolean;
}

/** The pictures of a line, whole, and the ways to add one and to take one away. */
export function EntryPictures({ entry, inForce }: Properties): ReactNode {
  const speaker = useSpeaker();
  const shown = usePictures().get(entry.id) ?? [];
  return (
    <>
      {shown.length > 0 && (
        <section className="section stack">
          <h2>{speaker.say('app.photo.of')}</h2>
          {shown.map((one) => (
            <figure key={one.entry}>
              <Picture shown={one} size="whole" />
              {one.caption !== undefined && <figcaption className="small">{one.caption}</figcaption>}
              {!one.removed && <LetGo shown={one} about={entry.about} />}
            </figure>
          ))}
        </section>
      )}
      {inForce && entry.kind !== 'photo' && entry.kind !== 'attachment-removed' && <AddTo entry={entry} />}
    </>
  );
}

/** Adds pictures to a line that was written before. */
function AddTo({ entry }: { readonly entry: Entry }): ReactNode {
  const speaker = useSpeaker();
  const { holding } = useBook().leaf;
  const { write, problem } = useWriting();
  const [photos, setPhotos] = useState<readonly NewPhoto[]>([]);
  const keep = async (): Promise<void> => {
    const happened = { instant: entry.happened, precision: entry.precision };
    const things = photoThings(photos, { entry: entry.id, about: entry.about, happened }, holding);
    if (await write(things, photos)) setPhotos([]);
  };
  return (
    <section className="section">
      <h2>{speaker.say('app.photo.add')}</h2>
      <AddPhotos photos={photos} onChange={setPhotos} />
      {photos.length > 0 && (
        <>
          <p className="small quiet">{speaker.say('app.photo.private')}</p>
          <button type="button" className="plain-act" onClick={() => void keep()}>
            {speaker.say('app.photo.keep')}
          </button>
        </>
      )}
      <Problem saying={problem} />
    </section>
  );
}

interface LetGoProperties {
  readonly shown: Shown;
  readonly about: Entry['about'];
}

/** Asks once before a picture goes: no device keeps it. */
function LetGo({ shown, about }: LetGoProperties): ReactNode {
  const speaker = useSpeaker();
  const { book } = useBook();
  const { write, problem } = useWriting();
  const letGo = async (): Promise<void> => {
    const written = await write([
      {
        kind: 'attachment-removed',
        about,
        happened: { instant: now(), precision: 'minute' },
        body: { attachment: shown.hash },
      },
    ]);
    // Where this fails, the next exchange or copy brought in does it: the line that says so is written.
    if (written) await book.change(letGoOfRemoved).catch(() => undefined);
  };
  return (
    <>
      <AskFirst
        act={speaker.say('app.photo.letGo')}
        ask={speaker.say('app.photo.letGoAsk')}
        yes={speaker.say('app.photo.letGoYes')}
        onYes={() => void letGo()}
      />
      <Problem saying={problem} />
    </>
  );
}
