import type { Holding } from '@loamwright/daybook';
import type { CautionId, DryOption, Estimate, PailCover, PailCoverInput, PailDecision } from '@loamwright/science';
import type { Place, Saying } from '@loamwright/words';
import { type BeliefSaid, beliefWords } from './belief-words.ts';
import { countedOf, measured } from './measured.ts';
import { type PermitWords, permitWords } from './mix-report.ts';
import { materialName } from './names.ts';
import { bulk, depth, height, liquid, say, sayOf } from './saying.ts';
import { lasting } from './when.ts';

/** Dry stuff that goes with the pail. */
export interface PailDry {
  readonly material: string;
  readonly measure: string;
  readonly count: number;
  /** "1 bucket of straw". */
  readonly said: Saying;
  /** How much of it alone may be right, in the measure; absent where it can't do alone. */
  readonly range?: Estimate | undefined;
}

/** What goes with a pail, and the bin after it, in sentences. */
export interface PailReport {
  readonly decision: PailDecision;
  /** The answer as a sentence; its amounts stand in the places `what.stuff[i].amount` and `water.water`. */
  readonly answer: Saying;
  /** What the answer names, in its order. */
  readonly dry: readonly PailDry[];
  readonly water_L: number;
  /** What to do besides, why so much, and what would do instead. */
  readonly more: readonly Saying[];
  /** What the bin is after it; empty where nothing is known of it. */
  readonly bin: readonly Saying[];
  readonly layers: readonly Saying[];
  /** Room, and when to stop. */
  readonly room: readonly Saying[];
  /** What is done with so many bays. */
  readonly practice: readonly Saying[];
  /** What may no longer be said of the bin. */
  readonly lost: readonly Saying[];
  readonly notes: readonly Saying[];
  readonly permits: readonly PermitWords[];
  readonly beliefs: readonly BeliefSaid[];
  readonly notModelled: Saying;
  readonly cautions: readonly CautionId[];
}

/**
 * The answer of `pail-cover` in sentences.
 *
 * @param input the question, as it was asked
 * @param unknown materials in the bin that could not be reckoned with
 * @param holding gives the names of the grower's own materials; a folded empty daybook will do.
 */
export function pailReport(
  found: PailCover,
  { input, unknown }: { readonly input: PailCoverInput; readonly unknown: readonly string[] },
  holding: Holding,
): PailReport {
  const dry = dryOf(found, holding);
  const like = (material: string): string => holding.materials.get(material)?.described?.body.like ?? material;
  return {
    decision: found.decision,
    answer: answerOf(found, dry),
    dry,
    water_L: found.water_L,
    more: moreOf(found, dry, holding),
    bin: binOf(found, unknown, holding),
    layers: layersOf(found, holding),
    room: roomOf(found, input),
    practice: found.practice.map((id) => sayOf('pail.practice', id)),
    lost: found.safety.lost.map(({ claim, because, materials }) =>
      sayOf('pail.lost', `${claim}.${because}`, { materials: namesOf(materials, holding) }),
    ),
    notes: found.notes.map((code) => sayOf('pail.note', code)),
    permits: found.pail.filter(({ permit }) => permit !== 'allowed').map((line) => permitWords(line, holding)),
    beliefs: beliefWords({ materials: found.pail.map(({ material }) => like(material)) }),
    notModelled: say('pail.not-modelled'),
    cautions: found.cautions,
  };
}

function namesOf(materials: readonly string[], holding: Holding): readonly Saying[] {
  return materials.map((id) => materialName(holding, id));
}

/** Nobody counts finer than half a measure. */
const STEP = 0.5;

function inHalves(count: number): number {
  return Math.max(STEP, Math.round(count / STEP) * STEP);
}

