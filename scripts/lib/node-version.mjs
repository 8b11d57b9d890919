/** The lines of Node that every tool here runs on: 20.19 or later, and 22.12 or later. */
const oldest = [
  { major: 20, minor: 19 },
  { major: 22, minor: 12 },
];

/**
 * What is wrong with this version of Node, with what would do; nothing when it will do.
 * @param {string} version as in `process.versions.node`
 * @returns {string | undefined}
 */
export function nodeProblem(version) {
  const [major = 0, minor = 0] = version.split('.').map(Number);
  const newest = oldest[oldest.length - 1];
  const fits =
    oldest.some((line) => line.major === major && minor >= line.minor) ||
    (newest !== undefined && major > newest.major);
  if (fits) return undefined;
  return `Loamwright needs Node 20.19 or later (in the 22 line 22.12 or later); this is Node ${version}. Node 20.19, 22.12 or anything newer from nodejs.org will do.`;
}

/** Ends the program, with what would do, when it runs on a Node that is too old. */
export function demandNode() {
  const problem = nodeProblem(process.versions.node);
  if (problem === undefined) return;
  process.stderr.write(`${problem}\n`);
  process.exit(1);
}
