import type { Page } from 'playwright-core';
import { describe, expect } from 'vitest';
import { act, answer, asks, begin, daybookLines, fiveMaterials, keptOffline, sayWhatIsHere } from './app-steps.ts';
import { journey } from './chromium.ts';
import { besidesNoSignal, standing } from './stand.ts';

describe('one pail', () => {
  const stand = standing();

  journey('is answered with nothing known, and with no signal', async () => {
    const { page, errors, close } = await stand.open();
    await begin(page, '°C, litres, metres');
    await keptOffline(page);
    await page.context().setOffline(true);
    await page.getByRole('link', { name: 'What goes with a pail' }).click();
    await asks(page, 'What goes with this pail?');
    expect(await answer(page)).toBe('Cover this pail with 1 bucket of straw; no water.');
    await page.getByRole('button', { name: '1 bucket', exact: true }).click();
    await page.getByRole('dialog', { name: '1 bucket' }).getByText('It takes that much to hold its water.').waitFor();
    await page.getByRole('button', { name: 'Close' }).click();

    await page.getByRole('button', { name: '1 pail', exact: true }).click();
    await page.getByLabel('How many', { exact: true }).fill('3');
    await page.getByRole('button', { name: 'Change it' }).click();
    await page.getByRole('button', { name: '3 pails' }).waitFor();
    expect(await answer(page)).toMatch(/^Cover this pail with [3-6](?:\.5)? buckets of straw; no water\.$/u);

    // A bin that the daybook does not know can't be written about.
    await act(page, 'Say which bin it goes into');
    await page.getByRole('dialog').getByRole('button', { name: 'a bin that this daybook does not know' }).click();
    await page.getByRole('dialog').waitFor({ state: 'detached' });

    await page.getByRole('button', { name: '3 pails' }).click();
    await page.getByRole('button', { name: 'There is no kitchen scraps here' }).click();
    expect(await answer(page)).toBe('Say what is in the pail, the basket or the barrow.');
    expect(besidesNoSignal(errors)).toEqual([]);
    await close();
  });

  journey('goes into the daybook with what covers it, and finds its bin again', async () => {
    const { page, errors, close } = await stand.open();
    await begin(page, '°C, litres, metres');
    await buildSlowBin(page);
    expect(await page.getByRole('link', { name: 'What goes with a pail' }).count()).toBe(0);
    await page.getByRole('link', { name: 'Bins' }).click();
    await page.getByRole('link', { name: 'What goes with a pail' }).click();
    await asks(page, 'What goes with this pail?');
    await page.getByRole('button', { name: 'Slow bin' }).waitFor();
    const said = /^Cover this pail with (.+) of straw; no water\.$/u.exec(await answer(page))?.[1];
    expect(said).toBeDefined();
    await act(page, 'It went in so');
    await asks(page, 'Slow bin: how is it?');

    await page.getByRole('link', { name: 'What goes with a pail' }).click();
    await asks(page, 'What goes with this pail?');
    await page.getByRole('button', { name: 'A squeeze, a smell, a height' }).click();
    await page.getByLabel('It smells').selectOption('rotten');
    await page.getByRole('button', { name: 'Close' }).click();
    await page.getByText('It smells sour or rotten: it has no air.').waitFor();
    expect(await answer(page)).toMatch(/^(?:Fork the bin over|Mend the bin) before you feed it/u);

    const [newest = ''] = await daybookLines(page, stand.address);
    expect(newest).toContain('1 pail of kitchen scraps');
    expect(newest).toContain(`${said} of straw`);
    expect(errors).toEqual([]);
    await close();
  });
});

/** A bay that is filled by a third. */
async function buildSlowBin(page: Page): Promise<void> {
  const little = fiveMaterials.slice(0, 3).map((one) => ({ ...one, count: Math.ceil(one.count / 5) }));
  await sayWhatIsHere(page, little);
  await act(page, 'Work out a mix');
  await asks(page, 'What do I lay, and how much of each?');
  await act(page, 'Build card');
  await act(page, 'I built it');
  await page.getByLabel('What the heap is called').fill('Slow bin');
  await page.getByRole('button', { name: 'It stands' }).click();
  await asks(page, 'Slow bin: how is it?');
}
