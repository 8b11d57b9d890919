import { describe, expect } from 'vitest';
import { act, answer, asks, begin, daybookLines, keptOffline, sayWhatIsHere } from './app-steps.ts';
import { journey } from './chromium.ts';
import { besidesNoSignal, standing } from './stand.ts';

describe('a material as it is here', () => {
  const stand = standing();

  journey('is reached from the bins, dried down and corrected, and counts from then on, with no signal', async () => {
    const { page, errors, close } = await stand.open();
    await begin(page, '°C, litres, metres');
    await sayWhatIsHere(page, [{ typed: 'tree surgeon', name: 'wood chips', count: 4 }]);
    await keptOffline(page);
    await page.context().setOffline(true);
    await page.locator('.mounds').getByRole('link', { name: 'wood chips' }).click();
    await asks(page, 'What is known of wood chips?');
    const before = await answer(page);
    expect(before).toMatch(/It is about \d+ % water, with \d+ of carbon to one of nitrogen/u);
    await page.getByRole('link', { name: 'A handful dried' }).click();
    await page.getByLabel('Before', { exact: true }).fill('100');
    await page.getByLabel('After', { exact: true }).fill('65');
    await page.getByText(/between .* before; now 3\d/u).waitFor();
    await act(page, 'Keep it');
    await asks(page, 'What is known of wood chips?');
    expect(await answer(page)).toMatch(/It is about 3[45] % water/u);
    await act(page, 'How wet it is');
    await page.getByRole('radio', { name: 'wet', exact: true }).check({ force: true });
    await act(page, 'Keep it');
    await asks(page, 'What is known of wood chips?');
    expect(await answer(page)).toContain('It is about 68 % water');
    const lines = await daybookLines(page, stand.address);
    expect(lines.join(' ')).toMatch(/wood chips described: water about 68 %\. .*dried in an oven: 100 g to 65 g/u);
    // The daybook asks the computer by itself and is refused; the app goes on.
    expect(besidesNoSignal(errors)).toEqual([]);
    await close();
  });

  journey('of one’s own goes by its name at the bins and in the mix', async () => {
    const { page, errors, close } = await stand.open();
    await begin(page, '°C, litres, metres');
    await page.goto(`${stand.address}/#/material/wood-chips/own`);
    await page.getByLabel('What it is called').fill('Quarry mulch');
    await act(page, 'Keep it');
    await asks(page, 'What is known of Quarry mulch?');
    await page.getByText('Your own material, like wood chips').waitFor();
    await page.getByRole('link', { name: 'Bins' }).click();
    await sayWhatIsHere(page, [
      { typed: 'quarry', name: 'Quarry mulch', count: 6 },
      { typed: 'wet grass', name: 'grass clippings', count: 4 },
    ]);
    await act(page, 'Work out a mix');
    await asks(page, 'What do I lay, and how much of each?');
    expect(await answer(page)).toContain('of Quarry mulch');
    expect(errors).toEqual([]);
    await close();
  });

  journey(
    'is asked about where a word is general, and what should not go on a heap is met with its caution',
    async () => {
      const { page, errors, close } = await stand.open();
      await begin(page, '°C, litres, metres');
      await page.goto(`${stand.address}/#/material`);
      await page.getByRole('searchbox').fill('browns');
      await page.getByText('It may be one of these').waitFor();
      expect(await page.getByRole('option').first().textContent()).toBe('autumn leaves');
      await page.getByRole('searchbox').fill('bacon');
      await page.getByText('never on a heap').waitFor();
      await page.getByText('Instead: your food-waste collection').waitFor();
      await page.getByRole('searchbox').fill('cardbord');
      await page.getByText('Did you mean').waitFor();
      await page.getByRole('option', { name: 'corrugated cardboard' }).click();
      await asks(page, 'What is known of corrugated cardboard?');
      expect(errors).toEqual([]);
      await close();
    },
  );
});
