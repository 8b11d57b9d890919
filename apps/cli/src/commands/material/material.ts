import {
  describedWith,
  figuresOfCheck,
  materialReport,
  ownMaterialId,
  readCheck,
  vocabularyOf,
} from '@loamwright/advisor';
import type { Holding } from '@loamwright/daybook';
import { allMaterials, bad, createDraws, findMaterials, good, materialById, type Outcome } from '@loamwright/science';
import type { Answer } from '../../answer.ts';
import { type Jotting, readBook } from '../../book.ts';
import { materialNamed } from '../../grammar/ingredient.ts';
import type { Names } from '../../grammar/names.ts';
import { readPast, type WhenRead } from '../../grammar/when.ts';
import { namesOf } from '../../holding.ts';
import { recorded } from '../../recorded.ts';
import type { Session } from '../../session.ts';
import { page } from '../../text.ts';
import { type CheckTyped, readCheckTyped } from './check.ts';
import { readFigures } from './figures.ts';
import type { MaterialOptions } from './options.ts';
import { materialPage } from './page.ts';

/** `loamwright material`: what is known of a material; one’s own, added, corrected or measured. */
export async function material(
  words: readonly string[],
  options: MaterialOptions,
  session: Session,
): Promise<Outcome<Answer>> {
  const when = readPast(options.when ?? 'now', session.now(), session.zone);
  if (!when.ok) return when;
  const book = await readBook(session);
  if (!book.ok) return book;
  const { holding } = book.value;
  const names = namesOf(session, holding);
  const typed = words.join(' ').trim();
  if (typed === '') return good(list(options, holding, session));
  const ground = { typed, options, when: when.value, holding, names, session };
  if (options.like !== undefined) return addOwn(ground, options.like);
  const id = materialNamed(typed, typed, names);
  if (!id.ok) return id;
  const check = readCheckTyped(options, names, session.speaker);
  const figures = readFigures(options, session.speaker.system);
  if (!check.ok || !figures.ok) return bad(...[check, figures].flatMap((one) => (one.ok ? [] : one.problems)));
  if (check.value !== undefined) return measure({ ...ground, id: id.value }, check.value);
  if (Object.keys(figures.value).length > 0 || options.raw !== undefined || options.note !== undefined) {
    return recorded(session, [described({ ...ground, id: id.value }, figures.value)], { silent: true });
  }
  const report = materialReport(holding, id.value);
  return report.ok ? good({ value: report.value, text: materialPage(report.value, session) }) : report;
}

interface Ground {
  readonly typed: string;
  readonly options: MaterialOptions;
  readonly when: WhenRead;
  readonly holding: Holding;
  readonly names: Names;
  readonly session: Session;
}

/** The holding’s own and what lies in store; with `--find` those that go by some words; with `--all` every one. */
function list({ all = false, find }: MaterialOptions, holding: Holding, { speaker, terminal }: Session): Answer {
  const vocabulary = vocabularyOf(speaker, holding);
  const known = [...vocabulary.own, ...vocabulary.materials];
  const here = new Set([...holding.materials.keys(), ...holding.stock.keys()]);
  const ids =
    find === undefined
      ? known.flatMap(({ id }) => (all || here.has(id) ? [id] : []))
      : findMaterials(find, known).map(({ id }) => id);
  const nameOf = new Map(known.map(({ id, name }) => [id, name]));
  const value = ids.map((id) => ({ id, name: nameOf.get(id) ?? id, class: materialById(id)?.class ?? null }));
  const lines = value.map(({ name, class: kind }): [string] => [
    kind === null ? name : speaker.say('cli.material.line', { name, class: speaker.say(`material.class.${kind}`) }),
  ]);
  const none = speaker.say('cli.material.none');
  const more = speaker.say('cli.material.more', { count: allMaterials.length });
  const text = page(terminal.columns, ...(lines.length > 0 ? lines : [[none] as const]), [''], [more]);
  return { value, text };
}

/** A material of the holding’s own, by what it is like and how it differs. */
async function addOwn(ground: Ground, like: string): Promise<Outcome<Answer>> {
  const { typed, options, holding, names, session, when } = ground;
  const known = materialNamed(like, '--like', names);
  const figures = readFigures(options, session.speaker.system);
  if (!known.ok || !figures.ok) return bad(...[known, figures].flatMap((one) => (one.ok ? [] : one.problems)));
  const base = materialById(known.value);
  if (base === undefined) return bad({ code: 'like-what', path: '--like', found: like, wanted: '' });
  const before = names.material(typed);
  if (before.is === 'material' && materialById(before.id) !== undefined && isName(typed, before.id, names)) {
    return bad({ code: 'name-taken', path: typed, found: typed, wanted: '' });
  }
  const id = before.is === 'material' && holding.materials.has(before.id) ? before.id : ownMaterialId(typed);
  if (id === '') return bad({ code: 'name-unusable', path: typed, found: typed, wanted: '' });
  const body = { ...describedWith(id, figures.value, { holding, name: typed }), ...noted(options), like: base.id };
  const jotting: Jotting = { kind: 'material-described', body, about: [{ type: 'material', id }], when };
  return recorded(session, [jotting], { silent: true });
}

function isName(typed: string, id: string, names: Names): boolean {
  return names.materialName(id).toLowerCase() === typed.toLowerCase() || id === typed;
}

function noted({ raw, note }: MaterialOptions): { readonly raw?: boolean; readonly note?: string } {
  return { ...(raw !== undefined && { raw }), ...(note !== undefined && { note }) };
}

interface About extends Ground {
  readonly id: string;
}

function described(
  { id, options, holding, names, when }: About,
  figures: Parameters<typeof describedWith>[1],
): Jotting {
  const body = { ...describedWith(id, figures, { holding, name: names.materialName(id) }), ...noted(options) };
  return { kind: 'material-described', body, about: [{ type: 'material', id }], when };
}

/** Writes a check down, and says what was believed before it and what is now. */
async function measure(about: About, { check, method }: CheckTyped): Promise<Outcome<Answer>> {
  const { id, options, holding, session, when } = about;
  const read = readCheck(id, check, { holding, method, needs: { draws: createDraws() } });
  if (!read.ok) return read;
  const { body, changes, agrees } = read.value;
  const instead = options.instead === true;
  const jotting: Jotting = instead
    ? described(about, figuresOfCheck(body))
    : { kind: 'material-measured', body, about: [{ type: 'material', id }], when };
  const written = await recorded(session, [jotting], { silent: true });
  if (!written.ok) return written;
  const { speaker, terminal } = session;
  const lines = [
    ...(instead ? [] : changes.map(({ said }): [string] => [speaker.tell(said)])),
    ...(agrees || instead
      ? []
      : [[`${speaker.say('known.disagrees')} ${speaker.say('cli.material.instead')}`] as const]),
    ...(check.dryDown?.method === 'microwave' ? [[`! ${speaker.say('known.caution.microwave')}`, '  '] as const] : []),
  ];
  const text = [written.value.text, page(terminal.columns, ...lines)].filter((part) => part !== '').join('\n\n');
  return good({ value: { ...Object(written.value.value), changes, agrees }, text });
}
