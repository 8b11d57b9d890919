import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect } from 'vitest';
import { act, answer, asks, begin, fiveMaterials, sayWhatIsHere } from './app-steps.ts';
import { journey, launch, openPhone } from './chromium.ts';
import { serve } from './serve.ts';

/** Enough at the bins for more than one reasonable heap. */
const plenty = [
  ...fiveMaterials,
  { typed: 'hen', name: 'hen manure', count: 6 },
  { typed: 'grass', name: 'grass clippings', count: 30 },
];

describe('the answers at the bins', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launch();
  });
  afterAll(() => browser?.close());

  journey('the first is there at once, another is chosen by its trade-off and becomes the card', async () => {
    const served = await serve();
    const { page, errors, close } = await openPhone(browser);
    await page.goto(served.address);
    await begin(page, '°C, litres, metres');
    await sayWhatIsHere(page, plenty);
    await act(page, 'Work out a mix');
    await asks(page, 'What do I lay, and how much of each?');
    const first = await answer(page);
    expect(first).toMatch(/^Lay /u);

    const hotter = page.getByRole('radio', { name: /^Hotter: about 1\.\d times the heat/u });
    await hotter.check({ force: true });
    expect(await hotter.evaluate((input) => input === document.activeElement)).toBe(true);
    const other = await answer(page);
    expect(other).toMatch(/^Lay /u);
    expect(other).not.toBe(first);

    await act(page, 'Build card');
    await asks(page, 'How do I build it?');
    const card = await page.locator('.steps-down').textContent();
    const laid = plenty.filter(({ name }) => other.includes(name));
    for (const { name } of laid) expect(card).toContain(name);

    // The card is that of the chosen answer on a fresh page too.
    await page.reload();
    await asks(page, 'How do I build it?');
    await page.locator('.steps-down li').first().waitFor();
    expect(await page.locator('.steps-down').textContent()).toBe(card);

    await page.goBack();
    await asks(page, 'What do I lay, and how much of each?');
    await page.getByRole('radio', { name: 'Least to fetch: only what is here.' }).check({ force: true });
    expect(await answer(page)).toBe(first);
    expect(errors).toEqual([]);
    await close();
    await served.stop();
  });
});
