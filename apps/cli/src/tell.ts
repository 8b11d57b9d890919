import type { Problem } from '@loamwright/science';
import { isMessageKey, type Speaker } from '@loamwright/words';

/** Control characters in what a person typed must not reach their terminal. */
function harmless(text: string): string {
  return text.replace(/\p{Cc}/gu, '�');
}

/** A problem in words: what, where, and what would do. */
export function tellProblem(speaker: Speaker, problem: Problem): string {
  const { code, path, found, wanted } = problem;
  const at = path === '' ? speaker.say('cli.whole') : harmless(path);
  const key = `problem.${code}`;
  if (code === 'not-for-heaps' || code === 'doubtful-alone') return tellDoubtful(speaker, problem, at);
  if (isMessageKey(key))
    return speaker.say(key, { path: at, found: harmless(found), wanted, offers: wanted === '' ? 0 : 1 });
  return speaker.say('cli.problem.other', { code, path: at, found: harmless(found), wanted });
}

/** What should not go on a heap, by its name, and why. */
function tellDoubtful(speaker: Speaker, { code, found, wanted }: Problem, path: string): string {
  const name = speaker.sayIf(`doubtful.${found}.name`, speaker.sayIf(`material.${found}.name`, harmless(found)));
  const reason = speaker.sayIf(`permit.reason.${wanted}`, '');
  const key = code === 'not-for-heaps' ? 'problem.not-for-heaps' : 'problem.doubtful-alone';
  const text = speaker.say(key, { found: code === 'not-for-heaps' ? name : found, path, wanted: reason });
  return reason === '' ? text : `${text} ${speaker.say('cli.because', { reason })}`;
}
