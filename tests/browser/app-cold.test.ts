import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect } from 'vitest';
import { journey, launch, openPhone } from './chromium.ts';
import { serve } from './serve.ts';

describe('a heap that does not heat', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launch();
  });
  afterAll(() => browser?.close());

  // That soft stuff gone and leaves whole means spent food: common practice, no source.
  journey('is told by what can still be told apart in it, and then what to do with it', async () => {
    const served = await serve();
    const { page, errors, close } = await openPhone(browser);
    await page.goto(served.address);
    await page.getByText('Look round Quarry Lane').click();
    await page.goto(`${served.address}/#/heap/pomace-heap`);
    await page.getByRole('heading', { name: 'Why it does not heat' }).waitFor();
    const told = page.locator('section', { hasText: 'Why it does not heat' });

    await page.getByRole('radio', { name: 'scraps or greens', exact: true }).check({ force: true });
    await told.getByText('begin a second heap').waitFor({ state: 'detached' });

    await page.getByRole('radio', { name: 'leaves, straw or card only' }).check({ force: true });
    await told.getByText('Likeliest it is spent, with its easy food gone').waitFor();
    await told.getByText('Feed it no more and begin a second heap').waitFor();
    await told.getByText('want months more (common practice, no source)').waitFor();
    expect(await told.textContent()).toContain('What speaks for it: what can still be told apart in it');
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
    const heights = await told
      .locator('.choice')
      .evaluateAll((all) => all.map((one) => one.getBoundingClientRect().height));
    expect(Math.min(...heights)).toBeGreaterThanOrEqual(48);
    expect(errors).toEqual([]);
    await close();
    await served.stop();
  });
});
