import {
  type ClauseReport,
  clausePhrase,
  clauseReport,
  codesOf,
  entriesOfClause,
  heapFacts,
  keptClauses,
  logMeetsARule,
  readClause,
} from '@loamwright/advisor';
import type { Heap, Holding } from '@loamwright/daybook';
import {
  bad,
  type ClauseCheckInput,
  check,
  clauseCheck,
  createDraws,
  good,
  type HeapFacts,
  type LocalCode,
  materialById,
  type Outcome,
  type StuffId,
  stuffIds,
  stuffOf,
  whoseIds,
} from '@loamwright/science';
import { type Dimension, readArea, readQuantity, unitFor } from '@loamwright/units';
import { z } from 'zod';
import type { Answer } from '../../answer.ts';
import { allOf, readOneOf } from '../../blend.ts';
import { type Book, readBook } from '../../book.ts';
import { readText } from '../../file.ts';
import { readBaySize } from '../../grammar/measurement.ts';
import type { Names } from '../../grammar/names.ts';
import { readPast } from '../../grammar/when.ts';
import { namesOf } from '../../holding.ts';
import { parseJson } from '../../json.ts';
import { recorded } from '../../recorded.ts';
import type { Session } from '../../session.ts';
import { subjectNamed } from '../../subject.ts';
import { page } from '../../text.ts';
import { cautionText } from '../heap.ts';

export interface SafeClausesOptions {
  readonly file?: string | undefined;
  readonly clause?: readonly string[] | undefined;
  readonly of?: string | undefined;
  readonly whose?: string | undefined;
  readonly size?: string | undefined;
  readonly volume?: string | undefined;
  readonly lot?: string | undefined;
  readonly line?: string | undefined;
  readonly house?: string | undefined;
  readonly water?: string | undefined;
  readonly stuff?: string | undefined;
  readonly yard?: string | undefined;
  readonly cover?: string | undefined;
  readonly enclosed?: string | undefined;
  readonly buried?: string | undefined;
  readonly keep?: boolean | undefined;
}

const LONGEST = 60;

/** `loamwright safe clauses`: a heap, described or of the daybook, held against local clauses. */
export async function safeClauses(
  name: string | undefined,
  options: SafeClausesOptions,
  session: Session,
): Promise<Outcome<Answer>> {
  const book = await readBook(session);
  if (!book.ok) return book;
  const { holding } = book.value;
  if (options.keep === true) return keepClauses(options, book.value, session);
  const known = name === undefined ? good(undefined) : heapNamed(name, holding);
  const codes = await readCodes(options, holding, session);
  const facts = readFacts(options, namesOf(session, holding), session);
  if (!known.ok || !codes.ok || !facts.ok) return bad(...allOf(known, codes, facts));
  const heap = known.value;
  const logMeets =
    heap === undefined
      ? good(undefined)
      : logMeetsARule(heap, holding, { now: session.now().toISOString(), draws: createDraws() });
  if (!logMeets.ok) return logMeets;
  const input = check<ClauseCheckInput>(clauseCheck.input, {
    codes: codes.value,
    heap: { ...(heap !== undefined && heapFacts(heap, holding)), ...facts.value },
    ...(logMeets.value !== undefined && { logMeets: logMeets.value }),
  });
  if (!input.ok) return input;
  const found = clauseCheck.run(input.value, { draws: createDraws() });
  if (!found.ok) return found;
  return good({
    value: { input: input.value, ...found.value },
    text: reportText(clauseReport(found.value, logMeets.value), session),
  });
}

function heapNamed(name: string, holding: Holding): Outcome<Heap> {
  const id = subjectNamed(holding, 'heap', name);
  if (!id.ok) return id;
  const heap = holding.heaps.get(id.value);
  return heap === undefined ? bad({ code: 'no-such-heap', path: 'heap', found: name, wanted: '' }) : good(heap);
}

/** The plain shape of a file: `{ "codes": [{ "of": "Our town", "whose": "town", "clauses": ["height 4ft"] }] }`. */
const fileSchema = z.strictObject({
  codes: z
    .array(
      z.strictObject({
        of: z.string().min(1).max(200),
        whose: z.enum(whoseIds).optional(),
        clauses: z.array(z.string().min(1).max(200)).min(1).max(100),
      }),
    )
    .min(1)
    .max(20),
});

const MOST_BYTES = 1_000_000;

/**
 * What was typed and filed; where neither was given, what the daybook keeps. Problems: `no-clauses`, `clause-unreadable`, those of
 * a file and of its shape.
 */
