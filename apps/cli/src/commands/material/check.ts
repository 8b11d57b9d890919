import type { Check } from '@loamwright/advisor';
import { bad, type DryDown, good, measureById, type Outcome, type Problem, type Settling } from '@loamwright/science';
import { convert, type Dimension, readQuantity, type Unit, type UnitSystem } from '@loamwright/units';
import type { Speaker } from '@loamwright/words';
import type { Names } from '../../grammar/names.ts';
import { readSqueeze } from '../../grammar/seen.ts';
import type { MaterialOptions } from './options.ts';

/** A check as typed, and in words for the entry. */
export interface CheckTyped {
  readonly check: Check;
  readonly method: string;
}

const LITRES_PER_M3 = 1000;

/**
 * Reads the checks of a material: a squeeze; a sample dried (`--wet 100g --dry 86g`); a bucket weighed (`--full 3.2kg
 * --empty 1kg --holds 20L`); a bucket shaken down (`--filled 30cm --settled 24cm`). Undefined where none was made.
 *
 * Problems: `not-one-of`, `measurement-unreadable`, `check-half` for a check of which a part is missing, and
 * `unknown-measure`.
 */
export function readCheckTyped(
  options: MaterialOptions,
  names: Names,
  speaker: Speaker,
): Outcome<CheckTyped | undefined> {
  const reader = readerFor(speaker.system);
  const read = readSqueeze(options.squeeze);
  if (!read.ok) return read;
  const squeeze = read.value;
  const dryDown = dryDownOf(options, reader);
  const bucket = bucketOf(options, names, reader);
  const settling = settlingOf(options, reader);
  const problems = [...reader.problems, ...halves(options)];
  if (problems.length > 0) return bad(...problems);
  const check: Check = {
    ...(squeeze !== undefined && { squeeze }),
    ...(dryDown !== undefined && { dryDown }),
    ...(bucket !== undefined && { bucket }),
    ...(settling !== undefined && { settling }),
  };
  if (Object.keys(check).length === 0) return good(undefined);
  return good({ check, method: methodOf(check, options, speaker) });
}

interface Reader {
  readonly problems: Problem[];
  read(text: string | undefined, path: string, as: { dimension: Dimension; bare: Unit; to: Unit }): number | undefined;
  readonly system: UnitSystem;
}

function readerFor(system: UnitSystem): Reader {
  const problems: Problem[] = [];
  return {
    problems,
    system,
    read: (text, path, { dimension, bare, to }) => {
      if (text === undefined) return undefined;
      const read = readQuantity(text.slice(0, 40), dimension, bare);
      if (read !== undefined && read.value >= 0) return convert(read.value, read.unit, to);
      problems.push({
        code: 'measurement-unreadable',
        path,
        found: text.slice(0, 40),
        wanted: wantedOf[dimension] ?? '',
      });
      return undefined;
    },
  };
}

const wantedOf: Readonly<Partial<Record<Dimension, string>>> = {
  mass: '86g, 3.2kg, 7lb',
  length: '30cm, 12in',
  volume: '20L, 5gal',
};

/** The options that belong together; one of a group alone is half a check. */
const groups: readonly (readonly ['wet' | 'full' | 'filled', 'dry' | 'empty' | 'settled'])[] = [
  ['wet', 'dry'],
  ['full', 'empty'],
  ['filled', 'settled'],
];

function halves(options: MaterialOptions): readonly Problem[] {
  const missing = groups.flatMap(([one, other]) => {
    if ((options[one] === undefined) === (options[other] === undefined)) return [];
    const [there, wanted] = options[one] === undefined ? [other, one] : [one, other];
    return [{ code: 'check-half', path: `--${there}`, found: '', wanted: `--${wanted}` }];
  });
  if (options.full === undefined || options.holds !== undefined) return missing;
  return [...missing, { code: 'check-half', path: '--full', found: '', wanted: '--holds' }];
}

function dryDownOf(options: MaterialOptions, { read, system }: Reader): DryDown | undefined {
  const grams = { dimension: 'mass', bare: system === 'us' ? 'oz' : 'g', to: 'g' } as const;
  const wet_g = read(options.wet, '--wet', grams);
  const dry_g = read(options.dry, '--dry', grams);
  const container_g = read(options.container, '--container', grams);
  if (wet_g === undefined || dry_g === undefined) return undefined;
  const method = options.microwave === true ? 'microwave' : 'oven';
  return { method, wet_g, dry_g, ...(container_g !== undefined && { container_g }) };
}

function bucketOf(options: MaterialOptions, names: Names, reader: Reader): Check['bucket'] {
  const { read, system, problems } = reader;
  const kilograms = { dimension: 'mass', bare: system === 'us' ? 'lb' : 'kg', to: 'kg' } as const;
  const full_kg = read(options.full, '--full', kilograms);
  const empty_kg = read(options.empty, '--empty', kilograms);
  if (full_kg === undefined || empty_kg === undefined || options.holds === undefined) return undefined;
  const weighed = { full_kg, empty_kg, ...(options.packed === true && { packed: true }) };
  const volume = readQuantity(options.holds.slice(0, 40), 'volume', system === 'us' ? 'gal' : 'L');
  if (volume !== undefined && volume.si > 0) return { ...weighed, volume_L: volume.si * LITRES_PER_M3 };
  const measure = names.measure(options.holds);
  if ('id' in measure && measureById(measure.id) !== undefined) return { ...weighed, measure: measure.id };
  const wanted = 'nearest' in measure ? measure.nearest.join(', ') : '20L, 5gal';
  problems.push({ code: 'unknown-measure', path: '--holds', found: options.holds.slice(0, 40), wanted });
  return undefined;
}

function settlingOf(options: MaterialOptions, { read, system }: Reader): Settling | undefined {
  const centimetres = { dimension: 'length', bare: system === 'us' ? 'in' : 'cm', to: 'cm' } as const;
  const filled_cm = read(options.filled, '--filled', centimetres);
  const settled_cm = read(options.settled, '--settled', centimetres);
  return filled_cm === undefined || settled_cm === undefined ? undefined : { filled_cm, settled_cm };
}

function methodOf({ squeeze, dryDown, bucket, settling }: Check, options: MaterialOptions, speaker: Speaker): string {
  const { wet = '', dry = '', full = '', empty = '', filled = '', settled = '' } = options;
  const said = [
    squeeze === undefined
      ? ''
      : speaker.say('known.method.squeeze', { feel: speaker.say(`advisor.squeeze.${squeeze}`) }),
    dryDown === undefined ? '' : speaker.say(`known.method.${dryDown.method}`, { wet, dry }),
    bucket === undefined ? '' : speaker.say('known.method.bucket', { full, empty }),
    settling === undefined ? '' : speaker.say('known.method.settling', { filled, settled }),
  ].filter((part) => part !== '');
  return speaker.list(said).slice(0, MOST_METHOD);
}

/** What an entry's short text holds. */
const MOST_METHOD = 120;
