import { isMessageKey } from './messages.ts';
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

/** A problem in words: what, where, and what would do. */
export function tellProblem(speaker: Speaker, problem: ToldProblem): string {
  const { code, path, found, wanted } = problem;
  const at = path === '' ? speaker.say('tell.whole') : harmless(path);
  const key = `problem.${code}`;
  if (code === 'not-for-heaps' || code === 'doubtful-alone') return tellDoubtful(speaker, problem, at);
  if (isMessageKey(key))
    return speaker.say(key, { path: at, found: harmless(found), wanted, offers: wanted === '' ? 0 : 1 });
  return speaker.say('tell.other', { code, path: at, found: harmless(found), wanted });
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
