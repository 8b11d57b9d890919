import type { Attachment } from '@loamwright/daybook';
import type { Saying } from '@loamwright/words';
import { useState } from 'react';
import { settings } from '../device/settings.ts';
import type { ToWrite } from './book.ts';
import { sayNotWritten } from './not-written.ts';
import { writerOf } from './shelf.ts';
import { useBook } from './useBook.ts';

interface Writing {
  /** Writes what happened; true when it is kept. While one writing is under way another does nothing. */
  readonly write: (things: readonly ToWrite[], attachments?: readonly Attachment[]) => Promise<boolean>;
  readonly busy: boolean;
  /** Why the last writing was not kept, in words; null when all is well. */
  readonly problem: Saying | null;
}

/** Writes into the open daybook, and says in words what kept it from being written. */
export function useWriting(): Writing {
  const { book } = useBook();
  const [busy, setBusy] = useState(false);
  const [problem, setProblem] = useState<Saying | null>(null);
  const write = async (things: readonly ToWrite[], attachments: readonly Attachment[] = []): Promise<boolean> => {
    if (busy) return false;
    setBusy(true);
    setProblem(null);
    try {
      await book.write(await writerOf(settings().book === 'demo' ? 'demo' : 'own', book), things, attachments);
      return true;
    } catch (error) {
      setProblem(sayNotWritten(error));
      return false;
    } finally {
      setBusy(false);
    }
  };
  return { write, busy, problem };
}
