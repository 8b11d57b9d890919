import table from '@loamwright/reference/temperature-bands.json' with { type: 'json' };
import { convert, type Unit } from '@loamwright/units';
import type { Citation, Cites } from '../catalogue/index.ts';

/** What a band is of: the life in the heap, a handbook's advice, what growers seek, or fire. */
export type TemperatureBandGroup = 'biology' | 'handbook' | 'growers' | 'fire';

/** Every published or practised band of heap temperatures. */
export type TemperatureBandId =
  | 'cool-microbes'
  | 'mesophilic'
  | 'mesophilic-general'
  | 'thermophilic'
  | 'thermophilic-general'
  | 'best-decomposition'
  | 'decomposition-falling'
  | 'sanitising-little-activity'
  | 'self-limiting'
  | 'reasonable-lsu'
  | 'reasonable-saskatchewan'
  | 'reasonable-cooperband'
  | 'preferred'
  | 'operating'
  | 'operating-later'
  | 'manure-practice'
  | 'growers-too-cool'
  | 'growers-sought'
  | 'growers-nitrogen-leaving'
  | 'alarm';

/** One band in °C; null where it has no end on that side. */
export interface TemperatureBand extends Citation {
  readonly id: TemperatureBandId;
  readonly group: TemperatureBandGroup;
  readonly low_degC: number | null;
  readonly high_degC: number | null;
}

/** Every band, in the table's order: from the cool end up within each group. */
export const temperatureBands: readonly TemperatureBand[] = table.bands.map((row) => ({
  id: row.id as TemperatureBandId,
  group: row.group as TemperatureBandGroup,
  low_degC: row.low === null ? null : convert(row.low, row.unit as Unit, 'degC'),
  high_degC: row.high === null ? null : convert(row.high, row.unit as Unit, 'degC'),
  source: row.source,
  place: row.place,
  mark: row.mark as Citation['mark'],
}));

/** The bands' own ids, as a schema wants them. */
export const bandIds: readonly [TemperatureBandId, ...TemperatureBandId[]] = table.bands.map(({ id }) => id) as [
  TemperatureBandId,
  ...TemperatureBandId[],
];

/** A band by its id. */
export function temperatureBandOf(id: TemperatureBandId): TemperatureBand {
  const band = temperatureBands.find((row) => row.id === id);
  if (band === undefined) throw new RangeError(`no band ${id}`);
  return band;
}

interface Row {
  readonly value: number;
  readonly unit: string;
}

function inUnit(row: Row, unit: Unit): number {
  return convert(row.value, row.unit as Unit, unit);
}

/** The temperatures at which a heap asks for something else, °C. Sources in `temperature-bands.json`, `limits`. */
export const heapLimits_degC: Readonly<Record<keyof typeof table.limits, number>> = {
  mild: inUnit(table.limits.mild, 'degC'),
  curing: inUnit(table.limits.curing, 'degC'),
  coolWithFood: inUnit(table.limits.coolWithFood, 'degC'),
  sanitisingDay: inUnit(table.limits.sanitisingDay, 'degC'),
  turning: inUnit(table.limits.turning, 'degC'),
  fire: inUnit(table.limits.fire, 'degC'),
  frozen: inUnit(table.limits.frozen, 'degC'),
};

/** When a heap is to be turned, what a heap needs to heat at all, and how deep a probe goes. Sources in `triggers` and `probe`. */
export const heapTriggers: {
  readonly fallFrom_K: number;
  readonly fallTo_K: number;
  readonly hotDays_days: number;
  readonly reachedWithin_days: number;
  readonly turnTells_days: number;
  readonly smallestHeap_m3: number;
  readonly slowCarbonToNitrogen: number;
  readonly shallowestProbe_m: number;
} = {
  fallFrom_K: inUnit(table.triggers.fallFrom, 'degCDifference'),
  fallTo_K: inUnit(table.triggers.fallTo, 'degCDifference'),
  hotDays_days: table.triggers.hotDays.value,
  reachedWithin_days: table.triggers.reachedWithin.value,
  turnTells_days: table.triggers.turnTells.value,
  smallestHeap_m3: inUnit(table.triggers.smallestHeap, 'm3'),
  slowCarbonToNitrogen: table.triggers.slowCarbonToNitrogen.value,
  shallowestProbe_m: inUnit(table.probe.shallowest, 'm'),
};

/** A dial probe is right within this, nine times in ten. Source in `probe`. */
export const probeError_K: number = inUnit(table.probe.error, 'degCDifference');

/** Beyond these a reading is asked about. Sources in `plausible`. */
export const plausible: {
  readonly hottest_degC: number;
  readonly coldest_degC: number;
  readonly fastestFall_KPerDay: number;
  readonly fastestRise_KPerDay: number;
  readonly belowAir_K: number;
  readonly usualLow_degC: number;
  readonly usualHigh_degC: number;
} = {
  hottest_degC: inUnit(table.plausible.hottest, 'degC'),
  coldest_degC: inUnit(table.plausible.coldest, 'degC'),
  fastestFall_KPerDay: inUnit(table.plausible.fastestFall, 'degCDifference'),
  fastestRise_KPerDay: inUnit(table.plausible.fastestRise, 'degCDifference'),
  belowAir_K: inUnit(table.plausible.belowAir, 'degCDifference'),
  usualLow_degC: inUnit(table.plausible.usualLow, 'degC'),
  usualHigh_degC: inUnit(table.plausible.usualHigh, 'degC'),
};

/** A published or practised reason to turn a heap. */
export type TriggerId = keyof typeof table.turnWhen;

/** Where each reason to turn comes from. */
export const turnWhen: Readonly<Record<TriggerId, Citation>> = table.turnWhen as Readonly<Record<TriggerId, Citation>>;

type Section = 'bands' | 'limits' | 'triggers' | 'turnWhen' | 'probe' | 'plausible';

/** Every row of the named parts of the table, for what rests on them. */
export function citationsOf(...sections: readonly Section[]): readonly Cites[] {
  return sections.flatMap((section) => Object.values<Cites>(table[section]));
}
