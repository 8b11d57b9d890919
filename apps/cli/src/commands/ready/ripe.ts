import {
  ammoniumToNitrate,
  breathAsCarbon,
  emergence_pctControl,
  ripenessKept,
  ripeningAge_days,
  ripeReport,
  withRipeness,
} from '@loamwright/advisor';
import type { Heap } from '@loamwright/daybook';
import {
  bad,
  type CuringInput,
  check,
  compostSmellIds,
  createDraws,
  curingCheck,
  good,
  likely,
  type Outcome,
  type Quantity,
  type RipenessId,
} from '@loamwright/science';
import { convert } from '@loamwright/units';
import type { Answer } from '../../answer.ts';
import { allOf, readFigure, readOneOf } from '../../blend.ts';
import { readBook } from '../../book.ts';
import { readMeasurement } from '../../grammar/measurement.ts';
import { readPast } from '../../grammar/when.ts';
import { recorded } from '../../recorded.ts';
import type { Session } from '../../session.ts';
import { subjectNamed } from '../../subject.ts';
import { page } from '../../text.ts';
import { cautionText } from '../heap.ts';

export interface RipeOptions {
  readonly heap?: string | undefined;
  readonly keep?: boolean | undefined;
  readonly smell?: string | undefined;
  readonly stuffSeen?: boolean | undefined;
  readonly afterTurn?: string | undefined;
  readonly rise?: string | undefined;
  readonly seedlings?: string | undefined;
  readonly cress?: string | undefined;
  readonly ratio?: string | undefined;
  readonly breath?: string | undefined;
  readonly breathCo2?: string | undefined;
  readonly oxygen?: string | undefined;
  readonly oxygenDemand?: string | undefined;
  readonly ammonium?: string | undefined;
  readonly nitrate?: string | undefined;
  readonly acids?: string | undefined;
}

/** What stands in the answer's problems, as the option it was typed with. */
const optionOf: Readonly<Partial<Record<RipenessId, string>>> = {
  carbonToNitrogen_ratio: '--ratio',
  respiration_mgCO2CPerGOMPerDay: '--breath',
  oxygenUptake_mmolPerKgOMPerHour: '--oxygen',
  oxygenDemand_mgPerGVSPerHour: '--oxygen-demand',
  selfHeating_K: '--rise',
  ammonium_mgPerKgDry: '--ammonium',
  ammoniumToNitrate_ratio: '--nitrate',
  emergence_pctControl: '--seedlings',
  germinationIndex_pct: '--cress',
  fattyAcids_mgPerKgDry: '--acids',
};

/**
 * `loamwright ripe`: whether compost is ripe, by what was measured, smelt and seen; of a heap of the daybook with what is kept of it,
 * and with `--keep` written down.
 */
export async function ripe(options: RipeOptions, session: Session): Promise<Outcome<Answer>> {
  const told = readTold(options, session);
  const heap = options.heap === undefined ? good(undefined) : await heapNamed(options.heap, session);
  if (!told.ok || !heap.ok) return bad(...allOf(told, heap));
  if (options.keep === true) return keep(told.value, heap.value, session);
  const kept = heap.value === undefined ? undefined : ripenessKept(heap.value);
  const input = withRipeness(kept?.seen ?? {}, told.value);
  const found = curingCheck.run(input, { draws: createDraws() });
  if (!found.ok) return found;
  const { speaker, terminal } = session;
  const { answer, notes, next, noGerms } = ripeReport(
    found.value,
    heap.value === undefined ? undefined : ripeningAge_days(heap.value, session.now().toISOString()),
  );
  const lines = [...notes, ...(next === null ? [] : [next]), noGerms];
  return good({
    value: { input, ...found.value },
    text: [
      page(terminal.columns, [speaker.tell(answer)]),
      page(terminal.columns, ...lines.map((said): [string] => [speaker.tell(said)])),
      cautionText(curingCheck.cautions, speaker, terminal.columns),
    ].join('\n\n'),
  });
}

/** Problems: those of a keeping, `no-such-heap` and its like. */
async function heapNamed(name: string, session: Session): Promise<Outcome<Heap>> {
  const book = await readBook(session);
  if (!book.ok) return book;
  const id = subjectNamed(book.value.holding, 'heap', name);
  if (!id.ok) return id;
  const heap = book.value.holding.heaps.get(id.value);
  return heap === undefined ? bad({ code: 'no-such-heap', path: '--heap', found: name, wanted: '' }) : good(heap);
}

/** What was told, written down for the heap. Problem: `missing` without a heap, or where nothing was told. */
async function keep(seen: CuringInput, heap: Heap | undefined, session: Session): Promise<Outcome<Answer>> {
  if (heap === undefined) return bad({ code: 'missing', path: '--heap', found: '', wanted: '' });
  if (Object.keys(seen).length === 0)
    return bad({ code: 'missing', path: '--smell', found: '', wanted: '--smell, --seedlings, --rise' });
  const when = readPast('now', session.now(), session.zone);
  if (!when.ok) return when;
  const about = [{ type: 'heap', id: heap.id }];
  return recorded(session, [{ kind: 'ripeness-tested', body: { seen }, about, when: when.value }], { heap: heap.id });
}