/** What the answer names: what the bin wants where it is to be mended, else what goes with the pail. */
function dryOf(found: PailCover, holding: Holding): readonly PailDry[] {
  const { decision, lay, short, options, mend } = found;
  if (decision === 'mend-first') {
    return mend === undefined || mend.alreadyThere ? [] : mend.options.slice(0, 1).map(ofOption);
  }
  const named = lay.length > 0 || short === undefined ? lay : [short];
  return named.map(({ material, measure, count }) => {
    const alone = named.length === 1 && found.short === undefined;
    const option = options.find((one) => one.material === material);
    const range = alone ? option?.better.count : undefined;
    return { material, measure, count, said: countedOf(holding, { material, measure, count }), range };
  });

  function ofOption({ material, measure, better }: DryOption): PailDry {
    const count = inHalves(better.count.p50);
    return { material, measure, count, said: countedOf(holding, { material, measure, count }), range: better.count };
  }
}

function answerOf(found: PailCover, dry: readonly PailDry[]): Saying {
  const { water_L } = found;
  const water = water_L === 0 ? say('pail.no-water') : say('pail.water', { water: liquid(water_L) });
  return say('pail.answer', { what: whatOf(found, dry), water });
}

function whatOf({ decision, stop, mend }: PailCover, dry: readonly PailDry[]): Saying {
  const stuff = dry.map(({ said }) => said);
  const plain = stuff.length === 0 ? '-plain' : '';
  switch (decision) {
    case 'cover':
    case 'fetch-dry':
      return sayOf('pail', decision, { stuff });
    case 'tip-in':
      return say('pail.tip-in');
    case 'start-next': {
      const isFull = stop.reasons.includes('full');
      return sayOf('pail', `${isFull ? 'next-bin' : 'last-pail'}${plain}`, { stuff });
    }
    case 'mend-first':
      if (mend?.alreadyThere === true) return say('pail.mend-there');
      return stuff.length === 0 ? say('pail.mend-unknown') : say('pail.mend', { stuff });
    case 'store':
    case 'mix-and-cap':
      return sayOf('pail', `${decision}${plain}`, { stuff });
  }
}

function moreOf(found: PailCover, dry: readonly PailDry[], holding: Holding): readonly Saying[] {
  const { decision, mend, cap, lay, short, options } = found;
  const isMended = decision === 'mend-first';
  const [first] = lay;
  const because = options.find(({ material }) => material === first?.material)?.because;
  return [
    ...(isMended ? (mend?.because ?? []).map((reason) => sayOf('pail.mend', reason)) : []),
    ...(decision === 'start-next' ? found.stop.reasons.map((reason) => sayOf('pail.stop', reason)) : []),
    ...(cap === undefined ? [] : [say('pail.cap', { low: depth(cap.low_m), high: depth(cap.high_m) })]),
    ...(isMended ? dry.flatMap((one) => rangeOf(one, 'pail.mend-range')) : []),
    ...(isMended && lay.length > 0 ? [say('pail.with', { stuff: lay.map((one) => countedOf(holding, one)) })] : []),
    ...(because === undefined || isMended ? [] : [sayOf('pail.why', because)]),
    ...(lay.length > 0 && short !== undefined ? [say('pail.short', { stuff: countedOf(holding, short) })] : []),
    ...(lay.length > 0 ? [laidOf(found)] : []),
    ...(isMended ? [] : dry.flatMap((one) => rangeOf(one, 'pail.range'))),
    ...insteadOf(found, holding),
    ...aheadOf(found, holding),
  ];
}

function laidOf({ laid }: PailCover): Saying {
  const { carbonToNitrogen_ratio: ratio, moisture_pctWet } = laid;
  const places = rounded(moisture_pctWet.value, 'moisture');
  return ratio === undefined
    ? say('pail.laid-no-ratio', places)
    : say('pail.laid', { ...places, ratio: Math.round(ratio.value.p50) });
}

function rounded({ p10, p50, p90 }: Estimate, name: string): Readonly<Record<string, number>> {
  return { [name]: Math.round(p50), low: Math.round(p10), high: Math.round(p90) };
}

