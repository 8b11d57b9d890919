import { once } from 'node:events';
import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { extname, join } from 'node:path';
import { afterAll, beforeAll, describe, expect } from 'vitest';
import { root } from '../../scripts/lib/root.mjs';
import { act, asks, begin, buildHeap, keptOffline } from './app-steps.ts';
import { journey } from './chromium.ts';
import { browsing } from './stand.ts';

/** Where the built folder lies on the host: not at its root. */
const folder = '/gardens/quarry-lane/';

describe('the built folder alone, on a host that knows nothing of it', () => {
  const { at } = browsing();
  let files: string;
  let host: Server;
  let address: string;
  beforeAll(async () => {
    files = await mkdtemp(join(tmpdir(), 'loamwright-alone-'));
    await cp(join(root, 'apps/web/dist'), files, { recursive: true });
    host = await plainHost(files);
    address = `http://127.0.0.1:${(host.address() as AddressInfo).port}${folder}`;
  });
  afterAll(async () => {
    host?.closeAllConnections();
    host?.close();
    await rm(files, { recursive: true });
  });

  journey('works in any folder, with no server behind it, and comes back with the network off', async () => {
    const { page, errors, close } = await at(address);
    await begin(page, '°C, litres, metres');
    await buildHeap(page, 'Lone heap');
    await page.goto(`${address}#/daybook/kept`);
    await page.getByText('Its 2 lines lie in this browser').waitFor();
    expect(await page.getByText('The computer that serves this page').count()).toBe(0);
    await keptOffline(page);
    await page.context().setOffline(true);
    await page.reload();
    await page.getByText('Its 2 lines lie in this browser').waitFor();
    await page.goto(`${address}#/heaps`);
    await page.getByRole('link', { name: 'Lone heap' }).waitFor();
    const failed = (error: string): boolean => error.includes('404') || error.includes('ERR_INTERNET_DISCONNECTED');
    expect(errors.filter((error) => !failed(error))).toEqual([]);
    await close();
  });

  journey('offers a newer version in a quiet line, and changes nothing until it is taken', async () => {
    const { page, close } = await at(address);
    await begin(page, '°C, litres, metres');
    await keptOffline(page);
    await page.reload();
    await asks(page, 'What is here to build from?');
    await act(page, 'Say what is here');
    await page.getByRole('searchbox').fill('stra');

    const worker = join(files, 'sw.js');
    await writeFile(worker, `${await readFile(worker, 'utf8')}\n// a newer one\n`);
    await page.evaluate(async () => {
      await (await navigator.serviceWorker.ready).update();
    });
    await page.getByText('A newer version of the app is here.').waitFor({ state: 'attached' });
    expect(await page.getByRole('searchbox').inputValue()).toBe('stra');
    await page.getByRole('button', { name: 'Close' }).click();
    await page.getByRole('dialog').waitFor({ state: 'detached' });

    const reloaded = page.waitForEvent('load');
    await page.getByRole('button', { name: 'Take it now' }).click();
    await reloaded;
    await asks(page, 'What is here to build from?');
    expect(await page.getByText('A newer version of the app is here.').count()).toBe(0);
    await close();
  });
});

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.wasm': 'application/wasm',
  '.webmanifest': 'application/manifest+json',
};

/** A host of plain files, with nothing behind them. */
async function plainHost(files: string): Promise<Server> {
  const server = createServer(async (request, response) => {
    const { pathname } = new URL(request.url ?? '/', 'http://host');
    const name = pathname.startsWith(folder) ? pathname.slice(folder.length) : null;
    try {
      if (name === null) throw new Error('nothing there');
      const file = name === '' ? 'index.html' : name;
      const bytes = await readFile(join(files, file));
      response.writeHead(200, { 'content-type': types[extname(file)] ?? 'application/octet-stream' }).end(bytes);
    } catch {
      response.writeHead(404).end();
    }
  });
  server.listen(0, '127.0.0.1');
  await once(server, 'listening');
  return server;
}
