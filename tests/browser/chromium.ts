import { type Browser, type BrowserContextOptions, chromium, type Page } from 'playwright-core';
import { test } from 'vitest';
import { findChromium } from '../../scripts/lib/tools.mjs';

/** The phone the app is drawn for. */
const phone: BrowserContextOptions = {
  viewport: { width: 390, height: 844 },
  deviceScaleFactor: 2,
  hasTouch: true,
  isMobile: true,
  locale: 'en-GB',
  timezoneId: 'Europe/London',
};

const flags = [
  '--headless=new',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

const executablePath = findChromium();

/** A test that needs the browser; where none is installed it is skipped, and `npm test` says so. */
export const journey: ReturnType<typeof test.runIf> = test.runIf(executablePath !== undefined);

/** A page with what went wrong in it. */
export interface Watched {
  readonly page: Page;
  /** Errors written to the console and errors that nothing caught, in the order in which they came. */
  readonly errors: readonly string[];
  close(): Promise<void>;
}

/** Starts the browser. Chromium refuses its sandbox to root; for anyone else the sandbox stays. */
export function launch(moreFlags: readonly string[] = []): Promise<Browser> {
  if (executablePath === undefined) throw new Error('There is no Chromium here: name one in LOAMWRIGHT_CHROMIUM.');
  return chromium.launch({ executablePath, args: [...flags, ...moreFlags], chromiumSandbox: process.getuid?.() !== 0 });
}

/** Opens an empty page on a phone of its own: nothing kept, nothing cached. */
export async function openPhone(browser: Browser, options: BrowserContextOptions = {}): Promise<Watched> {
  const context = await browser.newContext({ ...phone, ...options });
  const page = await context.newPage();
  const errors: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error') errors.push(message.text());
  });
  page.on('pageerror', (error) => errors.push(String(error)));
  return { page, errors, close: () => context.close() };
}
