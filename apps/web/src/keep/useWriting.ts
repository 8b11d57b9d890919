import type { Attachment } from '@loamwright/daybook';
import type { Saying } from '@loamwright/words';
import { useState } from 'react';
import { settings } from '../device/settings.ts';
import { NotWritten, type ToWrite } from './book.ts';
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

/** Why something was not kept, as a sentence. */
export function sayNotWritten(error: unknown): Saying {
  if (!(error instanceof NotWritten)) return { key: 'app.notWritten.failed', places: { why: String(error) } };
  switch (error.reason) {
    case 'refused':
    case 'full':
    case 'busy':
    case 'closed':
      return { key: `app.notWritten.${error.reason}` };
    case 'not-valid': {
      const [first] = error.problems;
      return {
        key: 'app.notWritten.not-valid',
        places: { path: first?.path ?? '', found: first?.found ?? '', wanted: first?.wanted ?? '' },
      };
    }
    case 'failed':
      return { key: 'app.notWritten.failed', places: { why: String(error.cause) } };
  }
}
