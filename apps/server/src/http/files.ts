import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { extname, join, relative, sep } from 'node:path';
import { brotliCompressSync, constants } from 'node:zlib';
import type { Handler } from 'hono';

/** One file of the built app, as it is sent. */
interface ServedFile {
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly type: string;
  readonly etag: string;
  /** Its name changes with its content, so it may be kept for ever. */
  readonly immutable: boolean;
}

/** The built app by path (`/index.html`). Only what lies in this map can be asked for. */
export type ServedFiles = ReadonlyMap<string, ServedFile>;

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json',
  '.webmanifest': 'application/manifest+json',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.woff2': 'font/woff2',
  '.wasm': 'application/wasm',
};

/** Texts and WebAssembly shrink; pictures and fonts already have. */
const shrinks = /^(?:text\/|application\/|image\/svg)/u;

/** Vite puts whatever has its hash in its name into this folder. */
const HASHED = '/assets/';

/** Reads the built app once; an empty map when it has not been built. */
export function readFiles(folder: string): ServedFiles {
  if (!existsSync(join(folder, 'index.html'))) return new Map();
  const names = readdirSync(folder, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile());
  return new Map(
    names.flatMap((entry): [string, ServedFile][] => {
      const file = join(entry.parentPath, entry.name);
      const type = types[extname(entry.name)];
      const path = `/${relative(folder, file).split(sep).join('/')}`;
      // Hidden folders hold what the build tools leave for one another.
      if (type === undefined || path.includes('/.')) return [];
      const bytes = Uint8Array.from(readFileSync(file));
      const etag = `"${createHash('sha256').update(bytes).digest('base64url').slice(0, 22)}"`;
      return [[path, { bytes, type, etag, immutable: path.startsWith(HASHED) }]];
    }),
  );
}

/** Serves the app: a file by its path, the app's page for any other path that a person may have typed. */
export function serveFiles(files: ServedFiles): Handler {
  const shrunk = new Map<ServedFile, Uint8Array<ArrayBuffer>>();
  return (context) => {
    const path = context.req.path === '/' ? '/index.html' : context.req.path;
    const file = files.get(path) ?? (extname(path) === '' ? files.get('/index.html') : undefined);
    if (file === undefined) return context.notFound();
    const headers = {
      'content-type': file.type,
      'cache-control': file.immutable ? 'public, max-age=31536000, immutable' : 'no-cache',
      etag: file.etag,
      vary: 'accept-encoding',
    };
    if (context.req.header('if-none-match') === file.etag) return context.body(null, 304, headers);
    const takesBrotli = /\bbr\b/u.test(context.req.header('accept-encoding') ?? '') && shrinks.test(file.type);
    if (!takesBrotli) return context.body(file.bytes, 200, headers);
    return context.body(shrink(file), 200, { ...headers, 'content-encoding': 'br' });
  };

  function shrink(file: ServedFile): Uint8Array<ArrayBuffer> {
    const held = shrunk.get(file);
    if (held !== undefined) return held;
    // Quality 5: most of the gain in a tenth of the time of the highest.
    const made = Uint8Array.from(brotliCompressSync(file.bytes, { params: { [constants.BROTLI_PARAM_QUALITY]: 5 } }));
    shrunk.set(file, made);
    return made;
  }
}
