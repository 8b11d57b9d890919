import { bedRecords, layerReport, seasonOf, shareReport, spreadReport, stuffed } from '@loamwright/advisor';
import type { Holding } from '@loamwright/daybook';
import {
  bad,
  bedBudget,
  check,
  createDraws,
  good,
  type Outcome,
  type Prices,
  type Product,
  type ShareOutInput,
  type SpreadDepthInput,
  type SpreadRateInput,
  shareOut,
  spreadDepth,
  spreadRate,
} from '@loamwright/science';
import type { Saying } from '@loamwright/words';
import type { Answer } from '../../answer.ts';
import { allOf, readFigure, readMeasure, readOneOf } from '../../blend.ts';
import { materialNamed, readIngredients } from '../../grammar/ingredient.ts';
import { readMeasurement } from '../../grammar/measurement.ts';
import type { Names } from '../../grammar/names.ts';
import { namesOf } from '../../holding.ts';
import type { Session } from '../../session.ts';
import { openWithSizes } from '../../sizes.ts';
import { loadSolver } from '../../solver.ts';
import { subjectNamed } from '../../subject.ts';
import { page } from '../../text.ts';
import { type BedBudgetOptions, readAsked } from '../bed/budget.ts';
import { readArea } from '../bed/read.ts';
import { cautionText } from '../heap.ts';
import { type SpreadHeapOptions, spreadHeap } from './heap.ts';

export interface SpreadOptions extends BedBudgetOptions, SpreadHeapOptions {
  readonly on?: readonly string[] | undefined;
  readonly deep?: string | undefined;
  readonly measure?: string | undefined;
  readonly price?: readonly string[] | undefined;
  readonly heap?: string | undefined;
}

/**
 * `loamwright spread`: how much of what is on hand goes on a bed and what stops more; with `--deep` what a layer comes to;
 * with `--over` how whole measures are shared among beds.
 */
export async function spread(
  typed: readonly string[],
  options: SpreadOptions,
  before: Session,
): Promise<Outcome<Answer>> {
  const opened = await openWithSizes(options, before);
  if (!opened.ok) return opened;
  const { holding, session } = opened.value;
  if (options.heap !== undefined) return spreadHeap(options.heap, options, holding, session);
  if (options.over !== undefined) return shared(options.over, options, holding, session);
  if (options.deep !== undefined) return layer(typed, options.deep, options, holding, session);
  return rated(typed, options, holding, session);
}

async function rated(
  typed: readonly string[],
  options: SpreadOptions,
  holding: Holding,
  session: Session,
): Promise<Outcome<Answer>> {
  const names = namesOf(session, holding);
  const asked = readAsked(options.on ?? [], options, holding, session);
  const products = readProducts(typed, options, names, holding);
  const prices = readPrices(options.price ?? []);
  if (!asked.ok || !products.ok || !prices.ok) return bad(...allOf(asked, products, prices));
  const input = check<SpreadRateInput>(spreadRate.input, {
    ...(asked.value.input as object),
    products: products.value,
    ...(prices.value !== undefined && { prices: prices.value }),
  });
  if (!input.ok) return input;
  const found = spreadRate.run(input.value, { draws: createDraws(), solver: await loadSolver() });
  if (!found.ok) return found;
  const report = spreadReport(found.value, holding);
  return good({
    value: { input: input.value, ...found.value },
    text: blocks(
      [[report.answer, report.stops], [...asked.value.ground, ...report.notes], report.alone],
      session,
      report.cautions,
    ),
  });
}

function blocks(
  parts: readonly (readonly Saying[])[],
  { speaker, terminal: { columns } }: Session,
  cautions: Parameters<typeof cautionText>[0],
): string {
  return [
    ...parts
      .filter((part) => part.length > 0)
      .map((part) => page(columns, ...part.map((said): [string] => [speaker.tell(said)]))),
    cautionText(cautions, speaker, columns),
  ]
    .filter((block) => block !== '')
    .join('\n\n');
}

/** `compost=10barrows` is what there is; `compost` alone is as much as is wanted. Problems: those of ingredients. */
function readProducts(
  typed: readonly string[],
  { mulch, after, weather, measure }: SpreadOptions,
  names: Names,
  holding: Holding,
): Outcome<readonly Product[]> {
  if (typed.length === 0) return bad({ code: 'nothing-named', path: 'spread', found: '', wanted: '' });
  const counted = readMeasure(measure, 'barrow', names);
  const read = typed.map((text): Outcome<Product> => {
    if (!text.includes('=')) {
      const material = materialNamed(text, text.slice(0, 80), names);
      return material.ok ? good({ ...stuffed(material.value, [], holding) }) : material;
    }
    const stuff = readIngredients([text], names);
    if (!stuff.ok) return stuff;
    const [one] = stuff.value;
    if (one === undefined) throw new RangeError('one ingredient was read');
    return good({ ...stuffed(one.material, one.doubtful, holding), onHand: one.amount });
  });
  const problems = allOf(...read, counted);
  if (problems.length > 0 || !counted.ok) return bad(...problems);
  const days = after === undefined ? undefined : Number(after);
  return good(
    read.flatMap((one) =>
      one.ok
        ? [
            {
              ...one.value,
              ...(measure !== undefined && { measure: counted.value }),
              ...(mulch === true && { placed: 'mulched' as const }),
              ...(days !== undefined && Number.isFinite(days) && { workedInAfter_days: days }),
              ...(weather !== undefined && { weather: weather as NonNullable<Product['weather']> }),
            },
          ]
        : [],
    ),
  );
}

