/** What can be wrong with an entry of the daybook, and what would do. */
export const daybookEn = {
  'problem.not-json': '{path} is {found}, which a daybook can’t hold; it wants {wanted}.',
  'problem.forbidden-key': 'A field named {found} (at {path}) is not allowed; give it another name.',
  'problem.too-deep': '{path} is nested too deep ({found}); it wants {wanted}.',
  'problem.too-large':
    'The entry is too large ({found}); it wants {wanted}. Keep pictures and long series as attachments.',
  'problem.sum-mismatch':
    'This entry was changed after it was sealed: its sum reads {found}, and should be {wanted}. Bring it again from the device that wrote it.',
  'problem.unknown-zone': 'This machine knows no time zone {found}; it wants {wanted}.',
  'problem.no-such-place': 'An amount is given for {path}, where the entry holds nothing.',
  'problem.newer-header':
    'This entry was written by a newer version of the program ({found}; this one reads {wanted}). It is kept as it is; update the program to read it.',
  'problem.unknown-kind':
    'This program does not know the kind of entry {found}. The entry is kept as it is; update the program to read it.',
  'problem.newer-version':
    'This kind of entry has a newer form ({found}; this program reads {wanted}). It is kept as it is; update the program to read it.',
  'problem.withdraws-wrong': '{path} is {found}; an entry that takes another back wants {wanted}.',
  'problem.about-wrong': 'The entry is about {found}; it wants {wanted}.',
  'problem.broken-chain':
    '{path} is {found}, which does not follow on from this device’s last entry; it wants {wanted}. Nothing was kept: read the daybook again, then write.',
} as const;
