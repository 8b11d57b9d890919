import { z } from 'zod';
import { type Calculation, good, type Outcome } from '../catalogue/index.ts';
import {
  between,
  drawsOf,
  type Estimate,
  estimateSchema,
  fromPublished,
  positive,
  positiveQuantity,
  type Quantity,
  summarise,
} from '../estimate/index.ts';
import { sanitationParameters } from './parameters.ts';

export interface ColdSkinInput {
  /** A long heap is half a cylinder, a dome half a ball. */
  readonly shape: 'long-heap' | 'dome';
  /** Half its width at the foot, m. */
  readonly radius_m: Quantity;
  /** How deep the skin goes that stays cold, m; 10 to 20 cm where it is not said. */
  readonly skin_m?: Quantity | undefined;
  readonly turns: number;
  /** Tenfold steps to which what never was in the heat is to come down, 1 to 7: 3 leaves one part in a thousand. */
  readonly want_logs?: number | undefined;
}

export interface ColdSkin {
  /** Share of the heap that lies in the cold skin. */
  readonly cold_share: Estimate;
  /** Share that never came into the heat after so many turnings, if each mixed at random. */
  readonly unheated_share: Estimate;
  readonly unheated_logs: Estimate;
  /** Turnings that would do for what is wanted. */
  readonly turnsWanted?: Estimate | undefined;
}

const { shell } = sanitationParameters;
/** A skin as thick as the heap leaves no core. */
const MOST_COLD = 0.999_999;

function run(input: ColdSkinInput, { draws }: Parameters<typeof coldSkin.run>[1]): Outcome<ColdSkin> {
  const radius_m = drawsOf(draws, 'cold-skin/radius_m', input.radius_m, positive);
  const asked = input.skin_m ?? fromPublished(shell.shell_m, positive);
  const skin_m = drawsOf(draws, 'cold-skin/skin_m', asked, positive);
  const power = input.shape === 'long-heap' ? 2 : 3;
  const cold = radius_m.map((radius, j) => {
    const core = Math.max(0, (radius - (skin_m[j] ?? 0)) / radius);
    return Math.min(MOST_COLD, 1 - core ** power);
  });
  const logs = cold.map((share) => -(input.turns + 1) * Math.log10(share));
  const { want_logs } = input;
  return good({
    cold_share: summarise(cold),
    unheated_share: summarise(cold.map((share) => share ** (input.turns + 1))),
    unheated_logs: summarise(logs),
    ...(want_logs !== undefined && {
      turnsWanted: summarise(
        cold.map((share) => Math.max(0, Math.ceil(-want_logs / Math.log10(share) - 1 - ROUNDING))),
      ),
    }),
  });
}

/** Binary sums of a whole number of turnings may pass it by the last digit. */
const ROUNDING = 1e-9;

/** How much of a turned heap never came into the heat: geometry and chance, no measurement. */
export const coldSkin: Calculation<ColdSkinInput, ColdSkin> = {
  id: 'cold-skin',
  title: 'How much of a turned heap stays unheated',
  summary:
    'A heap is cold at its skin, and a small heap is half skin. From its shape and the depth of the skin: the share that is cold at any time, the share that never came into the heat after so many turnings if each mixes at random, and the turnings that would do. Turning outside in on purpose does better. Nobody has measured it: this is geometry and chance.',
  input: z.strictObject({
    shape: z.enum(['long-heap', 'dome']),
    radius_m: between(positiveQuantity('Half the width at the foot, m.'), 0.1, 20),
    skin_m: between(positiveQuantity('Depth of the cold skin, m.'), 0.01, 2).optional(),
    turns: z.int().min(0).max(1000),
    want_logs: z.int().min(1).max(7).optional().meta({
      description:
        'Tenfold steps to which it is to come down: 3 leaves one part in a thousand that never was in the heat.',
    }),
  }),
  output: z.strictObject({
    cold_share: estimateSchema('Share in the cold skin.'),
    unheated_share: estimateSchema('Share never in the heat.'),
    unheated_logs: estimateSchema('The same in tenfold steps.'),
    turnsWanted: estimateSchema('Turnings that would do.').optional(),
  }),
  sources: [shell.shell_m, shell.mixing, shell.geometry],
  cautions: ['manure-pathogens', 'local-rules'],
  example: { shape: 'dome', radius_m: 0.6, turns: 5, want_logs: 3 },
  run,
};
