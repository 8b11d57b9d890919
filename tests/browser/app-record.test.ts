import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { describe, expect } from 'vitest';
import { act, answer, asks, begin, buildHeap, keptOffline, typeReading } from './app-steps.ts';
import { journey } from './chromium.ts';
import { besidesNoSignal, standing } from './stand.ts';

describe('the record of a heap', () => {
  const stand = standing();

  journey('tells with no signal what was written, by whom, what the rules say, and goes on paper', async () => {
    const { page, errors, close } = await stand.open();
    await begin(page, '°C, litres, metres');
    await keptOffline(page);
    await page.context().setOffline(true);
    await buildHeap(page, '=Heap <b>one</b>');
    await typeReading(page, '61C');
    await asks(page, '=Heap <b>one</b>: how is it?');

    await page.getByRole('link', { name: 'The record of this heap, to print' }).click();
    await asks(page, '=Heap <b>one</b>: what was written down?');
    await page.getByText('nothing is changed or missing').waitFor();
    expect(await answer(page)).toContain('2 lines of the daybook, as written');
    const told = (await page.locator('main').textContent())?.replace(/\s+/gu, ' ');
    for (const said of [
      'It is no certificate',
      'of goat bedding',
      'read 61 °C',
      'as given: 61 °C',
      'Written by ',
      'number 2, entry',
      'counts as raw manure',
      'ask your own authority',
      '2 years by the produce safety rule (recalled)',
    ])
      expect(told).toContain(said);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);

    // A name that a spreadsheet would reckon with is text in the table, and no part of a path.
    const table = await savedBy(page, 'A table (CSV)');
    expect(table.name).toMatch(/^loamwright-record-Heap-b-one-b-\d{4}-\d\d-\d\d\.csv$/u);
    expect(table.text.startsWith('part,happened,zone,')).toBe(true);
    expect(table.text.split('\r\n').filter((line) => line.startsWith('entry,'))).toHaveLength(2);
    expect(table.text).toContain("'=Heap <b>one</b> ");
    const data = JSON.parse((await savedBy(page, 'Data (JSON)')).text);
    expect(data).toMatchObject({ name: '=Heap <b>one</b>', check: { sound: true } });
    expect(data.entries).toHaveLength(2);

    await page.evaluate(() => {
      globalThis.print = () => {
        document.body.dataset['printed'] = 'yes';
      };
    });
    await act(page, 'Print it');
    expect(await page.evaluate(() => document.body.dataset['printed'])).toBe('yes');
    await page.emulateMedia({ media: 'print' });
    expect(await page.locator('.thumb').isVisible()).toBe(false);
    expect(await page.getByText('It is no certificate').isVisible()).toBe(true);
    expect(besidesNoSignal(errors)).toEqual([]);
    await close();
  });

  journey('of a bed, from its own page: what went on, what was taken and how the heap stood that day', async () => {
    const { page, errors, close } = await stand.open();
    await begin(page, '°C, litres, metres');
    await keptOffline(page);
    await page.context().setOffline(true);
    await buildHeap(page, 'Spring heap');
    await page.getByRole('link', { name: 'Beds' }).click();
    await act(page, 'Set up a bed');
    await page.getByLabel('Name').fill('Kale');
    await page.getByLabel('Area').fill('12');
    await act(page, 'Keep the bed');
    await asks(page, 'What does Kale want?');

    await page.getByRole('link', { name: 'The record of this bed, to print' }).click();
    await asks(page, 'Kale: what was written down?');
    await page.getByText('No heap was spread on it.').waitFor();

    await page.getByRole('link', { name: 'Heaps' }).click();
    await page.locator('.heap-lines a').first().click();
    await page.getByRole('link', { name: 'Spread it' }).click();
    await page.getByRole('radio', { name: 'evenly, by area' }).check({ force: true });
    await act(page, 'Write it down as spread');
    await asks(page, 'Spring heap: how is it?');
    await page.getByRole('link', { name: 'Beds' }).click();
    await page.getByRole('link', { name: /Kale/u }).click();
    await page.getByRole('link', { name: 'The record of this bed, to print' }).click();
    await page.getByText('nothing is changed or missing').waitFor();
    const told = (await page.locator('main').textContent())?.replace(/\s+/gu, ' ');
    for (const said of ['Kale set up', '4 barrows of Spring heap spread on Kale.', 'Spring heap, as its log stood on'])
      expect(told).toContain(said);
    const data = JSON.parse((await savedBy(page, 'Data (JSON)')).text);
    expect(data).toMatchObject({ of: { type: 'bed' }, name: 'Kale' });
    expect(data.verdicts).toHaveLength(1);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
    await page.emulateMedia({ media: 'print' });
    expect(await page.getByText('Or as a file').isVisible()).toBe(false);
    expect(besidesNoSignal(errors)).toEqual([]);
    await close();
  });
});

/** The file that a button of the page saves. */
async function savedBy(page: Page, button: string): Promise<{ readonly name: string; readonly text: string }> {
  const [file] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: button }).click()]);
  return { name: file.suggestedFilename(), text: await readFile(await file.path(), 'utf8') };
}
