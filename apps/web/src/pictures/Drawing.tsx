import { type ReactNode, type RefObject, useLayoutEffect, useRef, useState } from 'react';

/** The room a picture has, px, and the size of the reader's letters, px. */
export interface Room {
  readonly width: number;
  readonly letter: number;
}

const FIRST_GUESS: Room = { width: 354, letter: 16 };

interface Properties {
  readonly label: string;
  readonly draw: (room: Room) => { readonly height: number; readonly picture: ReactNode };
}

/**
 * A picture drawn to the width it has and to the reader's own letter size, so that larger text stays
 * readable in it too. Its label says what it shows to those who hear it.
 */
export function Drawing({ label, draw }: Properties): ReactNode {
  const frame = useRef<HTMLDivElement>(null);
  const room = useRoom(frame);
  const { height, picture } = draw(room);
  return (
    <div ref={frame}>
      <svg role="img" aria-label={label} viewBox={`0 0 ${room.width} ${height}`}>
        {picture}
      </svg>
    </div>
  );
}

function useRoom(frame: RefObject<HTMLDivElement | null>): Room {
  const [room, setRoom] = useState(FIRST_GUESS);
  useLayoutEffect(() => {
    const element = frame.current;
    if (element === null) return;
    const measure = (): void => {
      const width = Math.round(element.clientWidth);
      const letter = Number.parseFloat(getComputedStyle(document.documentElement).fontSize);
      if (width > 0)
        setRoom((before) => (before.width === width && before.letter === letter ? before : { width, letter }));
    };
    measure();
    const watch = new ResizeObserver(measure);
    watch.observe(element);
    return () => watch.disconnect();
  }, [frame]);
  return room;
}