async function readCodes(
  options: SafeClausesOptions,
  holding: Holding,
  session: Session,
): Promise<Outcome<readonly LocalCode[]>> {
  const typed = readTyped(options, session);
  const filed = options.file === undefined ? good([]) : await readFiled(options.file, session);
  if (!typed.ok || !filed.ok) return bad(...allOf(typed, filed));
  const given = [...typed.value, ...filed.value];
  const kept = given.length > 0 ? good([]) : readKept(holding, session);
  if (!kept.ok) return kept;
  const codes = [...given, ...kept.value];
  return codes.length === 0 ? bad({ code: 'no-clauses', path: '--clause', found: '', wanted: '' }) : good(codes);
}

/** The clauses of the daybook. Problem: `clause-unreadable`, so that none is passed over in silence. */
function readKept(holding: Holding, { speaker }: Session): Outcome<readonly LocalCode[]> {
  const kept = keptClauses(holding, speaker.system);
  const unread = kept.flatMap(({ of, clauses }) =>
    clauses
      .filter(({ clause }) => clause === undefined)
      .map(({ phrase }) => readClause(phrase, of, speaker.system))
      .flatMap((read) => (read.ok ? [] : read.problems)),
  );
  return unread.length > 0 ? bad(...unread) : good(codesOf(kept));
}

/**
 * The typed clauses, written down: a phrase on each line under their name, every figure with its unit; those of a name that is
 * known take the place of what stood there. Problems: `no-clauses`, `missing` without a name, those of reading them.
 */
async function keepClauses(
  options: SafeClausesOptions,
  { holding, entries }: Book,
  session: Session,
): Promise<Outcome<Answer>> {
  const { of } = options;
  const typed = readTyped(options, session);
  const when = readPast('now', session.now(), session.zone);
  if (!typed.ok || !when.ok) return bad(...allOf(typed, when));
  const [code] = typed.value;
  if (code === undefined) return bad({ code: 'no-clauses', path: '--clause', found: '', wanted: '' });
  if (of === undefined) return bad({ code: 'missing', path: '--of', found: '', wanted: 'a name such as "Town code"' });
  const [first, ...others] = [...holding.clauses.values()].filter(({ body }) => body.title === code.of);
  const { system } = session.speaker;
  return recorded(session, [
    {
      kind: 'local-clause',
      body: {
        title: code.of,
        text: code.clauses.map((clause) => clausePhrase(clause, system)).join('\n'),
        source: code.whose,
      },
      about: [{ type: 'clause', id: first?.subject ?? session.newId() }],
      when: when.value,
    },
    ...others.flatMap(({ subject }) =>
      entriesOfClause(subject, holding, entries).map((withdraws) => ({
        kind: 'withdrawal' as const,
        body: {},
        about: [{ type: 'clause', id: subject }],
        when: when.value,
        withdraws,
      })),
    ),
  ]);
}

function readTyped({ clause = [], of, whose }: SafeClausesOptions, session: Session): Outcome<readonly LocalCode[]> {
  const whoseIs = readOneOf(whose ?? 'town', whoseIds, '--whose');
  const code = codeOf(
    of?.slice(0, 200) || session.speaker.say('cli.safe.clauses.fromTyped'),
    clause,
    '--clause',
    session,
  );
  if (!whoseIs.ok || !code.ok) return bad(...allOf(whoseIs, code));
  return good(clause.length === 0 ? [] : [{ ...code.value, whose: whoseIs.value }]);
}

async function readFiled(path: string, session: Session): Promise<Outcome<readonly LocalCode[]>> {
  const text = await readText(path, session, MOST_BYTES);
  if (!text.ok) return text;
  const data = parseJson(text.value, path);
  if (!data.ok) return data;
  const filed = check(fileSchema, data.value);
  if (!filed.ok) return bad(...filed.problems.map((one) => ({ ...one, path: `${path}: ${one.path}` })));
  const read = filed.value.codes.map(({ of, whose = 'town', clauses }, i): Outcome<LocalCode> => {
    const code = codeOf(of, clauses, `${path}: codes[${i}]`, session);
    return code.ok ? good({ ...code.value, whose }) : code;
  });
  const problems = allOf(...read);
  return problems.length > 0 ? bad(...problems) : good(read.flatMap((one) => (one.ok ? [one.value] : [])));
}

function codeOf(
  of: string,
  clauses: readonly string[],
  path: string,
  { speaker }: Session,
): Outcome<Omit<LocalCode, 'whose'>> {
  const read = clauses.map((one) => readClause(one, path, speaker.system));
  const problems = allOf(...read);
  return problems.length > 0
    ? bad(...problems)
    : good({ of, clauses: read.flatMap((one) => (one.ok ? [one.value] : [])) });
}

