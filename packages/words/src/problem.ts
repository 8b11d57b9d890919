import { isMessageKey } from './messages.ts';
import type { Saying } from './saying.ts';
import type { Speaker } from './speaker.ts';

/** A problem as every part of the program hands it on: as data. */
interface ToldProblem {
  readonly code: string;
  readonly path: string;
  readonly found: string;
  readonly wanted: string;
}

/** Control characters in what somebody sent must not reach a terminal or a log. */
function harmless(text: string): string {
  return text.replace(/\p{Cc}/gu, '�');
}

/** A name as the code has it: `dryDown.dry_g`, `layers[0].mass_kg`; what a person types has no such joints. */
const codeName = /^[a-z][A-Za-z0-9]*(?:[._][A-Za-z0-9]+|\[\d+\])+$/u;

/**
 * Where something stands, for who never saw the names of the code: in words of its own (`place.…`), else the last part
 * of its name without its unit. A name inside a whole body, and an option, stay as whoever wrote them knows them.
 */
export function placeSaying(path: string): Saying | string {
  const last = path.slice(path.lastIndexOf('.') + 1);
  const key = `place.${last}`;
  if (isMessageKey(key)) return { key };
  if (!codeName.test(path) || path.startsWith('body.')) return path;
  const plain = last.replace(/\[\d+\]$/u, '').replace(/_[A-Za-z0-9]+$/u, '');
  return plain.replace(/(?<=[a-z])[A-Z]/gu, (letter) => ` ${letter.toLowerCase()}`);
}

/**
 * A problem in words: what, where, and what would do.
 *
 * @param names whether the reader wrote the input under the names of the code and wants to see them.
 */
export function tellProblem(
  speaker: Speaker,
  problem: ToldProblem,
  { names = false }: { readonly names?: boolean | undefined } = {},
): string {
  const { code, path, found, wanted } = problem;
  const at = path === '' ? speaker.say('tell.whole') : harmless(names || isOfFile(code) ? path : placed(speaker, path));
  const key = `problem.${code}`;
  if (code === 'not-for-heaps' || code === 'doubtful-alone') return tellDoubtful(speaker, problem, at);
  if (isMessageKey(key))
    return speaker.say(key, { path: at, found: harmless(found), wanted, offers: wanted === '' ? 0 : 1 });
  return speaker.say('tell.other', { code, path: at, found: harmless(found), wanted });
}

/** Problems of a file: its name has joints as a name of the code has, and is told as it is. */
const ofFiles: ReadonlySet<string> = new Set([
  'not-text',
  'not-json-text',
  'too-many-bytes',
  'settings-broken',
  'folder-unusable',
  'file-unreadable',
  'file-unwritable',
  'daybook-empty',
  'damaged',
  'busy',
  'full',
]);

function isOfFile(code: string): boolean {
  return code.startsWith('csv-') || ofFiles.has(code);
}

function placed(speaker: Speaker, path: string): string {
  const place = placeSaying(path);
  return typeof place === 'string' ? place : speaker.tell(place);
}

/** What should not go on a heap, by its name: why, and what to do with it instead. */
function tellDoubtful(speaker: Speaker, { code, found, wanted }: ToldProblem, path: string): string {
  const name = speaker.sayIf(`doubtful.${found}.name`, speaker.sayIf(`material.${found}.name`, harmless(found)));
  const reason = speaker.sayIf(`permit.reason.${wanted}`, '');
  const key = code === 'not-for-heaps' ? 'problem.not-for-heaps' : 'problem.doubtful-alone';
  const text = speaker.say(key, { found: code === 'not-for-heaps' ? name : found, path, wanted: reason });
  const because = reason === '' ? '' : speaker.say('tell.because', { reason });
  const instead = speaker.sayIf(`doubtful.${found}.instead`, '');
  return [text, because, instead].filter((part) => part !== '').join(' ');
}
