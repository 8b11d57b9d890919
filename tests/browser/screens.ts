import { mkdir } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';

const takesScreenshots = process.env['LOAMWRIGHT_SCREENSHOTS'] === '1';

/** A picture of the whole page, where pictures are asked for. */
export async function screenshot(page: Page, name: string): Promise<void> {
  if (!takesScreenshots) return;
  const screens = join(tmpdir(), 'loamwright-screens');
  await mkdir(screens, { recursive: true });
  await page.screenshot({ path: join(screens, `${name}.png`), fullPage: true });
}
