import type { MaterialFigures } from '@loamwright/daybook';
import {
  bad,
  good,
  insideScale,
  moistureWhenSaid,
  type Outcome,
  type Problem,
  percent,
  positive,
  type Quantity,
  type Scale,
  wetnessIds,
} from '@loamwright/science';
import { convert, readQuantity, type UnitSystem, unitFor } from '@loamwright/units';
import { readNumber, wordsOf } from '../../grammar/number.ts';
import type { MaterialOptions } from './options.ts';

/**
 * The figures that a person says of a material: `--is damp` or `--is 30-40`, `--ratio 60`, `--nitrogen 1.2`, `--ash 8`,
 * `--weight 300` (kg/m³, or lb/yd³ with US units). Problem: `figure-unreadable`.
 */
export function readFigures(options: MaterialOptions, system: UnitSystem): Outcome<MaterialFigures> {
  const problems: Problem[] = [];
  const figure = (text: string | undefined, path: string, scale: Scale): Quantity | undefined => {
    if (text === undefined) return undefined;
    const value = readFigure(text);
    if (value !== undefined && within(value, scale)) return value;
    problems.push({ code: 'figure-unreadable', path, found: text.slice(0, 40), wanted: wantedAt[path] ?? '' });
    return undefined;
  };
  const moisture_pctWet = wetness(options.is) ?? figure(options.is, '--is', percent);
  const carbonToNitrogen = figure(options.ratio, '--ratio', positive);
  const nitrogen_pctDry = figure(options.nitrogen, '--nitrogen', percent);
  const ash_pctDry = figure(options.ash, '--ash', percent);
  const weight = readWeight(options.weight, system);
  if (options.weight !== undefined && weight === undefined) {
    problems.push({
      code: 'figure-unreadable',
      path: '--weight',
      found: options.weight.slice(0, 40),
      wanted: wantedAt['--weight'] ?? '',
    });
  }
  if (problems.length > 0) return bad(...problems);
  return good({
    ...(moisture_pctWet !== undefined && { moisture_pctWet }),
    ...(carbonToNitrogen !== undefined && { carbonToNitrogen }),
    ...(nitrogen_pctDry !== undefined && { nitrogen_pctDry }),
    ...(ash_pctDry !== undefined && { ash_pctDry }),
    ...(weight !== undefined && { density_kgPerM3AsIs: weight }),
  });
}

const wantedAt: Readonly<Record<string, string>> = {
  '--is': `${wetnessIds.join(', ')}, 35%, 30-40%`,
  '--ratio': '60, 50-80',
  '--nitrogen': '1.2%, 1-1.5%',
  '--ash': '8%, 5-12%',
  '--weight': '300kg/m3, 500lb/yd3',
};

function wetness(text: string | undefined): Quantity | undefined {
  const said = wetnessIds.find((id) => id === text?.trim().toLowerCase());
  return said === undefined ? undefined : moistureWhenSaid(said);
}

function readFigure(text: string): Quantity | undefined {
  const read = readNumber(wordsOf(text.slice(0, 40).replaceAll('%', ' ')));
  return read === undefined || read.rest.length > 0 ? undefined : read.value;
}

function within(value: Quantity, scale: Scale): boolean {
  const ends = typeof value === 'number' ? [value] : [value.p10, value.p50, value.p90];
  return ends.every((end) => insideScale(end, scale));
}

function readWeight(text: string | undefined, system: UnitSystem): Quantity | undefined {
  if (text === undefined) return undefined;
  const unit = unitFor('bulkDensity', system);
  const single = readQuantity(text.slice(0, 40), 'density', unit);
  if (single !== undefined) return single.si > 0 ? single.si : undefined;
  const spanned = readFigure(text);
  if (spanned === undefined || typeof spanned === 'number') return undefined;
  const si = (value: number): number => convert(value, unit, 'kgPerM3');
  return { p10: si(spanned.p10), p50: si(spanned.p50), p90: si(spanned.p90) };
}
