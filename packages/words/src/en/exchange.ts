/** What is wrong with a message of another device, or with a file that is brought: what, where, and what would do. */
export const exchangeEn = {
  'problem.exchange-no-message':
    'This is no message between daybooks: at “{path}” stands {found}, where there should be {wanted}.',
  'problem.exchange-newer':
    'The other device has a newer version of the program (message version {found}; this one knows {wanted}). Update the program here.',
  'problem.exchange-other-holding':
    'This belongs to another holding, “{found}”; this daybook is that of “{wanted}”. Nothing of it was kept.',
  'problem.exchange-too-many':
    'This message lists more than a daybook ever needs ({found} in {path}; {wanted}). It was not taken.',
  'problem.exchange-no-attachment':
    'A photo or series could not be read ({path} is {found}; it wants {wanted}). It was left out; send it again from the device that has it.',
  'problem.exchange-attachment-too-large':
    'A photo or series is too large ({found} letters; at most {wanted}). It was left out; scale the photo down and add it anew.',
  'problem.exchange-attachment-changed':
    'A photo or series was changed on its way ({path}: its bytes are named {found}, not {wanted}). It was left out; send it again.',
  'problem.exchange-attachment-unwanted':
    'A photo or series ({found}) belongs to no entry here, so it was left out. Bring the entries that show it as well.',
  'problem.bundle-empty': 'This file is empty. Take the daybook again on the device it comes from.',
  'problem.bundle-not-ours':
    'This is no daybook file: it should begin with a line that names the format “{wanted}”. Choose a file that was made with “take”.',
  'problem.bundle-newer':
    'This file was written by a newer version of the program (file version {found}; this one knows {wanted}). Update the program here, then bring it again.',
  'problem.bundle-header-damaged':
    'The first line of this file is missing or damaged, so it can’t be told whether all of it is here. Take it again, or bring only what is sound.',
  'problem.bundle-other-holding':
    'This file is the daybook of another holding, “{found}”; this one is “{wanted}”. Nothing of it was brought.',
  'problem.bundle-line-too-long':
    'At {path} stands a line longer than any of a daybook file ({found} letters; {wanted}). It was left out; take the file again.',
  'problem.bundle-line-unreadable':
    'At {path} the file can’t be read: there stands “{found}”, where there should be {wanted}. It was left out; take the file again, or bring only what is sound.',
  'problem.bundle-cut-short':
    'This file is cut short: it ends after {found}, without {wanted}. Copy it again from where it came, or bring only what is here.',
  'problem.bundle-sum-wrong':
    'This file was changed after it was written: its sum is {found}, but its last line says {wanted}. Every entry in it is sound by itself; take the file again, or bring what is here.',
  'problem.bundle-count-wrong':
    'This file says that it holds {wanted} entries and attachments, but there are {found}. Take it again, or bring what is here.',
  'problem.bundle-set-wrong':
    'The entries in this file are not those that its first line names ({found} instead of {wanted}). Take it again, or bring what is here.',
  'problem.bundle-after-end':
    'Behind the end of the file, at {path}, stands more: “{found}”. Bring each daybook file by itself.',
  'problem.bundle-more-problems': 'There are {found} more faults in this file.',
} as const;