function rangeOf({ measure, range }: PailDry, key: 'pail.range' | 'pail.mend-range'): readonly Saying[] {
  if (range === undefined) return [];
  const low = inHalves(range.p10);
  const high = inHalves(range.p90);
  return low === high ? [] : [say(key, { low: measured(measure, low), high: measured(measure, high) })];
}

/** The other dry materials that would do alone. */
function insteadOf({ decision, lay, short, options }: PailCover, holding: Holding): readonly Saying[] {
  if (decision === 'mend-first' || decision === 'tip-in') return [];
  const named = new Set([...lay.map(({ material }) => material), ...(lay.length === 0 ? [short?.material] : [])]);
  const others = options.filter(({ material }) => !named.has(material));
  if (others.length === 0) return [];
  const stuff = others.map(({ material, measure, better }) =>
    countedOf(holding, { material, measure, count: inHalves(better.count.p50) }),
  );
  return [say('pail.instead', { stuff })];
}

function aheadOf({ ahead }: PailCover, holding: Holding): readonly Saying[] {
  const [first] = ahead?.dry ?? [];
  if (ahead === undefined || first === undefined) return [];
  const count = inHalves(first.count.p50);
  return [say('pail.ahead', { pails: ahead.pails, stuff: countedOf(holding, { ...first, count }) })];
}

function binOf({ now, decision, mend }: PailCover, unknown: readonly string[], holding: Holding): readonly Saying[] {
  if (now === undefined) return [];
  const { stuff, volume_m3, height_m } = now;
  const volume: Place = bulk(volume_m3);
  const ratio = stuff?.carbonToNitrogen_ratio;
  const isMended = decision === 'mend-first' && mend?.alreadyThere !== true;
  const moist = stuff?.moistureFrom === 'squeeze' ? 'pail.bin.felt' : 'pail.bin.moisture';
  return [
    height_m === undefined
      ? say(isMended ? 'pail.bin.mended-volume' : 'pail.bin.volume', { volume })
      : say(isMended ? 'pail.bin.mended-height' : 'pail.bin.height', { volume, height: height(height_m) }),
    ...(stuff === undefined ? [] : [say(moist, rounded(stuff.moisture_pctWet, 'moisture'))]),
    ...(ratio === undefined ? [] : [say('pail.bin.ratio', rounded(ratio, 'ratio'))]),
    ...(unknown.length === 0 ? [] : [say('pail.bin.unknown', { materials: namesOf(unknown, holding) })]),
  ];
}

function layersOf({ layers }: PailCover, holding: Holding): readonly Saying[] {
  return layers.map(({ material, age_days, left }) => {
    const pct = ({ p10, p50, p90 }: Estimate): Estimate => ({ p10: 100 * p10, p50: 100 * p50, p90: 100 * p90 });
    return say('pail.layer', {
      material: materialName(holding, material),
      ago: say('advisor.days-ago', { days: Math.floor(age_days) }),
      ...rounded(pct(left.volume_share), 'left'),
    });
  });
}

function roomOf({ room, stop, decision }: PailCover, { ahead }: PailCoverInput): readonly Saying[] {
  return [
    ...(room === undefined ? [] : [say('pail.room.pails', { count: Math.floor(room.pailsLeft.p50) })]),
    ...(room === undefined || ahead === undefined ? [] : [paceOf(room, ahead.pails_perWeek)]),
    ...(decision === 'start-next' ? [say('pail.stop.rest', { days: stop.rest_days })] : []),
  ];
}

function paceOf({ fullIn_days }: NonNullable<PailCover['room']>, pace: number): Saying {
  if (fullIn_days === undefined) return say('pail.room.never-full', { pace });
  const { p10, p50, p90 } = fullIn_days;
  return say('pail.room.full-in', { pace, days: lasting(p50), low: lasting(p10), high: lasting(p90) });
}
