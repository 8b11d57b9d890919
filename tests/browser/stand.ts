// What the journeys of a file stand on: a browser and, mostly, a built server, from before the first to after the last.
import type { Browser, BrowserContextOptions } from 'playwright-core';
import { afterAll, beforeAll } from 'vitest';
import { launch, openPhone, type Watched } from './chromium.ts';
import { type Served, type ServeOptions, serve } from './serve.ts';

export interface Browsing {
  /** A phone of its own with an empty page. */
  phone(options?: BrowserContextOptions): Promise<Watched>;
  /** A phone of its own on the page of an address. */
  at(address: string, options?: BrowserContextOptions): Promise<Watched>;
}

export interface Standing extends Browsing {
  /** Where the server answers, without a slash at its end. */
  readonly address: string;
  /** A phone of its own on the first page of the app. */
  open(options?: BrowserContextOptions): Promise<Watched>;
}

/** A browser for the journeys of a `describe` that start what they need besides. */
export function browsing(): Browsing {
  let browser: Browser | undefined;
  beforeAll(async () => {
    browser = await launch();
  });
  afterAll(() => browser?.close());
  const phone = (options?: BrowserContextOptions): Promise<Watched> => {
    if (browser === undefined) throw new Error('A phone is opened in a journey, when the browser stands.');
    return openPhone(browser, options);
  };
  const at = async (address: string, options?: BrowserContextOptions): Promise<Watched> => {
    const opened = await phone(options);
    await opened.page.goto(address);
    return opened;
  };
  return { phone, at };
}

/** A browser and one server for the journeys of a `describe`; each phone has a daybook of its own. */
export function standing(options?: ServeOptions): Standing {
  const phones = browsing();
  let served: Served | undefined;
  beforeAll(async () => {
    served = await serve(options);
  });
  afterAll(() => served?.stop());
  const address = (): string => {
    if (served === undefined) throw new Error('There is an address in a journey, when the server stands.');
    return served.address;
  };
  return {
    ...phones,
    open: (of) => phones.at(address(), of),
    get address() {
      return address();
    },
  };
}

/** The errors of a phone other than those that the browser writes down of what it could not fetch with no signal. */
export function besidesNoSignal(errors: readonly string[]): readonly string[] {
  return errors.filter((error) => !error.includes('ERR_INTERNET_DISCONNECTED'));
}
