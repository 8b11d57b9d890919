import { type ReactNode, useEffect, useMemo, useState } from 'react';
import { Problem } from '../parts/Problem.tsx';
import { useSpeaker } from '../shell/words.tsx';
import './photo.css';
import { downscaled, PhotoRefused } from './downscale.ts';
import type { NewPhoto } from './things.ts';

interface Properties {
  readonly photos: readonly NewPhoto[];
  readonly onChange: (photos: readonly NewPhoto[]) => void;
}

/** Most pictures beside one line: more belong to lines of their own. */
const MOST = 4;

/** Takes pictures with the camera or from the phone, makes them small, and asks what they show. */
export function AddPhotos({ photos, onChange }: Properties): ReactNode {
  const speaker = useSpeaker();
  const [busy, setBusy] = useState(false);
  const [refused, setRefused] = useState<PhotoRefused['reason'] | null>(null);
  const add = async (file: File): Promise<void> => {
    setBusy(true);
    setRefused(null);
    try {
      const made = await downscaled(file);
      if (photos.every(({ hash }) => hash !== made.hash)) onChange([...photos, { ...made, caption: '' }]);
    } catch (error) {
      setRefused(error instanceof PhotoRefused ? error.reason : 'unreadable');
    } finally {
      setBusy(false);
    }
  };
  return (
    <div>
      {photos.map((photo) => (
        <div key={photo.hash} className="new-photo">
          <Preview photo={photo} />
          <label className="field">
            <span className="label">{speaker.say('app.photo.caption')}</span>
            <input
              className="line"
              maxLength={200}
              value={photo.caption}
              onChange={(event) =>
                onChange(photos.map((one) => (one === photo ? { ...one, caption: event.target.value } : one)))
              }
            />
          </label>
          <button type="button" className="word" onClick={() => onChange(photos.filter((one) => one !== photo))}>
            {speaker.say('app.photo.leaveOut')}
          </button>
        </div>
      ))}
      {photos.length < MOST && (
        <p className="words-row">
          {hasCamera() && <Source text={speaker.say('app.photo.take')} camera busy={busy} onFile={add} />}
          <Source text={speaker.say('app.photo.choose')} busy={busy} onFile={add} />
        </p>
      )}
      <div role="status">{busy && <p className="small quiet">{speaker.say('app.photo.busy')}</p>}</div>
      <Problem saying={refused === null ? null : { key: `app.photo.refused.${refused}` }} />
    </div>
  );
}

interface SourceProperties {
  readonly text: string;
  readonly camera?: boolean | undefined;
  readonly busy: boolean;
  readonly onFile: (file: File) => Promise<void>;
}

function Source({ text, camera = false, busy, onFile }: SourceProperties): ReactNode {
  return (
    <label className="word photo-source">
      {text}
      <input
        type="file"
        className="unseen"
        accept="image/*"
        {...(camera ? { capture: 'environment' as const } : {})}
        disabled={busy}
        onChange={(event) => {
          const [file] = event.target.files ?? [];
          event.target.value = '';
          if (file !== undefined) void onFile(file);
        }}
      />
    </label>
  );
}

/** A finger points at phones, which have a camera; a mouse at computers, where both ways would open the same window. */
function hasCamera(): boolean {
  return globalThis.matchMedia('(pointer: coarse)').matches;
}

function Preview({ photo }: { readonly photo: NewPhoto }): ReactNode {
  const speaker = useSpeaker();
  const address = useMemo(
    () => URL.createObjectURL(new Blob([photo.bytes.slice()], { type: photo.mediaType })),
    [photo.bytes, photo.mediaType],
  );
  useEffect(() => () => URL.revokeObjectURL(address), [address]);
  return (
    <img className="thumbnail" src={address} alt={photo.caption || speaker.say('app.photo.new')} decoding="async" />
  );
}
