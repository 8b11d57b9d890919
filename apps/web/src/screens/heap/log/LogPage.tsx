import { type ReactNode, useEffect, useEffectEvent, useRef, useState } from 'react';
import { v7 } from 'uuid';
import type { ToWrite } from '../../../keep/book.ts';
import { type Happened, resolved, type When } from '../../../keep/time.ts';
import { useBook } from '../../../keep/useBook.ts';
import { useWriting } from '../../../keep/useWriting.ts';
import { Problem } from '../../../parts/Problem.tsx';
import { WhenField } from '../../../parts/WhenField.tsx';
import { showWrongField } from '../../../parts/wrong-field.ts';
import { AddPhotos } from '../../../photo/AddPhotos.tsx';
import { type NewPhoto, photoThings } from '../../../photo/things.ts';
import { Page } from '../../../shell/Page.tsx';
import { goInstead, to, useRoute } from '../../../shell/route.ts';
import { useSpeaker } from '../../../shell/words.tsx';

interface Properties {
  readonly heap: string;
  readonly question: string;
  readonly act: string;
  /** What would be written; null while something is still missing. */
  readonly thing: (happened: Happened) => ToWrite | null;
  /** Asked before it is written; false holds it back. */
  readonly ask?: ((happened: Happened) => boolean) | undefined;
  /** Grows when what was asked was answered: it is written down once the sheet is closed. */
  readonly goOn?: number | undefined;
  readonly children: ReactNode;
}

/** One thing that happened at a heap: its fields, when it was, and the one act that keeps it. */
export function LogPage({ heap, question, act, thing, ask, goOn = 0, children }: Properties): ReactNode {
  const speaker = useSpeaker();
  const [when, setWhen] = useState<When>('now');
  const { write, busy, problem } = useWriting();
  const { holding } = useBook().leaf;
  const [photos, setPhotos] = useState<readonly NewPhoto[]>([]);
  const ready = thing(resolved(when)) !== null && !busy;
  const keep = async (): Promise<void> => {
    if (showWrongField()) return;
    const happened = resolved(when);
    const written = thing(happened);
    if (written === null || (ask !== undefined && !ask(happened))) return;
    const id = v7();
    const pictures = photoThings(photos, { entry: id, about: written.about, happened }, holding);
    if (await write([{ ...written, id }, ...pictures], photos)) goInstead(to('heap', heap));
  };
  const { sheet } = useRoute();
  const answered = useRef(0);
  const resume = useEffectEvent(() => void keep());
  useEffect(() => {
    if (sheet !== null || goOn <= answered.current) return;
    answered.current = goOn;
    resume();
  }, [sheet, goOn]);
  return (
    <Page question={question} act={{ text: act, ready, onAct: () => void keep() }}>
      <div className="stack">
        {children}
        <WhenField value={when} onChange={setWhen} />
        <section>
          <h2 className="label">{speaker.say('app.photo.add')}</h2>
          <AddPhotos photos={photos} onChange={setPhotos} />
          {photos.length > 0 && <p className="small quiet">{speaker.say('app.photo.private')}</p>}
        </section>
        <Problem saying={problem} />
      </div>
    </Page>
  );
}

/** What every entry about a heap says it is about. */
export function aboutHeap(heap: string): ToWrite['about'] {
  return [{ type: 'heap', id: heap }];
}
