import { describe, expect } from 'vitest';
import { journey } from './chromium.ts';
import { browsing } from './stand.ts';

describe('the browser of the journeys', () => {
  const { phone } = browsing();

  journey('is a phone of 390 by 844 at two device pixels to one', async () => {
    const { page, errors, close } = await phone();
    await page.setContent('<meta name="viewport" content="width=device-width">');
    expect(await page.evaluate(() => [innerWidth, innerHeight, devicePixelRatio])).toEqual([390, 844, 2]);
    expect(errors).toEqual([]);
    await close();
  });

  journey('collects errors from the console and errors that nothing caught', async () => {
    const { page, errors, close } = await phone();
    await page.setContent('<script>console.error("told"); throw new Error("thrown")</script>');
    expect(errors).toEqual(['told', 'Error: thrown']);
    await close();
  });
});
