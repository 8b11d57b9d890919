/** Problems that the server answers with: the app tells them too. */
export const serverProblemsEn = {
  'problem.unknown-option': 'There is no option {found}. See: {wanted}',
  'problem.port-wrong': '{path} is “{found}”; it wants a whole number from {wanted}.',
  'problem.data-missing': 'It is not said where the daybook lies: give --data FOLDER or set LOAMWRIGHT_DATA.',
  'problem.host-not-loopback':
    '{path} is {found}, which is reached from the network. There the daybook would travel open, and a phone would keep nothing offline, so plain HTTP is not offered beyond this computer. Start with --lan (HTTPS), or leave {path} at localhost.',
  'problem.host-loopback-lan':
    '{path} is {found}, which only this computer reaches; with --lan it must be an address of the network. Leave it out to serve on every one.',
  'problem.port-taken':
    'Port {found} is in use, perhaps by Loamwright already running. Stop that, or give another port with --port; another port is another place to a browser, which keeps its daybook under the one it knows.',
  'problem.port-forbidden':
    'This computer does not let a program of yours use port {found}. Take one from 1024 up, with --port.',
  'problem.host-unknown': 'This computer has no address {found}, so nothing can be served there.',
  'problem.authority-broken':
    'The certificate authority of this data folder can’t be used: {found}. Move {path} and {wanted} away and start again: new ones are made, and every phone must trust the new certificate once.',
  'problem.key-file-broken':
    'The key in {path} is not one that this program made. Move the file away and start again: a new key is made, and every phone scans the code once more.',
  'problem.wrong-host': 'This is not a name of this server: {found}. It answers to: {wanted}.',
  'problem.other-origin': 'A page from {found} may not change this daybook; only one from {wanted} may.',
  'problem.not-found': 'There is nothing at {found}.',
  'problem.key-needed':
    'This daybook asks for its key. Scan the code in the terminal of the computer that serves it, or type the key that stands there.',
  'problem.key-wrong':
    'That is not the key of this daybook. Scan the code in the terminal of the computer that serves it.',
  'problem.too-many-wrong-keys': 'Too many wrong keys came from this phone or computer. Try again in {wanted} s.',
  'problem.wrong-media-type': 'What was sent is of the type “{found}”; what is taken here is {wanted}.',
  'problem.message-too-large':
    'A message of an exchange may have up to {wanted} bytes; this one has more. Nothing of it was kept.',
  'problem.too-many-bytes': 'What was sent is too large: up to {wanted} bytes are taken.',
  'problem.server-failed': 'The server could not do that: {found}. What it keeps is as it was.',
  'problem.method-not-allowed': 'This is not asked for with {found}; what would do: {wanted}.',
  'problem.reckon-busy': 'Too many calculations wait already. Ask for {path} again in {wanted} s.',
  'problem.reckon-too-long': '{path} took too long with this input, and was ended. Ask for less at once.',
  'problem.reckon-failed': '{path} could not be worked out here. Nothing that is kept was touched.',
} as const;
