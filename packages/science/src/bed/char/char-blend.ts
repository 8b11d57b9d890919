import { bad, type Calculation, good, type Needs, type Outcome } from '../../catalogue/index.ts';
import { inOrder } from '../../caution/index.ts';
import { drawsOf, fromPublished, percent, positive, summarise } from '../../estimate/index.ts';
import { resolve, weigh } from '../../mix/ingredient.ts';
import {
  type CharBlend,
  type CharBlendInput,
  type CharBounds,
  type CharDose,
  type CharNote,
  charBlendInputSchema,
  charBlendSchema,
} from './char-blend-io.ts';
import { charParameters as table } from './parameters.ts';

const L_PER_M3 = 1000;
const G_PER_KG = 1000;
const WHOLE_PCT = 100;
/** A tonne on a hectare is a tenth of a kilogram on a square metre. */
const T_PER_HA_PER_KG_PER_M2 = 10;
const NEUTRAL_PH = 7;

/** Where it goes: the volume it is worked into and, of a bed, its area and the dry mass of its soil. */
interface Place {
  readonly layer_L: number;
  readonly area_m2?: number | undefined;
  readonly soil_kg?: number | undefined;
}

function placeOf({ bed, mix_L, soil = 'loam' }: CharBlendInput): Place {
  if (bed === undefined) return { layer_L: mix_L ?? Number.NaN };
  const { area_m2, depth_m = table.depth_m.value } = bed;
  const layer_m3 = area_m2 * depth_m;
  return { layer_L: layer_m3 * L_PER_M3, area_m2, soil_kg: layer_m3 * table.soil_kgPerM3Dry[soil] };
}

/** So many litres of a density, each pair by its draw, told in every way. */
function doseOf(charcoal_L: Float64Array, density: Float64Array, { layer_L, area_m2, soil_kg }: Place): CharDose {
  const kg = charcoal_L.map((litres, i) => (litres / L_PER_M3) * (density[i] ?? Number.NaN));
  const each = (of: (kg: number) => number): CharDose['charcoal_kg'] => summarise(kg.map(of));
  return {
    charcoal_L: summarise(charcoal_L),
    charcoal_kg: summarise(kg),
    share_pctVolume: summarise(charcoal_L.map((litres) => (litres / layer_L) * WHOLE_PCT)),
    ...(area_m2 !== undefined && {
      rate_kgPerM2: each((one) => one / area_m2),
      rate_tPerHa: each((one) => (one / area_m2) * T_PER_HA_PER_KG_PER_M2),
      cover_LPerM2: summarise(charcoal_L.map((litres) => litres / area_m2)),
    }),
    ...(soil_kg !== undefined && { share_pctSoilMass: each((one) => (one / soil_kg) * WHOLE_PCT) }),
  };
}

function standsOf(given: CharBlendInput, dose: CharDose): CharBlend['stands'] {
  if (given.pH !== undefined && given.pH >= table.mostPH.value) return 'not-here';
  if (given.charcoal_L === undefined) return 'unasked';
  const { low, high } = dose.rate_tPerHa === undefined ? table.mix_pctVolume : table.trials_tPerHa;
  const { p50 } = dose.rate_tPerHa ?? dose.share_pctVolume;
  if (p50 < low) return 'below';
  return p50 > high ? 'above' : 'within';
}

function notesOf({ pH, soil, bed, isCharged }: CharBlendInput): readonly CharNote[] {
  return [
    ...(isCharged === true ? [] : (['uncharged'] as const)),
    ...(bed !== undefined && pH === undefined ? (['test-pH'] as const) : []),
    ...(pH !== undefined && pH >= NEUTRAL_PH && pH < table.mostPH.value ? (['nearly-too-sweet'] as const) : []),
    ...(bed !== undefined && (soil === 'sand' || soil === 'clay') ? [soil] : []),
  ];
}

