import { bad, good, type Outcome } from '@loamwright/science';
import { type BringReport, bring as keep, letGoOfRemoved, readBundle } from '@loamwright/sync';
import { tellProblem } from '@loamwright/words';
import type { Answer } from '../answer.ts';
import { withKeeping } from '../book.ts';
import { readText } from '../file.ts';
import type { Session } from '../session.ts';
import { page } from '../text.ts';

/** Largest daybook file that is read: ten busy years with their photos are well below it. */
const MOST_BYTES = 256 * 1024 * 1024;

/**
 * `loamwright bring`: takes a daybook file in. Of a damaged one the sound lines are taken, because it may be the last copy
 * there is; what was wrong is told, and the exit code is 1.
 */
export async function bring(path: string, session: Session): Promise<Outcome<Answer>> {
  const text = await readText(path, session, MOST_BYTES);
  if (!text.ok) return text;
  const read = await readBundle(text.value, null);
  if (read.entries.length === 0) return bad(...read.problems);
  return withKeeping<Answer>(session, async (keeping) => {
    const report = await keep(keeping, read);
    await letGoOfRemoved(keeping);
    const problems = [...read.problems, ...report.problems];
    const { speaker, terminal } = session;
    const paragraphs = [told(report, session), ...problems.map((problem) => tellProblem(speaker, problem))];
    return good({
      value: { ...report, problems },
      text: page(terminal.columns, ...paragraphs.map((paragraph): [string] => [paragraph])),
      ...(read.problems.length > 0 && { code: 1 as const, problems }),
    });
  });
}

function told({ kept, there, attached, conflicts }: BringReport, { speaker }: Session): string {
  return [
    speaker.say('cli.bring.done', { kept, there }),
    ...(attached > 0 ? [speaker.say('cli.bring.attached', { attached })] : []),
    ...(conflicts.length > 0 ? [speaker.say('cli.bring.conflicts', { count: conflicts.length })] : []),
  ].join(' ');
}
