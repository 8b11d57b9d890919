import { createHash, X509Certificate } from 'node:crypto';
import { hostname } from 'node:os';
import { connect } from 'node:tls';
import { describe, expect } from 'vitest';
import { answer, asks, begin, fiveMaterials, keptOffline, sayWhatIsHere } from './app-steps.ts';
import { journey, launch, openPhone } from './chromium.ts';
import { serve } from './serve.ts';

/** The name a computer goes by on its own network, as the server makes it from the computer's own. */
const localName = `${(hostname().split('.')[0] ?? '').toLowerCase()}.local`;

describe('the app on a phone of the local network', () => {
  journey(
    'comes over HTTPS from another name than localhost, and works with the network off and the server gone',
    async () => {
      const served = await serve({ args: ['--lan'], env: { HOST: '' }, isSecure: true });
      const port = Number(new URL(served.address).port);
      const leaf = await certificateOf(port);
      // The phone has been told to trust this one certificate, as the page about trust explains; it is accepted, not ignored.
      const browser = await launch([
        `--host-resolver-rules=MAP ${localName} 127.0.0.1`,
        `--ignore-certificate-errors-spki-list=${spkiHash(leaf)}`,
      ]);
      const { page, errors, close } = await openPhone(browser);
      const address = `https://${localName}:${port}`;
      const key = /Key to the daybook[^:]*: (\S+)/u.exec(served.printed())?.[1] ?? '';
      await page.goto(`${address}/#key=${key}`);
      expect(await page.evaluate(() => [location.hostname, isSecureContext, location.hash])).toEqual([
        localName,
        true,
        '#/',
      ]);

      await begin(page, '°C, litres, metres');
      await sayWhatIsHere(page, fiveMaterials);
      await page.goto(`${address}/#/daybook/kept`);
      await page.getByRole('button', { name: 'Exchange both ways' }).click();
      await page.getByText('Nothing is written yet').waitFor();

      await keptOffline(page);
      await page.context().setOffline(true);
      await served.stop();
      await page.reload();
      await asks(page, 'Where is the daybook, and is it safe there?');
      await page.goto(`${address}/#/bins`);
      await asks(page, 'What is here to build from?');
      expect(await answer(page)).toContain('5 bales of straw');
      await page.goto(`${address}/#/bins/mix`);
      await asks(page, 'What do I lay, and how much of each?');
      expect(await answer(page)).toMatch(/^Lay /u);
      expect(errors.filter((error) => !error.includes('ERR_INTERNET_DISCONNECTED'))).toEqual([]);
      await close();
      await browser.close();
    },
  );

  journey('refuses a key that does not fit, and asks for it again', async () => {
    const served = await serve({ args: ['--lan'], env: { HOST: '' }, isSecure: true });
    const port = Number(new URL(served.address).port);
    const browser = await launch([
      `--host-resolver-rules=MAP ${localName} 127.0.0.1`,
      `--ignore-certificate-errors-spki-list=${spkiHash(await certificateOf(port))}`,
    ]);
    const { page, close } = await openPhone(browser);
    await page.goto(`https://${localName}:${port}`);
    await begin(page, '°C, litres, metres');
    await page.goto(`https://${localName}:${port}/#/daybook/kept`);
    await page.getByLabel('Its key').fill('not-the-key');
    await page.getByRole('button', { name: 'Exchange both ways' }).click();
    await page.getByText('That is not the key of this daybook.').waitFor();
    expect(await page.getByLabel('Its key').isVisible()).toBe(true);
    await close();
    await browser.close();
    await served.stop();
  });
});

/** The certificate that the server shows on this port. */
function certificateOf(port: number): Promise<X509Certificate> {
  return new Promise((resolve, reject) => {
    // Only looked at here: whether it is trusted is the browser's affair.
    const socket = connect({ port, host: '127.0.0.1', servername: localName, rejectUnauthorized: false }, () => {
      resolve(new X509Certificate(socket.getPeerCertificate().raw));
      socket.end();
    });
    socket.once('error', reject);
  });
}

/** SHA-256 of the public key (RFC 7469 section 2.4), base64: how Chromium names a certificate to be accepted. */
function spkiHash(certificate: X509Certificate): string {
  const key = certificate.publicKey.export({ type: 'spki', format: 'der' });
  return createHash('sha256').update(key).digest('base64');
}
