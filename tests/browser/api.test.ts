import { describe, expect } from 'vitest';
import { faults, smallTargets } from './audit.ts';
import { journey } from './chromium.ts';
import { standing } from './stand.ts';

describe('the pages of the interface', () => {
  const stand = standing();

  journey('lead from the list to a calculation whose example the built server works out', async () => {
    const { page, errors, close } = await stand.at(`${stand.address}/api`);
    await page.getByRole('link', { name: 'The best mix from what is on hand' }).click();
    await page.getByRole('heading', { level: 1, name: 'The best mix from what is on hand' }).waitFor();
    expect(await page.locator('pre').nth(1).textContent()).toMatch(/^standing: (?:good|fair)/u);
    await page.locator('summary', { hasText: 'Input' }).click();
    expect(await page.locator('dt', { hasText: 'stock[].amount.count' }).isVisible()).toBe(true);
    expect(errors).toEqual([]);
    await close();
  });

  journey.for(['light', 'dark'] as const)(
    'are clean to axe, large enough to touch and no wider than a phone: %s',
    async (colorScheme) => {
      const { page, errors, close } = await stand.phone({ colorScheme });
      const found: string[] = [];
      for (const path of ['/api', '/api/page/mix-balance', '/api/page/moisture-from-weights']) {
        await page.goto(stand.address + path);
        await page.evaluate(() => {
          for (const details of document.querySelectorAll('details')) details.open = true;
        });
        expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
        found.push(...(await faults(page, path)), ...(await smallTargets(page, path)));
      }
      expect(found).toEqual([]);
      expect(errors).toEqual([]);
      await close();
    },
  );

  journey('can be opened although the app answers for its own paths with no signal', async () => {
    const { page, close } = await stand.open();
    await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
    await page.reload();
    await page.goto(`${stand.address}/api`);
    await page.getByRole('heading', { name: 'What can this computer work out for me?' }).waitFor();
    await close();
  });
});
