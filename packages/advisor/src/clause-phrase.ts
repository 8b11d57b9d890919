import {
  bad,
  type Clause,
  check,
  clauseCheck,
  good,
  type NamedId,
  namedIds,
  type Outcome,
  plainKinds,
} from '@loamwright/science';
import {
  convert,
  type Dimension,
  readArea,
  readQuantity,
  siUnitOf,
  type UnitSystem,
  unitFor,
  unitTable,
} from '@loamwright/units';

const LONGEST = 400;

/**
 * A clause as it is typed: a kind, then its figure. `height 4ft`, `volume 150ft3 per 10000ft2`, `sides 4x8ft`,
 * `from-line 5ft`, `bars animal-droppings, pet-waste`, `rear-yard`. A kind of size or distance without a figure stands for a
 * clause that names none. Problem: `clause-unreadable`, also of a figure that no code can mean.
 *
 * @param path where it stands, for the problem
 */
export function readClause(typed: string, path: string, system: UnitSystem): Outcome<Clause> {
  const plain = typed.slice(0, LONGEST).trim().toLowerCase();
  const [kind = '', ...words] = plain.split(/[\s:]+/u);
  const rest = words.join(' ');
  const clause = typed.length > LONGEST ? undefined : clauseOf(kind, rest, system);
  return clause === undefined || !canBeHeld(clause)
    ? bad({ code: 'clause-unreadable', path, found: plain.slice(0, 60), wanted: wantedOf(kind) })
    : good(clause);
}

/** Whether the clause can be held against a heap: a figure beyond all codes is a slip of the pen. */
export function canBeHeld(clause: Clause): boolean {
  return check(clauseCheck.input, { codes: [{ of: '-', whose: 'town', clauses: [clause] }], heap: {} }).ok;
}

/** The clause as {@link readClause} reads it, every figure with its unit, so that it means the same to every reader. */
export function clausePhrase(clause: Clause, system: UnitSystem): string {
  const told = (si: number | undefined, dimension: keyof typeof shownAs): string =>
    si === undefined ? '' : ` ${withUnit(si, dimension, system)}`;
  switch (clause.kind) {
    case 'volume': {
      const per = clause.perLot_m2 === undefined ? '' : ` per${told(clause.perLot_m2, 'area')}`;
      return `${clause.kind}${told(clause.most_m3, 'volume')}${clause.most_m3 === undefined ? '' : per}`;
    }
    case 'height':
      return `${clause.kind}${told(clause.most_m, 'length')}`;
    case 'footprint':
      return `${clause.kind}${told(clause.most_m2, 'area')}`;
    case 'lot-share':
      return clause.most_pctOfLot === undefined ? clause.kind : `${clause.kind} ${exact(clause.most_pctOfLot)}%`;
    case 'sides':
      return `${clause.kind}${told(clause.long_m, 'length')} x${told(clause.short_m, 'length')}`;
    case 'from-line':
    case 'from-house':
    case 'from-water':
      return `${clause.kind}${told(clause.least_m, 'length')}`;
    case 'bars':
      return `${clause.kind} ${clause.stuff.join(', ')}`;
    case 'allows':
      return `${clause.kind}${clause.only === true ? '-only' : ''} ${clause.stuff.join(', ')}`;
    default:
      return clause.kind;
  }
}

function withUnit(si: number, dimension: keyof typeof shownAs, system: UnitSystem): string {
  const unit = unitFor(shownAs[dimension], system);
  return `${exact(convert(si, siUnitOf(dimension), unit))}${unitTable[unit].typed[0] ?? ''}`;
}

/** Close enough that what just meets a limit still meets it after the conversion there and back. */
function exact(value: number): string {
  return String(Number(value.toPrecision(12)));
}

