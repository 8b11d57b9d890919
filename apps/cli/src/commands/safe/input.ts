import { beanSteps, beanWords, inputReport, keptBeans } from '@loamwright/advisor';
import {
  type BeanTestInput,
  bad,
  beanTestCalculation,
  type CautionId,
  check,
  createDraws,
  good,
  heapKinds,
  hurtIds,
  type InputCheckInput,
  inputCheck,
  type Outcome,
  type Quantity,
  sprayedIds,
} from '@loamwright/science';
import type { Saying } from '@loamwright/words';
import type { Answer } from '../../answer.ts';
import { allOf, readFigure, readOneOf } from '../../blend.ts';
import { readBook } from '../../book.ts';
import { readPast } from '../../grammar/when.ts';
import { namesOf } from '../../holding.ts';
import { recorded } from '../../recorded.ts';
import type { Session } from '../../session.ts';
import { subjectNamed } from '../../subject.ts';
import { page } from '../../text.ts';
import { cautionText } from '../heap.ts';

export interface SafeInputOptions {
  readonly heap?: string | undefined;
  readonly sprayed?: string | undefined;
  readonly mowings?: string | undefined;
  readonly weeks?: string | undefined;
}

/** `loamwright safe input`: may this go into such a heap? */
export async function safeInput(typed: string, options: SafeInputOptions, session: Session): Promise<Outcome<Answer>> {
  const book = await readBook(session);
  if (!book.ok) return book;
  const names = namesOf(session, book.value.holding);
  const stuff = readStuff(typed, names.material(typed), (id) => names.materialName(id));
  const heap = readOneOf(options.heap ?? 'slow', heapKinds, '--heap');
  const sprayed = options.sprayed === undefined ? good(undefined) : readOneOf(options.sprayed, sprayedIds, '--sprayed');
  const mowings = readCount(options.mowings, '--mowings');
  const weeks = readCount(options.weeks, '--weeks');
  if (!stuff.ok || !heap.ok || !sprayed.ok || !mowings.ok || !weeks.ok)
    return bad(...allOf(stuff, heap, sprayed, mowings, weeks));
  const input = check<InputCheckInput>(inputCheck.input, {
    stuff: stuff.value,
    heap: heap.value,
    ...(sprayed.value !== undefined && { sprayed: sprayed.value }),
    ...(mowings.value !== undefined && { mowings: mowings.value }),
    ...(weeks.value !== undefined && { weeks: weeks.value }),
  });
  if (!input.ok) return input;
  const found = inputCheck.run(input.value, { draws: createDraws() });
  if (!found.ok) return found;
  const report = inputReport(found.value, heap.value);
  const instead = session.speaker.sayIf(report.instead, '');
  const kept = keptBeans(book.value.holding, stuff.value, session.zone);
  return good({
    value: { input: input.value, ...found.value },
    text: text([report.answer, ...kept, ...report.notes], instead, report.cautions, session),
  });
}

function text(
  sayings: readonly Saying[],
  more: string,
  cautions: readonly CautionId[],
  { speaker, terminal: { columns } }: Session,
): string {
  return [
    page(columns, ...sayings.map((said): [string] => [speaker.tell(said)])),
    more === '' ? '' : page(columns, [more]),
    cautionText(cautions, speaker, columns),
  ]
    .filter((block) => block !== '')
    .join('\n\n');
}

/** A material or a doubtful input. Problems: `unknown-material`, `which-material`. */
function readStuff(
  typed: string,
  found: ReturnType<ReturnType<typeof namesOf>['material']>,
  name: (id: string) => string,
): Outcome<string> {
  const told = (code: string, ids: readonly string[]): Outcome<never> =>
    bad({ code, path: 'stuff', found: typed.slice(0, 60), wanted: ids.map(name).join(', ') });
  switch (found.is) {
    case 'material':
    case 'doubtful':
      return good(found.id);
    case 'which':
      return told('which-material', found.ids);
    case 'unknown':
      return told('unknown-material', found.near);
  }
}

