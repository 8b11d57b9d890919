import type { MaterialReport } from '@loamwright/advisor';
import { sourceOf } from '@loamwright/science';
import { tellDay } from '../../dates.ts';
import type { Session } from '../../session.ts';
import { page } from '../../text.ts';
import { cautionText } from '../heap.ts';

/** A material's page: what it is, each figure with where it comes from, what was said of it, what to mind. */
export function materialPage(report: MaterialReport, { speaker, terminal, zone }: Session): string {
  const { columns } = terminal;
  const { tell } = speaker;
  const lines = (all: readonly (readonly [string, string?])[]): string => page(columns, ...all);
  const blocks = [
    lines(report.head.map((said): [string] => [tell(said)])),
    lines(report.facts.map((fact): [string, string] => [`- ${tell(fact.said)}; ${factSource(fact)}`, '  '])),
    lines(
      report.told.map(({ said, happened }): [string] => [`${tellDay(happened, zone, speaker.locale)}: ${tell(said)}`]),
    ),
    lines([report.chop, report.squeeze].flatMap((said): [string][] => (said === null ? [] : [[tell(said)]]))),
    cautionText(report.cautions, speaker, columns),
  ];
  return blocks.filter((block) => block !== '').join('\n\n');

  function factSource({ from, source }: MaterialReport['facts'][number]): string {
    const whence = speaker.say(`known.from.${from}`);
    if (source === null || from === 'described') return whence;
    const { author, year, title } = sourceOf(source);
    const name = [author ?? title, year].filter((part) => part !== null).join(' ');
    const told = `${name}, ${speaker.say(`mark.${source.mark}`)}`;
    return from === 'published' ? told : `${whence}; ${told}`;
  }
}
