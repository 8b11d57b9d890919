import { asRecord, stored } from '../device/stored.ts';

/** The computer that served this page, if it keeps a daybook. */
export interface Server {
  /** Whether it asks for its key, as it does on a local network. */
  readonly asksKey: boolean;
}

/** Why the computer that serves the page could not take part. */
export class ServerRefused extends Error {
  override readonly name: string = 'ServerRefused';
  readonly code: string;
  constructor(code: string, options?: ErrorOptions) {
    super(code, options);
    this.code = code;
  }
}

const keys = stored('loamwright.key', (raw): string | null => (typeof raw === 'string' ? raw : null));

/** What the last exchange with this server left here: how many of this device's lines it has. */
const exchanged = stored('loamwright.exchanged', (raw): number => {
  const { entries } = asRecord(raw);
  return typeof entries === 'number' ? entries : 0;
});

export function rememberKey(key: string): void {
  keys.set(key);
}

export function hasKey(): boolean {
  return keys.get() !== null;
}

/** How many of the entries here, in order of arrival, the server is known to have. */
export function serverHas(): number {
  return exchanged.get();
}

export function rememberExchange(entries: number): void {
  exchanged.set(entries);
}

const WAIT_MS = 4000;

/** Looks whether the host of this page keeps a daybook. A plain static host does not, and with no signal nobody answers. */
export async function findServer(): Promise<Server | null> {
  try {
    const answer = await fetch(new URL('api/about', document.baseURI), { signal: AbortSignal.timeout(WAIT_MS) });
    if (!answer.ok || !(answer.headers.get('content-type') ?? '').includes('json')) return null;
    const about = asRecord(await answer.json());
    return about['program'] === 'loamwright' ? { asksKey: about['key'] === true } : null;
  } catch {
    return null;
  }
}

/** The server's daybook as a file; null while it has none. */
export async function takeFromServer(): Promise<string | null> {
  const answer = await ask({ method: 'GET' });
  return answer.status === NO_CONTENT ? null : answer.text();
}

const NO_CONTENT = 204;

/** Hands a daybook file to the server. */
export async function bringToServer(text: string): Promise<void> {
  await ask({ method: 'POST', body: text, headers: { 'content-type': 'application/x-ndjson' } });
}

async function ask(request: RequestInit): Promise<Response> {
  const key = keys.get();
  const headers = { ...request.headers, ...(key === null ? {} : { authorization: `Bearer ${key}` }) };
  let answer: Response;
  try {
    answer = await fetch(new URL('api/daybook', document.baseURI), { ...request, headers, cache: 'no-store' });
  } catch (cause) {
    throw new ServerRefused('unreachable', { cause });
  }
  if (answer.ok) return answer;
  const { problems } = asRecord(await answer.json().catch(() => null));
  const first = Array.isArray(problems) ? asRecord(problems[0]) : {};
  const code = typeof first['code'] === 'string' ? first['code'] : String(answer.status);
  // A key that does not fit is forgotten, so that it is asked for again.
  if (code === 'key-wrong') keys.set(null);
  throw new ServerRefused(code);
}
