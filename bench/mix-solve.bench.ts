// How long a mix takes with the solver loaded, and how that compares with GLPK on the same programmes.
// Budget: 50 ms for the base solve of twelve materials. Each figure: median and 95th percentile.
import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import {
  createDraws,
  highsSolver,
  type Milp,
  type MilpSolver,
  type MixSolveInput,
  mixSolve,
  writeLp,
} from '@loamwright/science';
import loadHighs from 'highs';

const BUDGET_MS = 50;
const VARIANTS = 40;
const WARM_UP = VARIANTS;
const AGREEMENT = 1e-6;
const SEED = 20261125;
/** GLPK may search for hours for what HiGHS proves at once: it gets so long for each of so many. */
const GLPK_LIMIT_S = 2;
const COMPARED = 12;
/** Materials of the small programmes, which both can prove. */
const FEW = 4;
/** The first answer by itself. */
const ALONE = { mend: false, alternatives: false } as const;

/** Quarry Lane in October: what twelve materials there are, in buckets of 20 L. */
const stock: readonly (readonly [material: string, buckets: number])[] = [
  ['grass-clippings', 20],
  ['coffee-grounds', 4],
  ['goat-bedding', 8],
  ['rabbit-droppings', 3],
  ['apple-pomace', 10],
  ['hedge-chippings', 15],
  ['straw', 30],
  ['autumn-leaves', 25],
  ['corrugated-cardboard', 10],
  ['kitchen-scraps', 4],
  ['green-weeds', 8],
  ['wood-shavings', 10],
];

/** Park and Miller 1988: the same variants every time. */
let state = SEED;
function next(): number {
  state = (state * 48271) % 2147483647;
  return state / 2147483647;
}

const variants: readonly MixSolveInput[] = Array.from({ length: VARIANTS }, (_, i) => ({
  stock: stock.map(([material, buckets]) => ({
    material,
    amount: { measure: 'bucket-20l', count: i === 0 ? buckets : Math.round(2 * buckets * next()) },
  })),
  bay: { width_m: 1, depth_m: 1, height_m: 1 },
}));

const started = performance.now();
const highs = highsSolver(await loadHighs());
const loaded_ms = performance.now() - started;
const draws = createDraws();

/** Every programme that was solved, and how long the solver took. */
const solved: { readonly problem: Milp; readonly cost: number; readonly ms: number; readonly cpu_ms: number }[] = [];
const watched: MilpSolver = (problem) => {
  const from = performance.now();
  const cpuFrom = process.cpuUsage();
  const result = highs(problem);
  const ms = performance.now() - from;
  const { user, system } = process.cpuUsage(cpuFrom);
  if (result.status === 'optimal') solved.push({ problem, cost: result.cost, ms, cpu_ms: (user + system) / 1000 });
  return result;
};

function time(input: MixSolveInput): number {
  const from = performance.now();
  const outcome = mixSolve.run(input, { draws, solver: watched });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return performance.now() - from;
}

/** How many other answers there are; undefined where the first is not well off. */
function othersIn(input: MixSolveInput): number | undefined {
  const outcome = mixSolve.run(input, { draws, solver: highs });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  const { standing, alternatives } = outcome.value;
  return standing === 'good' || standing === 'fair' ? alternatives.length : undefined;
}

function show(what: string, values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const at = (share: number): number =>
    sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN;
  process.stdout.write(
    `${what.padEnd(62)} ${at(0.5).toFixed(1).padStart(7)} ms ${at(0.95).toFixed(1).padStart(7)} ms\n`,
  );
  return at(0.5);
}

process.stdout.write(
  `mix-solve, 12 materials, ${VARIANTS} stocks (seed ${SEED}); solver loaded in ${loaded_ms.toFixed(0)} ms\n`,
);
process.stdout.write(
  `first answer of all, cold: ${time({ ...variants[0], stock: variants[0]?.stock ?? [], ...ALONE }).toFixed(0)} ms\n`,
);
for (const input of variants.slice(0, WARM_UP)) time({ ...input, ...ALONE });

solved.length = 0;
const bare_ms = variants.map((input) => time({ ...input, ...ALONE }));
const base = solved.splice(0);
const mended_ms = variants.map((input) => time({ ...input, alternatives: false }));
/** Only where the first answer is well off are others sought: their time is told apart. */
const withOthers = variants.filter((input) => othersIn({ ...input, ...ALONE }) !== undefined);
solved.length = 0;
const others_ms = withOthers.map((input) => time({ ...input, mend: false }));
const leaning = solved.splice(0).filter(({ problem }) => problem.gap !== undefined);
const told = withOthers.map((input) => othersIn({ ...input, mend: false }) ?? 0);