function readCount(typed: string | undefined, path: string): Outcome<number | undefined> {
  if (typed === undefined) return good(undefined);
  const read = readFigure(typed, path);
  return read.ok ? good(least(read.value)) : read;
}

/** Of a span the cautious end. */
function least(quantity: Quantity): number {
  return typeof quantity === 'number' ? quantity : quantity.p10;
}

export interface SafeBeansOptions {
  readonly hurt?: string | undefined;
  readonly pots?: string | undefined;
  readonly controls?: string | undefined;
  readonly controlsHurt?: boolean | undefined;
  readonly weeks?: string | undefined;
  readonly parts?: string | undefined;
  readonly keep?: string | undefined;
  readonly keepHeap?: string | undefined;
  readonly when?: string | undefined;
}

/** How the test is told before anything was sown. */
const SOWN: BeanTestInput = { pots: 4, controls: 4, hurt: 'none', controlsNormal: true, weeks: 0 };

/** `loamwright safe beans`: how the test with beans is done, or what one showed; with `--keep`, written down. */
export async function safeBeans(options: SafeBeansOptions, session: Session): Promise<Outcome<Answer>> {
  const hurt = options.hurt === undefined ? good(undefined) : readOneOf(options.hurt, hurtIds, '--hurt');
  const pots = readCount(options.pots, '--pots');
  const controls = readCount(options.controls, '--controls');
  const weeks = readCount(options.weeks, '--weeks');
  const parts = readCount(options.parts, '--parts');
  if (!hurt.ok || !pots.ok || !controls.ok || !weeks.ok || !parts.ok)
    return bad(...allOf(hurt, pots, controls, weeks, parts));
  const input = check<BeanTestInput>(beanTestCalculation.input, {
    ...SOWN,
    ...(hurt.value !== undefined && { hurt: hurt.value, weeks: 3 }),
    ...(pots.value !== undefined && { pots: pots.value }),
    ...(controls.value !== undefined && { controls: controls.value }),
    ...(weeks.value !== undefined && { weeks: weeks.value }),
    ...(parts.value !== undefined && { suspectParts: parts.value }),
    ...(options.controlsHurt === true && { controlsNormal: false }),
  });
  if (!input.ok) return input;
  const found = beanTestCalculation.run(input.value, { draws: createDraws() });
  if (!found.ok) return found;
  if (options.keep !== undefined || options.keepHeap !== undefined)
    return kept(input.value, hurt.value, options, session);
  const sayings = hurt.value === undefined ? beanSteps(found.value) : beanWords(found.value);
  return good({
    value: { input: input.value, ...found.value },
    text: text(sayings, '', ['herbicide-carryover'], session),
  });
}

/** The result, written down for a stuff or a heap. Problem: `missing` where nobody said how the leaves look. */
async function kept(
  seen: BeanTestInput,
  hurt: BeanTestInput['hurt'] | undefined,
  { keep, keepHeap, when: typed }: SafeBeansOptions,
  session: Session,
): Promise<Outcome<Answer>> {
  if (hurt === undefined) return bad({ code: 'missing', path: '--hurt', found: '', wanted: hurtIds.join(', ') });
  const when = readPast(typed ?? 'now', session.now(), session.zone);
  const book = await readBook(session);
  if (!when.ok || !book.ok) return bad(...allOf(when, book));
  const names = namesOf(session, book.value.holding);
  const stuff =
    keep === undefined ? good(undefined) : readStuff(keep, names.material(keep), (id) => names.materialName(id));
  const heap = keepHeap === undefined ? good(undefined) : subjectNamed(book.value.holding, 'heap', keepHeap);
  if (!stuff.ok || !heap.ok) return bad(...allOf(stuff, heap));
  const about = [
    ...(stuff.value === undefined ? [] : [{ type: 'material', id: stuff.value }]),
    ...(heap.value === undefined ? [] : [{ type: 'heap', id: heap.value }]),
  ];
  return recorded(session, [{ kind: 'bean-tested', body: { seen }, about, when: when.value }]);
}
