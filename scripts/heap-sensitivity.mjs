// What a heap's heat and losses hang on: `node scripts/heap-sensitivity.mjs` works out Sobol's indices of a usual heap and
// writes the table in docs/models/heap-twin-sensitivity.md and the picture beside it anew. Takes a minute or two.
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { load } from './lib/load.mjs';
import { root } from './lib/root.mjs';
import { picture } from './lib/sensitivity-picture.mjs';

const SAMPLES = 256;
const RESAMPLES = 200;
const SEED = 20261130;
const DAYS = 60;
const HOT_degC = 55;
/** A published range wider than so many times is drawn evenly in its logarithm. */
const WIDE = 5;
const page = join(root, 'docs/models/heap-twin-sensitivity.md');
const drawing = join(root, 'docs/models/heap-twin-sensitivity.svg');

/** @typedef {{ id: string, low: number, high: number, isLog: boolean }} Factor */
/** @typedef {{ first: number, total: number, from: number, to: number, sign: number }} Index */

const model = await load(join(root, 'scripts/lib/sensitivity-model.ts'));

/** What a grower's heap may be: the reasonable bands of reference/bands.json (density: 300 to 650), and a garden's weather and sizes. */
const ofHeap = [
  { id: 'moisture_pctWet', low: 45, high: 65, isLog: false },
  { id: 'density_kgPerM3AsIs', low: 300, high: 650, isLog: false },
  { id: 'carbonToNitrogen_ratio', low: 20, high: 40, isLog: false },
  { id: 'air_degC', low: 0, high: 25, isLog: false },
  { id: 'volume_m3', low: 0.5, high: 2, isLog: false },
];
/** @type {Factor[]} */
const factors = [
  ...model.uncertainIds.map((/** @type {string} */ id) => {
    const { low, high } = model.twinParameters[id];
    return { id, low, high, isLog: low > 0 && high / low > WIDE };
  }),
  ...ofHeap,
];
const outputs = [
  { id: 'peak', title: 'Hottest the core gets, °C' },
  { id: 'days', title: `Days the core is above ${HOT_degC} °C, of ${DAYS}` },
  { id: 'nitrogen', title: 'Nitrogen lost, % of what was built in' },
];

/** Park and Miller 1988: the same numbers every time. */
let seed = SEED;
function next() {
  seed = (seed * 48271) % 2147483647;
  return seed / 2147483647;
}

/** @param {number} count */
function shuffled(count) {
  const order = Array.from({ length: count }, (_, i) => i);
  for (let i = count - 1; i > 0; i--) {
    const j = Math.floor(next() * (i + 1));
    [order[i], order[j]] = [Number(order[j]), Number(order[i])];
  }
  return order;
}

/** A Latin hypercube: each factor evenly over its range, in an order of its own. */
function hypercube() {
  const columns = factors.map(() => shuffled(SAMPLES).map((place) => (place + next()) / SAMPLES));
  return Array.from({ length: SAMPLES }, (_, row) => columns.map((column) => Number(column[row])));
}

/** @param {number[]} point @returns {Record<string, number>} */
function valuesAt(point) {
  return Object.fromEntries(
    factors.map(({ id, low, high, isLog }, k) => {
      const share = Number(point[k]);
      return [id, isLog ? low * (high / low) ** share : low + share * (high - low)];
    }),
  );
}

/** Microbes of the usual heap on its first day. */
const ACTIVITY = 0.2;
const [FAST, HEMICELLULOSE, CELLULOSE, LIGNIN, INERT] = [0.2, 0.22, 0.3, 0.18, 0.1];

/** A run of the usual heap with other figures. @param {number[]} point @returns {number[]} each output */
function answersAt(point) {
  const values = valuesAt(point);
  const fast = FAST * Number(values['fastShare_ratio']);
  const slow = (FAST + HEMICELLULOSE + CELLULOSE - fast) / (HEMICELLULOSE + CELLULOSE);
  const air_degC = Number(values['air_degC']);
  const stuff = model.stuffLike({
    volume_m3: values['volume_m3'],
    density_kgPerM3AsIs: values['density_kgPerM3AsIs'],
    moisture_pctWet: values['moisture_pctWet'],
    carbonToNitrogen_ratio: values['carbonToNitrogen_ratio'],
    pools_shareOfVolatile: [fast, slow * HEMICELLULOSE, slow * CELLULOSE, LIGNIN, INERT],
    temp_degC: Math.max(2, air_degC),
    activity_share: Math.min(1, ACTIVITY * Number(values['startActivity_ratio'])),
  });
  const built_kg = stuff.organicN_kg + stuff.ammoniacalN_kg + stuff.nitrateN_kg;
  const figures = Object.fromEntries(model.uncertainIds.map((/** @type {string} */ id) => [id, values[id]]));
  const run = model.runLike({
    stuff,
    traits: model.traitsOf(figures),
    weatherAt: model.constantWeather(model.stillAir(air_degC)),
    days: DAYS,
  });
  let peak_degC = Number.NEGATIVE_INFINITY;
  let hot_h = 0;
  const end = model.runHeap(run, model.HOUR_S, (/** @type {{ state: unknown }} */ { state }) => {
    const core_degC = model.shellTemperature_degC(state, 0);
    peak_degC = Math.max(peak_degC, core_degC);
    if (core_degC > HOT_degC) hot_h++;
  });
  const lost_kg = ['ammoniaGone_kg', 'nitrogenDrained_kg', 'nitrogenDenitrified_kg']
    .map((id) => Number(model.lineOf(end.ledger, id)))
    .reduce((sum, kg) => sum + kg, 0);
  return [peak_degC, hot_h / 24, (100 * lost_kg) / built_kg];
}