/** Problems: those of reading each option, and figures that cannot be. */
function readTold(options: RipeOptions, session: Session): Outcome<CuringInput> {
  const measured = readMeasured(options, session);
  const smell = options.smell === undefined ? good(undefined) : readOneOf(options.smell, compostSmellIds, '--smell');
  const afterTurn =
    options.afterTurn === undefined
      ? good(undefined)
      : readMeasurement(options.afterTurn, 'temperature', '--after-turn', session.speaker.system);
  if (!measured.ok || !smell.ok || !afterTurn.ok) return bad(...allOf(measured, smell, afterTurn));
  const input = check<CuringInput>(curingCheck.input, {
    ...(Object.keys(measured.value).length > 0 && { measured: measured.value }),
    ...(smell.value !== undefined && { smell: smell.value }),
    ...(options.stuffSeen === true && { stuffSeen: true }),
    ...(afterTurn.value !== undefined && { afterTurn_degC: afterTurn.value.si }),
  });
  if (input.ok) return input;
  return bad(
    ...input.problems.map((one) => {
      const id = one.path.replace('measured.', '') as RipenessId;
      return { ...one, path: one.path === 'afterTurn_degC' ? '--after-turn' : (optionOf[id] ?? one.path) };
    }),
  );
}

/** Problems: `number-unreadable`, `measurement-unreadable`, `missing`. */
function readMeasured(options: RipeOptions, session: Session): Outcome<NonNullable<CuringInput['measured']>> {
  const figure = (text: string | undefined, path: string): Outcome<Quantity | undefined> =>
    text === undefined ? good(undefined) : readFigure(text, path);
  const rise = readRise(options.rise, session);
  const seedlings = readSeedlings(options.seedlings);
  const cress = figure(options.cress, '--cress');
  const ratio = figure(options.ratio, '--ratio');
  const breath = figure(options.breath, '--breath');
  const breathCo2 = figure(options.breathCo2, '--breath-co2');
  const oxygen = figure(options.oxygen, '--oxygen');
  const demand = figure(options.oxygenDemand, '--oxygen-demand');
  const ammonium = figure(options.ammonium, '--ammonium');
  const nitrate = figure(options.nitrate, '--nitrate');
  const acids = figure(options.acids, '--acids');
  if (
    !rise.ok ||
    !seedlings.ok ||
    !cress.ok ||
    !ratio.ok ||
    !breath.ok ||
    !breathCo2.ok ||
    !oxygen.ok ||
    !demand.ok ||
    !ammonium.ok ||
    !nitrate.ok ||
    !acids.ok
  )
    return bad(...allOf(rise, seedlings, cress, ratio, breath, breathCo2, oxygen, demand, ammonium, nitrate, acids));
  const breathed = breath.value ?? (breathCo2.value === undefined ? undefined : breathAsCarbon(breathCo2.value));
  if (nitrate.value !== undefined && ammonium.value === undefined)
    return bad({ code: 'missing', path: '--ammonium', found: '', wanted: '--ammonium' });
  return good({
    ...(rise.value !== undefined && { selfHeating_K: rise.value }),
    ...(seedlings.value !== undefined && { emergence_pctControl: seedlings.value }),
    ...(cress.value !== undefined && { germinationIndex_pct: cress.value }),
    ...(ratio.value !== undefined && { carbonToNitrogen_ratio: ratio.value }),
    ...(breathed !== undefined && { respiration_mgCO2CPerGOMPerDay: breathed }),
    ...(oxygen.value !== undefined && { oxygenUptake_mmolPerKgOMPerHour: oxygen.value }),
    ...(demand.value !== undefined && { oxygenDemand_mgPerGVSPerHour: demand.value }),
    ...(ammonium.value !== undefined && { ammonium_mgPerKgDry: ammonium.value }),
    ...(ammonium.value !== undefined &&
      nitrate.value !== undefined && {
        ammoniumToNitrate_ratio: ammoniumToNitrate(ammonium.value, nitrate.value),
      }),
    ...(acids.value !== undefined && { fattyAcids_mgPerKgDry: acids.value }),
  });
}

/** A difference: `8C`, `14F`, `8` in the person's own degrees. */
function readRise(typed: string | undefined, { speaker }: Session): Outcome<number | undefined> {
  if (typed === undefined) return good(undefined);
  const [, figure = '', letter] = /^\s*([\d.,]+)\s*°?\s*([cf])?\s*$/iu.exec(typed.slice(0, 40)) ?? [];
  const read = readFigure(figure, '--rise');
  if (!read.ok) {
    return bad({ code: 'measurement-unreadable', path: '--rise', found: typed.slice(0, 40), wanted: '8C, 14F' });
  }
  const isFahrenheit = letter === undefined ? speaker.system === 'us' : letter.toLowerCase() === 'f';
  return good(convert(likely(read.value), isFahrenheit ? 'degFDifference' : 'degCDifference', 'degCDifference'));
}

/** Percent of the control, or what came up in it and beside it, and of how many sown: `85`, `17/20`, `34/38/40`. Problems: `number-unreadable`, `more-than-sown`. */
function readSeedlings(typed: string | undefined): Outcome<Quantity | undefined> {
  if (typed === undefined) return good(undefined);
  const [here = '', beside, ...more] = typed.split('/');
  if (beside === undefined) return readFigure(here, '--seedlings');
  const counts = [here, beside, ...more].map((text) => readFigure(text, '--seedlings'));
  const problems = allOf(...counts);
  const [came = 0, control = 0, sown] = counts.map((one) => (one.ok ? likely(one.value) : 0));
  if (problems.length > 0) return bad(...problems);
  const share = emergence_pctControl({ came, control, sown });
  return share.ok
    ? share
    : bad(
        ...share.problems.map((one) => ({
          ...one,
          path: '--seedlings',
          found: one.code === 'more-than-sown' ? one.found : typed.slice(0, 40),
        })),
      );
}
