import { X509Certificate } from 'node:crypto';
import { type IncomingMessage, request as requestPlain } from 'node:http';
import { type RequestOptions, request as requestSecure } from 'node:https';
import { bad, good, type Outcome, type Problem } from '@loamwright/science';
import { jsonLines, type OtherSide } from '@loamwright/sync';
import type { Partner } from './partner.ts';

/** Why the other computer could not take part. */
export class PartnerRefused extends Error {
  override readonly name: string = 'PartnerRefused';
  readonly problem: Problem;
  constructor(problem: Problem, options?: ErrorOptions) {
    super(problem.code, options);
    this.problem = problem;
  }
}

/** Gives up when nothing has come for so long. */
const STALL_MS = 60_000;
/** A certificate, or a refusal, is far smaller. */
const MOST_BYTES = 64 * 1024;
const CERTIFICATE_PATH = '/trust/loamwright-ca.crt';

/** A computer as the other side of an exchange. Its ways reject with {@link PartnerRefused}. */
export function reach(partner: Partner): OtherSide {
  const asked = async (method: 'GET' | 'POST', body?: string): Promise<IncomingMessage> => {
    const answer = await ask(new URL('/api/exchange', partner.origin), {
      method,
      ...(partner.authority === undefined ? {} : { ca: partner.authority }),
      headers: {
        ...(partner.key === undefined ? {} : { authorization: `Bearer ${partner.key}` }),
        ...(body === undefined
          ? {}
          : { 'content-type': 'application/json', 'content-length': Buffer.byteLength(body) }),
      },
      body,
    });
    const status = answer.statusCode ?? 0;
    if (status >= 200 && status < 300) return answer;
    throw new PartnerRefused(problemIn(await read(answer), status, partner.origin));
  };
  return {
    offer: async () => {
      for await (const offer of jsonLines(pieces(await asked('GET')))) return offer;
      return null;
    },
    send: async function* (message) {
      yield* jsonLines(pieces(await asked('POST', JSON.stringify(message))));
    },
  };
}

/**
 * Fetches the authority of a computer that nobody vouches for yet, and takes it only when it has the fingerprint that
 * the person read from that computer's own terminal. Nothing else is asked, and no key is sent, before that.
 *
 * Problems: `fingerprint-wrong`, `fingerprint-differs`, `no-certificate`.
 * @throws PartnerRefused
 */
export async function authorityOf(origin: string, fingerprint: string): Promise<Outcome<string>> {
  const wanted = bare(fingerprint);
  if (!/^[0-9a-f]{64}$/u.test(wanted))
    return bad({ code: 'fingerprint-wrong', path: '--fingerprint', found: fingerprint.slice(0, 100), wanted: '' });
  const answer = await ask(new URL(CERTIFICATE_PATH, origin), {
    method: 'GET',
    rejectUnauthorized: false,
    agent: false,
  });
  const bytes: Buffer[] = [];
  let size_bytes = 0;
  for await (const piece of answer) {
    bytes.push(piece as Buffer);
    size_bytes += (piece as Buffer).length;
    if (size_bytes > MOST_BYTES) break;
  }
  const certificate = certificateIn(Buffer.concat(bytes));
  if (certificate === null) return bad({ code: 'no-certificate', path: origin, found: '', wanted: '' });
  const found = certificate.fingerprint256;
  if (bare(found) !== wanted)
    return bad({ code: 'fingerprint-differs', path: origin, found, wanted: fingerprint.slice(0, 100) });
  return good(certificate.toString());
}

function bare(fingerprint: string): string {
  return fingerprint.replaceAll(/[\s:]/gu, '').toLowerCase();
}

function certificateIn(bytes: Buffer): X509Certificate | null {
  try {
    return new X509Certificate(bytes);
  } catch {
    return null;
  }
}

interface Request extends RequestOptions {
  readonly method: 'GET' | 'POST';
  readonly body?: string | undefined;
}

function ask(address: URL, { body, ...options }: Request): Promise<IncomingMessage> {
  const request = address.protocol === 'https:' ? requestSecure : requestPlain;
  return new Promise((resolve, reject) => {
    const asked = request(address, options, resolve);
    asked.setTimeout(STALL_MS, () => asked.destroy(new Error(`nothing came for ${STALL_MS / 1000} s`)));
    asked.once('error', (error) => reject(unreached(error, address.origin)));
    asked.end(body);
  });
}

/** The text of an answer as it comes. */
async function* pieces(answer: IncomingMessage): AsyncGenerator<string> {
  try {
    for await (const piece of answer.setEncoding('utf8')) yield piece as string;
  } catch (error) {
    throw unreached(error, '');
  }
}

/** A refusal, which is short; what goes on beyond that is none of ours. */
async function read(answer: IncomingMessage): Promise<string> {
  let text = '';
  for await (const piece of pieces(answer)) {
    text += piece;
    if (text.length > MOST_BYTES) break;
  }
  return text;
}

/** What Node says of a certificate that nobody it trusts has signed, or that is for another name or time. */
const untrusted = /^(?:CERT_|ERR_TLS_CERT_|DEPTH_ZERO_|SELF_SIGNED_|UNABLE_TO_)/u;

function unreached(error: unknown, origin: string): PartnerRefused {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  const found = error instanceof Error ? error.message : String(error);
  const isUntrusted = untrusted.test(code);
  const problem = { code: isUntrusted ? 'partner-untrusted' : 'partner-unreachable', path: origin, found, wanted: '' };
  return new PartnerRefused(problem, { cause: error });
}

function problemIn(text: string, status: number, origin: string): Problem {
  const none = { code: 'no-exchange', path: origin, found: String(status), wanted: '' };
  let body: unknown;
  try {
    body = JSON.parse(text);
  } catch {
    return none;
  }
  const first = listed(body, 'problems')[0];
  const told = (name: string): string => {
    const value = typeof first === 'object' && first !== null ? (first as Readonly<Record<string, unknown>>)[name] : '';
    return typeof value === 'string' ? value.slice(0, 200) : '';
  };
  const code = told('code');
  if (code === '' || code === 'not-found') return none;
  // Said from there: seen from here it is the other one that belongs to another holding.
  if (code === 'exchange-other-holding') return { code: 'other-holding', path: origin, found: '', wanted: '' };
  return { code, path: told('path'), found: told('found'), wanted: told('wanted') };
}

function listed(body: unknown, name: string): readonly unknown[] {
  const list = typeof body === 'object' && body !== null ? (body as Readonly<Record<string, unknown>>)[name] : [];
  return Array.isArray(list) ? list : [];
}
