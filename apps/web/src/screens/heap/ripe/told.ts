import { ammoniumToNitrate, breathAsCarbon, emergence_pctControl } from '@loamwright/advisor';
import type { CuringInput, RipenessId, SmellId } from '@loamwright/science';

/** What of a lab's figures is taken as it stands. */
export const plainLabIds = [
  'carbonToNitrogen_ratio',
  'respiration_mgCO2CPerGOMPerDay',
  'oxygenUptake_mmolPerKgOMPerHour',
  'oxygenDemand_mgPerGVSPerHour',
  'ammonium_mgPerKgDry',
  'germinationIndex_pct',
  'fattyAcids_mgPerKgDry',
] as const satisfies readonly RipenessId[];
export type PlainLabId = (typeof plainLabIds)[number];

/** What was told on the page; null, or `not-said`, where nothing was. */
export interface Told {
  readonly smell: SmellId | 'not-said';
  readonly stuffSeen: 'yes' | 'no' | 'not-said';
  readonly afterTurn_degC: number | null;
  /** Seedlings that came up well in it, and in the mix beside it. */
  readonly came: number | null;
  readonly control: number | null;
  readonly sown: number | null;
  readonly selfHeating_K: number | null;
  readonly lab: Readonly<Partial<Record<PlainLabId, number | null>>>;
  readonly breathCo2: number | null;
  readonly nitrate: number | null;
}

export const NOTHING_TOLD: Told = {
  smell: 'not-said',
  stuffSeen: 'not-said',
  afterTurn_degC: null,
  came: null,
  control: null,
  sown: null,
  selfHeating_K: null,
  lab: {},
  breathCo2: null,
  nitrate: null,
};

/** As `curing-check` takes it; null while one of the two counts of seedlings is missing or too few came up beside it. */
export function toldInput(told: Told): CuringInput | null {
  const seedlings = seedlingsOf(told);
  if (seedlings === null) return null;
  const lab = Object.fromEntries(
    plainLabIds.flatMap((id) => {
      const value = told.lab[id] ?? null;
      return value === null ? [] : [[id, value]];
    }),
  );
  const { ammonium_mgPerKgDry: ammonium, respiration_mgCO2CPerGOMPerDay: breath } = told.lab;
  const measured = {
    ...lab,
    ...seedlings,
    ...(told.selfHeating_K !== null && { selfHeating_K: told.selfHeating_K }),
    ...(told.breathCo2 !== null &&
      (breath ?? null) === null && { respiration_mgCO2CPerGOMPerDay: breathAsCarbon(told.breathCo2) }),
    ...(told.nitrate !== null &&
      typeof ammonium === 'number' && { ammoniumToNitrate_ratio: ammoniumToNitrate(ammonium, told.nitrate) }),
  };
  return {
    ...(Object.keys(measured).length > 0 && { measured }),
    ...(told.smell !== 'not-said' && { smell: told.smell }),
    ...(told.stuffSeen !== 'not-said' && { stuffSeen: told.stuffSeen === 'yes' }),
    ...(told.afterTurn_degC !== null && { afterTurn_degC: told.afterTurn_degC }),
  };
}

function seedlingsOf({ came, control, sown }: Told): { readonly emergence_pctControl?: number } | null {
  if (came === null && control === null) return {};
  if (came === null || control === null) return null;
  const share = emergence_pctControl({ came, control, sown: sown ?? undefined });
  return share.ok ? { emergence_pctControl: share.value } : null;
}
