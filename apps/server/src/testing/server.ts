import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { good, highsSolver } from '@loamwright/science';
import { createSpeaker } from '@loamwright/words';
import loadHighs from 'highs';
import type { Hono } from 'hono';
import { createApp, type LanParts, type Parts } from '../app.ts';
import { openAuthority } from '../lan/authority.ts';
import { countAttempts } from '../lan/key.ts';
import type { Reckoner } from '../reckon/crew.ts';
import { work } from '../reckon/work.ts';

/** The key of a server made here. */
export const testKey: string = 'A'.repeat(22);

/** Calculations in this very thread, for tests of what is around them. */
export async function realReckoner(): Promise<Reckoner> {
  const solver = highsSolver(await loadHighs());
  return { reckon: async (id, body) => work(id, body, solver), stop: async () => undefined };
}

/** A server with an empty daybook and no app, without a socket. */
export function testServer(parts: Partial<Parts> & Pick<Parts, 'reckoner'>): Hono {
  return createApp({
    version: '0.1.0',
    speaker: createSpeaker({ locale: 'en', system: 'metric' }),
    files: new Map(),
    exchange: {
      take: async () => null,
      bring: async () => good({ kept: 0, there: 0, conflicts: [], attached: 0, problems: [] }),
    },
    answering: {
      offer: async () => null,
      answer: async () =>
        good({ kept: 0, there: 0, conflicts: [], attached: 0, problems: [], send: none(), lines: none() }),
    },
    demo: false,
    hosts: () => ['localhost'],
    log: () => undefined,
    ...parts,
  });
}

/** What a server has besides when it serves the local network. */
export function testLan(): LanParts {
  const folder = mkdtempSync(join(tmpdir(), 'loamwright-lan-'));
  try {
    const opened = openAuthority(folder, 'shed-pc', new Date());
    if (!opened.ok) throw new Error('no authority');
    return {
      authority: opened.value,
      key: testKey,
      attempts: countAttempts(() => 0),
      addressOf: () => '192.168.1.30',
      origin: () => 'https://localhost:4380',
    };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Asks a server without a socket as somebody on this computer would. */
export function asking(app: Hono): (path: string, init?: RequestInit) => Promise<Response> {
  return async (path, init = {}) =>
    app.request(`http://localhost:4380${path}`, { ...init, headers: { host: 'localhost:4380', ...init.headers } });
}

async function* none(): AsyncGenerator<never> {}
