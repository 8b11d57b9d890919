import { type ListedCalculation, listed } from '../catalogue/index.ts';
import { pailCover } from './pail-cover.ts';

/** The calculations about a bin that is fed by the pail. */
export const pailCalculations: readonly ListedCalculation[] = [listed(pailCover)];

export type { Ahead, DryAhead } from './ahead.ts';
export type { AsFed, BinLayer, BinNow } from './bin.ts';
export type { LostClaim, Safety } from './claims.ts';
export type { DryOption } from './cover.ts';
export type { LaidLine } from './lay.ts';
export type { BinMend } from './mend.ts';
export { pailCover } from './pail-cover.ts';
export type { BinState, DryStuff, FedLayer, PailCoverInput } from './pail-input.ts';
export type { PailCover, PailDecision } from './pail-output.ts';
export type { Room } from './room.ts';
export type { Stop } from './stop.ts';
