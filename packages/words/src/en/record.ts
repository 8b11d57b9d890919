/** The grower's own record of a heap or a bed, to be printed or handed on. */
export const recordEn = {
  'record.title': 'Record of {name}',
  'record.statement':
    'This is the grower’s own record, written out of their daybook. It is no certificate, and nobody has inspected anything for it.',
  'record.statement.check':
    'Corrections are shown with what was first written. The check shows whether entries were changed or are missing since they were written, not whether they were true, and not whether the newest are all there.',
  'record.keep':
    'Who sells in the United States is asked to keep it {rules}. Small sellers may be exempt and are liable all the same; ask the market too.',
  'record.keep.us-produce':
    '{years, plural, one {# year} other {# years}} by the produce safety rule{recalled, plural, =1 { (recalled)} other {}}',
  'record.keep.us-organic':
    '{years, plural, one {# year} other {# years}} by the organic rule{recalled, plural, =1 { (recalled)} other {}}',
  'record.made': 'Written out on {day}.',
  'record.part.check': 'The daybook’s own check',
  'record.part.lines': 'What was written down',
  'record.part.verdicts': 'What the rules say',
  'record.no-lines': 'Nothing was written down about it.',
  'record.in-doubt':
    '{count, plural, =0 {None of that is about entries of this record.} one {# entry of this record is in doubt: {ids}.} other {# entries of this record are in doubt: {ids}.}}',
  'record.written': 'Written by {by} on {day}, on {device}, number {n, number}, entry {id}.',
  'record.first-written': 'First written, by {by}: {was}',
  'record.changed-to': 'Changed, by {by}, to: {is}',
  'record.verdict': '{name}, as its log stood on {day}:',
  'record.verdict.none': 'Its log can’t be judged.',
  'record.verdicts.none': 'No heap was spread on it.',

  'record.question': '{name}: what was written down?',
  'record.answer.sound':
    '{count, plural, =0 {Nothing} one {# line} other {# lines}} of the daybook, as written: nothing is changed or missing.',
  'record.answer.unsound':
    '{count, plural, =0 {Nothing} one {# line} other {# lines}} of the daybook. Not all of the daybook is as it was written; see below.',
  'record.print': 'Print it',
  'record.save': 'Or as a file',
  'record.save.csv': 'A table (CSV)',
  'record.save.json': 'Data (JSON)',
  'record.saved': 'Saved: {name}.',
  'record.reading': 'Every line is read again.',
} as const;
