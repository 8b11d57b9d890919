import { catalogue } from '@loamwright/science';
import type { Speaker } from '@loamwright/words';
import { CERTIFICATE_FILE } from '../trust/page.ts';

/** JSON Schema, draft 2020-12. */
export type Schema = Readonly<Record<string, unknown>>;

/** One thing that can be asked of the server: the OpenAPI document is made of these. */
export interface Operation {
  readonly method: 'get' | 'post';
  readonly path: string;
  readonly id: string;
  readonly summary: string;
  /** Whether it asks for the key on the local network. */
  readonly key: boolean;
  /** What is sent: any of these types, with its schema where it is JSON. */
  readonly body?:
    | { readonly types: readonly string[]; readonly schema: Schema; readonly example?: unknown }
    | undefined;
  /** What comes back when it goes well. */
  readonly good: Answers;
  /** The codes of its refusals, beside those that every answer may have. */
  readonly refusals: readonly Status[];
}

/** What comes back by status; a schema where it is JSON. */
export type Answers = { readonly [status in 200 | 204]?: { readonly type?: string; readonly schema?: Schema } };

/** The statuses of refusals that the server has. */
export type Status = 400 | 401 | 404 | 409 | 413 | 415 | 422 | 429 | 500 | 503 | 507;

const JSON_TYPE = 'application/json';
const LINES_TYPE = 'application/x-ndjson';
const text: Schema = { type: 'string' };
const count: Schema = { type: 'integer', minimum: 0 };

/** An object with all of these fields. */
function fields(properties: Readonly<Record<string, Schema>>, more = false): Schema {
  return { type: 'object', properties, required: Object.keys(properties), additionalProperties: more };
}

/** What goes well is told as `{ ok: true, value }`. */
function told(value: Schema): Answers {
  return { 200: { type: JSON_TYPE, schema: fields({ ok: { const: true }, value }) } };
}

export function schemaName(id: string, side: 'input' | 'answer'): string {
  return `${id}.${side}`;
}

function named(name: string): Schema {
  return { $ref: `#/components/schemas/${name}` };
}

/** Everything that this server answers; what only the local network needs, only there. */
export function operations(speaker: Speaker, isLan: boolean): readonly Operation[] {
  const { say } = speaker;
  const page = { 200: { type: 'text/html' } };
  const about = fields({
    program: { const: 'loamwright' },
    version: text,
    key: { type: 'boolean' },
    demo: { type: 'boolean' },
  });
  const keeping: readonly Status[] = [500, 503, 507];
  const sent: readonly Status[] = [400, 409, 413, 415];
  return [
    get('/api', 'pages', say('api.operation.pages'), page),
    get('/api/about', 'about', say('api.operation.about'), { 200: { type: JSON_TYPE, schema: about } }),
    get('/api/openapi.json', 'openapi', say('api.operation.openapi'), {
      200: { type: JSON_TYPE, schema: { type: 'object' } },
    }),
    {
      ...get('/api/daybook', 'takeDaybook', say('api.operation.takeDaybook'), { 200: { type: LINES_TYPE }, 204: {} }),
      key: true,
      refusals: keeping,
    },
    {
      method: 'post',
      path: '/api/daybook',
      id: 'bringDaybook',
      summary: say('api.operation.bringDaybook'),
      key: true,
      body: { types: [LINES_TYPE, JSON_TYPE], schema: {} },
      good: told(fields({ kept: count, there: count }, true)),
      refusals: [...sent, ...keeping],
    },
    {
      ...get('/api/exchange', 'offer', say('api.operation.offer'), {
        200: { type: JSON_TYPE, schema: { type: 'object' } },
        204: {},
      }),
      key: true,
      refusals: keeping,
    },
    {
      method: 'post',
      path: '/api/exchange',
      id: 'exchange',
      summary: say('api.operation.exchange'),
      key: true,
      body: { types: [JSON_TYPE, LINES_TYPE], schema: {} },
      good: { 200: { type: LINES_TYPE } },
      refusals: [...sent, ...keeping],
    },
    get('/api/reckon', 'calculations', say('api.operation.calculations'), told(named('Calculations'))),
    ...catalogue.flatMap(({ id, title, example }): readonly Operation[] => [
      get(
        `/api/reckon/${id}`,
        `calculation:${id}`,
        say('api.operation.calculation', { title }),
        told(named('Calculation')),
      ),
      {
        method: 'post',
        path: `/api/reckon/${id}`,
        id: `reckon:${id}`,
        summary: say('api.operation.reckon', { title }),
        key: true,
        body: { types: [JSON_TYPE], schema: named(schemaName(id, 'input')), example },
        good: told(named(schemaName(id, 'answer'))),
        refusals: [400, 413, 415, 422, 500, 503],
      },
      get(`/api/page/${id}`, `page:${id}`, `${title}: ${say('api.operation.page')}`, page),
    ]),
    ...(isLan
      ? [
          get('/trust', 'trust', say('api.operation.trust'), page),
          get(`/trust/${CERTIFICATE_FILE}`, 'certificate', say('api.operation.certificate'), {
            200: { type: 'application/x-x509-ca-cert' },
          }),
        ]
      : []),
  ];
}

function get(path: string, id: string, summary: string, good: Answers): Operation {
  return { method: 'get', path, id, summary, key: false, good, refusals: [] };
}
