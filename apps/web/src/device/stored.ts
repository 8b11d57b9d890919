/**
 * A small value kept on the device beside the daybook: settings and unfinished work, never facts.
 * Where the browser keeps nothing (storage refused, private mode), the value lives as long as the page.
 */
export interface Stored<Value> {
  get(): Value;
  set(value: Value): void;
  subscribe(listener: () => void): () => void;
}

/**
 * @param read what was kept, as it was parsed, made into a value; anything unfit gives the value to begin with.
 */
export function stored<Value>(key: string, read: (kept: unknown) => Value): Stored<Value> {
  const listeners = new Set<() => void>();
  let value = read(parsed(key));
  const tellAll = (): void => {
    for (const listener of listeners) listener();
  };
  globalThis.addEventListener('storage', (event) => {
    if (event.key !== key) return;
    value = read(parsed(key));
    tellAll();
  });
  return {
    get: () => value,
    set: (next) => {
      value = next;
      write(key, next);
      tellAll();
    },
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}

function parsed(key: string): unknown {
  try {
    return JSON.parse(localStorage.getItem(key) ?? 'null');
  } catch {
    return null;
  }
}

function write(key: string, value: unknown): void {
  try {
    localStorage.setItem(key, JSON.stringify(value));
  } catch {
    // Refused or full: the value still holds while the page is open, and the daybook page says that the browser keeps nothing.
  }
}

/** Narrows what was parsed to an object whose fields can be asked for. */
export function asRecord(kept: unknown): Readonly<Record<string, unknown>> {
  return typeof kept === 'object' && kept !== null && !Array.isArray(kept)
    ? (kept as Readonly<Record<string, unknown>>)
    : {};
}
