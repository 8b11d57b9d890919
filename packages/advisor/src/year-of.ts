import type { Holding, LayerPut } from '@loamwright/daybook';
import { type HoldingBalanceInput, knownMaterial, type Quantity } from '@loamwright/science';
import type { Saying, Speaker } from '@loamwright/words';
import { bedRecords, seasonOf } from './bed-records.ts';
import { added } from './bin-layers.ts';
import { materialName } from './names.ts';
import { stuffed } from './own-stuff.ts';
import { say } from './saying.ts';

/** A year of the daybook as the balance asks it. */
export interface YearOf {
  readonly input: HoldingBalanceInput;
  /** Stuff that is like none of the tables, and so left out. */
  readonly unknown: readonly Saying[];
  /** Whether some compost was spread without its amount, so that nothing can be said of what is left over. */
  readonly uncounted: boolean;
  /** Beds whose ground is shared among their crops because nobody named its parts, or where they fill more than there is. */
  readonly ground: readonly Saying[];
}

/** What went on heaps and beds and what grew in a season, told by the year of its harvest. */
export function yearOf(
  holding: Holding,
  { season, zone, speaker }: { readonly season: number; readonly zone: string; readonly speaker: Speaker },
): YearOf {
  const inSeason = (instant: string): boolean => seasonOf(instant, zone) === season;
  const put = [...holding.heaps.values()].flatMap(({ built, acts }): readonly LayerPut[] => [
    ...(built !== null && inSeason(built.entry.happened) ? built.body.layers : []),
    ...acts.flatMap((act) => (act.kind === 'heap-fed' && inSeason(act.entry.happened) ? act.body.layers : [])),
  ]);
  const water = [...holding.heaps.values()].flatMap(({ built }) =>
    built !== null && inSeason(built.entry.happened) ? (built.body.water_L ?? []) : [],
  );
  const masses = new Map<string, Quantity>();
  for (const { material, mass_kg, from } of put) {
    // What came from another heap was counted when it went on that one.
    if (from?.type === 'heap') continue;
    masses.set(material, added(masses.get(material) ?? 0, mass_kg));
  }
  const known = [...masses].filter(([material]) => knownMaterial(likeOf(material, holding)) !== undefined);
  const spreadings = [...holding.beds.values()]
    .flatMap((bed) => bed.spreadings)
    .filter(({ told }) => inSeason(told.entry.happened));
  const ofHeaps = spreadings.filter(({ told }) => told.body.of.type === 'heap').map(({ told }) => told.body);
  const counted = ofHeaps.flatMap(({ volume_m3 }) => volume_m3 ?? []);
  const beds = [...holding.beds.values()].map((bed) => ({
    name: bed.setUp.body.name,
    ...bedRecords(bed, holding, { season, zone, speaker }),
  }));
  return {
    input: {
      heaped: known.map(([material, mass_kg]) => ({ ...stuffed(material, [], holding), amount: { mass_kg } })),
      straight: spreadings.flatMap(({ told: { body } }) =>
        body.of.type === 'material'
          ? [
              {
                ...stuffed(body.of.id, [], holding),
                amount: { mass_kg: body.of.mass_kg },
                placed: body.workedIn ? ('dug-in' as const) : ('mulched' as const),
              },
            ]
          : [],
      ),
      crops: beds.flatMap(({ crops }) =>
        crops.flatMap(({ crop, area_m2 }) => (area_m2 === undefined ? [] : [{ crop, area_m2 }])),
      ),
      ...(water.length > 0 && { water_L: water.reduce<Quantity>(added, 0) }),
      ...(ofHeaps.length > 0 &&
        counted.length === ofHeaps.length && { spread: { volume_m3: counted.reduce<Quantity>(added, 0) } }),
    },
    unknown: [...masses.keys()]
      .filter((material) => knownMaterial(likeOf(material, holding)) === undefined)
      .map((material) => materialName(holding, material)),
    uncounted: counted.length < ofHeaps.length,
    ground: beds.flatMap(({ name, ground }) => ground.map((said) => say('balance.ground', { bed: name, said }))),
  };
}

function likeOf(material: string, holding: Holding): string {
  return stuffed(material, [], holding).like ?? material;
}
