import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect } from 'vitest';
import { act, answer, asks, begin, buildHeap, keptOffline, typeReading } from './app-steps.ts';
import { journey, launch, openPhone } from './chromium.ts';
import { type Served, serve } from './serve.ts';

describe('the record of a heap', () => {
  let browser: Browser;
  let served: Served;
  beforeAll(async () => {
    [browser, served] = await Promise.all([launch(), serve()]);
  });
  afterAll(async () => {
    await browser?.close();
    await served?.stop();
  });

  journey('tells with no signal what was written, by whom, what the rules say, and goes on paper', async () => {
    const { page, errors, close } = await openPhone(browser);
    await page.goto(served.address);
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
      'as typed: 61 °C',
      'Written by ',
      'number 2, entry',
      'counts as raw manure',
      'ask your own authority',
      '2 years by the produce safety rule (recalled)',
    ])
      expect(told).toContain(said);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);

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
    expect(errors.filter((error) => !error.includes('ERR_INTERNET_DISCONNECTED'))).toEqual([]);
    await close();
  });
});
