import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect } from 'vitest';
import { act, asks, begin, buildHeap, daybookLines } from './app-steps.ts';
import { faults } from './audit.ts';
import { journey } from './chromium.ts';
import { screenshot } from './screens.ts';
import { type Served, serve } from './serve.ts';
import { browsing } from './stand.ts';

/** Only what the network refuses while it is off, or the computer while it is gone. */
const ofTheNetwork = /ERR_INTERNET_DISCONNECTED|ERR_CONNECTION_REFUSED|ERR_FAILED|ERR_EMPTY_RESPONSE/u;

describe('two phones and a computer', () => {
  const { phone, at } = browsing();
  let folder: string;
  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), 'loamwright-exchange-'));
  });
  afterAll(() => rm(folder, { recursive: true, force: true }));

  journey('each write with the network off, and hold the same once they have met the computer', async () => {
    const dataFolder = join(folder, 'shed');
    let served = await serve({ dataFolder });
    const { address } = served;
    const again = async (): Promise<void> => {
      served = await serve({ dataFolder, port: Number(new URL(address).port) });
    };
    const one = await phone({ serviceWorkers: 'block' });
    const two = await phone({ serviceWorkers: 'block' });

    await one.page.goto(address);
    await begin(one.page, '°C, litres, metres');
    await buildHeap(one.page, 'Gate heap');
    const heap = await one.page.evaluate(() => location.hash);
    await one.page.goto(`${address}/#/daybook/kept`);
    await one.page.getByText('Exchange once, and each has what the other had').waitFor();
    await one.page.getByRole('button', { name: 'Exchange both ways' }).click();
    await one.page.getByText('nothing was new here, and it now has all 2 lines').waitFor();
    await one.page.getByText('Every line here is on the computer, too. Last exchanged today').waitFor();
    await screenshot(one.page, 'exchanged');
    expect(await faults(one.page, 'where it is kept, exchanged')).toEqual([]);

    await one.page.goto(`${address}/#/settings`);
    await one.page.getByText('Every line here is on the computer, too.').waitFor();
    await screenshot(one.page, 'settings');

    await two.page.goto(address);
    await begin(two.page, '°F, gallons, feet');
    await two.page.goto(`${address}/#/daybook/kept`);
    await two.page.getByRole('button', { name: 'Exchange both ways' }).click();
    await two.page.getByText('2 new lines came in here').waitFor();
    expect(await daybookLines(two.page, address)).toHaveLength(2);

    await two.page.goto(`${address}/${heap}`);
    await asks(two.page, 'Gate heap: how is it?');

    // Both out of reach, both write; nothing is held up, and what waits is said.
    await Promise.all([one, two].map(({ page }) => page.context().setOffline(true)));
    await writeNote(one.page, `${address}/${heap}`, 'From the first phone');
    await writeNote(one.page, `${address}/${heap}`, 'Twice from the first phone');
    await writeNote(two.page, `${address}/${heap}`, 'From the second phone');
    await daybookLines(one.page, address);
    await one.page.getByText('2 lines here are not yet on the computer.').waitFor();
    await screenshot(one.page, 'waiting');
    expect(await faults(one.page, 'the daybook, waiting')).toEqual([]);

    // The computer loses its power when the first part has reached it, and its answer is never heard.
    let cut = 0;
    await one.page.route('**/api/exchange', async (route) => {
      if ((route.request().postData() ?? '').startsWith('{"type":"give"')) {
        await route.fetch();
        await served.kill();
        cut += 1;
        await route.abort();
      } else await route.continue();
    });
    await one.page.context().setOffline(false);
    await one.page.getByText('The computer does not answer.').waitFor();
    expect(cut).toBe(1);
    await one.page.getByText('2 lines here are not yet on the computer.').waitFor();
    // A radio woken for nothing costs charge: it waits half a minute before it asks again.
    expect(await requestsIn(one.page, 4000)).toBe(0);
    await one.page.unroute('**/api/exchange');

    // Back, without anybody asking for it.
    await again();
    await one.page.goto(`${address}/#/daybook`);
    await comeBack(one.page);
    await one.page.getByText('Every line here is on the computer, too.').waitFor();
    await two.page.goto(`${address}/#/daybook`).catch(() => undefined);
    await two.page.context().setOffline(false);
    await two.page.goto(`${address}/#/daybook`);
    await two.page.getByText('Every line here is on the computer, too.').waitFor();
    await comeBack(one.page);
    await one.page.getByText('From the second phone').first().waitFor();

    const lines = await daybookLines(one.page, address);
    expect(lines).toHaveLength(5);
    expect((await daybookLines(two.page, address)).map(textOf)).toEqual(lines.map(textOf));
    for (const { page } of [one, two]) {
      await page.goto(`${address}/#/daybook/kept`);
      await page.getByRole('button', { name: 'Check every line' }).click();
      await page.getByText('All 5 lines are as written').waitFor();
    }

    // With nothing to tell, nothing is asked.
    await two.page.goto(`${address}/#/daybook`);
    expect(await requestsIn(two.page, 4000)).toBe(0);

    // A line goes by itself as soon as it is written.
    await writeNote(two.page, `${address}/${heap}`, 'And one more');
    await two.page.goto(`${address}/#/daybook`);
    await two.page.getByText('Every line here is on the computer, too.').waitFor();
    await expect.poll(() => countOn(served)).toBe(6);
    for (const { errors } of [one, two]) expect(errors.filter((error) => !ofTheNetwork.test(error))).toEqual([]);
    await Promise.all([one.close(), two.close()]);
    await served.stop();
  });

  journey('of another garden is refused in words, and nothing is mixed', async () => {
    const dataFolder = join(folder, 'other');
    const served = await serve({ dataFolder });
    for (const name of ['First heap', 'Other heap']) {
      const { page, close } = await at(served.address);
      await begin(page, '°C, litres, metres');
      await buildHeap(page, name);
      await page.goto(`${served.address}/#/daybook/kept`);
      await page.getByRole('button', { name: 'Exchange both ways' }).click();
      if (name === 'First heap') await page.getByText('it now has all 2 lines').waitFor();
      else {
        await page.getByRole('alert').getByText('The computer keeps the daybook of another garden.').waitFor();
        expect(await daybookLines(page, served.address)).toHaveLength(2);
        expect(await countOn(served)).toBe(2);
      }
      await close();
    }
    await served.stop();
  });
});

