import fc from 'fast-check';
import { allMaterials, allMeasures, doubtfulInputs } from '../../material/index.ts';

/** The part of JSON Schema (draft 2020-12) that the catalogue's schemas are written in. */
export interface Schema {
  readonly type?: string | undefined;
  readonly const?: unknown;
  readonly enum?: readonly unknown[] | undefined;
  readonly anyOf?: readonly Schema[] | undefined;
  readonly oneOf?: readonly Schema[] | undefined;
  readonly properties?: Readonly<Record<string, Schema>> | undefined;
  readonly required?: readonly string[] | undefined;
  readonly additionalProperties?: Schema | boolean | undefined;
  readonly items?: Schema | undefined;
  readonly minItems?: number | undefined;
  readonly maxItems?: number | undefined;
  readonly minimum?: number | undefined;
  readonly maximum?: number | undefined;
  readonly exclusiveMinimum?: number | undefined;
  readonly exclusiveMaximum?: number | undefined;
  readonly scale?: { readonly kind: string; readonly lower?: number; readonly upper?: number } | undefined;
}

const MOST_ITEMS = 4;

/** Names by which the program's own ids are asked for, so that most inputs reach further than the first look-up. */
const idsByName: Readonly<Record<string, readonly string[]>> = {
  material: allMaterials.map(({ id }) => id),
  like: allMaterials.map(({ id }) => id),
  candidates: allMaterials.map(({ id }) => id),
  driers: allMaterials.map(({ id }) => id),
  cover: allMaterials.map(({ id }) => id),
  covers: allMaterials.map(({ id }) => id),
  measure: allMeasures.map(({ id }) => id),
  doubtful: doubtfulInputs.map(({ id }) => id),
};

/**
 * Any input that a schema of the catalogue lets through, and some that it does not where a rule stands beside the
 * schema (a band inside another). Small and written here: the libraries that turn schemas into arbitraries know neither
 * this zod nor the scale of a quantity.
 *
 * @param name the field the schema stands at, which says which ids a text may be.
 */
export function fromSchema(schema: Schema, name = ''): fc.Arbitrary<unknown> {
  if (schema.const !== undefined) return fc.constant(schema.const);
  if (schema.enum !== undefined) return fc.constantFrom(...schema.enum);
  if (schema.scale !== undefined) return quantities(schema.scale);
  const branches = branchesOf(schema);
  if (branches !== undefined) return fc.oneof(...branches.map((one) => fromSchema(one, name)));
  switch (schema.type) {
    case 'object':
      return objects(schema, name);
    case 'array':
      return fc.array(fromSchema(schema.items ?? {}, name), {
        minLength: schema.minItems ?? 0,
        maxLength: Math.min(schema.maxItems ?? MOST_ITEMS, Math.max(schema.minItems ?? 0, MOST_ITEMS)),
      });
    case 'string':
      return texts(name);
    case 'boolean':
      return fc.boolean();
    case 'integer':
      return numbers(schema).map((value) => clamp(Math.round(value), schema));
    case 'number':
      return numbers(schema);
    case 'null':
      return fc.constant(null);
    default:
      throw new RangeError(`no inputs for the schema ${JSON.stringify(schema)} of ${name}`);
  }
}

function objects(schema: Schema, name: string): fc.Arbitrary<unknown> {
  const required = new Set(schema.required);
  const { additionalProperties } = schema;
  const fields = Object.entries(schema.properties ?? {});
  if (fields.length === 0 && typeof additionalProperties === 'object') {
    return fc.dictionary(texts(name === 'ownSizes' ? 'measure' : name), fromSchema(additionalProperties), {
      maxKeys: 2,
    });
  }
  const present = Object.fromEntries(fields.map(([key, inner]) => [key, fromSchema(inner, key)]));
  return fc.record(present, { requiredKeys: fields.map(([key]) => key).filter((key) => required.has(key)) });
}

function texts(name: string): fc.Arbitrary<string> {
  const ids = idsByName[name];
  const any = fc.string({ minLength: 1, maxLength: 12 });
  return ids === undefined
    ? any
    : fc.oneof({ weight: 30, arbitrary: fc.constantFrom(...ids) }, { weight: 1, arbitrary: any });
}

/** As growers have them, to the ends of what is allowed, and beyond what anybody could mean. */
function numbers(schema: Schema): fc.Arbitrary<number> {
  const within = (low: number, high: number): fc.Arbitrary<number> =>
    fc.double({ min: low, max: high, noNaN: true }).map((value) => clamp(value, schema));
  const low = schema.minimum ?? schema.exclusiveMinimum ?? -1e6;
  const high = schema.maximum ?? schema.exclusiveMaximum ?? 1e6;
  return fc.oneof(
    { weight: 6, arbitrary: fc.double({ min: -2, max: 3, noNaN: true }).map((log) => clamp(10 ** log, schema)) },
    { weight: 2, arbitrary: within(low, high) },
    { weight: 1, arbitrary: fc.constantFrom(low, high, 0).map((value) => clamp(value, schema)) },
    { weight: 1, arbitrary: within(-Number.MAX_VALUE, Number.MAX_VALUE) },
  );
}

