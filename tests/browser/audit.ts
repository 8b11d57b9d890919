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

/** Buttons, links and fields that stand by themselves and are lower than 48 px. Words within a sentence are exempt (WCAG 2.2, 2.5.8). */
export async function smallTargets(page: Page, where: string): Promise<readonly string[]> {
  return page.evaluate((screen) => {
    const inSentence = (element: Element): boolean =>
      element.matches('.quantity') || element.closest('p, li.small, .small') !== null;
    return [...document.querySelectorAll('button, a, input, select, textarea, summary')]
      .filter((element) => element.checkVisibility() && !element.closest('[inert]') && !inSentence(element))
      .map((element) => ({ element, height: element.getBoundingClientRect().height }))
      .filter(({ height }) => height < 47.5)
      .map(({ element, height }) => `${screen}: ${Math.round(height)} px: ${element.outerHTML.slice(0, 120)}`);
  }, where);
}
