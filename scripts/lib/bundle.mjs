/**
 * Packages that stay in node_modules: libsql loads a native library and highs its WebAssembly file from
 * beside themselves.
 */
const external = ['libsql', 'highs'];

/**
 * Bundles a TypeScript program and the workspace packages it imports into one file that Node runs.
 * The file must lie under the project's folder, where the packages left out are found.
 * @param {string} entry
 * @param {string} outfile
 * @returns {Promise<boolean>} whether it worked; if not, the messages have been printed
 */
export async function bundle(entry, outfile) {
  // Loaded only now: a clean clone has no bundler until the dependencies are installed.
  const { build } = await import('rolldown');
  try {
    await build({
      input: entry,
      platform: 'node',
      external,
      transform: { target: 'node20.19' },
      output: { file: outfile, format: 'esm', sourcemap: true, codeSplitting: false },
      logLevel: 'warn',
    });
    return true;
  } catch (error) {
    process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
    return false;
  }
}
