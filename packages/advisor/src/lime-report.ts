import { ashRakedIn_m, type LimeRate, type LimeRateInput, type Quantity } from '@loamwright/science';
import type { Figure, Saying } from '@loamwright/words';
import { plainPlaces, twoDigits } from './blend-words.ts';
import { area, depth, dressing, mass, say, sayOf } from './saying.ts';

/** Lime or ash for a bed, in sentences. */
export function limeReport(asked: LimeRateInput, found: LimeRate): readonly Saying[] {
  const isAsh = asked.stuff === 'wood-ash';
  return [
    answerOf(asked, found),
    ...(found.verdict === 'give' ? giveWords(asked, found) : []),
    ...(isAsh ? [say('lime.ash.rule')] : []),
    say('lime.again'),
  ];
}

function answerOf({ stuff, area_m2 }: LimeRateInput, { verdict, stuff_kg, stuff_kgPerM2, notes }: LimeRate): Saying {
  const places = {
    stuff: sayOf('lime.stuff', stuff),
    kg: mass(stuff_kg),
    each: dressing(stuff_kgPerM2),
    area: area(area_m2),
  };
  if (verdict !== 'none') return sayOf('lime.answer', verdict, places);
  if (notes.includes('ash-not-here')) return say('lime.answer.none-crop');
  return stuff === 'limestone' ? say('lime.answer.none-lime') : say('lime.answer.none', places);
}

function giveWords({ area_m2 }: LimeRateInput, found: LimeRate): readonly Saying[] {
  const { ashCeiling_kgPerM2: ceiling, limestone_kgPerM2: each } = found;
  const whole = { p10: each.p10 * area_m2, p50: each.p50 * area_m2, p90: each.p90 * area_m2 };
  return [
    ...(found.stuff_kg.p10 < found.stuff_kg.p90
      ? [say('lime.range', { range: ranged(found.stuff_kg), limestone: mass(whole) })]
      : []),
    sayOf('lime.by', found.by),
    ...found.notes.map((id) =>
      sayOf('lime.note', id, {
        dressings: found.dressings,
        low: dressing(ceiling?.low ?? 0),
        high: dressing(ceiling?.high ?? 0),
      }),
    ),
    ...ashWords(found),
  ];
}

/** What is in the ash, tested or not, and how salty it makes the soil. */
function ashWords({ potash_kg, ash, salt }: LimeRate): readonly Saying[] {
  if (potash_kg === undefined || ash === undefined || salt === undefined) return [];
  const potash = { potash: mass(potash_kg), range: ranged(potash_kg), pct: twoDigits(ash.potash_pctAsIs).likely };
  const mixed = plainPlaces(salt.mixed_dSPerM, 2);
  const top = plainPlaces(salt.onTop_dSPerM, 1);
  const value = ash.equivalentTested ? [say('lime.value.tested', { pct: twoDigits(ash.equivalent_pct).likely })] : [];
  if (ash.potash_pctAsIs.p90 === 0) return [...value, say('lime.potash.none')];
  return [
    ...value,
    say(ash.potashTested ? 'lime.potash.tested' : 'lime.potash', potash),
    say('lime.salt', {
      mixed: mixed.likely,
      mixedLow: mixed.low,
      mixedHigh: mixed.high,
      top: top.likely,
      topLow: top.low,
      topHigh: top.high,
      depth: depth(ashRakedIn_m),
    }),
    say('lime.salt.trial'),
  ];
}

function ranged(quantity: Quantity): Figure {
  return { ...mass(quantity), asRange: true };
}
