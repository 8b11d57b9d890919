/** What the server prints, answers and shows on its page about trust. */
export const serverEn = {
  'server.at': 'Loamwright is at {address}',
  'server.notBuilt': 'The app has not been built, so only the daybook is served. Build it with: npm run build',
  'server.stop': 'Stop it with Ctrl+C.',
  'server.stopped': 'Stopped.',
  'server.took': 'daybook handed out, {kept, plural, one {# entry} other {# entries}}',
  'server.brought': 'brought {kept, plural, one {# new entry} other {# new entries}}, {there, number} already here',
  'server.exchanged':
    'exchanged: {kept, plural, =0 {no new entry} one {# new entry} other {# new entries}}{attached, plural, =0 {} one {, # photo or series} other {, # photos and series}} came in',
  'server.refused': 'refused: {code}',
  'server.failed': 'failed: {what}',
  'server.lan.also': 'Also at {addresses}',
  'server.lan.none':
    'This computer has no address on a local network now. It will be served there as soon as it has one.',
  'server.lan.trustFirst': 'First time on a phone: open {address} and follow it once (left code).',
  'server.lan.open': 'After that: scan the right code. It carries the key to the daybook.',
  'server.lan.key': 'Key to the daybook, if a phone asks: {key}',
  'server.lan.fingerprint': 'SHA-256 of the certificate, to compare with what the phone shows:',
  'server.lan.keepPort':
    'A phone keeps its daybook under the address it opened. Start with the same port each time, and let the router always give this computer the same address.',
  'server.lan.moved':
    'Phones opened this at {before} last time; now it is {now}. What a phone kept under the old address stays there: open the new one, and bring over what is on the phone by file.',
  'server.lan.renewed': 'The network has changed: now at {addresses}',
  'server.usage':
    'server [--port NUMBER] [--host ADDRESS] [--lan] [--data FOLDER] [--demo]\n\nReads PORT, HOST and LOAMWRIGHT_DATA where an option is not given. It is started by: loamwright start',

  'trust.title': 'Trust this computer',
  'trust.question': 'Why does my phone warn me about this page?',
  'trust.answer':
    'Your phone does not know this computer yet. Install its certificate once, and the app opens without a warning and keeps working with no signal.',
  'trust.warning':
    'The warning you passed to get here is expected this one time. Only go on if you, or someone you know, started Loamwright on a computer nearby and you can see its terminal.',
  'trust.download': 'Get the certificate',
  'trust.compare.title': 'Compare before you trust',
  'trust.compare.text':
    'While installing, the phone can show the certificate’s details. Its SHA-256 fingerprint must be the one in the computer’s terminal. Compare what the phone shows with the terminal, not with this page: if somebody stood between the two, they could have changed this page. If the two differ, do not install it.',
  'trust.compare.here': 'According to this page it is:',
  'trust.android.title': 'Android phone or tablet',
  'trust.android.1': 'Tap “{download}” above. The file loamwright-ca.crt is saved.',
  'trust.android.2':
    'Open Settings and search for “CA certificate”. It stands under Security, or Security and privacy, then More security settings, Encryption and credentials, Install a certificate.',
  'trust.android.3':
    'Choose CA certificate, read the phone’s warning, choose Install anyway, and pick the file loamwright-ca.crt.',
  'trust.android.4':
    'Look at it under Trusted credentials, in the list User: tap “{name}” and compare the SHA-256 fingerprint with the terminal.',
  'trust.android.remove':
    'To take it away: Settings, Encryption and credentials, Trusted credentials, User, “{name}”, Remove. While it is there, the phone may say that the network could be monitored: it says so for any certificate that a person installs.',
  'trust.ios.title': 'iPhone or iPad',
  'trust.ios.1': 'Open this page in Safari and tap “{download}” above. Allow the profile to be downloaded.',
  'trust.ios.2':
    'Open Settings. Near the top it says Profile Downloaded; if not, look in General, VPN & Device Management. Tap the profile, then More Details, and compare the SHA-256 fingerprint with the terminal.',
  'trust.ios.3': 'Tap Install.',
  'trust.ios.4':
    'Then, in Settings, General, About, Certificate Trust Settings, switch “{name}” on. Without this second step the warning stays.',
  'trust.ios.remove': 'To take it away: Settings, General, VPN & Device Management, “{name}”, Remove Profile.',
  'trust.other.title': 'Another phone or computer',
  'trust.other.1':
    'Tap “{download}” above and import the file where the browser or the system lists authorities (also called roots).',
  'trust.other.2': 'Let it count for websites only. Compare the SHA-256 fingerprint with the terminal first.',
  'trust.other.remove': 'To take it away, delete “{name}” from the same list.',
  'trust.meaning.title': 'What you trust, and what not',
  'trust.meaning.1':
    'The certificate may vouch only for private addresses (such as 192.168.…) and local names (such as {example}). It can’t vouch for your bank or any other site on the internet.',
  'trust.meaning.2':
    'Its secret part lies in the data folder on that computer, readable by its owner alone. Whoever has it could pretend to be this computer to your phone. If the computer is given away or stolen, take the certificate off the phone.',
  'trust.meaning.3': 'It ends on {date}. The steps on phones differ a little from maker to maker and year to year.',
  'trust.meaning.4':
    'Rather not? The app can also be put on any web host with HTTPS, and the daybook carried to and fro as a file. Nothing needs trusting then.',
  'trust.open.title': 'Then open the app',
  'trust.open.text':
    'Scan the second code in the terminal: it carries the key to the daybook. Open it in the browser and put it on the home screen from the browser’s menu.',
  'trust.open.link': 'Open Loamwright',
  'trust.qr.title': 'For another phone',
  'trust.qr.alt': 'A code that opens {address}',
} as const;