/** @param {readonly number[]} values */
const mean = (values) => values.reduce((sum, value) => sum + value, 0) / values.length;
/** @param {readonly number[]} values @param {number} share */
const quantile = (values, share) => Number([...values].sort((a, b) => a - b)[Math.floor(share * (values.length - 1))]);

/**
 * First-order and total index from the outputs at A, at B, and at A with one factor out of B, over some of the samples.
 * Sources: Saltelli and others 2010, Comput. Phys. Commun. 181:259-270, table 2 (b) and (f), the latter Jansen's.
 * @param {number[]} a @param {number[]} b @param {number[]} mixed @param {number[]} rows
 */
function indices(a, b, mixed, rows) {
  const [atA, atB, atMixed] = [a, b, mixed].map((values) => rows.map((row) => Number(values[row])));
  if (atA === undefined || atB === undefined || atMixed === undefined) throw new Error('no samples');
  const all = [...atA, ...atB];
  const middle = mean(all);
  const variance = mean(all.map((value) => (value - middle) ** 2));
  const first = mean(atA.map((value, i) => Number(atB[i]) * (Number(atMixed[i]) - value))) / variance;
  const total = mean(atA.map((value, i) => (value - Number(atMixed[i])) ** 2)) / (2 * variance);
  return { first, total };
}

const [A, B] = [hypercube(), hypercube()];
const [answersA, answersB] = [A.map(answersAt), B.map(answersAt)];
const answersMixed = factors.map((_, k) =>
  A.map((point, row) => answersAt(point.map((share, q) => (q === k ? Number(B[row]?.[q]) : share)))),
);
const every = Array.from({ length: SAMPLES }, (_, row) => row);
const again = Array.from({ length: RESAMPLES }, () => every.map(() => Math.floor(next() * SAMPLES)));

/** @type {{ id: string, title: string, spread: number[], indices: Index[] }[]} */
const found = outputs.map(({ id, title }, output) => {
  const column = (/** @type {number[][]} */ answers) => answers.map((answer) => Number(answer[output]));
  const [a, b] = [column(answersA), column(answersB)];
  const all = [...a, ...b];
  const points = [...A, ...B];
  return {
    id,
    title,
    spread: [0.1, 0.5, 0.9].map((share) => quantile(all, share)),
    indices: factors.map((_, k) => {
      const mixed = column(answersMixed[k] ?? []);
      const totals = again.map((rows) => indices(a, b, mixed, rows).total);
      const tilt = mean(points.map((point, i) => (Number(point[k]) - 0.5) * (Number(all[i]) - mean(all))));
      return {
        ...indices(a, b, mixed, every),
        from: quantile(totals, 0.05),
        to: quantile(totals, 0.95),
        sign: Math.sign(tilt),
      };
    }),
  };
});

const order = factors
  .map((factor, k) => ({ factor, k, most: Math.max(...found.map(({ indices: each }) => each[k]?.total ?? 0)) }))
  .sort((one, other) => other.most - one.most);
const cell = (/** @type {Index | undefined} */ index) =>
  index === undefined
    ? ''
    : `${index.first.toFixed(2)}, ${index.total.toFixed(2)} (${index.from.toFixed(2)}–${index.to.toFixed(2)}) ${index.sign > 0 ? '↑' : '↓'}`;
const table = [
  `| | from | to | ${outputs.map(({ title }) => title).join(' | ')} |`,
  `| --- | --- | --- | ${outputs.map(() => '---').join(' | ')} |`,
  `| *p10, p50, p90 of the answers* | | | ${found.map(({ spread }) => spread.map((value) => value.toFixed(1)).join(', ')).join(' | ')} |`,
  ...order.map(
    ({ factor, k }) =>
      `| \`${factor.id}\`${factor.isLog ? ' (log)' : ''} | ${factor.low} | ${factor.high} | ${found.map(({ indices: each }) => cell(each[k])).join(' | ')} |`,
  ),
  `| *sum of the first* | | | ${found.map(({ indices: each }) => each.reduce((sum, { first }) => sum + first, 0).toFixed(2)).join(' | ')} |`,
].join('\n');

writeFileSync(drawing, picture(factors, found));
const [before, , after] = readFileSync(page, 'utf8').split(/<!-- table -->/);
if (before === undefined || after === undefined) throw new Error(`${page} has no two marks <!-- table -->`);
writeFileSync(page, `${before}<!-- table -->\n\n${table}\n\n<!-- table -->${after}`);
process.stdout.write(`${SAMPLES * (factors.length + 2)} runs; wrote ${page} and ${drawing}\n`);
