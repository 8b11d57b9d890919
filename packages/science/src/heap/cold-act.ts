import table from '@loamwright/reference/not-heating.json' with { type: 'json' };
import {
  type Draws,
  drawsOf,
  type Estimate,
  fromPublished,
  percent,
  positive,
  type Quantity,
  summarise,
} from '../estimate/index.ts';
import { moistureFromSqueeze } from '../material/measured.ts';
import { carbonDraws_pctDry, knownMaterial, nitrogenDraws_pctDry, propertyDraws } from '../material/properties.ts';
import {
  nitrogenToReach,
  secondForCarbonToNitrogen_kg,
  secondForMoisture_kg,
  waterToReach_kg,
} from '../mix/balance.ts';
import type { ColdCauseId } from './cold-odds.ts';
import type { SqueezeGrade } from './observed.ts';

/** What to do; the message `cold.act.ID`. */
export const coldActIds = [
  'check-fire',
  'leave',
  'look',
  'wait',
  'water',
  'turn-with-dry',
  'turn',
  'mix-in-brown',
  'add-nitrogen',
  'enlarge',
  'leave-to-cure',
  'cover',
] as const;
export type ColdActId = (typeof coldActIds)[number];

/** The act that answers each cause. */
export const actFor: Readonly<Record<ColdCauseId, ColdActId>> = {
  young: 'wait',
  'too-dry': 'water',
  'too-wet': 'turn-with-dry',
  'too-little-air': 'turn',
  'little-nitrogen': 'add-nitrogen',
  'too-small': 'enlarge',
  spent: 'leave-to-cure',
  'cold-weather': 'cover',
};

/** How much of what; amounts are for the whole heap, or for each cubic metre where its size is not known. */
export interface ColdAmount {
  readonly per: 'heap' | 'cubic-metre';
  readonly water_L?: Estimate | undefined;
  /** A dry or a rich material by its id, and how much of it, as it lies. */
  readonly material?: string | undefined;
  readonly mass_kg?: Estimate | undefined;
  /** The nitrogen that does the same, kg. */
  readonly nitrogen_kg?: Estimate | undefined;
  /** How large the heap must be in all, m³. */
  readonly enough_m3?: number | undefined;
}

/** What is known for the amounts. */
export interface Amounting {
  readonly volume_m3?: number | undefined;
  /** Dry mass of what went in, draw by draw; where it is not known, what a heap of that volume usually holds. */
  readonly dry_kg?: Float64Array | undefined;
  readonly squeeze?: SqueezeGrade | undefined;
  readonly ratio?: Quantity | undefined;
  /** Smallest volume of its shape that holds a hot core. */
  readonly enough_m3?: number | undefined;
}

const { amounts } = table;

/** The amount that an act asks for; `undefined` where it asks for none. */
export function amountFor(act: ColdActId, known: Amounting, draws: Draws): ColdAmount | undefined {
  const per = known.volume_m3 === undefined && known.dry_kg === undefined ? 'cubic-metre' : 'heap';
  const volume_m3 = known.volume_m3 ?? 1;
  const dry_kg =
    known.dry_kg ??
    drawsOf(draws, 'heap/dry_kgPerM3', fromPublished(amounts.dry_kgPerM3, positive), positive).map(
      (density) => density * volume_m3,
    );
  switch (act) {
    case 'water': {
      const moisture = moistureDraws(known.squeeze ?? 'crumbles', draws);
      const goal_pctWet = amounts.goalWetter_pctWet.value;
      return {
        per,
        water_L: summarise(
          dry_kg.map((dry, i) => Math.max(0, waterToReach_kg({ ...wetted(dry, moisture[i]), goal_pctWet }))),
        ),
      };
    }
    case 'turn-with-dry': {
      const moisture = moistureDraws(known.squeeze ?? 'streams', draws);
      const { material } = amounts.drier;
      const drier = propertyDraws(draws, knownOf(material), 'moisture_pctWet');
      const goal_pctWet = amounts.goalDrier_pctWet.value;
      const mass = dry_kg.map((dry, i) => {
        const first = { wet_kg: wetted(dry, moisture[i]).wet_kg, moisture_pctWet: moisture[i] ?? Number.NaN };
        if (first.moisture_pctWet <= goal_pctWet) return 0;
        return secondForMoisture_kg({ first, second: { moisture_pctWet: drier?.[i] ?? Number.NaN }, goal_pctWet }) ?? 0;
      });
      return { per, material, mass_kg: summarise(mass) };
    }
    case 'add-nitrogen':
      return { per, ...richer(known, dry_kg, draws) };
    case 'enlarge':
      return known.enough_m3 === undefined ? undefined : { per: 'heap', enough_m3: known.enough_m3 };
    default:
      return undefined;
  }
}

/** Rich stuff that brings the heap's C:N to the goal. Without a C:N it is taken to be as poor as makes a heap fail. */
function richer({ ratio }: Amounting, dry_kg: Float64Array, draws: Draws): Omit<ColdAmount, 'per'> {
  const { material } = amounts.richer;
  const known = knownOf(material);
  const moisture = propertyDraws(draws, known, 'moisture_pctWet');
  const carbon = carbonDraws_pctDry(draws, known);
  const nitrogen = nitrogenDraws_pctDry(draws, known);
  const carbon_pctDry = amounts.carbon_pctDry.value;
  const ratios = drawsOf(draws, 'heap/carbonToNitrogen_ratio', ratio ?? table.limits.ratioVeryPoor.value, positive);
  const goal_ratio = amounts.goalRatio.value;
  const lacking = dry_kg.map((dry, i) => {
    const held = (dry * carbon_pctDry) / 100;
    return Math.max(0, nitrogenToReach({ carbon: held, nitrogen: held / (ratios[i] ?? Number.NaN), goal_ratio }));
  });
  const mass = dry_kg.map((dry, i) => {
    const first = {
      wet_kg: dry,
      moisture_pctWet: 0,
      carbon_pctDry,
      nitrogen_pctDry: carbon_pctDry / (ratios[i] ?? Number.NaN),
    };
    const second = {
      moisture_pctWet: moisture?.[i] ?? Number.NaN,
      carbon_pctDry: carbon?.[i] ?? Number.NaN,
      nitrogen_pctDry: nitrogen?.[i] ?? Number.NaN,
    };
    return secondForCarbonToNitrogen_kg({ first, second, goal_ratio }) ?? 0;
  });
  return { material, mass_kg: summarise(mass), nitrogen_kg: summarise(lacking) };
}

function knownOf(id: string): NonNullable<ReturnType<typeof knownMaterial>> {
  const known = knownMaterial(id);
  if (known === undefined) throw new RangeError(`no material ${id}`);
  return known;
}

function moistureDraws(grade: SqueezeGrade, draws: Draws): Float64Array {
  return drawsOf(draws, 'heap/moisture_pctWet', moistureFromSqueeze(grade), percent);
}

function wetted(dry_kg: number, moisture_pctWet = Number.NaN): { readonly wet_kg: number; readonly dry_kg: number } {
  return { dry_kg, wet_kg: dry_kg / (1 - moisture_pctWet / 100) };
}
