import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect } from 'vitest';
import { act, answer, asks, begin, buildHeap, keptOffline } from './app-steps.ts';
import { journey, launch, openPhone } from './chromium.ts';
import { type Served, serve } from './serve.ts';

describe('the beds', () => {
  let browser: Browser;
  let served: Served;
  beforeAll(async () => {
    [browser, served] = await Promise.all([launch(), serve()]);
  });
  afterAll(async () => {
    await browser?.close();
    await served?.stop();
  });

  journey('a bed set up, sown, tested and spread on with no signal, and a heap shared out', async () => {
    const { page, errors, close } = await openPhone(browser);
    await page.goto(served.address);
    await begin(page, '°C, litres, metres');
    await keptOffline(page);
    await page.context().setOffline(true);
    await buildHeap(page, 'Spring heap');

    await page.getByRole('link', { name: 'Beds' }).click();
    await asks(page, 'What do the beds want?');
    expect(await answer(page)).toContain('No bed is written down yet');
    await act(page, 'Set up a bed');
    await page.getByLabel('Name').fill('Kale');
    await page.getByLabel('Area').fill('12');
    await act(page, 'Keep the bed');
    await asks(page, 'What does Kale want?');
    expect(await answer(page)).toContain('Nothing is sown here');

    await act(page, 'Say what is sown');
    await page.getByRole('searchbox').fill('kal');
    await page.getByRole('option', { name: 'kale', exact: true }).click();
    // What can't be read is never left out in silence.
    await page.getByLabel('On how much of it').fill('half');
    await act(page, 'Keep it');
    await page.getByText('half').waitFor();
    await asks(page, 'What was sown on Kale?');
    await page.getByLabel('On how much of it').fill('');
    await act(page, 'Keep it');
    await asks(page, 'What does Kale want?');
    expect(await answer(page)).toContain('of nitrogen');

    // Bray-1 and 84 ppm: far above what any of its tables calls enough (Minnesota gardens of the questions).
    await page.getByRole('link', { name: 'Soil tested' }).click();
    await page.getByLabel('Phosphorus').fill('many');
    await page.getByText('“many” is no number from 0 to 100,000.').waitFor();
    await page.getByLabel('Phosphorus').fill('84');
    await page.getByLabel('Unit').selectOption('ppm');
    await page.getByText('can’t be judged yet').waitFor();
    await page.getByLabel('Method of the lab').selectOption({ label: 'Bray-1' });
    await page.getByText('far too high').first().waitFor();
    await act(page, 'Keep the test');
    await asks(page, 'What does Kale want?');

    await page.getByRole('link', { name: 'Beds' }).click();
    await act(page, 'Set up a bed');
    await page.getByLabel('Name').fill('Leeks');
    await page.getByLabel('Area').fill('4');
    await act(page, 'Keep the bed');
    await asks(page, 'What does Leeks want?');

    await page.getByRole('link', { name: 'Heaps' }).click();
    await page.locator('.heap-lines a').first().click();
    await page.getByRole('link', { name: 'Spread it' }).click();
    await asks(page, 'Where does Spring heap go?');
    await page.getByRole('textbox', { name: 'Barrows in the heap' }).fill('4');
    await page.getByRole('textbox', { name: 'Barrows in the heap' }).blur();
    await page.getByRole('radio', { name: 'evenly, by area' }).check({ force: true });
    // 12 to 4 m²: three barrows to one.
    await page.getByText('3 barrows on Kale').waitFor();
    expect(await answer(page)).toContain('1 barrow on Leeks');
    await page.getByText('Kale would get more than it wants').waitFor();
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
    await act(page, 'Write it down as spread');
    await page.getByRole('link', { name: 'Beds' }).click();
    await page.getByRole('link', { name: /Kale/u }).click();
    await page.getByText('3 barrows of Spring heap spread on Kale.').waitFor();
    await page.goBack();
    await page.getByRole('link', { name: /Leeks/u }).click();
    await page.getByText('1 barrow of Spring heap spread on Leeks.').waitFor();
    expect(errors.filter((error) => !error.includes('ERR_INTERNET_DISCONNECTED'))).toEqual([]);
    await close();
  });
});