process.stdout.write(`${''.padEnd(62)}     median        p95\n`);
const base_ms = show(
  'base solve (one programme)',
  base.map(({ ms }) => ms),
);
show(
  'the same, processor time (a busy machine stretches the other)',
  base.map(({ cpu_ms }) => cpu_ms),
);
show('answer with its balance over 256 draws', bare_ms);
show('answer with what would mend it', mended_ms);
show(
  'another answer (one programme)',
  leaning.map(({ ms }) => ms),
);
show(
  'the same, processor time',
  leaning.map(({ cpu_ms }) => cpu_ms),
);
show(`answer with its others, of the ${withOthers.length} stocks with a good or fair one`, others_ms);
const count = (n: number): number => told.filter((others) => others === n).length;
process.stdout.write(`others told: two in ${count(2)}, one in ${count(1)}, none in ${count(0)} of them\n`);

if (base_ms > BUDGET_MS) {
  process.stdout.write(`over the budget of ${BUDGET_MS} ms\n`);
  process.exitCode = 1;
}

if (spawnSync('glpsol', ['--version']).status === 0) {
  variants.forEach(({ stock: lines, ...rest }) => {
    time({ ...rest, stock: lines.slice(0, FEW), ...ALONE });
  });
  compareWithGlpk(solved.slice(-VARIANTS), FEW);
  compareWithGlpk(base, stock.length);
} else process.stdout.write('GLPK is not installed (Debian: glpk-utils), so nothing was compared.\n');

interface Reference {
  readonly cost: number;
  /** False when GLPK was stopped before it had proved its best to be the optimum. */
  readonly isProved: boolean;
  readonly ms: number;
}

/** Wall time of a `glpsol` process, and the objective it reached. */
function glpk(problem: Milp, folder: string): Reference {
  const [model, report] = [join(folder, 'mix.lp'), join(folder, 'mix.out')];
  writeFileSync(model, writeLp(problem));
  const from = performance.now();
  execFileSync('glpsol', ['--lp', model, '--tmlim', String(GLPK_LIMIT_S), '--write', report], { stdio: 'ignore' });
  const ms = performance.now() - from;
  // "s mip ROWS COLUMNS STATUS OBJECTIVE", o where proved, f where only feasible, u where nothing was found; or "s bas …".
  const [, status, cost] = /^s (?:mip \d+ \d+ ([ofu])|bas .*) (\S+)$/m.exec(readFileSync(report, 'utf8')) ?? [];
  return { ms, isProved: status === 'o', cost: status === 'u' ? Number.POSITIVE_INFINITY : Number(cost) };
}

/** The same programmes through both, side by side, on stocks of so many materials. */
function compareWithGlpk(programmes: typeof base, materials: number): void {
  const folder = mkdtempSync(join(tmpdir(), 'mix-'));
  const nothing: Milp = {
    variables: [{ name: 'x', cost: 1, lower: 0, upper: 1, integer: false }],
    rows: [{ name: 'r', coefficients: { x: 1 }, lower: 0, upper: 1 }],
  };
  try {
    const compared = programmes.slice(0, COMPARED).map((one) => ({
      ...one,
      glpk: glpk(one.problem, folder),
      start_ms: glpk(nothing, folder).ms,
    }));
    const proved = compared.filter((one) => one.glpk.isProved);
    process.stdout.write(
      `${materials} materials: glpsol proved its optimum within ${GLPK_LIMIT_S} s in ${proved.length} of ${compared.length}\n`,
    );
    const ours_ms = show(
      '  HiGHS',
      compared.map(({ ms }) => ms),
    );
    const theirs_ms = show(
      '  glpsol without its start',
      compared.map((one) => Math.max(0, one.glpk.ms - one.start_ms)),
    );
    process.stdout.write(`  HiGHS to GLPK, medians: ${(ours_ms / Math.max(0.1, theirs_ms)).toFixed(3)}\n`);
    const apart = (some: typeof compared): readonly number[] =>
      some.map(({ cost, glpk: reference }) => (reference.cost - cost) / Math.max(1, cost));
    const worst = Math.max(0, ...apart(proved).map(Math.abs));
    if (proved.length > 0) {
      process.stdout.write(`  objectives that GLPK proved differ by at most ${worst.toExponential(1)}\n`);
    }
    const lower = Math.max(0, ...apart(compared).map((one) => -one));
    process.stdout.write(`  GLPK's objective is never lower by more than ${lower.toExponential(1)}\n`);
    if (worst > AGREEMENT || lower > AGREEMENT) process.exitCode = 1;
  } finally {
    rmSync(folder, { recursive: true });
  }
}
