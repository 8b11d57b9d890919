/** One field of an input or an answer, as a table shows it. */
export interface Field {
  /** Where it stands: `ingredients[].amount.count`; `{}` stands for a name of one's own. */
  readonly path: string;
  /** What its name ends in after `_`: unit and basis, such as `pctWet`. */
  readonly unit: string | undefined;
  readonly kind:
    | 'number'
    | 'whole-number'
    | 'quantity'
    | 'estimate'
    | 'chance'
    | 'text'
    | 'yes-no'
    | 'list'
    | 'group'
    | 'any';
  /** Whether it may be left out. */
  readonly isOptional: boolean;
  readonly lowest: Bound | undefined;
  readonly highest: Bound | undefined;
  /** Items of a list, least and most. */
  readonly items: { readonly least: number | undefined; readonly most: number | undefined } | undefined;
  /** The words it may be. */
  readonly choices: readonly string[] | undefined;
  readonly description: string | undefined;
  /** The earlier field with the same fields under it, which are not listed twice. */
  readonly sameAs: string | undefined;
}

interface Bound {
  readonly value: number;
  /** Whether the value itself is allowed. */
  readonly included: boolean;
}

/** The keywords of JSON Schema (draft 2020-12) that the catalogue's schemas use, and the scale of a quantity. */
interface Schema {
  readonly type?: string | readonly string[];
  readonly description?: string;
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly required?: readonly string[];
  readonly additionalProperties?: boolean | Schema;
  readonly items?: Schema;
  readonly minItems?: number;
  readonly maxItems?: number;
  readonly anyOf?: readonly Schema[];
  readonly enum?: readonly unknown[];
  readonly const?: unknown;
  readonly minimum?: number;
  readonly maximum?: number;
  readonly exclusiveMinimum?: number;
  readonly exclusiveMaximum?: number;
  readonly scale?: { readonly kind: string; readonly lower?: number; readonly upper?: number };
}

/** Every field of a JSON Schema of the catalogue, in its order, those of a group after the group. */
export function fieldsOf(schema: unknown): readonly Field[] {
  const listed = new Map<string, string>();
  return under(schema as Schema, '');

  function under(group: Schema, path: string): readonly Field[] {
    const named = Object.entries(group.properties ?? {}).flatMap(([name, inner]) => {
      const isOptional = group.required?.includes(name) !== true;
      return at(inner, { path: path === '' ? name : `${path}.${name}`, name, isOptional });
    });
    const free = group.additionalProperties;
    return typeof free === 'object'
      ? [...named, ...at(free, { path: `${path}{}`, name: '', isOptional: true })]
      : named;
  }

  function at(field: Schema, place: { path: string; name: string; isOptional: boolean }): readonly Field[] {
    const { path, name, isOptional } = place;
    const kind = kindOf(field);
    const inside = kind === 'list' ? (field.items ?? {}) : field;
    const groups = kind === 'list' || kind === 'group' ? groupsOf(inside) : [];
    const inner = groups.length === 0 ? '' : JSON.stringify(groups);
    const sameAs = listed.get(inner);
    if (inner !== '') listed.set(inner, sameAs ?? path);
    const own: Field = {
      path,
      unit: /_([A-Za-z0-9]+)$/u.exec(name)?.[1],
      kind,
      isOptional,
      lowest: lowestOf(field),
      highest: highestOf(field),
      items: kind === 'list' ? { least: field.minItems, most: field.maxItems } : undefined,
      choices: choicesOf(field) ?? (kind === 'list' ? choicesOf(inside) : undefined),
      description: field.description ?? (kind === 'list' ? inside.description : undefined),
      sameAs,
    };
    if (sameAs !== undefined) return [own];
    const below = groups.map((group) => under(group, kind === 'list' ? `${path}[]` : path));
    return [own, ...(below.length === 1 ? (below[0] ?? []) : alternatives(below.flat()))];
  }
}

/** Fields of several forms of one thing: each once, and none that every form has to have. */
function alternatives(fields: readonly Field[]): readonly Field[] {
  const byPath = new Map(fields.map((field) => [field.path, { ...field, isOptional: true }]));
  return [...byPath.values()];
}

/** The groups of fields that a schema may be: itself, or each such branch of it. */
function groupsOf(schema: Schema): readonly Schema[] {
  const branches = schema.anyOf ?? [schema];
  return branches.filter((branch) => branch.type === 'object' && !isEstimate(branch) && !isChance(branch));
}

function kindOf(schema: Schema): Field['kind'] {
  if (schema.anyOf !== undefined) {
    if (schema.anyOf.some(isEstimate)) return 'quantity';
    const kinds = new Set(schema.anyOf.filter(({ type }) => type !== 'null').map(kindOf));
    const [only] = kinds;
    return kinds.size === 1 && only !== undefined ? only : 'any';
  }
  if (isEstimate(schema)) return 'estimate';
  if (isChance(schema)) return 'chance';
  switch (typeOf(schema) ?? typeof (schema.const ?? schema.enum?.[0])) {
    case 'number':
      return 'number';
    case 'integer':
      return 'whole-number';
    case 'string':
      return 'text';
    case 'boolean':
      return 'yes-no';
    case 'array':
      return 'list';
    case 'object':
      return 'group';
    default:
      return 'any';
  }
}

/** Its type; what may be null besides is told by its own type. */
function typeOf({ type }: Schema): string | undefined {
  return typeof type === 'object' ? type.find((one) => one !== 'null') : type;
}

function isEstimate({ properties }: Schema): boolean {
  return properties !== undefined && Object.keys(properties).join() === 'p10,p50,p90';
}

function isChance({ properties }: Schema): boolean {
  return properties !== undefined && Object.keys(properties).join() === 'met,of';
}

function choicesOf(schema: Schema): readonly string[] | undefined {
  if (schema.anyOf !== undefined) {
    const all = schema.anyOf.flatMap((branch) => choicesOf(branch) ?? []);
    return all.length === 0 ? undefined : all;
  }
  const values = schema.enum ?? (schema.const === undefined ? undefined : [schema.const]);
  return values?.map(String);
}

function lowestOf({ scale, minimum, exclusiveMinimum, anyOf }: Schema): Bound | undefined {
  if (scale?.kind === 'positive') return { value: 0, included: true };
  if (scale?.lower !== undefined) return { value: scale.lower, included: true };
  if (exclusiveMinimum !== undefined) return { value: exclusiveMinimum, included: false };
  if (minimum !== undefined) return written(minimum);
  return anyOf?.map(lowestOf).find((bound) => bound !== undefined);
}

function highestOf({ scale, maximum, exclusiveMaximum, anyOf }: Schema): Bound | undefined {
  if (scale?.upper !== undefined) return { value: scale.upper, included: true };
  if (exclusiveMaximum !== undefined) return { value: exclusiveMaximum, included: false };
  if (maximum !== undefined) return written(maximum);
  return anyOf?.map(highestOf).find((bound) => bound !== undefined);
}

/** A whole number's schema carries the bounds of whole numbers that a computer counts exactly: they say nothing. */
function written(value: number): Bound | undefined {
  return Number.isSafeInteger(value) && Math.abs(value) === Number.MAX_SAFE_INTEGER
    ? undefined
    : { value, included: true };
}
