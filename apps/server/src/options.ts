import { parseArgs } from 'node:util';
import { bad, good, type Outcome, type Problem } from '@loamwright/science';
import { plainHost } from './lan/addresses.ts';

/** How the server is to run. */
export interface Options {
  readonly port: number;
  /** The address it listens on. */
  readonly host: string;
  /** Whether it serves the local network, over HTTPS. */
  readonly lan: boolean;
  /** The data folder. */
  readonly data: string;
  /** Whether it serves the demo garden's daybook. */
  readonly demo: boolean;
  /** Whether it prints for programs. */
  readonly json: boolean;
}

/** The usual port. It stays the same from start to start, because a browser keeps its daybook under address and port. */
export const USUAL_PORT = 4380;

const EVERY_ADDRESS = '0.0.0.0';
const loopback: Readonly<Record<string, string>> = {
  localhost: '127.0.0.1',
  '127.0.0.1': '127.0.0.1',
  '::1': '::1',
  '[::1]': '::1',
};

const known = {
  port: { type: 'string' },
  host: { type: 'string' },
  data: { type: 'string' },
  lan: { type: 'boolean', default: false },
  demo: { type: 'boolean', default: false },
  json: { type: 'boolean', default: false },
} as const;

/** Reads what stands on the command line, then in the environment. */
export function readOptions(
  args: readonly string[],
  env: Readonly<Record<string, string | undefined>>,
): Outcome<Options> {
  const { values, tokens } = parseArgs({ args: [...args], options: known, strict: false, tokens: true });
  const strange = tokens.filter(
    (token) =>
      token.kind === 'positional' || (token.kind === 'option' && (!(token.name in known) || lacksValue(token))),
  );
  const text = (name: 'port' | 'host' | 'data'): string | undefined => {
    const value = values[name];
    return typeof value === 'string' ? value : undefined;
  };
  const lan = values.lan === true;
  const port = readPort(text('port'), env['PORT']);
  const host = readHost(lan, text('host'), env['HOST']);
  const data = text('data') ?? env['LOAMWRIGHT_DATA'] ?? '';
  const problems: Problem[] = [
    ...strange.map((token) =>
      problem('unknown-option', '', 'rawName' in token ? token.rawName : (args[token.index] ?? ''), '--help'),
    ),
    ...(port.ok ? [] : port.problems),
    ...(host.ok ? [] : host.problems),
    ...(data === '' ? [problem('data-missing', '--data', '', '')] : []),
  ];
  if (problems.length > 0 || !port.ok || !host.ok) return bad(...problems);
  return good({
    port: port.value,
    host: host.value,
    lan,
    data,
    demo: values.demo === true,
    json: values.json === true,
  });
}

function lacksValue(token: { readonly name: string; readonly value?: string | undefined }): boolean {
  return known[token.name as keyof typeof known].type === 'string' && token.value === undefined;
}

function readPort(given: string | undefined, fromEnvironment: string | undefined): Outcome<number> {
  const text = given ?? (fromEnvironment === '' ? undefined : fromEnvironment);
  if (text === undefined) return good(USUAL_PORT);
  const port = Number(text);
  if (/^\d{1,5}$/u.test(text) && port <= 65_535) return good(port);
  return bad(
    problem(
      'port-wrong',
      given === undefined ? 'PORT' : '--port',
      text.slice(0, 60),
      '0 to 65535 (0 takes any that is free)',
    ),
  );
}

/** On this computer only loopback is offered; on the network everything but loopback. */
function readHost(lan: boolean, given: string | undefined, fromEnvironment: string | undefined): Outcome<string> {
  const text = given ?? (fromEnvironment === '' ? undefined : fromEnvironment);
  const path = given === undefined ? 'HOST' : '--host';
  const name = text === undefined ? undefined : plainHost(text);
  const own = name === undefined ? undefined : loopback[name];
  if (!lan) {
    if (text === undefined) return good('127.0.0.1');
    return own === undefined ? bad(problem('host-not-loopback', path, text.slice(0, 60), 'localhost')) : good(own);
  }
  if (text === undefined || name === undefined) return good(EVERY_ADDRESS);
  return own === undefined ? good(name) : bad(problem('host-loopback-lan', path, text, ''));
}

function problem(code: string, path: string, found: string, wanted: string): Problem {
  return { code, path, found, wanted };
}
