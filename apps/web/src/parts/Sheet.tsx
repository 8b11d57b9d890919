import { type ReactNode, useEffect, useId, useRef } from 'react';
import { closeSheet } from '../shell/route.ts';
import { useSpeaker } from '../shell/words.tsx';

interface Properties {
  readonly title: string;
  readonly children: ReactNode;
  /** What closing does; a step back in the address where nothing else is said. */
  readonly onClose?: (() => void) | undefined;
}

/** A sheet laid over the page, with the keyboard held inside it. Escape, the back button and its own word close it. */
export function Sheet({ title, children, onClose = closeSheet }: Properties): ReactNode {
  const speaker = useSpeaker();
  const dialog = useRef<HTMLDialogElement>(null);
  const heading = useId();
  useEffect(() => {
    const shown = dialog.current;
    if (shown === null) return;
    shown.showModal();
    // What the sheet was opened for comes before the word that closes it. A list may stand only after the next frame.
    const frame = requestAnimationFrame(() => {
      const first = shown.querySelector<HTMLElement>('[data-first] input') ?? shown.querySelector('h2');
      first?.focus();
    });
    return () => {
      cancelAnimationFrame(frame);
      shown.close();
    };
  }, []);
  return (
    <dialog
      ref={dialog}
      className="sheet"
      aria-labelledby={heading}
      onCancel={(event) => {
        event.preventDefault();
        onClose();
      }}
    >
      <div className="sheet-head">
        <h2 id={heading} tabIndex={-1}>
          {title}
        </h2>
        <button type="button" className="word" onClick={onClose}>
          {speaker.say('app.close')}
        </button>
      </div>
      {children}
    </dialog>
  );
}
