import { calculationReport, type FieldRow } from '@loamwright/advisor';
import { catalogue, type ListedCalculation } from '@loamwright/science';
import { outline, type Speaker } from '@loamwright/words';
import { html, raw } from 'hono/html';
import { trustStyle } from '../trust/style.ts';

type Rendered = Awaited<ReturnType<typeof html>>;

/** So many lines of an answer are shown at once. */
const mostLines = 40;

/** What the pages of the interface have beside the grounds and rules of the page about trust. */
const pageStyle = `
nav { display: flex; flex-wrap: wrap; gap: 0 1.5rem; }
nav a, .list a { display: inline-flex; align-items: center; min-height: 3rem; }
.list { list-style: none; padding: 0; }
.list li { border-top: 1px solid var(--rule); margin: 0; padding-bottom: 0.75rem; }
.list a { font-weight: bold; }
.list p { margin: 0; }
pre { margin: 0 0 0.75rem; font: 0.9375rem/1.6 ui-monospace, "DejaVu Sans Mono", monospace; white-space: pre-wrap; overflow-wrap: anywhere; }
dt { margin-top: 0.75rem; }
dd { margin: 0; }
h3 { margin: 0.75rem 0 0.25rem; font-size: 1rem; color: var(--quiet); }
`;

/** The calculations as a page to read: plain HTML without a script, from the same catalogue as everything else. */
export function catalogueHtml(speaker: Speaker): Rendered | Promise<Rendered> {
  const { say } = speaker;
  return wholePage(
    speaker,
    say('api.title'),
    html`<h1 class="question">${say('api.question')}</h1>
      <p class="answer">${say('api.answer', { count: catalogue.length })}</p>
      <nav aria-label="${say('api.title')}">
        <a href="/api/openapi.json">${say('api.openapi')}</a>
        <a href="/">${say('api.app')}</a>
      </nav>
      <section>
        <h2>${say('api.list')}</h2>
        <ul class="list">
          ${catalogue.map(
            ({ id, title, summary }) => html`<li><a href="/api/page/${id}">${title}</a><p>${summary}</p></li>`,
          )}
        </ul>
      </section>`,
  );
}

/** What one calculation's page is made of. */
export interface PageParts {
  readonly speaker: Speaker;
  readonly calculation: ListedCalculation;
  /** Its answer to its example; nothing where it could not be worked out just now. */
  readonly answer: unknown;
  /** Where this server was reached: `http://localhost:4380`. */
  readonly origin: string;
  readonly isLan: boolean;
}

/** One calculation: what it answers, an example, its fields, sources and cautions. */
export function calculationHtml({
  speaker,
  calculation,
  answer,
  origin,
  isLan,
}: PageParts): Rendered | Promise<Rendered> {
  const { say } = speaker;
  const report = calculationReport(calculation, speaker);
  return wholePage(
    speaker,
    report.title,
    html`<h1 class="question">${report.title}</h1>
      <p class="answer">${report.summary}</p>
      <nav aria-label="${say('api.title')}"><a href="/api">${say('api.back')}</a></nav>
      <section>
        <h2>${say('calculation.example')}</h2>
        <h3>${say('api.page.given')}</h3>
        <pre>${JSON.stringify(calculation.example, null, 2)}</pre>
        <h3>${say('api.page.answered')}</h3>
        ${answer === undefined ? html`<p>${say('api.page.notNow')}</p>` : answerHtml(outline(answer, speaker), speaker)}
        <h3>${say('api.page.curl')}</h3>
        <pre>${curl(calculation, origin, isLan)}</pre>
        ${isLan ? html`<p class="quiet">${say('api.page.key')}</p>` : ''}
      </section>
      ${fieldsHtml(speaker, say('calculation.input'), report.input)}
      ${fieldsHtml(speaker, say('calculation.answer'), report.answer)}
      <p class="quiet">${say('calculation.estimates')}</p>
      ${
        report.cautions.length === 0
          ? ''
          : html`<section>
        <h2>${say('calculation.cautions')}</h2>
        <p>${say('calculation.cautions.may')}</p>
        ${listHtml(report.cautions)}
      </section>`
      }
      <details>
        <summary>${say('calculation.sources')}: ${say('api.page.sources', { count: report.sources.length })}</summary>
        ${report.sources.length === 0 ? html`<p>${say('calculation.noSources')}</p>` : listHtml(report.sources)}
      </details>`,
  );
}

function wholePage(
  speaker: Speaker,
  title: string,
  content: Rendered | Promise<Rendered>,
): Rendered | Promise<Rendered> {
  return html`<!doctype html>
<html lang="${speaker.locale}">
  <head>
    <meta charset="utf-8" />
    <meta name="viewport" content="width=device-width, initial-scale=1" />
    <link rel="icon" href="/icon.svg" type="image/svg+xml" />
    <title>${title}</title>
    <style>
      ${raw(trustStyle + pageStyle)}
    </style>
  </head>
  <body>
    <main>
      ${content}
    </main>
  </body>
</html>`;
}

function fieldsHtml(speaker: Speaker, title: string, rows: readonly FieldRow[]): Rendered | Promise<Rendered> {
  return html`<details>
        <summary>${title}: ${speaker.say('api.page.fields', { count: rows.length })}</summary>
        <dl>
          ${rows.map(
            ({ path, kind, unit, range, meaning }) => html`<dt><code>${path}</code></dt>
          <dd><span class="quiet">${[kind, unit, range].filter((part) => part !== '').join('; ')}</span> ${meaning}</dd>`,
          )}
        </dl>
      </details>`;
}

/** The answer as the command line prints it; the rest of a long one is folded away. */
function answerHtml(text: string, speaker: Speaker): Rendered | Promise<Rendered> {
  const lines = text.split('\n');
  const rest = lines.slice(mostLines);
  const first = html`<pre>${lines.slice(0, mostLines).join('\n')}</pre>`;
  if (rest.length === 0) return first;
  return html`${first}
        <details>
          <summary>${speaker.say('api.page.more', { count: rest.length })}</summary>
          <pre>${rest.join('\n')}</pre>
        </details>`;
}

function listHtml(items: readonly string[]): Rendered | Promise<Rendered> {
  return html`<ul>${items.map((item) => html`<li>${item}</li>`)}</ul>`;
}

/** The example as a line for a POSIX shell. */
function curl({ id, example }: ListedCalculation, origin: string, isLan: boolean): string {
  const lan = isLan ? ' --cacert loamwright-ca.crt -H "authorization: Bearer KEY"' : '';
  const body = JSON.stringify(example).replaceAll("'", String.raw`'\''`);
  return `curl${lan} -H 'content-type: application/json' -d '${body}' ${origin}/api/reckon/${id}`;
}
