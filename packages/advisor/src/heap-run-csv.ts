import type { HeapRunAnswer } from '@loamwright/science';
import { csv } from './csv.ts';

const courses = ['core_degC', 'coreOxygen_pctVolume', 'moisture_pctWet', 'volume_m3'] as const;
const ends = ['p10', 'p50', 'p90'] as const;

/** The courses of a run as one table, a line for each time: each course with its range, then the middle heap's shells from the core on. */
export function heapRunCsv(found: HeapRunAnswer): string {
  const shells = found.shells_degC[0]?.length ?? 0;
  const header = [
    'day',
    ...courses.flatMap((course) => ends.map((end) => `${course}_${end}`)),
    ...Array.from({ length: shells }, (_, i) => `shell${i + 1}_degC`),
  ];
  const rows = found.day.map((day, t) => [
    String(Number(day.toFixed(4))),
    ...courses.flatMap((course) => ends.map((end) => String(found[course][end][t] ?? ''))),
    ...(found.shells_degC[t] ?? []).map(String),
  ]);
  return csv(header, rows);
}
