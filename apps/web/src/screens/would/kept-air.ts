import { type Stored, stored } from '../../device/stored.ts';
import { weeks_degC } from './asked.ts';

/** The air that was said last, °C, kept on the device: it is the same for every heap of the place. */
export const keptAir: Stored<number> = stored('loamwright.air', (kept) =>
  typeof kept === 'number' && Number.isFinite(kept) ? kept : weeks_degC.mild,
);
