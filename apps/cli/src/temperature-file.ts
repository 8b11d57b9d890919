import { bad, good, type Outcome } from '@loamwright/science';
import type { Saying } from '@loamwright/words';
import { allOf, readOneOf } from './blend.ts';
import { readText } from './file.ts';
import { dateOrders } from './grammar/stamp.ts';
import {
  extremesOf,
  readTemperatureTable,
  type TableReading,
  type TemperatureTable,
} from './grammar/temperature-table.ts';
import type { Session } from './session.ts';

/** What every command takes that reads a table of temperatures. */
export interface TableOptions {
  readonly csv?: string | undefined;
  readonly unit?: string | undefined;
  readonly dates?: string | undefined;
  readonly asTyped?: boolean | undefined;
}

/** A table of temperatures, and what is to be said of how it was read. */
export interface TableRead extends TemperatureTable {
  readonly notes: readonly Saying[];
}

/** Years of a logger; a photograph named by mistake is refused before it is read. */
const MOST_BYTES = 32 * 1024 * 1024;

/**
 * A file of temperatures, or standard input for `-`; of each day and point the lowest and the highest count. Problems: those of
 * `readText` and of the table; `not-one-of`.
 */
export async function readTemperatureFile(
  path: string,
  { unit, dates, asTyped }: TableOptions,
  session: Session,
): Promise<Outcome<TableRead>> {
  const said = unit === undefined ? good(undefined) : readOneOf(unit.replace('°', ''), ['c', 'f'] as const, '--unit');
  const order = dates === undefined ? good(undefined) : readOneOf(dates, dateOrders, '--dates');
  if (!said.ok || !order.ok) return bad(...allOf(said, order));
  const text = await readText(path, session, MOST_BYTES);
  if (!text.ok) return text;
  const table = readTemperatureTable(text.value, {
    path,
    zone: session.zone,
    now: session.now().toISOString(),
    ...(said.value !== undefined && { unit: said.value === 'c' ? 'degC' : 'degF' }),
    order: order.value,
    asTyped,
  });
  if (!table.ok) return table;
  const readings = extremesOf(table.value.readings);
  return good({ ...table.value, readings, notes: notesOf(table.value, readings) });
}

function notesOf(
  { readings: all, repeated, aside }: TemperatureTable,
  kept: readonly TableReading[],
): readonly Saying[] {
  const doubted = kept.filter((one) => one.doubted).length;
  return [
    ...(doubted === 0 ? [] : [{ key: 'cli.csv.doubted', places: { count: doubted } } as const]),
    ...(kept.length === all.length
      ? []
      : [{ key: 'cli.csv.extremes', places: { all: all.length, kept: kept.length } } as const]),
    ...(repeated === 0 ? [] : [{ key: 'cli.csv.repeated', places: { count: repeated } } as const]),
    ...(aside.length === 0 ? [] : [{ key: 'cli.csv.aside', places: { names: aside.join(', ') } } as const]),
  ];
}