function readFacts(options: SafeClausesOptions, names: Names, session: Session): Outcome<HeapFacts> {
  const size = readSize(options.size, session);
  const volume = readMeasure(options.volume, 'volume', '--volume', session);
  const lot = readMeasure(options.lot, 'area', '--lot', session);
  const line = readMeasure(options.line, 'length', '--line', session);
  const house = readMeasure(options.house, 'length', '--house', session);
  const water = readMeasure(options.water, 'length', '--water', session);
  const stuff = readStuff(options.stuff, names);
  const yard = options.yard === undefined ? good(undefined) : readOneOf(options.yard, yards, '--yard');
  const cover = readYesNo(options.cover, '--cover');
  const enclosed = readYesNo(options.enclosed, '--enclosed');
  const buried = readYesNo(options.buried, '--buried');
  if (!size.ok || !volume.ok || !lot.ok || !line.ok || !house.ok || !water.ok)
    return bad(...allOf(size, volume, lot, line, house, water, stuff, yard, cover, enclosed, buried));
  if (!stuff.ok || !yard.ok || !cover.ok || !enclosed.ok || !buried.ok)
    return bad(...allOf(stuff, yard, cover, enclosed, buried));
  return good({
    ...size.value,
    ...(volume.value !== undefined && { volume_m3: volume.value }),
    ...(lot.value !== undefined && { lot_m2: lot.value }),
    ...(line.value !== undefined && { fromLine_m: line.value }),
    ...(house.value !== undefined && { fromHouse_m: house.value }),
    ...(water.value !== undefined && { fromWater_m: water.value }),
    ...(stuff.value !== undefined && { stuff: stuff.value }),
    ...(yard.value !== undefined && { rearYard: yard.value === 'rear' }),
    ...(cover.value !== undefined && { covered: cover.value }),
    ...(enclosed.value !== undefined && { enclosed: enclosed.value }),
    ...(buried.value !== undefined && { scrapsBuried: buried.value }),
  });
}

const yards = ['rear', 'side', 'front'] as const;

function readSize(typed: string | undefined, { speaker }: Session): Outcome<HeapFacts> {
  if (typed === undefined) return good({});
  const size = readBaySize(typed, speaker.system);
  return size === undefined
    ? bad({ code: 'measurement-unreadable', path: '--size', found: typed.slice(0, LONGEST), wanted: '4x4x4ft' })
    : good(size);
}

const shownAs = { length: 'length', area: 'area', volume: 'bulkVolume' } as const;
const examples = { length: '6ft, 2m', area: '8000ft2, 700m2, 80x100ft', volume: '40ft3, 1m3' } as const;

function readMeasure(
  typed: string | undefined,
  dimension: Dimension & keyof typeof shownAs,
  path: string,
  { speaker }: Session,
): Outcome<number | undefined> {
  if (typed === undefined) return good(undefined);
  const text = typed.slice(0, LONGEST);
  const si =
    dimension === 'area'
      ? readArea(text, speaker.system)?.m2
      : readQuantity(text, dimension, unitFor(shownAs[dimension], speaker.system))?.si;
  return si !== undefined && si >= 0
    ? good(si)
    : bad({ code: 'measurement-unreadable', path, found: typed.slice(0, LONGEST), wanted: examples[dimension] });
}

function readYesNo(typed: string | undefined, path: string): Outcome<boolean | undefined> {
  if (typed === undefined) return good(undefined);
  const read = readOneOf(typed, ['yes', 'no'], path);
  return read.ok ? good(read.value === 'yes') : read;
}

/** Sorts, or names of materials, parted by commas. Problem: `not-one-of`. */
function readStuff(typed: string | undefined, names: Names): Outcome<readonly StuffId[] | undefined> {
  if (typed === undefined) return good(undefined);
  const read = typed.split(',').map((one): Outcome<StuffId> => {
    const sort = readOneOf(one, stuffIds, '--stuff');
    if (sort.ok) return sort;
    const found = names.material(one.trim());
    if (found.is === 'material') return good(stuffOf(found.id, materialById(found.id)?.class));
    return found.is === 'doubtful' ? good(stuffOf(found.id)) : sort;
  });
  const problems = allOf(...read);
  return problems.length > 0
    ? bad(...problems)
    : good([...new Set(read.flatMap((one) => (one.ok ? [one.value] : [])))]);
}

function reportText({ answer, codes, notes, cautions }: ClauseReport, session: Session): string {
  const { speaker, terminal } = session;
  const { columns } = terminal;
  return [
    page(columns, [speaker.tell(answer)]),
    ...codes.map(({ verdict, clauses }) =>
      page(
        columns,
        [speaker.tell(verdict)],
        ...clauses.map((line): [string, string] => [`- ${speaker.tell(line)}`, '  ']),
      ),
    ),
    page(columns, ...notes.map((note): [string] => [speaker.tell(note)])),
    cautionText(cautions, speaker, columns),
  ].join('\n\n');
}
