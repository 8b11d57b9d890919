import { type ReactNode, useEffect, useRef, useState } from 'react';
import { useBook } from '../keep/useBook.ts';
import { useSpeaker } from '../shell/words.tsx';
import './photo.css';
import type { Shown } from './things.ts';

interface Properties {
  readonly shown: Shown;
  /** Small beside its line, or whole. */
  readonly size: 'thumbnail' | 'whole';
}

/** Only what was painted here or on a device like this is put before a decoder. */
const shownTypes: readonly string[] = ['image/jpeg', 'image/png', 'image/webp'];

type Loaded = { readonly address: string } | 'not-here' | 'unreadable' | null;

/** A picture of the daybook. It is read and decoded when it comes near the screen, not before. */
export function Picture({ shown, size }: Properties): ReactNode {
  const speaker = useSpeaker();
  const { book, leaf } = useBook();
  const frame = useRef<HTMLSpanElement>(null);
  const [near, setNear] = useState(false);
  const [loaded, setLoaded] = useState<Loaded>(null);
  const { hash, caption, removed } = shown;
  useEffect(() => {
    const element = frame.current;
    if (element === null) return;
    const watch = new IntersectionObserver(
      (seen) => {
        if (seen.some(({ isIntersecting }) => isIntersecting)) setNear(true);
      },
      { rootMargin: '300px' },
    );
    watch.observe(element);
    return () => watch.disconnect();
  }, []);
  // Another look after every change of the daybook, for as long as it is not here: an exchange may have brought it.
  const look = loaded === null || loaded === 'not-here' ? leaf : null;
  useEffect(() => {
    if (!near || removed || look === null) return;
    let there = true;
    book
      .look((keeping) => keeping.attachment(hash))
      .then(
        (found) => {
          if (!there) return;
          if (found === null) setLoaded('not-here');
          else if (!shownTypes.includes(found.mediaType)) setLoaded('unreadable');
          else setLoaded({ address: URL.createObjectURL(new Blob([found.bytes.slice()], { type: found.mediaType })) });
        },
        () => there && setLoaded('not-here'),
      );
    return () => {
      there = false;
    };
  }, [near, removed, hash, book, look]);
  const address = typeof loaded === 'object' && loaded !== null ? loaded.address : null;
  useEffect(() => (address === null ? undefined : () => URL.revokeObjectURL(address)), [address]);

  const words = removed ? 'app.photo.removed' : wordsOf(loaded);
  if (words !== null) {
    return (
      <span ref={frame} className="small quiet block">
        {speaker.say(words)}
      </span>
    );
  }
  return (
    <span ref={frame} className={`frame ${size}`}>
      {address !== null && (
        <img
          className={size}
          src={address}
          alt={caption ?? speaker.say('app.photo.alt')}
          decoding="async"
          onError={() => setLoaded('unreadable')}
        />
      )}
    </span>
  );
}

function wordsOf(loaded: Loaded): 'app.photo.not-here' | 'app.photo.unreadable' | null {
  return loaded === 'not-here' || loaded === 'unreadable' ? `app.photo.${loaded}` : null;
}
