import type { Speaker } from '@loamwright/words';
import { html, raw } from 'hono/html';
import { toString as drawCode } from 'qrcode';
import type { Authority } from '../lan/authority.ts';
import { trustStyle } from './style.ts';

/** What a browser is told it gets when it downloads the authority's certificate. */
export const CERTIFICATE_FILE = 'loamwright-ca.crt';

type Rendered = Awaited<ReturnType<typeof html>>;

/**
 * The page that explains how a phone comes to trust this computer: plain HTML without a script, because it is read
 * before anything is trusted. It carries no key.
 *
 * @param address where a phone opens this page, for the code that a second phone scans.
 */
export async function trustPage(speaker: Speaker, authority: Authority, address: string): Promise<Rendered> {
  const { say } = speaker;
  const name = authority.commonName;
  const places = { name, download: say('trust.download') };
  const code = await drawCode(address, { type: 'svg', margin: 4, errorCorrectionLevel: 'M' });
  return html`<!doctype html>
<html lang="${speaker.locale}">
  <head>
    <meta charset="utf-8" />
    <meta name="viewport" content="width=device-width, initial-scale=1" />
    <link rel="icon" href="/icon.svg" type="image/svg+xml" />
    <title>${say('trust.title')}</title>
    <style>
      ${raw(trustStyle)}
    </style>
  </head>
  <body>
    <main>
      <h1 class="question">${say('trust.question')}</h1>
      <p class="answer">${say('trust.answer')}</p>
      <a class="act" href="/trust/${CERTIFICATE_FILE}" download>${say('trust.download')}</a>
      <p class="quiet">${say('trust.warning')}</p>
      <section>
        <h2>${say('trust.compare.title')}</h2>
        <p>${say('trust.compare.text')}</p>
        <p class="quiet">${say('trust.compare.here')}<br /><code>${authority.fingerprint}</code></p>
      </section>
      ${steps(
        say('trust.android.title'),
        [
          say('trust.android.1', places),
          say('trust.android.2'),
          say('trust.android.3'),
          say('trust.android.4', places),
        ],
        say('trust.android.remove', places),
      )}
      ${steps(
        say('trust.ios.title'),
        [say('trust.ios.1', places), say('trust.ios.2'), say('trust.ios.3'), say('trust.ios.4', places)],
        say('trust.ios.remove', places),
      )}
      ${steps(say('trust.other.title'), [say('trust.other.1', places), say('trust.other.2')], say('trust.other.remove', places))}
      <section>
        <h2>${say('trust.open.title')}</h2>
        <p>${say('trust.open.text')}</p>
        <p><a href="/">${say('trust.open.link')}</a></p>
      </section>
      <section>
        <h2>${say('trust.meaning.title')}</h2>
        <p>${say('trust.meaning.1', { example: `${name.split(' ').at(-1) ?? ''}.local` })}</p>
        <p>${say('trust.meaning.2')}</p>
        <p>${say('trust.meaning.3', { date: authority.expires.toISOString().slice(0, 10) })}</p>
        <p>${say('trust.meaning.4')}</p>
      </section>
      <section>
        <h2>${say('trust.qr.title')}</h2>
        <div class="qr" role="img" aria-label="${say('trust.qr.alt', { address })}">${raw(code)}</div>
        <p class="quiet"><code>${address}</code></p>
      </section>
    </main>
  </body>
</html>`;
}

function steps(title: string, items: readonly string[], removal: string): Rendered | Promise<Rendered> {
  return html`<details>
        <summary>${title}</summary>
        <ol>${items.map((item) => html`<li>${item}</li>`)}</ol>
        <p class="quiet">${removal}</p>
      </details>`;
}