function clauseOf(kind: string, rest: string, system: UnitSystem): Clause | undefined {
  const plain = plainKinds.find((one) => one === kind);
  if (plain !== undefined) return rest === '' ? { kind: plain } : undefined;
  switch (kind) {
    case 'volume':
      return volume(rest, system);
    case 'height':
      return figured(rest, 'length', system, (most_m) => ({ kind, most_m }), { kind });
    case 'footprint':
      return figured(rest, 'area', system, (most_m2) => ({ kind, most_m2 }), { kind });
    case 'from-line':
    case 'from-house':
    case 'from-water':
      return figured(rest, 'length', system, (least_m) => ({ kind, least_m }), { kind });
    case 'lot-share':
      return lotShare(rest);
    case 'sides':
      return sides(rest, system);
    case 'bars':
    case 'allows':
    case 'allows-only': {
      const stuff = namedIn(rest);
      if (stuff === undefined) return undefined;
      return kind === 'bars'
        ? { kind, stuff }
        : { kind: 'allows', stuff, ...(kind === 'allows-only' && { only: true }) };
    }
    default:
      return undefined;
  }
}

const shownAs = { length: 'length', area: 'area', volume: 'bulkVolume' } as const;

function positive(text: string, dimension: Dimension & keyof typeof shownAs, system: UnitSystem): number | undefined {
  const si =
    dimension === 'area'
      ? readArea(text, system)?.m2
      : readQuantity(text, dimension, unitFor(shownAs[dimension], system))?.si;
  return si !== undefined && si > 0 ? si : undefined;
}

function figured(
  text: string,
  dimension: 'length' | 'area',
  system: UnitSystem,
  told: (si: number) => Clause,
  untold: Clause,
): Clause | undefined {
  if (text === '') return untold;
  const si = positive(text, dimension, system);
  return si === undefined ? undefined : told(si);
}

function volume(text: string, system: UnitSystem): Clause | undefined {
  if (text === '') return { kind: 'volume' };
  const [most = '', per, ...more] = text.split(/\s+per\s+/u);
  const most_m3 = positive(most, 'volume', system);
  if (most_m3 === undefined || more.length > 0) return undefined;
  if (per === undefined) return { kind: 'volume', most_m3 };
  const perLot_m2 = positive(per, 'area', system);
  return perLot_m2 === undefined ? undefined : { kind: 'volume', most_m3, perLot_m2 };
}

function lotShare(text: string): Clause | undefined {
  if (text === '') return { kind: 'lot-share' };
  const figure = /^(\d{1,3}(?:[.,]\d{1,6})?)\s*%?$/u.exec(text)?.[1];
  const most_pctOfLot = Number((figure ?? '').replace(',', '.'));
  return most_pctOfLot > 0 && most_pctOfLot <= 100 ? { kind: 'lot-share', most_pctOfLot } : undefined;
}

/** `4x8ft`: the unit of the second side counts for the first where that has none. */
function sides(text: string, system: UnitSystem): Clause | undefined {
  const [one = '', other = '', ...more] = text.split(/\s*[x×*]\s*/u);
  const unit = /[^\d.,\s].*$/u.exec(other)?.[0] ?? '';
  const first = positive(/^[\d.,]+$/u.test(one) ? `${one}${unit}` : one, 'length', system);
  const second = positive(other, 'length', system);
  if (first === undefined || second === undefined || more.length > 0) return undefined;
  return { kind: 'sides', long_m: Math.max(first, second), short_m: Math.min(first, second) };
}

function namedIn(text: string): readonly NamedId[] | undefined {
  const typed = text.split(/\s*,\s*|\s+/u).filter((one) => one !== '');
  const found = typed.flatMap((one) => namedIds.filter((id) => id === one));
  return typed.length > 0 && found.length === typed.length ? [...new Set(found)] : undefined;
}

const examples: Readonly<Record<string, string>> = {
  volume: 'volume 150ft3, volume 150ft3 per 10000ft2',
  height: 'height 4ft',
  footprint: 'footprint 75ft2',
  'lot-share': 'lot-share 1%',
  sides: 'sides 4x8ft',
  'from-line': 'from-line 5ft',
  'from-house': 'from-house 15ft',
  'from-water': 'from-water 100ft',
};

function wantedOf(kind: string): string {
  if (kind === 'bars' || kind.startsWith('allows')) return `${kind} ${namedIds.join(',')}`;
  if (plainKinds.some((one) => one === kind)) return kind;
  return (
    examples[kind] ?? [...Object.values(examples), 'bars pet-waste', 'allows horse-manure', ...plainKinds].join(', ')
  );
}
