import { existsSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { journey, launch, openPhone } from './chromium.ts';
import { serve } from './serve.ts';

describe('the built server', () => {
  it('answers on a free port, and leaves nothing behind', async () => {
    const server = await serve();
    const answer = await fetch(server.address);
    expect(answer.status).toBe(200);
    expect(await answer.text()).toContain('<title>');
    expect(server.printed()).toContain(`:${new URL(server.address).port}`);
    await server.stop();
    expect(existsSync(server.dataFolder)).toBe(false);
    await expect(fetch(server.address)).rejects.toThrow();
  });

  it('says what is wrong when it cannot start', async () => {
    await expect(serve({ args: ['--no-such-option'] })).rejects.toThrow(/It printed:\n.*--no-such-option/s);
  });

  journey('brings a phone the app without an error in its console', async () => {
    const server = await serve();
    const browser = await launch();
    const { page, errors } = await openPhone(browser);
    await page.goto(server.address);
    await page.getByRole('heading').first().waitFor();
    expect(errors).toEqual([]);
    await browser.close();
    await server.stop();
  });
});
