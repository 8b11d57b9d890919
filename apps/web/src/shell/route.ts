import { useSyncExternalStore } from 'react';

/** Where the reader is: the pieces of the path after `#/`, and what is laid open over it. */
export interface Route {
  readonly path: readonly string[];
  /** Name of the sheet that lies open over the page, if one does. */
  readonly sheet: string | null;
}

/** The address lives after `#`, so that the built folder needs no rules on the host that serves it. */
export function readRoute(hash: string): Route {
  const [path = '', query = ''] = hash.replace(/^#\/?/u, '').split('?');
  return {
    path: path
      .split('/')
      .filter((piece) => piece !== '')
      .map(decodeURIComponent),
    sheet: new URLSearchParams(query).get('sheet'),
  };
}

export function writeRoute(route: Route): string {
  const path = route.path.map(encodeURIComponent).join('/');
  return route.sheet === null ? `#/${path}` : `#/${path}?sheet=${encodeURIComponent(route.sheet)}`;
}

/** The address of a page: `to('heap', id)`. */
export function to(...path: readonly string[]): string {
  return writeRoute({ path, sheet: null });
}

let route = readRoute(location.hash);
/** Sheets opened here and not yet closed: closing one of them is a step back, as the back button's is. */
let opened = 0;

function subscribe(listener: () => void): () => void {
  const changed = (): void => {
    route = readRoute(location.hash);
    if (route.sheet === null) opened = 0;
    listener();
  };
  globalThis.addEventListener('hashchange', changed);
  return () => globalThis.removeEventListener('hashchange', changed);
}

export function useRoute(): Route {
  return useSyncExternalStore(subscribe, () => route);
}

export function go(address: string): void {
  location.hash = address;
}

/** Goes without leaving a step behind: the back button passes over it. */
export function goInstead(address: string): void {
  location.replace(address);
}

export function openSheet(sheet: string): void {
  opened += 1;
  go(writeRoute({ path: readRoute(location.hash).path, sheet }));
}

export function closeSheet(): void {
  const here = readRoute(location.hash);
  if (here.sheet === null) return;
  if (opened > 0) {
    opened -= 1;
    history.back();
  } else {
    goInstead(to(...here.path));
  }
}
