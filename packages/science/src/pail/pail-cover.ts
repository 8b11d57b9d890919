import { bad, type Calculation, good, type Needs, type Outcome } from '../catalogue/index.ts';
import { cautionIds, inOrder } from '../caution/index.ts';
import { summarise } from '../estimate/index.ts';
import { weighMix } from '../mix/mix-input.ts';
import { mixSources } from '../mix/sources.ts';
import { aheadOf } from './ahead.ts';
import { asFedOf, binDraws, binNowOf, isBinKnown, layersOf, weighLayers } from './bin.ts';
import { safetyAfter } from './claims.ts';
import { optionsFor } from './cover.ts';
import { dryStuffs } from './dry.ts';
import { coverFor_m3, layOut } from './lay.ts';
import { type BinMend, mendFor, mendReasonsOf } from './mend.ts';
import { notesFor } from './notes.ts';
import { type BinState, type PailCoverInput, pailCoverInputSchema } from './pail-input.ts';
import { type PailCover, type PailDecision, pailCoverSchema } from './pail-output.ts';
import { pailParameters } from './parameters.ts';
import { roomOf } from './room.ts';
import { stopOf } from './stop.ts';

function run(input: PailCoverInput, { draws }: Needs): Outcome<PailCover> {
  const { ownSizes, packing_share, smell, state = 'working' } = input;
  if (input.height_m !== undefined && input.bay === undefined) {
    return bad({ code: 'missing', path: 'bay', found: '', wanted: 'the bay in which that height stands' });
  }
  const pail = weighMix({ ingredients: input.pail, ownSizes, packing_share }, draws, 'pail');
  if (!pail.ok) return pail;
  const layers = weighLayers(input, draws);
  if (!layers.ok) return layers;
  const { ingredients, total, packing_share: packing } = pail.value;
  const wet = { portions: total, cover_m3: coverFor_m3(pail.value) };
  const dries = dryStuffs(input, wet, draws);
  if (!dries.ok) return dries;
  const options = optionsFor(wet, dries.value, ownSizes, draws);
  if (!options.ok) return options;
  const ahead = aheadOf(options.value, dries.value, total, input);
  if (!ahead.ok) return ahead;
  const { lay, short, water_L, fresh, cautions } = layOut(wet, dries.value, input);
  const bin = binDraws(layers.value, fresh, packing, input, draws);
  const asFed = isBinKnown(input) ? asFedOf(bin.asFed, packing) : undefined;
  const because = mendReasonsOf(asFed, layers.value, input);
  const mend: Outcome<BinMend | undefined> =
    because.length === 0 ? good(undefined) : mendFor(because, layers.value, total, input, draws);
  if (!mend.ok) return mend;
  const room = roomOf(bin, layers.value, input, draws);
  const stop = stopOf(layers.value, room, input);
  const { cap } = pailParameters;
  const laidAsFed = asFedOf(fresh, packing);
  const now = binNowOf(bin, input, draws);
  const decision = decide({
    state,
    isMended: because.length > 0,
    isLast: stop.now,
    isCovered: lay.length > 0,
    isShort: short !== undefined,
  });
  return good({
    decision,
    pail: ingredients.map(({ permitted, portions }) => ({
      ...permitted,
      wet_kg: summarise(portions.map(({ wet_kg }) => wet_kg)),
      volume_m3: summarise(portions.map(({ volume_m3 }) => volume_m3)),
    })),
    lay,
    ...(short === undefined ? {} : { short }),
    water_L,
    laid: laidAsFed,
    options: options.value,
    ...(mend.value === undefined ? {} : { mend: mend.value }),
    ...(decision === 'mix-and-cap' || smell === 'ammonia' ? { cap: { low_m: cap.low_m, high_m: cap.high_m } } : {}),
    layers: layersOf(layers.value),
    ...(asFed === undefined ? {} : { asFed }),
    ...(now === undefined ? {} : { now }),
    ...(room === undefined ? {} : { room }),
    stop,
    safety: safetyAfter(ingredients),
    ...(ahead.value === undefined ? {} : { ahead: ahead.value }),
    practice: pailParameters.practice.filter(({ bays }) => bays === input.bays).map(({ id }) => id),
    notes: notesFor(input, {
      pail: ingredients,
      pail_m3: summarise(total.map(({ volume_m3 }) => volume_m3)).p50,
      laid: laidAsFed,
      asFed,
      now,
      isMended: because.length > 0,
    }),
    cautions: inOrder([
      ...(smell === 'ammonia' ? (['ammonia'] as const) : []),
      ...[...ingredients, ...layers.value].flatMap(({ cautions }) => cautions),
      ...cautions,
    ]),
  });
}

interface Deciding {
  readonly state: BinState;
  readonly isMended: boolean;
  readonly isLast: boolean;
  readonly isCovered: boolean;
  readonly isShort: boolean;
}

function decide({ state, isMended, isLast, isCovered, isShort }: Deciding): PailDecision {
  if (state === 'frozen') return 'store';
  if (state === 'thawing') return 'mix-and-cap';
  if (isMended) return 'mend-first';
  if (isLast) return 'start-next';
  if (isCovered) return 'cover';
  return isShort ? 'fetch-dry' : 'tip-in';
}

export const pailCover: Calculation<PailCoverInput, PailCover> = {
  id: 'pail-cover',
  title: 'What goes with a pail',
  summary:
    'A pail of scraps, a basket of weeds or a mowing, and the bin it goes into: which dry stuff of what is on hand goes with it, in your measures, and any water; what the bin now is, layer by layer; room left, when to stop feeding it and begin the next; and what may no longer be said of it. A bin that is still fed is not finished, and its clock restarts with every raw pail.',
  input: pailCoverInputSchema,
  output: pailCoverSchema,
  sources: [
    ...Object.values(pailParameters.decay),
    ...Object.values(pailParameters.feeding),
    ...pailParameters.practice,
    pailParameters.feedCover_m,
    pailParameters.cap,
    pailParameters.handSpread_m,
    ...mixSources,
  ],
  cautions: cautionIds,
  example: {
    pail: [{ material: 'kitchen-scraps', amount: { measure: 'pail', count: 1, packed: true } }],
    dry: [{ material: 'autumn-leaves', amount: { measure: 'leaf-bag-30gal', count: 3 } }],
    layers: [
      { material: 'kitchen-scraps', amount: { measure: 'pail', count: 6, packed: true }, age_days: 30 },
      { material: 'autumn-leaves', amount: { measure: 'leaf-bag-30gal', count: 2 }, age_days: 30 },
      { material: 'kitchen-scraps', amount: { measure: 'pail', count: 6, packed: true }, age_days: 10 },
      { material: 'autumn-leaves', amount: { measure: 'leaf-bag-30gal', count: 2 }, age_days: 10 },
    ],
    bay: { width_m: 1, depth_m: 1, height_m: 1 },
    bays: 2,
    ahead: { pails_perWeek: 3, weeks: 20 },
  },
  run,
};
