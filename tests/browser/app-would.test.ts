import type { Page } from 'playwright-core';
import { describe, expect } from 'vitest';
import { act, answer, asks, begin, fiveMaterials, keptOffline, sayWhatIsHere } from './app-steps.ts';
import { journey } from './chromium.ts';
import { screenshot } from './screens.ts';
import { besidesNoSignal, standing } from './stand.ts';

/** Waits until the heaps were followed, and gives the answer. */
async function followed(page: Page): Promise<string> {
  await page.locator('.answer', { hasText: /^It (?:should|may|is likely)/u }).waitFor();
  await page.getByText('Following them anew').waitFor({ state: 'detached' });
  return answer(page);
}

/** So many of how many heaps get hot, as a chance or as a count. */
function heaps(said: string): { readonly met: number; readonly of: number } {
  const [, met, of] = /(\d+) of (\d+) (?:draws|heaps)/u.exec(said) ?? [];
  return { met: Number(met), of: Number(of) };
}

describe('what a heap would do', () => {
  const stand = standing();

  journey('is asked of a mix with no signal, by day, by place and by what would change it', async () => {
    const { page, errors, close } = await stand.open();
    await begin(page, '°C, litres, metres');
    await keptOffline(page);
    await page.context().setOffline(true);
    await sayWhatIsHere(page, fiveMaterials);
    await act(page, 'Work out a mix');
    await asks(page, 'What do I lay, and how much of each?');
    await page.getByRole('link', { name: 'What this heap would do here' }).click();
    await asks(page, 'What would this heap do here?');
    await page.getByText(/^Following 64 heaps that this may turn out to be/u).waitFor();
    const mild = await followed(page);
    expect(mild).toMatch(/around day \d+ \(\d+–\d+\), at \d+–\d+ °C/u);
    const lost = await page.locator('.told', { hasText: 'In 60 days it loses' }).textContent();
    expect(lost).toMatch(/\d\s% of its dry matter \(\d+–\d+\), .+ of its nitrogen \(\d+–\d+\)\.$/u);
    await page.getByText(/^Told from 64 heaps that this mix may turn out to be\./u).waitFor();
    expect(heaps(mild).of).toBe(64);
    await page
      .getByText('That is with air of 12 °C, pallets around it and nothing on it, of stuff as warm as the air.')
      .waitFor();
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
    await screenshot(page, 'would');

    // The day is chosen with the keys; the picture and the words go with it.
    const day = page.getByRole('slider', { name: 'Day' });
    await day.focus();
    await page.keyboard.press('Home');
    await page.getByText(/^Day 0: 12\s°C in the core, 12\s°C half way out, 12\s°C at the outside/u).waitFor();
    expect(await day.getAttribute('aria-valuetext')).toMatch(/^day 0: 12\s°C in the core, 12\s°C at the outside$/u);
    await page.keyboard.press('ArrowRight');
    await page.getByText(/^Day 1: /u).waitFor();
    await page.keyboard.press('End');
    await page.getByText(/^Day 60: /u).waitFor();
    await page.getByRole('img', { name: /^The heap cut through on day 60: / }).waitFor();

    // One thing otherwise is told as a difference to the same heaps.
    await page.getByRole('button', { name: 'A thick blanket of straw on it' }).click();
    const difference = page.getByText(/^So \d+ of 64 heaps get hot, .+; it stays hot for .+\.$/u);
    await difference.waitFor();
    const straw = heaps((await difference.textContent()) ?? '');
    const change = straw.met - heaps(mild).met;
    const told =
      change === 0 ? 'just as many' : `${Math.abs(change)} ${change > 0 ? 'more' : 'fewer'} than as it stands`;
    expect(await difference.textContent()).toContain(told);

    // What lies behind a quantity.
    await page.getByRole('button', { name: /^\d+–\d+\s°C$/u }).click();
    await page
      .getByRole('dialog', { name: 'Hottest of the core' })
      .getByText(/^Likely \d+\s°C\. One time in ten it is below/u)
      .waitFor();
    await page.keyboard.press('Escape');

    // The place: what can't be read is told, and straw on it is then the heap itself.
    await page.getByRole('button', { name: '12 °C', exact: true }).click();
    const sheet = page.getByRole('dialog', { name: 'What is it like here?' });
    await sheet.getByLabel('Or as you know it').fill('chilly');
    await sheet.getByText('chilly').waitFor();
    expect(await sheet.getByRole('button', { name: 'So it is here' }).getAttribute('aria-disabled')).toBe('true');
    await sheet.getByRole('radio', { name: 'a mild week, 12 °C' }).check({ force: true });
    await sheet.getByRole('radio', { name: 'straw', exact: true }).check({ force: true });
    await sheet.getByRole('button', { name: 'So it is here' }).click();
    await page.getByText('pallets around it and straw on it, of stuff as warm as the air.').waitFor();
    expect(heaps(await followed(page))).toEqual(straw);
    expect(await page.getByRole('button', { name: 'A thick blanket of straw on it' }).count()).toBe(0);

    // A blanket is as deep as it is said to be: what is another heap is told, and what is left out is as usual.
    await page.getByRole('button', { name: 'straw', exact: true }).click();
    const depth = sheet.getByLabel('How deep it lies');
    await sheet.getByText('Left out, 20 cm.').waitFor();
    await depth.fill('200');
    expect(await sheet.getByRole('button', { name: 'So it is here' }).getAttribute('aria-disabled')).toBe('true');
    await depth.fill('40 cm');
    await screenshot(page, 'would-depth');
    await sheet.getByRole('button', { name: 'So it is here' }).click();
    await page.getByText('pallets around it and 40 cm of straw on it, of stuff as warm as the air.').waitFor();
    expect(heaps(await followed(page)).of).toBe(64);

    // How warm the stuff comes: what is hotter than any heap is told, and what can be is the heap’s own from the first.
    await page.getByRole('button', { name: 'as warm as the air' }).click();
    const warmth = sheet.getByLabel('How warm the stuff is when it is laid');
    await warmth.fill('90');
    await sheet.getByText(/75\s°C/u).waitFor();
    expect(await sheet.getByRole('button', { name: 'So it is here' }).getAttribute('aria-disabled')).toBe('true');
    await warmth.fill('35');
    await screenshot(page, 'would-here');
    await sheet.getByRole('button', { name: 'So it is here' }).click();
    await page.getByText(/, of stuff that comes at 35\s°C\.$/u).waitFor();
    await followed(page);
    await day.focus();
    await page.keyboard.press('Home');
    await page.getByText(/^Day 0: 35\s°C in the core/u).waitFor();

    // The air that was said is kept for the next heap.
    await page.getByRole('button', { name: 'Say what it is like here' }).click();
    await page.getByRole('radio', { name: 'a cool week, 5 °C' }).check({ force: true });
    await page.getByRole('button', { name: 'So it is here' }).click();
    await followed(page);
    await act(page, 'Build card');
    await asks(page, 'How do I build it?');
    await page.goBack();
    await asks(page, 'What would this heap do here?');
    await page
      .getByText('That is with air of 5 °C, pallets around it and nothing on it, of stuff as warm as the air.')
      .waitFor();
    await followed(page);
    expect(besidesNoSignal(errors)).toEqual([]);
    await close();
  });

  journey('is asked of a heap of the daybook, in °F, and leads back to it', async () => {
    const { page, errors, close } = await stand.open();
    await page.getByRole('button', { name: 'Look round Quarry Lane' }).click();
    await asks(page, 'What stands where?');
    await page.getByRole('link', { name: 'Settings' }).click();
    await page.getByRole('radio', { name: '°F, gallons, feet' }).check({ force: true });
    await page.getByRole('link', { name: 'Heaps' }).click();
    await page.locator('.heap-lines a').first().click();
    await page.getByRole('link', { name: 'What this heap would do here' }).click();
    await page.getByRole('heading', { level: 1, name: /: what would it do, as it was built and tended\?$/u }).waitFor();
    expect(await followed(page)).toMatch(/around day \d+ \(\d+–\d+\), at \d+–\d+ °F/u);
    await page
      .getByText(/^That is with the air as read beside it, .+ Then it goes as it was written down: /u)
      .waitFor();
    await screenshot(page, 'would-heap');
    await page.getByRole('button', { name: 'read beside it' }).click();
    await page.getByRole('radio', { name: /^a mild week, / }).check({ force: true });
    await page.getByRole('button', { name: 'So it is here' }).click();
    await page.getByText(/^That is with air of 54\s°F, /u).waitFor();
    await followed(page);
    await act(page, 'Back to the heap');
    await page.getByRole('heading', { level: 1, name: /: how is it\?$/u }).waitFor();
    expect(errors).toEqual([]);
    await close();
  });
});
