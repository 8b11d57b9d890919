import { bad, good, type Outcome, type Problem } from '@loamwright/science';
import { type Exchanged, exchangeWith, letGoOfRemoved } from '@loamwright/sync';
import { tellProblem } from '@loamwright/words';
import type { Answer } from '../answer.ts';
import { withKeeping } from '../book.ts';
import { type Partner, readAddress, readPartner, writePartner } from '../exchange/partner.ts';
import { authorityOf, PartnerRefused, reach } from '../exchange/reach.ts';
import type { Session } from '../session.ts';
import { page } from '../text.ts';

export interface ExchangeOptions {
  readonly key?: string | undefined;
  readonly fingerprint?: string | undefined;
}

/**
 * `loamwright exchange`: both ways with a computer that serves its daybook, by the same messages as a phone. The address,
 * the key and the certificate are remembered once an exchange has come through.
 *
 * Problems: `demo-alone`, `no-partner`, those of `readAddress`, `authorityOf` and the other computer.
 */
export async function exchange(
  address: string | undefined,
  options: ExchangeOptions,
  session: Session,
): Promise<Outcome<Answer>> {
  if (session.demo) return bad({ code: 'demo-alone', path: '--demo', found: '', wanted: '' });
  try {
    const partner = await partnerFor(address, options, session);
    if (!partner.ok) return partner;
    const done = await exchangeAs(partner.value, session);
    if (!done.ok) return done;
    const remembered = writePartner(session.folder.partner, partner.value);
    return remembered.ok ? good(told(done.value, partner.value, session)) : remembered;
  } catch (error) {
    if (error instanceof PartnerRefused) return bad(error.problem);
    throw error;
  }
}

async function exchangeAs(partner: Partner, session: Session): Promise<Outcome<Exchanged>> {
  return withKeeping(session, async (keeping) => {
    try {
      const done = await exchangeWith(keeping, reach(partner));
      await letGoOfRemoved(keeping);
      return good(done);
    } catch (error) {
      if (error instanceof PartnerRefused) return bad(error.problem);
      throw error;
    }
  });
}

/** What is said now goes before what is remembered; another computer's key and certificate are never used. */
async function partnerFor(
  address: string | undefined,
  { key, fingerprint }: ExchangeOptions,
  { folder, environment }: Session,
): Promise<Outcome<Partner>> {
  const before = readPartner(folder.partner);
  if (!before.ok) return before;
  const typed = address === undefined ? good(before.value) : readAddress(address);
  if (!typed.ok) return typed;
  if (typed.value === null) return bad({ code: 'no-partner', path: 'address', found: '', wanted: '' });
  const { origin } = typed.value;
  const known = before.value?.origin === origin ? before.value : undefined;
  const said = key ?? typed.value.key ?? environment['LOAMWRIGHT_KEY'] ?? known?.key;
  const authority = fingerprint === undefined ? good(known?.authority) : await authorityOf(origin, fingerprint);
  if (!authority.ok) return authority;
  return good({
    origin,
    ...(said === undefined ? {} : { key: said }),
    ...(authority.value === undefined ? {} : { authority: authority.value }),
  });
}

function told(done: Exchanged, { origin }: Partner, { speaker, terminal }: Session): Answer {
  const { held, problems: left, ...counts } = done;
  const problems: readonly Problem[] =
    held === null && left.length === 0 ? [{ code: 'exchange-not-all', path: origin, found: '', wanted: '' }] : left;
  const paragraphs = [
    speaker.say('cli.exchange.done', { ...counts, origin }),
    ...problems.map((problem) => tellProblem(speaker, problem)),
  ];
  return {
    value: { ...counts, problems, address: origin, complete: held !== null },
    text: page(terminal.columns, ...paragraphs.map((paragraph): [string] => [paragraph])),
    ...(problems.length > 0 && { code: 1 as const, problems }),
  };
}
