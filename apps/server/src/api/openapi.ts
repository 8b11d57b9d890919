import { catalogue } from '@loamwright/science';
import type { Speaker } from '@loamwright/words';
import { type Answers, type Operation, operations, type Schema, type Status, schemaName } from './operations.ts';

/** What the document says of the server that it describes. */
export interface Described {
  readonly version: string;
  readonly speaker: Speaker;
  /** Whether it serves the local network, and so asks for the key. */
  readonly isLan: boolean;
}

/**
 * The server's whole interface as an OpenAPI 3.1 document. The schemas of the catalogue stand in it as they are:
 * OpenAPI 3.1 takes JSON Schema 2020-12.
 */
export function openApi({ version, speaker, isLan }: Described): object {
  const all = operations(speaker, isLan);
  const paths = [...new Set(all.map(({ path }) => path))].map((path) => {
    const here = all.filter((operation) => operation.path === path);
    return [
      path,
      Object.fromEntries(here.map((operation) => [operation.method, described(operation, speaker, isLan)])),
    ];
  });
  return {
    openapi: '3.1.0',
    info: {
      title: speaker.say('api.title'),
      description: speaker.say('api.description'),
      version,
      license: { name: 'Apache-2.0', identifier: 'Apache-2.0' },
    },
    servers: [{ url: '/' }],
    paths: Object.fromEntries(paths),
    components: {
      schemas: schemas(speaker),
      ...(isLan
        ? { securitySchemes: { key: { type: 'http', scheme: 'bearer', description: speaker.say('api.key') } } }
        : {}),
    },
  };
}

function described(operation: Operation, speaker: Speaker, isLan: boolean): object {
  const { id, summary, key, body, good } = operation;
  const refusals: readonly (Status | 403 | 405 | 421)[] = [
    ...operation.refusals,
    405,
    421,
    ...(operation.method === 'post' ? ([403] as const) : []),
    ...(key && isLan ? ([401, 429] as const) : []),
  ];
  return {
    operationId: id,
    summary,
    ...(key && isLan ? { security: [{ key: [] }] } : {}),
    ...(body === undefined
      ? {}
      : {
          requestBody: {
            required: true,
            content: Object.fromEntries(body.types.map((type) => [type, content(body.schema, body.example)])),
          },
        }),
    responses: {
      ...answers(good, speaker),
      ...Object.fromEntries(
        refusals.map((status) => [
          String(status),
          {
            description: speaker.say(`api.status.${status}`),
            content: { 'application/json': { schema: { $ref: '#/components/schemas/Refusal' } } },
          },
        ]),
      ),
    },
  };
}

function answers(good: Answers, speaker: Speaker): object {
  return Object.fromEntries(
    ([200, 204] as const).flatMap((status) => {
      const answer = good[status];
      if (answer === undefined) return [];
      const { type, schema } = answer;
      const description = speaker.say(`api.status.${status}`);
      return [[status, type === undefined ? { description } : { description, content: { [type]: content(schema) } }]];
    }),
  );
}

function content(schema: Schema | undefined, example?: unknown): object {
  return { ...(schema === undefined ? {} : { schema }), ...(example === undefined ? {} : { example }) };
}

function schemas(speaker: Speaker): Readonly<Record<string, Schema>> {
  const text = { type: 'string' };
  const all = (
    properties: Readonly<Record<string, Schema>>,
    optional: Readonly<Record<string, Schema>> = {},
  ): Schema => ({
    type: 'object',
    properties: { ...properties, ...optional },
    required: Object.keys(properties),
    additionalProperties: false,
  });
  const list = (items: Schema): Schema => ({ type: 'array', items });
  const nullable = (type: string): Schema => ({ type: [type, 'null'] });
  const citation = { source: text, place: text, mark: { enum: ['seen', 'memory', 'derived'] } };
  const head = { id: text, title: text, summary: text };
  const links = all({ calculation: text, page: text, input: text, answer: text });
  const source = all(
    { ...citation, author: nullable('string'), year: nullable('integer'), title: text },
    { address: text, note: text },
  );
  return {
    Refusal: all({ ok: { const: false }, problems: list({ $ref: '#/components/schemas/Problem' }) }),
    Problem: {
      ...all(
        { code: text, path: text, found: text, wanted: text },
        { words: { ...text, description: speaker.say('api.problem.words') } },
      ),
      description: speaker.say('api.problem'),
    },
    Calculations: list(all({ ...head, sources: list(all(citation)), cautions: list(text), links })),
    Calculation: all({
      ...head,
      sources: list(source),
      cautions: list(all({ id: text, words: text })),
      input: { type: 'object' },
      answer: { type: 'object' },
      example: {},
    }),
    ...Object.fromEntries(
      catalogue.flatMap((one) => [
        [schemaName(one.id, 'input'), embedded(one.inputSchema())],
        [schemaName(one.id, 'answer'), embedded(one.outputSchema())],
      ]),
    ),
  };
}

/** A schema of the catalogue as a part of the document, whose own dialect says the same. */
function embedded(schema: unknown): Schema {
  const { $schema: _dialect, ...rest } = schema as Schema;
  return rest;
}
