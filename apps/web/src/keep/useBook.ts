import { use, useSyncExternalStore } from 'react';
import { useSettings } from '../device/settings.ts';
import type { Book, Leaf } from './book.ts';
import { bookNamed } from './shelf.ts';

/** The open daybook and what is in it now. The page waits until it has been opened. */
export function useBook(): { readonly book: Book; readonly leaf: Leaf } {
  const book = use(bookNamed(useSettings().book === 'demo' ? 'demo' : 'own'));
  return { book, leaf: useSyncExternalStore(book.subscribe, book.leaf) };
}
