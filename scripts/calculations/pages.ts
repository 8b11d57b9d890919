// The reference pages of the calculations in Markdown, out of the catalogue alone.
import { type CalculationReport, calculationReport, type FieldRow } from '@loamwright/advisor';
import { catalogue, createDraws, type ListedCalculation, type MilpSolver } from '@loamwright/science';
import { createSpeaker, outline } from '@loamwright/words';

/** Longer answers are shown as far as this, then `…`. */
const mostLines = 40;

const speaker = createSpeaker({ locale: 'en', system: 'metric' });
const { say } = speaker;

/** Every page by its file's name. A calculation that cannot do its own example throws. */
export function calculationPages(
  solver: MilpSolver,
  calculations: readonly ListedCalculation[] = catalogue,
): ReadonlyMap<string, string> {
  const pages = calculations.map((calculation): [string, string] => [
    `${calculation.id}.md`,
    pageOf(calculation, solver),
  ]);
  return new Map([['README.md', indexOf(calculations)], ...pages]);
}

function indexOf(calculations: readonly ListedCalculation[]): string {
  return page(
    `# ${say('calculations.title')}`,
    say('calculations.made'),
    calculations.map(({ id, title }) => `- [${id}](${id}.md): ${title}`).join('\n'),
  );
}

function pageOf(calculation: ListedCalculation, solver: MilpSolver): string {
  const report = calculationReport(calculation, speaker);
  return page(
    `# ${report.title}`,
    `\`${report.id}\``,
    report.summary,
    `## ${say('calculation.example')}`,
    exampleOf(calculation, solver),
    `## ${say('calculation.input')}`,
    table(report.input),
    `## ${say('calculation.answer')}`,
    table(report.answer),
    cell(say('calculation.estimates')),
    `## ${say('calculation.sources')}`,
    report.sources.length === 0 ? say('calculation.noSources') : list(report.sources),
    ...cautionsOf(report),
  );
}

function cautionsOf({ cautions }: CalculationReport): readonly string[] {
  if (cautions.length === 0) return [];
  return [`## ${say('calculation.cautions')}`, say('calculation.cautions.may'), list(cautions)];
}

/** The example as a person would type it, with what the command line prints: the docs check runs it. */
function exampleOf({ id, example, reckon }: ListedCalculation, solver: MilpSolver): string {
  const outcome = reckon(example, { draws: createDraws(), solver });
  if (!outcome.ok) throw new Error(`${id} does not do its own example: ${JSON.stringify(outcome.problems)}`);
  const typed = JSON.stringify(example, null, 2).split('\n');
  const printed = outline(outcome.value, speaker).split('\n');
  const shown = printed.length > mostLines ? [...printed.slice(0, mostLines), '…'] : printed;
  return [
    '```console',
    `$ loamwright reckon ${id} <<'END'`,
    ...[...typed, 'END'].map((line) => `> ${line}`),
    ...shown,
    '```',
  ].join('\n');
}

function table(rows: readonly FieldRow[]): string {
  const head = (['field', 'kind', 'unit', 'range', 'meaning'] as const).map((name) =>
    say(`calculation.column.${name}`),
  );
  const body = rows.map(({ path, kind, unit, range, meaning }) => [
    `\`${path}\``,
    ...[kind, unit, range, meaning].map(cell),
  ]);
  return [head, head.map(() => '---'), ...body].map((cells) => `| ${cells.join(' | ')} |`).join('\n');
}

/** Text that stands in a table as it is. */
function cell(text: string): string {
  return text.replace(/[|*_<\\]/gu, String.raw`\$&`).replace(/\s+/gu, ' ');
}

function list(items: readonly string[]): string {
  return items.map((item) => `- ${cell(item)}`).join('\n');
}

function page(...blocks: readonly string[]): string {
  return `${blocks.join('\n\n')}\n`;
}
