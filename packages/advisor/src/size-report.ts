import type { CautionId, HeatToHold, HeatToHoldInput, SizeInSeason } from '@loamwright/science';
import type { Place, Saying } from '@loamwright/words';
import { bulk, difference, height, say, sayOf, temperature } from './saying.ts';

/** Whether a size does, as sentences. */
export interface SizeReport {
  readonly answer: Saying;
  readonly seasons: readonly Saying[];
  readonly heat: Saying;
  readonly notes: readonly Saying[];
  readonly cautions: readonly CautionId[];
}

/** Whether a heap of a size keeps a hot core, in words. */
export function sizeReport(asked: HeatToHoldInput, found: HeatToHold): SizeReport {
  const [mild, winter] = found.seasons;
  if (mild === undefined) throw new RangeError('a season is judged');
  const insulated = asked.insulated === true;
  return {
    answer: sayOf(winter === undefined ? 'size.answer-now' : 'size.answer', found.decision, {
      volume: bulk(found.volume_m3),
      air: temperature((winter ?? mild).air_degC),
      insulated: oneIf(insulated),
      mild: oneIf(mild.bare.does),
    }),
    seasons: found.seasons.map((season) => seasonWords(season, asked, found)),
    heat: say('size.heat', {
      span: difference(mild.span_K),
      bare: watts(mild.bare.heat_WPerM3.p50),
      wrapped: watts(mild.insulated.heat_WPerM3.p50),
      made: watts(found.made_WPerM3.p50),
    }),
    notes: found.notes.map((id) => sayOf('size.note', id)),
    cautions: found.cautions,
  };
}

function seasonWords(season: SizeInSeason, { size }: HeatToHoldInput, { volume_m3, seasons }: HeatToHold): Saying {
  const large = (enough_m3: number): Place => {
    if ('volume_m3' in size) return bulk(enough_m3);
    const times = Math.cbrt(enough_m3 / volume_m3);
    return say('size.sides', {
      width: height(size.width_m * times),
      depth: height(size.depth_m * times),
      height: height(size.height_m * times),
    });
  };
  return sayOf('size.season', seasons.length === 1 ? 'now' : season.season, {
    air: temperature(season.air_degC),
    core: temperature(season.air_degC + season.span_K),
    bare: { chance: season.bare.holds },
    wrapped: { chance: season.insulated.holds },
    enough: large(season.bare.enough_m3),
    enoughWrapped: large(season.insulated.enough_m3),
  });
}

/** A half-sentence that is there or not is told by a number. */
function oneIf(holds: boolean): number {
  return holds ? 1 : 0;
}

/** Two digits: no figure of a heap's heat is better known. */
function watts(heat_WPerM3: number): string {
  return String(Number(heat_WPerM3.toPrecision(2)));
}