/** How often the page asks the computer within so long. */
async function requestsIn(page: Page, during_ms: number): Promise<number> {
  let count = 0;
  const heard = (request: { url(): string }): void => {
    if (request.url().includes('/api/')) count += 1;
  };
  page.on('request', heard);
  await page.waitForTimeout(during_ms);
  page.off('request', heard);
  return count;
}

/** The person puts the phone away, and takes it out again. */
async function comeBack(page: Page): Promise<void> {
  await page.context().setOffline(true);
  await page.context().setOffline(false);
}

/** A line without its time, which each phone writes in its own way. */
function textOf(line: string): string {
  return line.replace(/\d{1,2}:\d\d.*$/u, '').trim();
}

/** How many entries the computer has. */
async function countOn({ address }: Served): Promise<number> {
  const answer = await fetch(`${address}/api/exchange`);
  const { held } = (await answer.json()) as { readonly held: readonly { readonly runs: readonly Run[] }[] };
  return held.flatMap(({ runs }) => runs).reduce((sum, { from, to }) => sum + to - from + 1, 0);
}

interface Run {
  readonly from: number;
  readonly to: number;
}

async function writeNote(page: Page, heap: string, text: string): Promise<void> {
  await page.goto(`${heap}/note`);
  await page.getByLabel('In a few words').fill(text);
  await act(page, 'Keep the note');
  await asks(page, 'Gate heap: how is it?');
}
