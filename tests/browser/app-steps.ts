import type { Page } from 'playwright-core';

/** What lies at the bins in the journeys: found by what a grower would type, and so many of the usual measure. */
export interface Lying {
  readonly typed: string;
  readonly name: string;
  readonly count: number;
}

/** Five materials of Quarry Lane. */
export const fiveMaterials: readonly Lying[] = [
  { typed: 'straw', name: 'straw', count: 5 },
  { typed: 'coffee', name: 'coffee grounds', count: 16 },
  { typed: 'goat', name: 'goat bedding', count: 24 },
  { typed: 'fallen', name: 'autumn leaves', count: 24 },
  { typed: 'kitchen', name: 'kitchen scraps', count: 8 },
];

/** The one act of the page. */
export async function act(page: Page, name: string): Promise<void> {
  await page.locator('.act', { hasText: name }).click();
}

/** Waits until the page asks this question. */
export async function asks(page: Page, question: string): Promise<void> {
  await page.getByRole('heading', { level: 1, name: question, exact: true }).waitFor();
}

/** The answer of the page as one line of text. */
export async function answer(page: Page): Promise<string> {
  const texts = await page.locator('main .answer').allInnerTexts();
  return texts.join(' ').replace(/\s+/gu, ' ').trim();
}

/** From the first page into an own daybook. */
export async function begin(page: Page, units: '°F, gallons, feet' | '°C, litres, metres'): Promise<void> {
  await asks(page, 'What is this?');
  await page.getByRole('radio', { name: units }).check({ force: true });
  await act(page, 'Begin my own daybook');
  await asks(page, 'What is here to build from?');
}

/** Says what lies at the bins, one material after the other. */
export async function sayWhatIsHere(page: Page, lying: readonly Lying[]): Promise<void> {
  for (const [i, { typed, name, count }] of lying.entries()) {
    if (i === 0) await act(page, 'Say what is here');
    else await page.getByRole('button', { name: 'What else is here?' }).click();
    await page.getByRole('searchbox').fill(typed);
    await page.getByRole('option', { name, exact: true }).click();
    const howMany = page.getByLabel('How many', { exact: true });
    await howMany.fill(String(count));
    await page.getByRole('button', { name: 'It is here' }).click();
    await page.getByText(`of ${name}`).first().waitFor();
  }
}

/** Builds a heap of three materials, from the bins to its own page. */
export async function buildHeap(page: Page, name: string): Promise<void> {
  await sayWhatIsHere(page, fiveMaterials.slice(0, 3));
  await act(page, 'Work out a mix');
  await asks(page, 'What do I lay, and how much of each?');
  await act(page, 'Build card');
  await act(page, 'I built it');
  await page.getByLabel('What the heap is called').fill(name);
  await page.getByRole('button', { name: 'It stands' }).click();
  await asks(page, `${name}: how is it?`);
}

/** A reading, typed as a grower types it. */
export async function typeReading(page: Page, typed: string): Promise<void> {
  await act(page, 'Log a reading');
  await page.getByRole('textbox', { name: 'Temperature' }).fill(typed);
  await act(page, 'Keep the reading');
}

/** Every line of the daybook as it is told, newest first. */
export async function daybookLines(page: Page, address: string): Promise<readonly string[]> {
  await page.goto(`${address}/#/daybook`);
  await asks(page, 'What was done, and when?');
  const lines = await page.locator('main .lines a').allInnerTexts();
  return lines.map((line) => line.replace(/\s+/gu, ' ').trim());
}

/** Waits until the app itself lies on the device. */
export async function keptOffline(page: Page): Promise<void> {
  await page.evaluate(async () => {
    const { active } = await navigator.serviceWorker.ready;
    if (active === null || active.state === 'activated') return;
    await new Promise<void>((resolve) => {
      active.addEventListener('statechange', () => active.state === 'activated' && resolve());
    });
  });
}

/** How many pages a PDF has. */
export function pagesOf(pdf: Buffer): number {
  return pdf.toString('latin1').match(/\/Type\s*\/Page(?!s)/gu)?.length ?? 0;
}