function clamp(value: number, { minimum, maximum, exclusiveMinimum, exclusiveMaximum }: Schema): number {
  let inside = value;
  if (minimum !== undefined) inside = Math.max(inside, minimum);
  if (exclusiveMinimum !== undefined && inside <= exclusiveMinimum) inside = exclusiveMinimum + 1e-3;
  if (maximum !== undefined) inside = Math.min(inside, maximum);
  if (exclusiveMaximum !== undefined && inside >= exclusiveMaximum) inside = exclusiveMaximum - 1e-3;
  return inside;
}

/** A number or an estimate that its scale allows. */
function quantities({ kind, lower = 0, upper = 1 }: NonNullable<Schema['scale']>): fc.Arbitrary<unknown> {
  const one = {
    positive: fc.double({ min: -2, max: 3, noNaN: true }).map((log) => 10 ** log),
    share: fc.double({ min: 0.001, max: 0.999, noNaN: true }).map((share) => lower + share * (upper - lower)),
    free: fc.double({ min: -50, max: 110, noNaN: true }),
  }[kind];
  if (one === undefined) throw new RangeError(`no numbers for the scale ${kind}`);
  const ends = kind === 'share' ? [lower, upper] : [0];
  const estimate = fc.tuple(one, one, one).map((three) => {
    const [p10, p50, p90] = three.sort((a, b) => a - b);
    return { p10, p50, p90 };
  });
  return fc.oneof(
    { weight: 4, arbitrary: one },
    { weight: 2, arbitrary: estimate },
    { weight: 1, arbitrary: fc.constantFrom(...ends) },
  );
}

/** What a schema may be, one or several of them. */
function branchesOf({ anyOf, oneOf }: Schema): readonly Schema[] | undefined {
  return anyOf ?? oneOf;
}

/** Of a schema's branches, the one that an example was written for. */
function branchOf(schema: Schema, example: unknown): Schema {
  const branches = branchesOf(schema);
  if (branches === undefined || schema.scale !== undefined) return schema;
  const fitting = branches.find(({ type, properties = {} }) =>
    typeof example === 'object' && example !== null
      ? type === 'object' &&
        Object.entries(example).every(
          ([key, value]) => Object.hasOwn(properties, key) && [undefined, value].includes(properties[key]?.const),
        )
      : type === typeof example || (type === 'integer' && typeof example === 'number'),
  );
  return fitting === undefined ? schema : branchOf(fitting, example);
}

/** Whether a schema asks for a field. */
function isRequired(schema: Schema, key: string): boolean {
  return schema.required?.includes(key) === true;
}

/**
 * An example, changed: numbers up to three times more or less, or anything that the schema allows there; optional fields
 * left out or added; items left out or doubled. So it stays close to what is meant, and reaches deep.
 */
export function nearExample(example: unknown, whole: Schema, name = ''): fc.Arbitrary<unknown> {
  const anything = fromSchema(whole, name);
  const schema = branchOf(whole, example);
  if (schema.const !== undefined || schema.enum !== undefined) return fc.oneof(fc.constant(example), anything);
  const near = (arbitrary: fc.Arbitrary<unknown>): fc.Arbitrary<unknown> =>
    fc.oneof({ weight: 30, arbitrary }, { weight: 1, arbitrary: anything });
  if (typeof example === 'number') {
    const times = fc.double({ min: 1 / 3, max: 3, noNaN: true });
    return near(
      fc.oneof(
        fc.constant(example),
        times.map((by) => clamp(schema.type === 'integer' ? Math.round(example * by) : example * by, schema)),
      ),
    );
  }
  if (Array.isArray(example)) {
    const items = example.map((item) => nearExample(item, schema.items ?? {}, name));
    return near(
      fc
        .tuple(...items)
        .chain((all) =>
          fc.oneof(
            fc.constant(all),
            fc.shuffledSubarray(all, { minLength: Math.min(schema.minItems ?? 0, all.length) }),
          ),
        ),
    );
  }
  if (typeof example === 'object' && example !== null) {
    const kept = Object.entries(example).map(
      ([key, value]) =>
        [key, nearExample(value, schema.properties?.[key] ?? {}, key), isRequired(schema, key)] as const,
    );
    const added = Object.entries(schema.properties ?? {}).filter(([key]) => !Object.hasOwn(example, key));
    return near(
      fc
        .tuple(
          fc.record(Object.fromEntries(kept.map(([key, value]) => [key, value])), {
            requiredKeys: kept.filter(([, , required]) => required).map(([key]) => key),
          }),
          added.length === 0
            ? fc.constant({})
            : fc.oneof(
                { weight: 2, arbitrary: fc.constant({}) },
                {
                  weight: 1,
                  arbitrary: fc
                    .constantFrom(...added)
                    .chain(([key, inner]) => fromSchema(inner, key).map((value) => ({ [key]: value }))),
                },
              ),
        )
        .map(([some, more]) => ({ ...some, ...more })),
    );
  }
  return near(fc.constant(example));
}

/** The same data with the keys of every object in another order. */
export function otherwiseOrdered(data: unknown): unknown {
  if (Array.isArray(data)) return data.map(otherwiseOrdered);
  if (typeof data !== 'object' || data === null) return data;
  return Object.fromEntries(
    Object.entries(data)
      .reverse()
      .map(([key, value]) => [key, otherwiseOrdered(value)]),
  );
}
