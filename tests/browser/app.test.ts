import { mkdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect } from 'vitest';
import { root } from '../../scripts/lib/root.mjs';
import {
  act,
  answer,
  asks,
  begin,
  buildHeap,
  daybookLines,
  fiveMaterials,
  keptOffline,
  pagesOf,
  sayWhatIsHere,
  typeReading,
} from './app-steps.ts';
import { journey } from './chromium.ts';
import { serve } from './serve.ts';
import { besidesNoSignal, browsing } from './stand.ts';

const takesScreenshots = process.env['LOAMWRIGHT_SCREENSHOTS'] === '1';

describe('the app, from the bins to a heap that is watched', () => {
  const { at } = browsing();

  journey('carries a grower through the whole path, with the network off and the server gone', async () => {
    const served = await serve();
    const { page, errors, close } = await at(served.address, { acceptDownloads: true });
    await begin(page, '°F, gallons, feet');
    await sayWhatIsHere(page, fiveMaterials);
    expect(await answer(page)).toContain('5 bales of straw, 16 buckets of coffee grounds, 24 buckets of goat bedding');

    await act(page, 'Work out a mix');
    await asks(page, 'What do I lay, and how much of each?');
    expect(await answer(page)).toMatch(/^Lay .*straw.*(gal|no water)/u);
    if (takesScreenshots) await screenshot(page);

    await act(page, 'Build card');
    await asks(page, 'How do I build it?');
    await page.getByText(/^Cover: /u).waitFor();
    for (const format of ['A4', 'Letter']) expect(pagesOf(await page.pdf({ format }))).toBe(1);

    await act(page, 'I built it');
    await page.getByLabel('What the heap is called').fill('Gate heap');
    await page.getByLabel('What the new bay is called').fill('By the gate');
    await page.getByRole('button', { name: 'It stands' }).click();
    await asks(page, 'Gate heap: how is it?');
    expect(await answer(page)).toContain('Nobody has put a probe into it yet');

    await typeReading(page, '148');
    await asks(page, 'Gate heap: how is it?');
    expect(await answer(page)).toContain('At 148 °F in the core it is as hot as growers seek');

    await typeReading(page, '300');
    await page.getByRole('dialog', { name: 'Is that right?' }).waitFor();
    await page.getByRole('button', { name: 'Did you mean 130 °F, with a 1 before it?' }).click();
    expect(await page.getByRole('textbox', { name: 'Temperature' }).inputValue()).toBe('130');
    await act(page, 'Keep the reading');
    await asks(page, 'Gate heap: how is it?');
    expect(await answer(page)).toContain('At 130 °F');

    await typeReading(page, '64.5 C');
    await page.getByText('At 148.1 °F').waitFor();

    await keptOffline(page);
    await page.context().setOffline(true);
    await served.stop();
    await page.reload();
    await asks(page, 'Gate heap: how is it?');
    expect(await answer(page)).toContain('At 148.1 °F');
    const here = await daybookLines(page, served.address);
    expect(here).toHaveLength(5);
    expect(here.filter((line) => line.includes('Gate heap read'))).toHaveLength(3);
    expect(here.join(' ')).toContain('By the gate set up');

    await act(page, 'Where it is kept');
    const downloading = page.waitForEvent('download');
    await act(page, 'Take a copy');
    const file = await (await downloading).path();
    expect((await readFile(file, 'utf8')).trimEnd().split('\n')).toHaveLength(here.length + 2);

    const elsewhere = await serve();
    const other = await at(elsewhere.address);
    await begin(other.page, '°F, gallons, feet');
    await other.page.goto(`${elsewhere.address}/#/daybook/kept`);
    await other.page.locator('input[type=file]').setInputFiles(file);
    await other.page.getByText(`${here.length} new lines came in`).waitFor();
    await other.page.getByRole('button', { name: 'Check every line' }).click();
    await other.page.getByText(`All ${here.length} lines are as written`).waitFor();
    expect(await daybookLines(other.page, elsewhere.address)).toEqual(here);
    expect(other.errors).toEqual([]);
    await other.close();
    await elsewhere.stop();

    expect(besidesNoSignal(errors)).toEqual([]);
    await close();
  });

  journey('loads the demo with one tap, says so, and lets it go with one', async () => {
    const served = await serve();
    const { page, errors, close } = await at(served.address);
    await page.getByRole('button', { name: 'Look round Quarry Lane' }).click();
    await asks(page, 'What stands where?');
    expect(await answer(page)).toMatch(/^\d+ heaps stand in \d+ bays\./u);
    await page.getByText('This is Quarry Lane, a made-up garden.').waitFor();
    await page.getByRole('button', { name: 'Let it go' }).click();
    await asks(page, 'What is this?');
    await expect
      .poll(() => page.evaluate(async () => (await indexedDB.databases()).map(({ name }) => name)))
      .toEqual([]);
    expect(errors).toEqual([]);
    await close();
    await served.stop();
  });

  journey('exchanges both ways with the computer that serves it', async () => {
    const served = await serve();
    const one = await at(served.address);
    await begin(one.page, '°C, litres, metres');
    await buildHeap(one.page, 'First heap');
    await exchange(one.page, served.address);

    const two = await at(served.address);
    await begin(two.page, '°C, litres, metres');
    await exchange(two.page, served.address);
    const lines = await daybookLines(two.page, served.address);
    expect(lines).toEqual(await daybookLines(one.page, served.address));
    expect(lines.join(' ')).toContain('First heap built');

    await two.page.getByRole('link', { name: 'First heap built' }).click();
    await two.page.getByRole('button', { name: 'Take it back' }).click();
    await two.page.getByText('Take it back?').waitFor();
    await two.page.getByRole('button', { name: 'Take it back' }).click();
    await asks(two.page, 'What was done, and when?');
    await exchange(two.page, served.address);
    await exchange(one.page, served.address);
    await one.page.goto(`${served.address}/#/heaps`);
    await expect.poll(() => answer(one.page)).toContain('No heap stands yet');
    for (const phone of [one, two]) {
      expect(phone.errors).toEqual([]);
      await phone.close();
    }
    await served.stop();
  });
});

async function exchange(page: Page, address: string): Promise<void> {
  await page.goto(`${address}/#/daybook/kept`);
  await page.getByRole('button', { name: 'Exchange both ways' }).click();
  await page.getByText('it now has all').waitFor();
}

/** The picture of the README: what to lay, as the phone shows it. */
async function screenshot(page: Page): Promise<void> {
  const folder = join(root, 'docs/images');
  await mkdir(folder, { recursive: true });
  await page.waitForTimeout(500);
  await page.screenshot({ path: join(folder, 'at-the-bins.png') });
}
