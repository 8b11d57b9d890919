import { describe, expect } from 'vitest';
import { act, answer, asks, begin, buildHeap, keptOffline } from './app-steps.ts';
import { journey } from './chromium.ts';
import { besidesNoSignal, standing } from './stand.ts';

describe('the beds', () => {
  const stand = standing();

  journey('a bed set up, sown, tested and spread on with no signal, and a heap shared out', async () => {
    const { page, errors, close } = await stand.open();
    await begin(page, '°C, litres, metres');
    await keptOffline(page);
    await page.context().setOffline(true);
    await buildHeap(page, 'Spring heap');

    await page.getByRole('link', { name: 'Beds' }).click();
    await asks(page, 'What do the beds want?');
    expect(await answer(page)).toContain('No bed is written down yet');
    await act(page, 'Set up a bed');
    await page.getByLabel('Name').fill('Kale');
    for (const none of ['0', '-3']) {
      await page.getByLabel('Area').fill(none);
      await page.getByText(`“${none}” is too little`).waitFor();
    }
    await page.getByLabel('Area').fill('4 x');
    await page.getByText('What would do: 4 m², 1.2x2.4m.').waitFor();
    await page.getByLabel('Area').fill('12');
    await act(page, 'Keep the bed');
    await asks(page, 'What does Kale want?');
    expect(await answer(page)).toContain('Nothing is sown here');

    await act(page, 'Say what is sown');
    await page.getByRole('searchbox').fill('kal');
    await page.getByRole('option', { name: 'kale', exact: true }).click();
    // Typed in full it is still there to be seen; what no table knows is told.
    await page.getByRole('searchbox').fill('kale');
    await page.getByRole('option', { name: 'kale', exact: true }).waitFor();
    await page.getByRole('searchbox').fill('moonfruit');
    await page.getByText('No crop goes by that name').waitFor();
    await page.getByRole('searchbox').fill('kale');
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
    await page.getByLabel('Phosphorus', { exact: true }).fill('many');
    await page.getByText('“many” is no number from 0 to 100,000.').waitFor();
    await page.getByLabel('Phosphorus', { exact: true }).fill('84');
    await page.getByLabel('Potassium', { exact: true }).fill('100');
    await page.getByLabel('Unit').selectOption('ppm');
    await page.getByText('can’t be judged yet').first().waitFor();
    await page.getByLabel('Its method for phosphorus').selectOption({ label: 'Bray-1' });
    await page.getByText('far too high').first().waitFor();
    // The one says nothing of the other.
    await page.getByText(/^potassium, 100 ppm: it can’t be judged yet/u).waitFor();
    await page.getByLabel('Its method for potassium').selectOption({ label: 'ammonium acetate' });
    await page.getByText(/^potassium, 100 ppm: (low|medium)/u).waitFor();
    await act(page, 'Keep the test');
    await asks(page, 'What does Kale want?');

    // Years on: nothing went on it yet; then compost, changed by a touch, and what else was said is kept from the daybook.
    await page.getByRole('link', { name: 'Years on' }).click();
    await asks(page, 'What becomes of Kale?');
    expect(await answer(page)).toContain('With nothing put on organic matter goes from about');
    await page.getByRole('button', { name: 'Put something on each year' }).click();
    await page.getByRole('searchbox').fill('compost');
    await page.getByRole('option', { name: 'finished compost', exact: true }).click();
    await page.getByLabel('How many', { exact: true }).fill('4');
    await page.getByLabel('Of which measure').selectOption({ label: 'garden barrow' });
    await page.getByRole('button', { name: 'It is here' }).click();
    await page.getByText('more water (').waitFor();
    expect(await answer(page)).toMatch(
      /^With 4 barrows of finished compost each year organic matter goes from about .+ to about/u,
    );
    const rich = await answer(page);
    await page.getByRole('button', { name: '4 barrows' }).click();
    await page.getByLabel('How many', { exact: true }).fill('1');
    await page.getByRole('button', { name: 'Change it' }).click();
    await page.getByRole('button', { name: '1 barrow' }).waitFor();
    expect(await answer(page)).not.toBe(rich);
    await page.getByText('In 10 years').first().waitFor();
    await page.getByText('From the daybook: its area, 12 m²').waitFor();
    await page.getByText('phosphorus (far too high)').waitFor();
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
    await page.getByRole('button', { name: 'As it is written down' }).click();
    await page.getByText('With nothing put on organic matter').waitFor();
    await page.getByRole('link', { name: 'Write down a soil test' }).waitFor();

    await page.getByRole('link', { name: 'Beds' }).click();
    await act(page, 'Set up a bed');
    await page.getByLabel('Name').fill('kale ');
    await page.getByText('There is a bed called Kale already').waitFor();
    await page.getByLabel('Name').fill('Leeks');
    await page.getByLabel('What soil it is').selectOption({ label: 'clay loam' });
    await page.getByLabel('Area').fill('4000 x 2500 m');
    await act(page, 'Keep the bed');
    await page.getByText('has 10000000 m²').waitFor();
    await page.getByLabel('Area').fill('1 x 4 m');
    await act(page, 'Keep the bed');
    await asks(page, 'What does Leeks want?');
    await page.getByRole('link', { name: 'Change the bed' }).click();
    expect(await page.getByLabel('Area').inputValue()).toBe('1 x 4 m');
    await page.goBack();
    await asks(page, 'What does Leeks want?');

    // What is reckoned to go on stands ready where it is written down, and can be changed there.
    await act(page, 'Say what is sown');
    await page.getByRole('searchbox').fill('leek');
    await page.getByRole('option').first().click();
    await act(page, 'Keep it');
    await act(page, 'How much may go on');
    await asks(page, 'How much may go on Leeks?');
    await page.getByRole('radio', { name: 'Left on top' }).check({ force: true });
    await act(page, 'Add something');
    await page.getByRole('searchbox').fill('goat');
    await page.getByRole('option', { name: 'goat bedding', exact: true }).click();
    await page.getByRole('button', { name: 'It is here' }).click();
    await page.getByText(/^Put .+ of goat bedding on the bed/u).waitFor();
    const [, reckoned = ''] = /Put (.+) of goat bedding/u.exec(await answer(page)) ?? [];
    await act(page, 'Write down what went on');
    await asks(page, 'What was put on Leeks?');
    expect(await answer(page)).toContain(`${reckoned} of goat bedding went on`);
    expect(await page.getByRole('radio', { name: 'Left on top' }).isChecked()).toBe(true);
    await page.locator('main .answer button').first().click();
    await page.getByLabel('How many', { exact: true }).fill('1');
    await page.getByRole('button', { name: 'Change it' }).click();
    await act(page, 'Keep it');
    await asks(page, 'What does Leeks want?');
    await page.getByText('of goat bedding').first().waitFor();
    await page.getByRole('link', { name: 'Beds' }).click();
    await page.getByRole('link', { name: 'Where does it all go?' }).click();
    await asks(page, 'Where does it all go?');
    expect(await answer(page)).toContain('Of the year’s');

    await page.getByRole('link', { name: 'Heaps' }).click();
    await page.locator('.heap-lines a').first().click();
    await page.getByRole('link', { name: 'Spread it' }).click();
    await asks(page, 'Where does Spring heap go?');
    await page.getByRole('textbox', { name: 'Barrows in the heap' }).fill('5');
    await page.getByRole('textbox', { name: 'Barrows in the heap' }).blur();
    for (const [field, typed, most] of [
      ['Barrows in the heap', '5.5', '10,000'],
      ['Of them go on beds', '99', '5'],
    ] as const) {
      await page.getByRole('textbox', { name: field }).fill(typed);
      await page.getByText(`“${typed}” is no whole number from 1 to ${most}.`).waitFor();
      await page.getByRole('textbox', { name: field }).fill('5');
    }
    await page.getByRole('textbox', { name: 'Of them go on beds' }).fill('4');
    await page.getByRole('textbox', { name: 'Of them go on beds' }).blur();
    await page.getByRole('radio', { name: 'evenly, by area' }).check({ force: true });
    // 12 to 4 m²: three barrows to one.
    await page.getByText('3 barrows on Kale').waitFor();
    expect(await answer(page)).toContain('1 barrow on Leeks');
    await page.getByText('By its test Kale has phosphorus that is far too high').waitFor();
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
    await act(page, 'Write it down as spread');
    // One of five is left, and it is that which is counted from now on.
    await page.getByText('What is left of it comes to about 1 barrow').waitFor();
    await page.getByRole('link', { name: 'Spread it' }).click();
    await page.getByText('Barrows left').waitFor();
    expect(await page.getByRole('textbox', { name: 'Barrows left in the heap' }).inputValue()).toBe('1');
    await page.getByRole('radio', { name: 'evenly, by area' }).check({ force: true });
    await act(page, 'Write it down as spread');
    // A heap that is gone tells what it came to, and asks for nothing more.
    await page.getByRole('link', { name: 'How much is there?' }).click();
    await page.getByText('Nothing of it is left.').waitFor();
    expect(await page.getByRole('link', { name: 'Call it ready' }).count()).toBe(0);
    await act(page, 'To the heap');
    await page.getByRole('link', { name: 'Beds' }).click();
    await page.getByRole('link', { name: /Kale/u }).click();
    await page.getByText('3 barrows of Spring heap spread on Kale.').waitFor();
    await page.goBack();
    await page.getByRole('link', { name: /Leeks/u }).click();
    await page.getByText('1 barrow of Spring heap spread on Leeks.').waitFor();
    expect(besidesNoSignal(errors)).toEqual([]);
    await close();
  });
});