const priced = { n: 'nitrogen_perKg', p: 'phosphate_perKg', k: 'potash_perKg' } as const;

/** `n=1.2 p=1 k=0.8`: money for a kilogram. Problems: `not-one-of`, `number-unreadable`. */
function readPrices(typed: readonly string[]): Outcome<Prices | undefined> {
  if (typed.length === 0) return good(undefined);
  const read = typed.map((text): Outcome<Prices> => {
    const [name = '', figure = ''] = text.split('=');
    const of = readOneOf(name, ['n', 'p', 'k'] as const, '--price');
    const price = readFigure(figure, '--price');
    if (!of.ok || !price.ok) return bad(...allOf(of, price));
    return typeof price.value === 'number'
      ? good({ [priced[of.value]]: price.value })
      : bad({ code: 'number-unreadable', path: '--price', found: text.slice(0, 40), wanted: '' });
  });
  const problems = allOf(...read);
  if (problems.length > 0) return bad(...problems);
  return good(Object.assign({}, ...read.map((one) => (one.ok ? one.value : {}))) as Prices);
}

/** So deep over so much. */
function layer(
  typed: readonly string[],
  deep: string,
  options: SpreadOptions,
  holding: Holding,
  session: Session,
): Outcome<Answer> {
  const names = namesOf(session, holding);
  const [stuff, ...more] = typed;
  if (stuff === undefined || more.length > 0)
    return bad({ code: 'nothing-named', path: 'spread', found: '', wanted: '' });
  const material = materialNamed(stuff, stuff.slice(0, 80), names);
  const depth = readMeasurement(deep, 'depth', '--deep', session.speaker.system);
  const area = readBedArea(options, holding, session);
  const measure = readMeasure(options.measure, 'barrow', names);
  if (!material.ok || !depth.ok || !area.ok || !measure.ok) return bad(...allOf(material, depth, area, measure));
  const input = check<SpreadDepthInput>(spreadDepth.input, {
    ...stuffed(material.value, [], holding),
    depth_m: depth.value.si,
    area_m2: area.value,
    measure: measure.value,
    ...(session.settings.measures_L !== undefined && { ownSizes: session.settings.measures_L }),
  });
  if (!input.ok)
    return bad(...input.problems.map((one) => ({ ...one, path: one.path === 'depth_m' ? '--deep' : one.path })));
  const found = spreadDepth.run(input.value, { draws: createDraws() });
  if (!found.ok) return found;
  const [answer, ...rest] = layerReport(input.value, found.value, holding);
  return good({
    value: { input: input.value, ...found.value },
    text: blocks([answer === undefined ? [] : [answer], rest], session, ['local-rules']),
  });
}

/** `--area 80x15ft`, `--area 12m2`, or that of a bed. Problems: `measurement-unreadable`, `no-such-bed`. */
function readBedArea({ area, bed }: SpreadOptions, holding: Holding, session: Session): Outcome<unknown> {
  if (area !== undefined) return readArea(area, '--area', session);
  if (bed === undefined)
    return bad({ code: 'measurement-unreadable', path: '--area', found: '', wanted: '12m2, 80x15ft' });
  const id = subjectNamed(holding, 'bed', bed);
  return id.ok ? good(holding.beds.get(id.value)?.setUp.body.area_m2) : id;
}

/** Whole measures shared among beds of the daybook, by their area or by the nitrogen that each is short of. */
function shared(
  over: readonly string[],
  { share, byNeed, measure }: SpreadOptions,
  holding: Holding,
  session: Session,
): Outcome<Answer> {
  const count = readFigure(share ?? '', '--share');
  const counted = readMeasure(measure, 'barrow', namesOf(session, holding));
  const beds = over.map((name) => bedToShare(name, holding, session));
  const problems = allOf(count, counted, ...beds);
  if (problems.length > 0 || !count.ok || !counted.ok) return bad(...problems);
  const input = check<ShareOutInput>(shareOut.input, {
    measures: count.value,
    beds: beds.flatMap((bed) => (bed.ok ? [bed.value] : [])),
    by: byNeed === true ? 'need' : 'area',
  });
  if (!input.ok)
    return bad(...input.problems.map((one) => ({ ...one, path: one.path === 'measures' ? '--share' : one.path })));
  const found = shareOut.run(input.value, { draws: createDraws() });
  if (!found.ok) return found;
  return good({
    value: { input: input.value, ...found.value },
    text: blocks([[shareReport(found.value, counted.value)]], session, []),
  });
}

function bedToShare(
  name: string,
  holding: Holding,
  { now, zone, speaker }: Session,
): Outcome<ShareOutInput['beds'][number]> {
  const id = subjectNamed(holding, 'bed', name);
  if (!id.ok) return id;
  const bed = holding.beds.get(id.value);
  if (bed === undefined) throw new RangeError('a bed was named');
  const area = bed.setUp.body.area_m2;
  const season = seasonOf(now().toISOString(), zone);
  const { crops, put, soilTest } = bedRecords(bed, holding, { season, zone, speaker });
  const budget =
    crops.length === 0 ? undefined : bedBudget.run({ crops, put, soilTest, area_m2: area }, { draws: createDraws() });
  const want = budget?.ok === true ? budget.value.elements.nitrogen.short_kg.p50 : undefined;
  return good({
    name: bed.setUp.body.name,
    area_m2: typeof area === 'number' ? area : area.p50,
    ...(want !== undefined && { want }),
  });
}
