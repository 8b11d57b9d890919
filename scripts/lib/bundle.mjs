/**
 * Packages that stay in node_modules: libsql loads a native library and highs its WebAssembly file from
 * beside themselves.
 */
const external = ['libsql', 'highs'];

/** Packages in the older module form, once bundled, ask for Node's own modules through `require`. */
const banner =
  "import { createRequire as bundledCreateRequire } from 'node:module';\nconst require = bundledCreateRequire(import.meta.url);";

/**
 * Bundles a TypeScript program and the workspace packages it imports into one file that Node runs.
 * The file must lie under the project's folder, where the packages left out are found.
 * @param {string} entry
 * @param {string} outfile
 * @returns {Promise<boolean>} whether it worked; if not, the messages have been printed
 */
export async function bundle(entry, outfile) {
  // Loaded only now: a clean clone has no esbuild until the dependencies are installed.
  const { build, stop } = await import('esbuild');
  try {
    const result = await build({
      entryPoints: [entry],
      outfile,
      bundle: true,
      format: 'esm',
      platform: 'node',
      target: 'node20.19',
      sourcemap: true,
      charset: 'utf8',
      external,
      banner: { js: banner },
      logLevel: 'warning',
    });
    return result.errors.length === 0;
  } catch {
    return false;
  } finally {
    await stop();
  }
}
