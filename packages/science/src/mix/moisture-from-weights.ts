import { z } from 'zod';
import { bad, type Calculation, good } from '../catalogue/index.ts';
import { moistureOfSample_pctWet } from './balance.ts';

export interface MoistureFromWeightsInput {
  readonly wet_g: number;
  readonly dry_g: number;
  /** The container on the scale, when it was weighed with the sample; 0 otherwise. */
  readonly container_g?: number | undefined;
}

export interface MoistureFromWeights {
  readonly moisture_pctWet: number;
}

export const moistureFromWeights: Calculation<MoistureFromWeightsInput, MoistureFromWeights> = {
  id: 'moisture-from-weights',
  title: 'Moisture of a dried sample',
  summary:
    'Moisture as percent of wet mass from a sample weighed before and after drying: an oven at 105 to 110 °C for a day, or a microwave in short bursts with a glass of water beside it until the mass stops changing (within 1 to 3 points; if it chars, use the mass before).',
  input: z.strictObject({
    wet_g: z.number().positive().max(1e6),
    dry_g: z.number().positive().max(1e6),
    container_g: z.number().min(0).max(1e6).optional(),
  }),
  output: z.strictObject({ moisture_pctWet: z.number() }),
  sources: [
    { source: 'cornell-moisture', place: '10 g, 105 to 110 °C, 24 h: M = 100 (wet - dry) / wet', mark: 'seen' },
    { source: 'victoria-microwave-2015', place: 'microwave method, accuracy 1 to 3 %', mark: 'seen' },
  ],
  cautions: [],
  example: { wet_g: 14, dry_g: 6.3, container_g: 4 },
  run: ({ wet_g, dry_g, container_g = 0 }) => {
    if (dry_g <= container_g) {
      return bad({ code: 'too-small', path: 'dry_g', found: String(dry_g), wanted: `> ${container_g}, the container` });
    }
    if (dry_g > wet_g) return bad({ code: 'too-big', path: 'dry_g', found: String(dry_g), wanted: `≤ ${wet_g}` });
    return good({ moisture_pctWet: moistureOfSample_pctWet({ wet: wet_g - container_g, dry: dry_g - container_g }) });
  },
};
