import type { Context, MiddlewareHandler } from 'hono';
import { plainHost } from '../lan/addresses.ts';
import { type Attempts, sameKey } from '../lan/key.ts';
import { FILE_TYPE, refuse } from './answer.ts';

/**
 * Scripts and styles come from here and nowhere else. `wasm-unsafe-eval` lets the solver's WebAssembly run, and
 * nothing but WebAssembly. Style attributes are allowed because the drawings place their parts with them; a style
 * can't run anything.
 */
const contentPolicy = [
  "default-src 'self'",
  "script-src 'self' 'wasm-unsafe-eval'",
  "style-src 'self' 'unsafe-inline'",
  "img-src 'self' data: blob:",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'self'",
  "frame-ancestors 'none'",
].join('; ');

const headers: readonly (readonly [string, string])[] = [
  ['content-security-policy', contentPolicy],
  ['x-content-type-options', 'nosniff'],
  ['x-frame-options', 'DENY'],
  ['referrer-policy', 'no-referrer'],
  ['cross-origin-opener-policy', 'same-origin'],
  ['cross-origin-resource-policy', 'same-origin'],
  ['permissions-policy', 'camera=(), geolocation=(), microphone=()'],
];

/** Puts the headers that keep a page to itself on every answer. */
export function securityHeaders(): MiddlewareHandler {
  return async (context, next) => {
    await next();
    for (const [name, value] of headers) context.res.headers.set(name, value);
  };
}

/**
 * Answers only to this server's own names. A page of somebody else's whose name has been pointed at this computer
 * (DNS rebinding) sends its own name as the host, and gets nothing.
 */
export function ownHostOnly(hosts: () => readonly string[]): MiddlewareHandler {
  return async (context, next) => {
    const host = context.req.header('host') ?? '';
    const name = plainHost(host.replace(/:\d+$/u, ''));
    if (hosts().includes(name)) return next();
    return refuse(context, 421, {
      code: 'wrong-host',
      path: 'Host',
      found: host.slice(0, 100),
      wanted: hosts().join(', '),
    });
  };
}

/**
 * Lets nothing be changed by a page of another origin. A browser names the origin with every such request; a request
 * that names none does not come from a page.
 */
export function ownOriginOnly(): MiddlewareHandler {
  return async (context, next) => {
    if (context.req.method === 'GET' || context.req.method === 'HEAD') return next();
    const origin = context.req.header('origin');
    const site = context.req.header('sec-fetch-site');
    const isOwn = origin === undefined || hostOf(origin) === context.req.header('host')?.toLowerCase();
    if (isOwn && (site === undefined || site === 'same-origin')) return next();
    return refuse(context, 403, {
      code: 'other-origin',
      path: 'Origin',
      found: (origin ?? site ?? '').slice(0, 100),
      wanted: context.req.header('host') ?? '',
    });
  };
}

function hostOf(origin: string): string | undefined {
  return URL.canParse(origin) ? new URL(origin).host : undefined;
}

/** A daybook file is JSON line by line. Plain JSON is let in too: neither is a type that a form can send. */
const takenTypes = [FILE_TYPE, 'application/json'];

/** A form of another page can't send JSON without asking first. */
export function noForms(): MiddlewareHandler {
  return async (context, next) => {
    const type = context.req.header('content-type') ?? '';
    if (takenTypes.includes(type.split(';')[0]?.trim().toLowerCase() ?? '')) return next();
    return refuse(context, 415, {
      code: 'wrong-media-type',
      path: 'Content-Type',
      found: type.slice(0, 60),
      wanted: takenTypes.join(', '),
    });
  };
}

/** How the key is asked for on the network: as a bearer token (RFC 6750 section 2.1), never in an address that a log keeps. */
export function keyNeeded(key: string, attempts: Attempts, addressOf: (context: Context) => string): MiddlewareHandler {
  return async (context, next) => {
    const address = addressOf(context);
    const wait_s = attempts.blocked_s(address);
    if (wait_s > 0) {
      context.header('retry-after', String(wait_s));
      return refuse(context, 429, {
        code: 'too-many-wrong-keys',
        path: 'Authorization',
        found: '',
        wanted: String(wait_s),
      });
    }
    const given = /^Bearer (\S{1,200})$/u.exec(context.req.header('authorization') ?? '')?.[1];
    if (given !== undefined && sameKey(given, key)) return next();
    if (given !== undefined) attempts.wrong(address);
    context.header('www-authenticate', 'Bearer');
    const code = given === undefined ? 'key-needed' : 'key-wrong';
    return refuse(context, 401, { code, path: 'Authorization', found: '', wanted: '' });
  };
}
