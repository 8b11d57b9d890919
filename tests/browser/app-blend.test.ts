import { describe, expect } from 'vitest';
import { act, answer, asks, begin, keptOffline } from './app-steps.ts';
import { journey } from './chromium.ts';
import { besidesNoSignal, standing } from './stand.ts';

describe('potting and filling a bed', () => {
  const stand = standing();

  journey('mixes for pots with no signal, lays a range open, and answers a salty young compost', async () => {
    const { page, errors, close } = await stand.open();
    await begin(page, '°C, litres, metres');
    await keptOffline(page);
    await page.context().setOffline(true);
    await page.getByRole('link', { name: 'A potting mix of your compost' }).click();
    await asks(page, 'What do I stir together for these pots?');
    expect(await answer(page)).toMatch(
      /^Stir together 1\.25 buckets \(23 L\) of compost, .* that fills 60 L of pots and trays\.$/u,
    );
    await page.locator('main .answer button').last().click();
    await page.getByRole('dialog', { name: /60/u }).waitFor();
    await page.getByRole('button', { name: 'Close' }).click();

    await act(page, 'Say what the compost is like');
    await page.getByRole('radio', { name: 'of ammonia' }).check({ force: true });
    await page.getByLabel('Salt meter').fill('4,5');
    await page.getByRole('button', { name: 'Reckon with it' }).click();
    await page.getByText('still young').first().waitFor();
    expect(await page.locator('main').textContent()).toMatch(/let \d+.L of rain or tap water run through it/u);

    await page.getByRole('button', { name: 'plants that are potted on' }).click();
    await page.getByRole('radio', { name: 'seedlings' }).check({ force: true });
    await page.getByLabel('How many pots', { exact: true }).fill('40');
    await page.getByRole('button', { name: 'Reckon with it' }).click();
    await page.getByText('that fills 120').waitFor();
    expect(await answer(page)).not.toContain('compost');
    expect(besidesNoSignal(errors)).toEqual([]);
    await close();
  });

  journey('fills a bed, with a foot of wood, on a deck', async () => {
    const { page, errors, close } = await stand.open();
    await begin(page, '°C, litres, metres');
    await page.getByRole('link', { name: 'Fill a raised bed' }).click();
    await asks(page, 'What fills this raised bed?');
    expect(await answer(page)).toMatch(/^Bring [\d.]+ barrows .* fills the bed of 1,200.L\.$/u);
    await page.getByRole('button', { name: '33 % compost' }).click();
    await page.getByLabel('Compost, % of the volume').fill('60');
    await page.getByRole('button', { name: 'Reckon with it' }).click();
    await page.getByText('Less compost is better').waitFor();
    await act(page, 'Say how large the bed is');
    await page.getByLabel('Length inside').fill('3');
    await page.getByLabel('Wood chips at the foot').fill('10');
    await page.getByRole('radio', { name: 'a deck or balcony' }).check({ force: true });
    await page.getByRole('button', { name: 'Reckon with it' }).click();
    await page.getByText(/First lay/u).waitFor();
    expect(await answer(page)).toMatch(/of wood chips at the foot\. Bring .* fills the bed of 1,400.L\.$/u);
    expect(await page.locator('main').textContent()).toContain('let a structural engineer say');
    expect(errors).toEqual([]);
    await close();
  });
});
