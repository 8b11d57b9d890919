import { existsSync } from 'node:fs';
import type { CheckReport } from '@loamwright/daybook';
import { good, type Outcome } from '@loamwright/science';
import type { Answer } from '../../answer.ts';
import { withKeeping } from '../../book.ts';
import type { Session } from '../../session.ts';
import { page } from '../../text.ts';
import { shortId } from './find.ts';

/** Reads everything kept, works out every sum anew, and tells what is changed, missing or in doubt. Exit 1 when something is. */
export async function checkBook(session: Session): Promise<Outcome<Answer>> {
  const { speaker } = session;
  if (!existsSync(session.folder.daybook)) return good({ value: null, text: speaker.say('cli.daybook.empty') });
  return withKeeping(session, async (keeping) => {
    const report = await keeping.check();
    const findings = findingsOf(report, session);
    const text =
      findings.length === 0
        ? speaker.say('cli.check.sound', { count: report.counted })
        : page(
            session.terminal.columns,
            [speaker.say('cli.check.unsound', { count: report.counted })],
            ...findings.map((text): [string, string] => [`- ${text}`, '  ']),
          );
    return good({ value: report, text, ...(findings.length > 0 && { code: 1 as const }) });
  });
}

/** What a check found wrong, in words; empty where all is well. */
export function findingsOf(report: CheckReport, { speaker: { say } }: Session): readonly string[] {
  return [
    ...report.changed.map(({ id, device, n }) => say('cli.check.changed', { id: shortId(id), device, n })),
    ...report.gaps.map(({ device, from, to }) => say('cli.check.gap', { device, from, to })),
    ...report.breaks.map(({ id, device, n }) => say('cli.check.break', { id: shortId(id), device, n })),
    ...report.doubled.map(({ device, n }) => say('cli.check.doubled', { device, n })),
    ...report.conflicts.map(({ id, sums }) => say('cli.check.conflict', { id: shortId(id), count: sums.length })),
    ...report.unreadable.map(({ position, why }) => say('cli.check.unreadable', { position, why })),
    ...report.attachmentsChanged.map((hash) => say('cli.check.attachmentChanged', { hash: hash.slice(0, 12) })),
    ...report.attachmentsMissing.map((hash) => say('cli.check.attachmentMissing', { hash: hash.slice(0, 12) })),
  ];
}
