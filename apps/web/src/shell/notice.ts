import type { Saying } from '@loamwright/words';
import { useSyncExternalStore } from 'react';

/** A quiet line above the page, with at most one thing to do about it. */
export interface Notice {
  /** One line of each kind at a time. */
  readonly id: 'update' | 'demo' | 'storage' | 'copied';
  readonly saying: Saying;
  readonly act?: { readonly saying: Saying; readonly onAct: () => void } | undefined;
}

let notices: readonly Notice[] = [];
const listeners = new Set<() => void>();

function put(next: readonly Notice[]): void {
  notices = next;
  for (const listener of listeners) listener();
}

export function showNotice(notice: Notice): void {
  put([...notices.filter(({ id }) => id !== notice.id), notice]);
}

export function hideNotice(id: Notice['id']): void {
  if (notices.some((notice) => notice.id === id)) put(notices.filter((notice) => notice.id !== id));
}

export function useNotices(): readonly Notice[] {
  return useSyncExternalStore(
    (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    () => notices,
  );
}
