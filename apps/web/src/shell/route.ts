import { useSyncExternalStore } from 'react';
import { type Route, readRoute, to, writeRoute } from './address.ts';

export { to, writeRoute } from './address.ts';

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
