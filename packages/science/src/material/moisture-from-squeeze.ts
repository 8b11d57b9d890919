import { z } from 'zod';
import { type Calculation, good, type Outcome } from '../catalogue/index.ts';
import { type Estimate, estimateSchema } from '../estimate/index.ts';
import type { SqueezeGrade } from '../heap/observed.ts';
import { materialAt } from './material.ts';
import { moistureFromSqueeze, squeezeGrades, squeezeSaysLittle, squeezeSources } from './measured.ts';

export interface MoistureFromSqueezeInput {
  readonly squeeze: SqueezeGrade;
  /** What was squeezed; a mix or a heap when left out. */
  readonly material?: string | undefined;
}

export interface MoistureFromSqueeze {
  readonly moisture_pctWet: Estimate;
  /** True for stuff that no hand presses to a ball: dry a sample down instead. */
  readonly saysLittle: boolean;
}

export const moistureFromSqueezeCalculation: Calculation<MoistureFromSqueezeInput, MoistureFromSqueeze> = {
  id: 'moisture-from-squeeze',
  title: 'Moisture by the squeeze of a hand',
  summary:
    'Take a handful from the middle and squeeze it hard. Water streams out; drops show between the fingers; it shines and holds a ball; the ball crumbles; it is dusty. Each grade is a moisture with its range: the hand is no balance, and of straw, chips and card it says little.',
  input: z.strictObject({
    squeeze: z.enum(squeezeGrades),
    material: z.string().min(1).optional().meta({ description: 'What was squeezed: the id of a material.' }),
  }),
  output: z.strictObject({ moisture_pctWet: estimateSchema('Moisture, % of wet mass.'), saysLittle: z.boolean() }),
  sources: squeezeSources,
  cautions: [],
  example: { squeeze: 'holds' },
  run: ({ squeeze, material }): Outcome<MoistureFromSqueeze> => {
    if (material === undefined) return good({ moisture_pctWet: moistureFromSqueeze(squeeze), saysLittle: false });
    const known = materialAt(material, 'material');
    if (!known.ok) return known;
    const { particle } = known.value;
    return good({ moisture_pctWet: moistureFromSqueeze(squeeze, particle), saysLittle: squeezeSaysLittle(particle) });
  },
};
