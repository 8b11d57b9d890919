import type { z } from 'zod';
import { good, type Outcome, type Problem } from './outcome.ts';

type Issue = z.core.$ZodIssue;
type Path = readonly PropertyKey[];

const LONGEST_FOUND = 60;

/**
 * Checks outside data against a schema, once, at the edge. Every fault comes back as a coded problem
 * with its place, what stood there and what would do; nothing is thrown.
 */
export function check<Value>(schema: z.ZodType<Value>, data: unknown): Outcome<Value> {
  const parsed = schema.safeParse(data);
  if (parsed.success) return good(parsed.data);
  // Handed on as a list: a hundred thousand arguments would be more than a call can take.
  return { ok: false, problems: narrowest(parsed.error.issues.flatMap((issue) => problemsOf(issue, [], data))) };
}

/** Of several bounds that one place passes, the one that was set last: it lies within the others. */
function narrowest(problems: readonly Problem[]): readonly Problem[] {
  const last = new Map(problems.map((problem, i) => [placeOf(problem), i]));
  return problems.filter((problem, i) => problem.code !== 'out-of-bounds' || last.get(placeOf(problem)) === i);
}

function placeOf({ code, path }: Problem): string {
  return `${code} ${path}`;
}

function problemsOf(issue: Issue, under: Path, data: unknown): readonly Problem[] {
  const path = [...under, ...issue.path];
  if (issue.code === 'invalid_union') {
    const nearest = nearestBranch(issue.errors);
    if (nearest !== undefined) return nearest.flatMap((inner) => problemsOf(inner, path, data));
  }
  if (issue.code === 'unrecognized_keys') {
    return issue.keys.map((key) => ({
      code: 'unknown-field',
      path: writePath([...path, key]),
      found: key,
      wanted: '',
    }));
  }
  const value = valueAt(data, path);
  return [{ code: codeOf(issue, value), path: writePath(path), found: show(value), wanted: wantedOf(issue) }];
}

/** Of a union's branches, the one that got furthest before it failed; none when all failed at the door. */
function nearestBranch(branches: readonly (readonly Issue[])[]): readonly Issue[] | undefined {
  return branches.find((issues) => issues.every((issue) => issue.code !== 'invalid_type' || issue.path.length > 0));
}

function codeOf(issue: Issue, value: unknown): string {
  switch (issue.code) {
    case 'invalid_type':
      return value === undefined ? 'missing' : 'wrong-type';
    case 'too_big':
      return 'too-big';
    case 'too_small':
      return 'too-small';
    case 'invalid_value':
      return value === undefined ? 'missing' : 'not-one-of';
    case 'invalid_union':
      return value === undefined ? 'missing' : 'wrong-type';
    case 'custom':
      return 'out-of-bounds';
    default:
      return 'not-valid';
  }
}

function wantedOf(issue: Issue): string {
  switch (issue.code) {
    case 'invalid_type':
      return issue.expected;
    case 'too_big':
      return `${issue.inclusive === false ? '<' : '≤'} ${issue.maximum}`;
    case 'too_small':
      return `${issue.inclusive === false ? '>' : '≥'} ${issue.minimum}`;
    case 'invalid_value':
      return issue.values.map(String).join(' | ');
    case 'custom':
      return String(issue.params?.['wanted'] ?? issue.message);
    default:
      return issue.message;
  }
}

function valueAt(data: unknown, path: Path): unknown {
  return path.reduce<unknown>(
    (value, key) =>
      typeof value === 'object' && value !== null && Object.hasOwn(value, key)
        ? (value as Readonly<Record<PropertyKey, unknown>>)[key]
        : undefined,
    data,
  );
}

function writePath(path: Path): string {
  return path.reduce<string>((text, key) => {
    if (typeof key === 'number') return `${text}[${key}]`;
    return text === '' ? String(key) : `${text}.${String(key)}`;
  }, '');
}

function show(value: unknown): string {
  if (value === undefined) return '';
  const text = typeof value === 'number' ? String(value) : written(value);
  return text.length > LONGEST_FOUND ? `${text.slice(0, LONGEST_FOUND)}…` : text;
}

/** As JSON; what JSON can't carry (a circle, a function) is told by its type. */
function written(value: unknown): string {
  try {
    return JSON.stringify(value, (_key, inner) => (typeof inner === 'bigint' ? String(inner) : inner)) ?? typeof value;
  } catch {
    return typeof value;
  }
}
