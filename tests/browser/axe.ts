import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { AxeResults } from 'axe-core';
import type { Page } from 'playwright-core';

const axeSource = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** What axe finds, by rule and element. Its script is run by the browser itself: the page's own policy stays as it is. */
export async function faults(page: Page, where: string): Promise<readonly string[]> {
  // As tall as the page: what lies under the act at the thumb until it is scrolled is no fault of its own.
  const height = await page.evaluate(() => document.documentElement.scrollHeight);
  await page.setViewportSize({ width: 390, height: Math.max(844, height) });
  await page.evaluate(axeSource);
  const { violations } = await page.evaluate(
    (): Promise<AxeResults> =>
      (globalThis as unknown as { axe: { run(options: unknown): Promise<AxeResults> } }).axe.run({
        runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
      }),
  );
  await page.setViewportSize({ width: 390, height: 844 });
  return violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${where}: ${id}: ${html.slice(0, 160)}`));
}
