import { type CharBlend, type CharBlendInput, charParameters, type Quantity } from '@loamwright/science';
import { convert } from '@loamwright/units';
import type { Figure, Saying } from '@loamwright/words';
import { area, bulk, bulkCover, dressing, fieldRate, mass, say, sayOf, smallMass } from './saying.ts';

const L_PER_M3 = 1000;
const G_PER_KG = 1000;

/** Charcoal on a bed or in a mix, in sentences. */
export function charReport(asked: CharBlendInput, found: CharBlend): readonly Saying[] {
  if (found.stands === 'not-here') return [say('char.answer.not-here', { most: charParameters.mostPH.value })];
  const bed = asked.bed === undefined ? [] : bedWords(found);
  return [
    answerOf(asked, found),
    ...(asked.bed === undefined ? [sayOf('char.mix', found.stands, mixBounds)] : bed),
    ...found.notes.map((id) =>
      sayOf('char.note', id, {
        grown: charParameters.uncharged_pctOfControl.value,
        most: charParameters.mostPH.value,
        water: Math.round(charParameters.availableWater_pctMore.value),
      }),
    ),
    ...(asked.isCharged === true ? [] : [chargeWords(found)]),
    say('char.ash', { limestone: mass(found.limestone_kg), range: ranged(mass(found.limestone_kg)) }),
    ...(asked.bed === undefined ? [] : [darkEarthWords(found)]),
    ...((found.darkEarth.rate_tPerHa?.p50 ?? 0) > charParameters.trials_tPerHa.high
      ? [say('char.darkEarth.over')]
      : []),
    say('char.make'),
  ];
}

const mixBounds = { low: charParameters.mix_pctVolume.low, high: charParameters.mix_pctVolume.high };

function answerOf({ bed, mix_L }: CharBlendInput, { stands, dose, begin }: CharBlend): Saying {
  const { least, most } = begin;
  const places = {
    charcoal: litres(dose.charcoal_L),
    each: dressing(dose.rate_kgPerM2 ?? Number.NaN),
    share: plain(stands === 'unasked' ? least.share_pctVolume.p50 : dose.share_pctVolume.p50),
    least: litres(least.charcoal_L),
    most: litres(most.charcoal_L),
    low: dressing(least.rate_kgPerM2 ?? Number.NaN),
    high: dressing(most.rate_kgPerM2 ?? Number.NaN),
    shareMost: plain(most.share_pctVolume.p50),
    ...(bed !== undefined && { area: area(bed.area_m2) }),
    ...(mix_L !== undefined && { mix: litres(mix_L) }),
  };
  const into = bed === undefined ? 'mix' : 'bed';
  return sayOf('char.answer', stands === 'unasked' ? `unasked-${into}` : into, places);
}

function bedWords({ stands, dose }: CharBlend): readonly Saying[] {
  const { low, high } = charParameters.trials_tPerHa;
  const trials = ranged(perHa({ p10: low, p50: (low + high) / 2, p90: high }));
  const rate = perHa(dose.rate_tPerHa);
  const ways = say('char.ways', {
    rate,
    range: ranged(rate),
    cover: bulkCover(dose.cover_LPerM2 ?? Number.NaN),
    mass: plain(dose.share_pctSoilMass?.p50),
  });
  return [...(stands === 'unasked' ? [] : [ways]), sayOf('char.stands', stands, { trials })];
}

function chargeWords({ charge }: CharBlend): Saying {
  const nitrogen_kg = {
    p10: charge.nitrogen_g.p10 / G_PER_KG,
    p50: charge.nitrogen_g.p50 / G_PER_KG,
    p90: charge.nitrogen_g.p90 / G_PER_KG,
  };
  return say('char.charge', {
    nitrogen: ranged(smallMass(nitrogen_kg)),
    urine: ranged({ figure: charge.urine_L, unit: 'L', as: 'liquid' }),
    compost: litres(charge.compost_L),
    low: charge.weeks.low,
    high: charge.weeks.high,
  });
}

function darkEarthWords({ darkEarth }: CharBlend): Saying {
  return say('char.darkEarth', {
    share: plain(darkEarth.share_pctVolume.p50),
    litres: litres(darkEarth.charcoal_L),
    rate: perHa(darkEarth.rate_tPerHa?.p50),
  });
}

function perHa(rate_tPerHa: Quantity = Number.NaN): Figure {
  const inKg = (one: number): number => convert(one, 'tPerHa', 'kgPerM2');
  return fieldRate(
    typeof rate_tPerHa === 'number'
      ? inKg(rate_tPerHa)
      : { p10: inKg(rate_tPerHa.p10), p50: inKg(rate_tPerHa.p50), p90: inKg(rate_tPerHa.p90) },
  );
}

function litres(volume_L: Quantity): Figure {
  const inM3 = (one: number): number => one / L_PER_M3;
  return bulk(
    typeof volume_L === 'number'
      ? inM3(volume_L)
      : { p10: inM3(volume_L.p10), p50: inM3(volume_L.p50), p90: inM3(volume_L.p90) },
  );
}

function ranged(figure: Figure): Figure {
  return { ...figure, asRange: true };
}

/** Two digits, as a string so that a thousand is told without a comma. */
function plain(value = Number.NaN): string {
  return String(Number(value.toPrecision(2)));
}
