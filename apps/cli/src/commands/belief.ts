import { type Belief, type BeliefId, bad, beliefs, findBeliefs, good, type Outcome } from '@loamwright/science';
import { beliefsHeldEn, type Speaker } from '@loamwright/words';
import type { Answer } from '../answer.ts';
import { citationLine, cited } from '../citation.ts';
import type { Session } from '../session.ts';
import { page } from '../text.ts';

/** `loamwright belief`: every belief that is met by name, or those that go by some words. Problem: `no-such-belief`. */
export function belief(words: readonly string[], session: Session): Outcome<Answer> {
  const { speaker } = session;
  if (words.length === 0) return good(listing(session));
  const typed = words.join(' ');
  const known = beliefs.map(({ id }) => ({ id, held: heldOf(id), words: beliefsHeldEn[id]?.words ?? '' }));
  const found = findBeliefs(typed, known);
  if (found.length === 0) return bad({ code: 'no-such-belief', path: '', found: typed.slice(0, 60), wanted: '' });
  const shown = beliefs.filter(({ id }) => found.includes(id));
  return good({
    value: shown.map((one) => asData(one, speaker)),
    text: shown.map((one) => beliefPage(one, session)).join('\n\n'),
  });
}

function listing({ speaker, terminal }: Session): Answer {
  const lines = beliefs.map(({ id }): [string, string] => [`- ${heldOf(id)}`, '  ']);
  return {
    value: beliefs.map((one) => asData(one, speaker)),
    text: page(terminal.columns, ...lines, [''], [speaker.say('cli.belief.hint')]),
  };
}

function heldOf(id: BeliefId): string {
  return beliefsHeldEn[id]?.held ?? id;
}

function asData({ id, finding, evidence, sources }: Belief, speaker: Speaker): object {
  const [held, says] = [heldOf(id), speaker.say(`belief.${id}.says`)];
  return { id, held, says, finding, evidence, sources: sources.map(cited) };
}

/** One belief: what is held, what is published of it, how well founded that is, and by whom. */
function beliefPage({ id, finding, evidence, sources }: Belief, { speaker, terminal }: Session): string {
  const standing = speaker.say('cli.belief.standing', {
    finding: speaker.say(`belief.finding.${finding}`),
    evidence: speaker.say(`belief.evidence.${evidence}`),
  });
  return [
    page(
      terminal.columns,
      [speaker.say('cli.belief.held', { held: heldOf(id) })],
      [speaker.say(`belief.${id}.says`)],
      [standing],
    ),
    ...sources.map((citation) => citationLine(cited(citation), speaker, terminal.columns)),
  ].join('\n');
}
