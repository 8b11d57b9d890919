import { coverPuts, isInStore, type PailReport, pailQuestion, pailReport } from '@loamwright/advisor';
import type { Entered, Holding } from '@loamwright/daybook';
import {
  bad,
  createDraws,
  good,
  type Outcome,
  type PailCover,
  type PailCoverInput,
  pailCover,
} from '@loamwright/science';
import type { Saying } from '@loamwright/words';
import type { Answer } from '../answer.ts';
import { type BayMeant, bayMeant } from '../bay.ts';
import type { Jotting } from '../book.ts';
import { type IngredientRead, readIngredients } from '../grammar/ingredient.ts';
import { readSeen, type SeenTyped } from '../grammar/seen.ts';
import { readPast } from '../grammar/when.ts';
import { namesOf } from '../holding.ts';
import { layersOf, weighingOf } from '../put.ts';
import { recorded } from '../recorded.ts';
import type { Session } from '../session.ts';
import { openWithSizes } from '../sizes.ts';
import { subjectNamed } from '../subject.ts';
import { page } from '../text.ts';
import { cautionText } from './heap.ts';

export interface PailOptions extends SeenTyped {
  readonly bin?: string | undefined;
  readonly dry?: readonly string[] | undefined;
  readonly bay?: string | undefined;
  readonly frozen?: boolean | undefined;
  readonly thawing?: boolean | undefined;
  readonly perWeek?: string | undefined;
  readonly weeks?: string | undefined;
  readonly size?: readonly string[] | undefined;
  readonly full?: boolean | undefined;
  readonly log?: boolean | undefined;
  readonly fromStock?: boolean | undefined;
  readonly when?: string | undefined;
  readonly note?: string | undefined;
}

/** `loamwright pail`: what goes with a pail, and the bin after it; with `--log`, the feed written down with its cover. */
export async function pail(typed: readonly string[], options: PailOptions, before: Session): Promise<Outcome<Answer>> {
  const opened = await openWithSizes(options, before);
  if (!opened.ok) return opened;
  const { holding, session } = opened.value;
  if (typed.length === 0) return bad({ code: 'nothing-named', path: 'pail', found: '', wanted: '' });
  const read = readAll(typed, options, holding, session);
  if (!read.ok) return read;
  const { stuff, bin } = read.value;
  const question = pailQuestion(saidOf(read.value, options, session), holding, session.now().toISOString());
  const found = pailCover.run(question.input, { draws: createDraws() });
  if (!found.ok) return found;
  const report = pailReport(found.value, question, holding);
  if (options.log !== true) {
    const value = { input: question.input, ...found.value };
    return good({ value, text: pailText(report, options, session) });
  }
  if (bin === undefined) return bad({ code: 'missing', path: '--bin', found: '', wanted: '--bin NAME' });
  return written({ stuff, bin, input: question.input, cover: found.value, report }, options, holding, session);
}

interface Read {
  readonly stuff: readonly IngredientRead[];
  readonly dry: readonly IngredientRead[] | undefined;
  readonly bin: string | undefined;
  readonly bay: BayMeant;
  readonly seen: Parameters<typeof pailQuestion>[0];
}

function readAll(typed: readonly string[], options: PailOptions, holding: Holding, session: Session): Outcome<Read> {
  const names = namesOf(session, holding);
  const stuff = readIngredients(typed, names);
  const dry = options.dry === undefined ? good(undefined) : readIngredients(options.dry.flatMap(apart), names);
  const bin = options.bin === undefined ? good(undefined) : subjectNamed(holding, 'heap', options.bin);
  const bay: Outcome<BayMeant> = options.bay === undefined ? good({}) : bayMeant(options.bay, holding, session);
  const seen = readSeen(options, session.speaker.system);
  const perWeek = readCount(options.perWeek, '--per-week');
  const weeks = readCount(options.weeks, '--weeks');
  if (!stuff.ok || !dry.ok || !bin.ok || !bay.ok || !seen.ok || !perWeek.ok || !weeks.ok) {
    return bad(...[stuff, dry, bin, bay, seen, perWeek, weeks].flatMap((one) => (one.ok ? [] : one.problems)));
  }
  const { squeeze, smell, height } = seen.value;
  const ahead = perWeek.value === undefined ? undefined : { pails_perWeek: perWeek.value, weeks: weeks.value ?? 1 };
  return good({
    stuff: stuff.value,
    dry: dry.value,
    bin: bin.value,
    bay: bay.value,
    seen: { pail: stuff.value, squeeze, smell, height_m: height?.si, ahead },
  });
}