function run(input: CharBlendInput, { draws }: Needs): Outcome<CharBlend> {
  const place = placeOf(input);
  const density = drawsOf(
    draws,
    'charcoal/density_kgPerM3Dry',
    input.density_kgPerM3Dry ?? fromPublished(table.density_kgPerM3Dry, positive),
    positive,
  );
  /** Litres that weigh so much on the whole bed, as far as the worked layer holds them. */
  const weighing = (kgPerM2: number): Float64Array =>
    density.map((one) => Math.min(place.layer_L, ((kgPerM2 * (place.area_m2 ?? Number.NaN)) / one) * L_PER_M3));
  const holding = (share_pct: number): Float64Array =>
    new Float64Array(draws.count).fill((place.layer_L * share_pct) / WHOLE_PCT);
  const dosed = (litres: Float64Array): CharDose => doseOf(litres, density, place);
  const inMix: CharBounds = {
    least: dosed(holding(table.mix_pctVolume.low)),
    most: dosed(holding(table.mix_pctVolume.high)),
  };
  const onBed = ({ low, high }: { readonly low: number; readonly high: number }): CharBounds => ({
    least: dosed(weighing(low)),
    most: dosed(weighing(high)),
  });
  const { low, high } = table.trials_tPerHa;
  const isBed = place.area_m2 !== undefined;
  const start = isBed ? weighing(table.start_kgPerM2.low) : holding(table.mix_pctVolume.low);
  const litres =
    input.charcoal_L === undefined ? start : drawsOf(draws, 'charcoal/volume_L', input.charcoal_L, positive);
  const most_L = Math.max(...litres);
  if (most_L > place.layer_L) {
    const wanted = `≤ ${String(Number(place.layer_L.toPrecision(3)))} L`;
    return bad({ code: 'too-big', path: 'charcoal_L', found: String(Number(most_L.toPrecision(3))), wanted });
  }
  const dose = dosed(litres);
  const urine = urineNitrogen_gPerL(draws);
  if (!urine.ok) return urine;
  const kg = litres.map((one, i) => (one / L_PER_M3) * (density[i] ?? Number.NaN));
  const perKg = drawsOf(draws, 'charcoal/charge_gNPerKg', fromPublished(table.charge_gNPerKg, positive), positive);
  const nitrogen = kg.map((one, i) => one * (perKg[i] ?? Number.NaN));
  const equivalent = drawsOf(
    draws,
    'charcoal/equivalent_pct',
    input.equivalent_pct ?? fromPublished(table.limeValue_pct, percent),
    percent,
  );
  const isCharged = input.isCharged === true;
  return good({
    stands: standsOf(input, dose),
    dose,
    begin: isBed ? onBed(table.start_kgPerM2) : inMix,
    best: isBed ? onBed({ low: low / T_PER_HA_PER_KG_PER_M2, high: high / T_PER_HA_PER_KG_PER_M2 }) : inMix,
    darkEarth: dosed(holding(table.darkEarth_pctVolume.value)),
    charge: {
      nitrogen_g: summarise(nitrogen),
      urine_L: summarise(nitrogen.map((g, i) => g / (urine.value[i] ?? Number.NaN))),
      compost_L: summarise(litres.map((one) => one * table.chargeCompost_times.value)),
      weeks: { low: table.charge_weeks.low, high: table.charge_weeks.high },
    },
    limestone_kg: summarise(kg.map((one, i) => (one * (equivalent[i] ?? Number.NaN)) / WHOLE_PCT)),
    notes: notesOf(input),
    cautions: inOrder([
      'ash-live-coals',
      'ash-caustic',
      'charcoal-dust',
      'charcoal-making',
      'treated-wood',
      ...(isCharged ? [] : (['manure-pathogens'] as const)),
      'local-rules',
    ]),
  });
}

/** Nitrogen of a litre of urine, by the table of materials. */
function urineNitrogen_gPerL(draws: Needs['draws']): Outcome<Float64Array> {
  const urine = resolve({ material: 'urine' }, 'urine');
  if (!urine.ok) return urine;
  const weighed = weigh(urine.value, { volume_m3: 1 }, 'charge', { draws, path: 'urine' });
  if (!weighed.ok) return weighed;
  return good(Float64Array.from(weighed.value, ({ nitrogen_kg }) => (nitrogen_kg * G_PER_KG) / L_PER_M3));
}

/** How much charcoal goes on a bed or into a mix, and what charges it. */
export const charBlend: Calculation<CharBlendInput, CharBlend> = {
  id: 'char-blend',
  title: 'Charcoal on a bed or in a mix',
  summary:
    'From the litres of charcoal there are and the bed or the mix they go into: kilograms and litres on a square metre, tonnes on a hectare, the share of the worked layer by volume and of its soil by mass; how that stands to the 30 to 70 t/ha at which trials did best, and to the fifth by volume of dark-earth beds, which is common practice. What charges it: nitrogen as urine, or as much compost, for 2 to 4 weeks. What its ash limes; none where the pH is 7.5 or more. Without an amount it tells what to begin with.',
  input: charBlendInputSchema,
  output: charBlendSchema,
  sources: Object.values(table),
  cautions: [
    'ash-live-coals',
    'ash-caustic',
    'manure-pathogens',
    'charcoal-dust',
    'charcoal-making',
    'treated-wood',
    'local-rules',
  ],
  example: { charcoal_L: 40, bed: { area_m2: 10 }, soil: 'clay', pH: 6.5 },
  run,
};
