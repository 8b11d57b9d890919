import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect } from 'vitest';
import { act, answer, asks, begin, buildHeap, daybookLines, fiveMaterials, sayWhatIsHere } from './app-steps.ts';
import { journey } from './chromium.ts';
import { standing } from './stand.ts';

describe('the app when things go wrong', () => {
  const stand = standing();

  journey(
    'keeps one sound chain when two windows write at the same time, and each sees what the other wrote',
    async () => {
      const { page: one, close } = await stand.open();
      await begin(one, '°C, litres, metres');
      await buildHeap(one, 'Shared heap');
      const heap = await one.evaluate(() => location.hash);
      const two = await one.context().newPage();
      await two.goto(`${stand.address}/${heap}`);
      await asks(two, 'Shared heap: how is it?');
      const texts = ['first', 'second', 'third', 'fourth'];
      for (const text of texts) {
        await Promise.all([one, two].map((page) => writeNote(page, `${stand.address}/${heap}`, `${text} thought`)));
      }
      const lines = await daybookLines(one, stand.address);
      expect(lines).toHaveLength(2 + 2 * texts.length);
      await expect.poll(() => daybookLines(two, stand.address)).toEqual(lines);
      await act(one, 'Where it is kept');
      await one.getByRole('button', { name: 'Check every line' }).click();
      await one.getByText(`All ${lines.length} lines are as written`).waitFor();
      await close();
    },
  );

  journey('still works a mix out where the browser keeps nothing, and says that it does not', async () => {
    const { page, close } = await stand.phone();
    await page.addInitScript(() => {
      IDBFactory.prototype.open = () => {
        throw new DOMException('The operation is insecure.', 'SecurityError');
      };
    });
    await page.goto(stand.address);
    await begin(page, '°C, litres, metres');
    await sayWhatIsHere(page, fiveMaterials.slice(0, 3));
    await act(page, 'Work out a mix');
    await asks(page, 'What do I lay, and how much of each?');
    await act(page, 'Build card');
    await act(page, 'I built it');
    await page.getByRole('button', { name: 'It stands' }).click();
    await page.getByText('This browser keeps nothing here').waitFor();
    await page.goto(`${stand.address}/#/daybook/kept`);
    await page.getByText('This browser keeps nothing here: ').waitFor();
    await page.goto(`${stand.address}/#/bins`);
    await asks(page, 'What is here to build from?');
    expect(await answer(page)).toContain('5 bales of straw');
    await close();
  });

  journey('says so when the solver can’t be loaded, keeps what was said, and tries again', async () => {
    const { page, close } = await stand.phone({ serviceWorkers: 'block' });
    await page.context().route('**/*.wasm', (route) => route.abort());
    await page.goto(stand.address);
    await begin(page, '°C, litres, metres');
    await sayWhatIsHere(page, fiveMaterials.slice(0, 3));
    await act(page, 'Work out a mix');
    await page.getByText('The part that works out mixes could not be loaded.').waitFor();
    await page.reload();
    await page.getByText('The part that works out mixes could not be loaded.').waitFor();
    await page.context().unroute('**/*.wasm');
    await act(page, 'Back, and try again');
    await asks(page, 'What is here to build from?');
    expect(await answer(page)).toContain('5 bales of straw');
    await act(page, 'Work out a mix');
    await page.getByText(/^Lay /u).waitFor();
    await close();
  });

  journey('takes the sound lines of a damaged copy, and nothing of what is no copy at all', async () => {
    const folder = await mkdtemp(join(tmpdir(), 'loamwright-copy-'));
    const first = await stand.open({ acceptDownloads: true });
    await begin(first.page, '°C, litres, metres');
    await buildHeap(first.page, 'Kept heap');
    await first.page.goto(`${stand.address}/#/daybook/kept`);
    const downloading = first.page.waitForEvent('download');
    await act(first.page, 'Take a copy');
    const copy = await readFile(await (await downloading).path(), 'utf8');
    await first.close();

    const damaged = join(folder, 'damaged.jsonl');
    await writeFile(damaged, copy.replace('Kept heap', 'Bent heap'));
    const other = join(folder, 'shopping.txt');
    await writeFile(other, 'two bales of straw\n');

    const { page, close } = await stand.open();
    await begin(page, '°C, litres, metres');
    await page.goto(`${stand.address}/#/daybook/kept`);
    await page.locator('input[type=file]').setInputFiles(other);
    await page.getByRole('alert').getByText(/\S/u).waitFor();
    await page.getByText('Its 0 lines lie in this browser').waitFor();
    await page.locator('input[type=file]').setInputFiles(damaged);
    await page.getByText(/1 new line came in; \d+ lines? (was|were) damaged and left out/u).waitFor();
    const lines = await daybookLines(page, stand.address);
    expect(lines.join(' ')).not.toContain('Bent heap');
    await close();
    await rm(folder, { recursive: true });
  });

  journey('keeps a reading that was confirmed, and amends it with the first wording left in sight', async () => {
    const { page, errors, close } = await stand.open();
    await begin(page, '°F, gallons, feet');
    await buildHeap(page, 'Odd heap');
    await act(page, 'Log a reading');
    await page.getByRole('textbox', { name: 'Temperature' }).fill('250');
    await act(page, 'Keep the reading');
    // To change it is the way that stands out; nothing is written by it.
    await page.getByRole('button', { name: 'Go back and change it' }).click();
    expect(await page.getByRole('textbox', { name: 'Temperature' }).inputValue()).toBe('250');
    await act(page, 'Keep the reading');
    await page.getByText('marked doubtful: it proves no heat').waitFor();
    await page.getByRole('button', { name: 'Write down 250 °F all the same' }).click();
    await asks(page, 'Odd heap: how is it?');
    expect(await answer(page)).toContain('At 250 °F');
    await page.getByText('Fire: a heap above').waitFor();

    await page.goto(`${stand.address}/#/daybook`);
    await page.getByRole('link', { name: 'Odd heap read 250 °F in the core, marked doubtful' }).click();
    await act(page, 'Amend it');
    await page.getByRole('textbox', { name: 'Temperature' }).fill('150');
    await act(page, 'Keep the amendment');
    await asks(page, 'What was done, and when?');
    const amended = await daybookLines(page, stand.address);
    expect(amended.filter((line) => line.includes('Odd heap read 150'))).toHaveLength(1);
    expect(amended.filter((line) => line.includes('Odd heap read 250'))).toHaveLength(1);
    expect(errors).toEqual([]);
    await close();
  });

  journey('writes down no tank of water and nothing that lies ahead, and says why', async () => {
    const { page, errors, close } = await stand.open();
    await begin(page, '°C, litres, metres');
    await buildHeap(page, 'Wet heap');
    const heap = await page.evaluate(() => location.hash);
    await page.goto(`${stand.address}/${heap}/watered`);
    await page.getByLabel('How much was poured').fill('50000');
    await act(page, 'Keep that it was watered');
    await page.getByRole('alert').getByText('50000 L at one go is more than anyone pours on a heap').waitFor();
    await page.getByLabel('How much was poured').fill('20');
    await page.getByRole('radio', { name: 'another time' }).check({ force: true });
    await page.getByLabel('Day and time').fill('2099-01-01T12:00');
    await act(page, 'Keep that it was watered');
    await page.getByRole('alert').getByText('The time “2099-01-01 12:00” lies ahead').waitFor();
    const lines = await daybookLines(page, stand.address);
    expect(lines.filter((line) => line.includes('watered'))).toEqual([]);
    expect(errors).toEqual([]);
    await close();
  });
});

async function writeNote(page: Page, heap: string, text: string): Promise<void> {
  await page.goto(`${heap}/note`);
  await page.getByLabel('In a few words').fill(text);
  await act(page, 'Keep the note');
  await page.getByText('Log a reading').waitFor();
}
