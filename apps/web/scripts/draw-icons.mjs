/**
 * Draws `public/icon-*.png` from `public/icon.svg`, for the phones whose home screen takes no SVG.
 * Run after the mark has changed: `npm run icons -w apps/web`
 * (`CHROMIUM` names the browser if it is not /usr/bin/chromium).
 */
import { readFile, writeFile } from 'node:fs/promises';
import { chromium } from 'playwright-core';

const sizes = [180, 192, 512];
const folder = new URL('../public/', import.meta.url);
const mark = await readFile(new URL('icon.svg', folder), 'utf8');

const browser = await chromium.launch({
  executablePath: process.env['CHROMIUM'] ?? '/usr/bin/chromium',
  args: [
    '--no-sandbox',
    '--disable-background-networking',
    '--disable-component-update',
    '--disable-sync',
    '--disable-quic',
    '--disable-gpu',
    '--no-first-run',
  ],
});
try {
  for (const size of sizes) {
    const page = await browser.newPage({ viewport: { width: size, height: size } });
    await page.setContent(`<style>body{margin:0}svg{display:block;width:${size}px;height:${size}px}</style>${mark}`);
    await writeFile(new URL(`icon-${size}.png`, folder), await page.screenshot());
    await page.close();
  }
} finally {
  await browser.close();
}
