import { type Field, fieldsOf, type ListedCalculation, sourceLine, sourceOf } from '@loamwright/science';
import type { Speaker } from '@loamwright/words';

const mostChoices = 12;

/** What a reference page of a calculation says, in words. */
export interface CalculationReport {
  readonly id: string;
  readonly title: string;
  readonly summary: string;
  readonly input: readonly FieldRow[];
  readonly answer: readonly FieldRow[];
  /** Author, year, title, place, and whether it was read. */
  readonly sources: readonly string[];
  readonly cautions: readonly string[];
}

/** One field as a row of a table; a place with nothing to say is empty. */
export interface FieldRow {
  readonly path: string;
  readonly kind: string;
  readonly unit: string;
  readonly range: string;
  readonly meaning: string;
}

/** The reference page of a calculation, from its entry in the catalogue alone. */
export function calculationReport(calculation: ListedCalculation, speaker: Speaker): CalculationReport {
  const { id, title, summary, sources, cautions } = calculation;
  const cited = sources.map(
    (citation) => `${sourceLine(sourceOf(citation))}: ${citation.place} (${speaker.say(`mark.${citation.mark}`)})`,
  );
  return {
    id,
    title,
    summary,
    input: fieldsOf(calculation.inputSchema()).map((field) => rowOf(field, speaker)),
    answer: fieldsOf(calculation.outputSchema()).map((field) => rowOf(field, speaker)),
    sources: cited,
    cautions: cautions.map((caution) => speaker.say(`caution.${caution}`)),
  };
}

function rowOf(field: Field, speaker: Speaker): FieldRow {
  const { path, unit, kind, isOptional, description, sameAs } = field;
  const meaning = [
    description === undefined || path.endsWith(description) ? '' : description,
    sameAs === undefined ? '' : speaker.say('calculation.sameAs', { path: sameAs }),
  ];
  return {
    path,
    kind: speaker.say(`calculation.kind.${kind}`) + (isOptional ? `, ${speaker.say('calculation.optional')}` : ''),
    unit: unit === undefined ? '' : speaker.sayIf(`calculation.unit.${unit}`, unit),
    range: rangeOf(field, speaker),
    meaning: meaning.filter((part) => part !== '').join(' '),
  };
}

function rangeOf({ lowest, highest, items, choices }: Field, speaker: Speaker): string {
  const bounds = [
    lowest && speaker.say(`calculation.range.${lowest.included ? 'from' : 'above'}`, { low: String(lowest.value) }),
    highest && speaker.say(`calculation.range.${highest.included ? 'to' : 'below'}`, { high: String(highest.value) }),
  ].filter((part) => part !== undefined);
  const parts = [
    bounds.join(' '),
    items === undefined ? '' : itemsOf(items, speaker),
    choicesOf(choices ?? [], speaker),
  ];
  return parts.filter((part) => part !== '').join('; ');
}

/** A long list of words, such as every caution, is cut short: the schema has them all. */
function choicesOf(choices: readonly string[], speaker: Speaker): string {
  const shown = choices.slice(0, mostChoices).join(', ');
  const more = choices.length - mostChoices;
  return more > 0 ? speaker.say('calculation.range.more', { shown, more }) : shown;
}

function itemsOf({ least, most }: NonNullable<Field['items']>, speaker: Speaker): string {
  if (least !== undefined && most !== undefined) return speaker.say('calculation.range.items', { least, most });
  if (least !== undefined) return speaker.say('calculation.range.itemsLeast', { least });
  return most === undefined ? '' : speaker.say('calculation.range.itemsMost', { most });
}