/** `leaves=3bags,straw=1bale`: a comma before a name parts two, one in a figure does not. */
function apart(text: string): readonly string[] {
  return text.split(/,(?=[^,=]+=)/u).map((part) => part.trim());
}

const MOST_COUNTED = 100;

function readCount(text: string | undefined, path: string): Outcome<number | undefined> {
  if (text === undefined) return good(undefined);
  const count = Number(text);
  const fits = count > 0 && count <= MOST_COUNTED;
  return fits ? good(count) : bad({ code: 'not-valid', path, found: text.slice(0, 40), wanted: `1 … ${MOST_COUNTED}` });
}

function saidOf({ seen, dry, bin, bay }: Read, options: PailOptions, session: Session): Read['seen'] {
  const state = options.frozen === true ? 'frozen' : options.thawing === true ? 'thawing' : undefined;
  const usualMeasure = session.speaker.system === 'us' ? 'bucket-5gal' : 'bucket-20l';
  return { ...seen, dry, heap: bin, bay: bay.size, state, ownSizes: session.settings.measures_L, usualMeasure };
}

/** Notes that are told without being asked for: who tips in a pail every other day reads no more. */
const FIRST_NOTES = 2;

/**
 * The answer as a sentence, then why, what the bin is, room, what may no longer be said, and what to mind; the layers,
 * what is done with so many bays, beliefs and the other notes when asked for. Practice is told at once when a bin ends.
 */
function pailText(report: PailReport, { full = false }: PailOptions, { speaker, terminal }: Session): string {
  const { columns } = terminal;
  const { tell } = speaker;
  const lines = (sayings: readonly Saying[]): string => page(columns, ...sayings.map((said): [string] => [tell(said)]));
  const listed = (sayings: readonly Saying[]): string =>
    page(columns, ...sayings.map((said): [string, string] => [`- ${tell(said)}`, '  ']));
  const blocks = [
    lines([report.answer]),
    lines(report.more),
    lines(report.bin),
    full ? listed(report.layers) : '',
    lines([...report.room, ...(full || report.decision === 'start-next' ? report.practice : [])]),
    listed(report.lost),
    lines(full ? report.notes : report.notes.slice(0, FIRST_NOTES)),
    lines([...report.permits, ...(full ? report.beliefs : [])].map(({ said }) => said)),
    lines(full ? [report.notModelled] : []),
    cautionText(report.cautions, speaker, columns),
  ];
  return blocks.filter((block) => block !== '').join('\n\n');
}

interface Done {
  readonly stuff: readonly IngredientRead[];
  readonly bin: string;
  readonly input: PailCoverInput;
  readonly cover: PailCover;
  readonly report: PailReport;
}

/** Writes the feed down as one entry with what covers it, and the water poured as another. */
async function written(
  { stuff, bin, input, cover, report }: Done,
  options: PailOptions,
  holding: Holding,
  session: Session,
): Promise<Outcome<Answer>> {
  const when = readPast(options.when ?? 'now', session.now(), session.zone);
  if (!when.ok) return when;
  const put = layersOf(stuff, holding, session, options.fromStock === true);
  if (!put.ok) return put;
  const isTaken = (material: string): boolean =>
    options.fromStock === true || (options.dry === undefined && isInStore(material, holding));
  const covering = coverPuts(cover, input, isTaken, weighingOf(holding, session));
  if (!covering.ok) return covering;
  const layers = [...put.value.layers, ...covering.value];
  const entered: Record<string, Entered> = { ...put.value.entered };
  for (const [i, { measure, count }] of cover.lay.entries()) {
    entered[`/layers/${put.value.layers.length + i}/mass_kg`] = { amount: count, unit: measure };
  }
  const about = [{ type: 'heap' as const, id: bin }];
  const body = { layers, ...(options.note !== undefined && { note: options.note }) };
  const fed: Jotting = { kind: 'heap-fed', body, entered, about, when: when.value };
  const watered: Jotting = { kind: 'watered', body: { volume_L: cover.water_L }, about, when: when.value };
  const done = await recorded(session, cover.water_L > 0 ? [fed, watered] : [fed], { heap: bin, silent: true });
  if (!done.ok) return done;
  const { value, text } = done.value;
  return good({ value: { pail: cover, ...Object(value) }, text: `${pailText(report, options, session)}\n\n${text}` });
}
