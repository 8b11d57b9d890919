/** What passes in and out of a heap by itself, in the order of a ledger's lines. Heat in J, the rest in kg. */
export const flowIds = [
  'heatMade_J',
  'heatThroughSurface_J',
  'heatToGround_J',
  'heatWithAir_J',
  'heatWithMatter_J',
  'heatWithRain_J',
  'heatDrained_J',
  'waterFormed_kg',
  'waterWithAir_kg',
  'waterRained_kg',
  'waterDrained_kg',
  'oxygenDrawnIn_kg',
  'oxygenSupplied_kg',
  'oxygenEaten_kg',
  'oxygenNitrified_kg',
  'carbonBreathed_kg',
  'ammoniaGone_kg',
  'nitrogenDrained_kg',
  'nitrogenDenitrified_kg',
] as const;
export type FlowId = (typeof flowIds)[number];

/** What the grower's acts put in or let out. */
export const actIds = [
  'heatAdded_J',
  'heatTurnedOut_J',
  'waterAdded_kg',
  'waterTurnedOut_kg',
  'carbonAdded_kg',
  'nitrogenAdded_kg',
  'ashAdded_kg',
] as const;
export type ActId = (typeof actIds)[number];

/** The place of each line. */
export const LINE: Readonly<Record<FlowId | ActId, number>> = Object.fromEntries(
  [...flowIds, ...actIds].map((id, place) => [id, place] as const),
) as Record<FlowId | ActId, number>;

/** Lines of flows, which come first, and lines of all. */
export const FLOWS: number = flowIds.length;
const LINES: number = flowIds.length + actIds.length;

/**
 * What went in and out of a heap since its start, at the places of `LINE`. Each line is summed from its own fluxes, so
 * that the sums can be held against what the heap holds.
 */
export function emptyLedger(): Float64Array {
  return new Float64Array(LINES);
}

/** Adds an amount to a line. */
export function enter(ledger: Float64Array, line: number, amount: number): void {
  ledger[line] = (ledger[line] as number) + amount;
}
