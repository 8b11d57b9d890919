import { describe, expect } from 'vitest';
import { act, answer, asks, begin, fiveMaterials, sayWhatIsHere } from './app-steps.ts';
import { journey } from './chromium.ts';
import { standing } from './stand.ts';

/** Enough at the bins for more than one reasonable heap. */
const plenty = [
  ...fiveMaterials,
  { typed: 'hen', name: 'hen manure', count: 6 },
  { typed: 'grass', name: 'grass clippings', count: 30 },
];

describe('the answers at the bins', () => {
  const stand = standing();

  journey('the first is there at once, another is chosen by its trade-off and becomes the card', async () => {
    const { page, errors, close } = await stand.open();
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
  });

  journey('what lies at the bins is known by its names, and said to be there already', async () => {
    const { page, errors, close } = await stand.open();
    await begin(page, '°C, litres, metres');
    await sayWhatIsHere(page, fiveMaterials.slice(0, 1));
    await page.getByRole('button', { name: 'What else is here?' }).click();
    await page.getByRole('searchbox').fill('cereal straw');
    await page.getByText('Here already: straw.').waitFor();
    expect(await page.getByText('Nothing goes by that name here.').count()).toBe(0);
    expect(errors).toEqual([]);
    await close();
  });

  journey('the check worth a minute is told under the mix, and what it finds changes the answer', async () => {
    const { page, errors, close } = await stand.open();
    await begin(page, '°C, litres, metres');
    await sayWhatIsHere(page, [
      { typed: 'fallen', name: 'autumn leaves', count: 60 },
      { typed: 'grass', name: 'grass clippings', count: 24 },
    ]);
    await act(page, 'Work out a mix');
    await asks(page, 'What do I lay, and how much of each?');
    const weighs = page.getByRole('button', { name: /^It weighs/u });
    const before = await weighs.textContent();
    const section = page.locator('section', { has: page.getByRole('heading', { name: 'What a minute would tell' }) });
    await section.waitFor();
    expect(await section.textContent()).toMatch(/One minute before you lay it: .+ times in a hundred/u);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);

    await section.getByRole('link', { name: 'Write the weight down' }).click();
    await page.getByLabel('Full', { exact: true }).fill('6');
    await page.getByLabel('Empty', { exact: true }).fill('1');
    await act(page, 'Keep it');
    await asks(page, 'What is known of autumn leaves?');
    await page.goto(`${stand.address}/#/bins/mix`);
    await asks(page, 'What do I lay, and how much of each?');
    // Leaves of 5 kg a bucket are twice as heavy as leaves of which nothing is known.
    const kgPerM3 = (text: string | null): number => Number(/weighs (\d+)/u.exec(text ?? '')?.[1]);
    expect(kgPerM3(await weighs.textContent())).toBeGreaterThan(1.2 * kgPerM3(before));
    expect(errors).toEqual([]);
    await close();
  });
});
