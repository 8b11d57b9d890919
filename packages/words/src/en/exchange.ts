/** What is wrong with a message of another device, or with a file that is brought: what, where, and what would do. */
export const exchangeEn = {
  'cli.exchange': 'Exchange both ways with a computer that serves its daybook. What is new goes; nothing is lost.',
  'cli.exchange.address': 'where it is, such as https://192.168.1.20:4380 (the last one, if not said)',
  'cli.exchange.key': 'the key that stands in its terminal (or LOAMWRIGHT_KEY; remembered)',
  'cli.exchange.fingerprint':
    'SHA-256 of its certificate, as its terminal shows it: the first time, and when it has changed',
  'cli.exchange.done':
    'Exchanged with {origin}: {kept, plural, =0 {nothing new} one {# new entry} other {# new entries}} here{attached, plural, =0 {} one { with # picture or series} other { with # pictures and series}}; {given, plural, =0 {nothing new} one {# new entry} other {# new entries}} there{givenAttachments, plural, =0 {} one { with # picture or series} other { with # pictures and series}}.',
  'problem.exchange-not-all':
    'The computer at {path} would not take everything. Nothing is lost: what is here stays here. Try again, and if it stays so, carry it over with take and bring.',
  'problem.demo-alone': 'The demo garden is made up, so it is exchanged with nobody. Leave {path} out.',
  'problem.no-partner':
    'It is not said with which computer to exchange. Give its address, as its terminal shows it: loamwright exchange https://192.168.1.20:4380',
  'problem.partner-broken': 'The file {path} can’t be read. Delete it, and give the address and the key once more.',
  'problem.address-wrong': '“{found}” is no address. It wants one such as https://192.168.1.20:4380',
  'problem.address-open':
    '{found} is not encrypted: the daybook and its key would travel open. Start the other computer with --lan and use {wanted}.',
  'problem.partner-unreachable': 'The computer at {path} does not answer ({found}). Nothing is lost; try again later.',
  'problem.partner-untrusted':
    'Nobody this computer trusts vouches for the one at {path} ({found}). If it is your own, give the fingerprint that its terminal shows: --fingerprint. Nothing was sent.',
  'problem.fingerprint-wrong': '{path} is “{found}”; a SHA-256 fingerprint has 64 hex digits, with or without colons.',
  'problem.fingerprint-differs':
    'The certificate of {path} has the fingerprint {found}, not the one you gave. Somebody may stand between the two, or it was made anew: compare with its terminal again. Nothing was sent.',
  'problem.no-certificate':
    'The computer at {path} hands out no certificate of its own. Start it with --lan, or leave the fingerprint out.',
  'problem.no-exchange': 'What answers at {path} is not a Loamwright that exchanges (it said {found}).',
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
