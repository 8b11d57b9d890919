import { heightInBay_m } from '../mix/geometry.ts';
import type { Resolved } from '../mix/ingredient.ts';
import { mixParameters } from '../mix/parameters.ts';
import { smallestHeap_m3 } from '../mix/warnings.ts';
import type { AsFed, BinNow } from './bin.ts';
import type { PailCoverInput } from './pail-input.ts';

/** What to mind; the words are the message `pail.note.CODE`. */
export const noteCodes = [
  'bury-and-cover',
  'coarse-base-first',
  'thin-or-mixed',
  'no-lime-no-ash',
  'rain-cover',
  'do-not-turn-frozen',
  'ready-for-thaw',
  'leachate',
  'keep-dry-stuff-dry',
  'seldom-hot',
  'too-small-to-heat',
  'slow-for-its-carbon',
  'squeeze-to-know',
  'measure-the-height',
] as const;
export type NoteCode = (typeof noteCodes)[number];

/** What the notes are read from. */
export interface Noted {
  readonly pail: readonly Resolved[];
  /** Likely volume of the pail, m³. */
  readonly pail_m3: number;
  /** The pail with its dry stuff, as it is laid. */
  readonly laid: AsFed;
  readonly asFed: AsFed | undefined;
  readonly now: BinNow | undefined;
  readonly isMended: boolean;
}

/** What to mind about this feeding. */
export function notesFor(input: PailCoverInput, of: Noted): readonly NoteCode[] {
  const { state = 'working', smell, bay, layers, ahead } = input;
  const isFed = layers !== undefined && layers.length > 0;
  const frosty = state !== 'working';
  const tooWet = of.asFed?.moisture_pctWet.verdict === 'too-high' || input.squeeze === 'streams';
  const ratio = of.laid.carbonToNitrogen_ratio;
  const when = (code: NoteCode, holds: boolean): readonly NoteCode[] => (holds ? [code] : []);
  return [
    ...when(
      'bury-and-cover',
      of.pail.some(({ cautions }) => cautions.includes('rats-flies')),
    ),
    ...when('coarse-base-first', layers !== undefined && !isFed),
    ...when('thin-or-mixed', isThick(of)),
    ...when('no-lime-no-ash', smell === 'ammonia' || of.isMended),
    ...when('rain-cover', tooWet || of.isMended),
    ...when('do-not-turn-frozen', state === 'frozen'),
    ...when('ready-for-thaw', state === 'frozen'),
    ...when('leachate', frosty),
    ...when('keep-dry-stuff-dry', frosty || ahead !== undefined),
    ...when('seldom-hot', isFed),
    ...when('too-small-to-heat', of.now !== undefined && of.now.volume_m3.p50 < smallestHeap_m3('three-seasons')),
    ...when('slow-for-its-carbon', ratio?.verdict === 'too-high'),
    ...when('squeeze-to-know', isFed && input.squeeze === undefined),
    ...when('measure-the-height', isFed && bay !== undefined && input.height_m === undefined),
  ];

  /** Fine fresh stuff that would lie thicker over the bay than it may. */
  function isThick({ pail, pail_m3 }: Noted): boolean {
    const mats = pail.some(
      ({ published }) =>
        published.class === 'nitrogen-rich' && (published.particle === 'leafy' || published.particle === 'fine'),
    );
    return mats && bay !== undefined && heightInBay_m(pail_m3, bay) > mixParameters.layers.fines_m.high_m;
  }
}
