import type { CheckReport } from '@loamwright/daybook';
import type { MessageKey } from '@loamwright/words';

/** What a check of the whole daybook found wrong, in words and how often; empty where all is as written. */
export function checkFindings(report: CheckReport): readonly { readonly key: MessageKey; readonly count: number }[] {
  return [
    { key: 'app.check.changed' as const, count: report.changed.length },
    { key: 'app.check.gaps' as const, count: report.gaps.length },
    { key: 'app.check.breaks' as const, count: report.breaks.length },
    { key: 'app.check.doubled' as const, count: report.doubled.length },
    { key: 'app.check.conflicts' as const, count: report.conflicts.length },
    { key: 'app.check.unreadable' as const, count: report.unreadable.length },
    {
      key: 'app.check.attachments' as const,
      count: report.attachmentsChanged.length + report.attachmentsMissing.length,
    },
  ].filter(({ count }) => count > 0);
}
