import { catalogue, type ListedCalculation } from '@loamwright/science';
import { type Context, Hono } from 'hono';
import type { Reckoner } from '../reckon/crew.ts';
import { type Described, openApi } from './openapi.ts';
import { calculationHtml, catalogueHtml } from './page.ts';

/** The interface described: as a page to read, and as an OpenAPI document. Both come from the catalogue. */
export function apiRoutes(described: Described, reckoner: Reckoner): Hono {
  const { speaker, isLan } = described;
  const routes = new Hono();
  const answers = new Map<string, Promise<unknown>>();
  let document: object | undefined;
  routes.get('/', (context) => context.html(catalogueHtml(speaker), 200, fresh));
  routes.get('/openapi.json', (context) => {
    document ??= openApi(described);
    return context.json(document, 200, fresh);
  });
  routes.get('/page/:id', async (context) => {
    const calculation = catalogue.find(({ id }) => id === context.req.param('id'));
    if (calculation === undefined) return context.notFound();
    const answer = await answerTo(calculation);
    return context.html(
      calculationHtml({ speaker, calculation, answer, origin: originOf(context), isLan }),
      200,
      fresh,
    );
  });
  return routes;

  /**
   * Worked out when a page is first asked for, and kept: whoever may read the pages can't keep the computer busy with
   * them, not even by asking many times at once. What could not be worked out is tried again at the next asking.
   */
  function answerTo(calculation: ListedCalculation): Promise<unknown> {
    const { id } = calculation;
    const kept = answers.get(id);
    if (kept !== undefined) return kept;
    const answer = workedOut(calculation).then(
      (worked) => {
        if (worked === undefined) answers.delete(id);
        return worked;
      },
      (error: unknown) => {
        answers.delete(id);
        throw error;
      },
    );
    answers.set(id, answer);
    return answer;
  }

  async function workedOut({ id, example }: ListedCalculation): Promise<unknown> {
    const worked = await reckoner.reckon(id, new TextEncoder().encode(JSON.stringify(example)));
    return typeof worked === 'string' || !worked.ok ? undefined : (JSON.parse(worked.json) as unknown);
  }
}

const fresh = { 'cache-control': 'no-cache' };

function originOf(context: Context): string {
  return new URL(context.req.url).origin;
}
