import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect } from 'vitest';
import { act, asks, begin, buildHeap } from './app-steps.ts';
import { faults } from './audit.ts';
import { journey, type Watched } from './chromium.ts';
import { cameraMark, looked, photoTaken, segmentsOf } from './photo.ts';
import { screenshot } from './screens.ts';
import { type Served, serve } from './serve.ts';
import { type Browsing, browsing } from './stand.ts';

const mostBytes = 300_000;

describe('a picture of a heap', () => {
  const phones = browsing();
  let folder: string;
  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), 'loamwright-photos-'));
  });
  afterAll(() => rm(folder, { recursive: true, force: true }));

  journey('goes small, upright and without its place from one phone to the other, and goes from both', async () => {
    const served = await serve({ dataFolder: join(folder, 'shed') });
    const one = await begun(phones, served);
    await buildHeap(one.page, 'Gate heap');
    const heap = await one.page.evaluate(() => location.hash);
    const taken = await photoTaken(one.page);
    expect(taken.includes(cameraMark)).toBe(true);
    expect(taken.length).toBeGreaterThan(3 * mostBytes);

    await one.page.goto(`${served.address}/${heap}/note`);
    await one.page.getByLabel('In a few words').fill('It steams');
    await choose(one.page, 'straw.txt', Buffer.from('two bales of straw'));
    await one.page.getByText('That can’t be read as a picture here.').waitFor();
    await choose(one.page, 'heap.jpg', taken);
    await one.page.getByLabel('What it shows').fill('Steam over the gate heap');
    await screenshot(one.page, 'photo-adding');
    expect(await faults(one.page, 'adding a picture')).toEqual([]);
    await act(one.page, 'Keep the note');
    await asks(one.page, 'Gate heap: how is it?');

    await one.page.goto(`${served.address}/#/daybook`);
    await one.page.getByRole('img', { name: 'Steam over the gate heap' }).waitFor();
    await screenshot(one.page, 'photo-lines');
    expect(await faults(one.page, 'the daybook with a picture')).toEqual([]);
    await exchange(one.page, served);

    const [kept] = await picturesOn(served);
    if (kept === undefined) throw new Error('the computer has no picture');
    expect(kept.length).toBeLessThanOrEqual(mostBytes);
    const markers = segmentsOf(kept);
    // APP1 (Exif, XMP), APP13 (IPTC) and comments: where cameras and programs write who, when and where.
    for (const marker of [0xffe1, 0xffed, 0xfffe]) expect(markers).not.toContain(marker);
    expect(kept.includes(cameraMark)).toBe(false);
    expect(kept.includes('Exif')).toBe(false);
    // Orientation 6: what is stored on the left is seen at the top (Exif 2.32, table 6).
    const { width, height, top, bottom } = await looked(one.page, kept);
    expect(Math.max(width, height)).toBeLessThanOrEqual(1600);
    expect(height / width).toBeCloseTo(1.5, 2);
    expect((top[0] ?? 0) - (top[2] ?? 0)).toBeGreaterThan(50);
    expect((bottom[2] ?? 0) - (bottom[0] ?? 0)).toBeGreaterThan(50);

    const two = await begun(phones, served);
    await exchange(two.page, served);
    await two.page.goto(`${served.address}/#/daybook`);
    await two.page.getByRole('img', { name: 'Steam over the gate heap' }).waitFor();
    await two.page.getByRole('link', { name: 'It steams' }).click();
    await two.page.getByRole('img', { name: 'Steam over the gate heap' }).waitFor();
    await screenshot(two.page, 'photo-whole');
    expect(await faults(two.page, 'a line with its picture')).toEqual([]);

    await two.page.getByRole('button', { name: 'Take the picture away' }).click();
    await two.page.getByRole('button', { name: 'Take it away' }).click();
    await two.page.getByText('The picture was taken away.').waitFor();
    await exchange(two.page, served);
    expect(await picturesOn(served)).toEqual([]);
    await exchange(one.page, served);
    await one.page.goto(`${served.address}/#/daybook`);
    await one.page.getByText('The picture was taken away.').waitFor();
    expect(await attachmentsIn(one.page)).toBe(0);

    // The same picture again: it comes back.
    await one.page.getByRole('link', { name: 'It steams' }).click();
    await choose(one.page, 'heap.jpg', taken);
    await one.page.getByRole('button', { name: 'Keep the picture' }).click();
    await one.page.getByRole('img', { name: 'A picture without words' }).waitFor();
    await exchange(one.page, served);
    expect(await picturesOn(served)).toHaveLength(1);
    for (const { errors, close } of [one, two]) {
      expect(errors).toEqual([]);
      await close();
    }
    await served.stop();
  });

  journey('that finds no room is told so, and neither it nor its line is kept', async () => {
    const served = await serve();
    const { page, close } = await begun(phones, served);
    await buildHeap(page, 'Gate heap');
    const heap = await page.evaluate(() => location.hash);
    const taken = await photoTaken(page);
    await page.goto(`${served.address}/${heap}/note`);
    await page.getByLabel('In a few words').fill('It steams');
    await choose(page, 'heap.jpg', taken);
    await page.getByLabel('What it shows').waitFor();
    await page.evaluate(() => {
      const refuse = (): never => {
        throw new DOMException('no room', 'QuotaExceededError');
      };
      IDBObjectStore.prototype.add = refuse;
      IDBObjectStore.prototype.put = refuse;
    });
    await act(page, 'Keep the note');
    await page.getByRole('alert').getByText('The device is full').waitFor();
    expect(await page.getByLabel('In a few words').inputValue()).toBe('It steams');
    expect(await attachmentsIn(page)).toBe(0);
    await close();
    await served.stop();
  });
});

async function begun({ at }: Browsing, served: Served): Promise<Watched> {
  const phone = await at(served.address);
  await begin(phone.page, '°C, litres, metres');
  return phone;
}

/** Chooses a file as from the phone's pictures. */
async function choose(page: Page, name: string, buffer: Buffer): Promise<void> {
  const mimeType = name.endsWith('.jpg') ? 'image/jpeg' : 'text/plain';
  await page.getByLabel('Choose a picture').setInputFiles({ name, mimeType, buffer });
}

async function exchange(page: Page, served: Served): Promise<void> {
  await page.goto(`${served.address}/#/daybook/kept`);
  await page.getByRole('button', { name: 'Exchange both ways' }).click();
  await page.getByText(/^Done: /u).waitFor();
}

/** The pictures in the daybook's file, as the computer hands it out. */
async function picturesOn({ address }: Served): Promise<readonly Buffer[]> {
  const text = await (await fetch(`${address}/api/daybook`)).text();
  return text
    .trimEnd()
    .split('\n')
    .map((line) => JSON.parse(line) as { readonly attachment?: { readonly bytes_base64: string } })
    .flatMap(({ attachment }) => (attachment === undefined ? [] : [Buffer.from(attachment.bytes_base64, 'base64')]));
}

/** How many attachments lie in the phone's own database. */
function attachmentsIn(page: Page): Promise<number> {
  return page.evaluate(
    () =>
      new Promise<number>((resolve, reject) => {
        const opening = indexedDB.open('loamwright');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const database = opening.result;
          const counting = database.transaction('notes').objectStore('notes').count();
          counting.onsuccess = () => {
            database.close();
            resolve(counting.result);
          };
          counting.onerror = () => reject(counting.error);
        };
      }),
  );
}
