import { existsSync, readFileSync } from 'node:fs';
import {
  type Aim,
  type Amount,
  aims,
  amountSchema,
  type BuildCardInput,
  bad,
  buildCard,
  check,
  type Outcome,
} from '@loamwright/science';
import { z } from 'zod';
import { parseJson } from './json.ts';
import type { Session } from './session.ts';
import { writeWhole } from './settings.ts';

/** A mix as it was worked out. */
export interface Mixed {
  /** The mix as a build card takes it; where no bay was said, a bay of one metre stands in for it. */
  readonly card: BuildCardInput;
  /** The amount of each line, with its spread. */
  readonly amounts: readonly Amount[];
}

/** What is remembered of the last mix, for `build`. No fact: it lies beside the daybook and not in it. */
export interface LastMix extends Mixed {
  /** The other answers, by their aim. */
  readonly others: readonly (Mixed & { readonly aim: Aim })[];
  /** Whether the bay's size was said. */
  readonly baySaid: boolean;
  /** Id of the bay, where it is written down. */
  readonly bay?: string | undefined;
}

const mixedShape = { card: buildCard.input, amounts: z.array(amountSchema) };
const hasAmounts = ({ card, amounts }: Mixed): boolean => card.mix.length === amounts.length;
const AN_AMOUNT_EACH = 'an amount for each line';

const lastMixSchema: z.ZodType<LastMix> = z
  .strictObject({
    ...mixedShape,
    others: z.array(z.strictObject({ ...mixedShape, aim: z.enum(aims) }).refine(hasAmounts, AN_AMOUNT_EACH)),
    baySaid: z.boolean(),
    bay: z.string().optional(),
  })
  .refine(hasAmounts, AN_AMOUNT_EACH);

/** Remembers a mix. A folder that can't be written to is no reason to withhold the answer. */
export function rememberMix(mix: LastMix, session: Session): void {
  writeWhole(session.folder.lastMix, `${JSON.stringify(mix, null, 2)}\n`);
}

/** The last mix. Problem: `no-last-mix`. */
export function lastMix(session: Session): Outcome<LastMix> {
  const none: Outcome<LastMix> = bad({ code: 'no-last-mix', path: '', found: '', wanted: '' });
  if (!existsSync(session.folder.lastMix)) return none;
  const parsed = parseJson(readFileSync(session.folder.lastMix, 'utf8'), session.folder.lastMix);
  const checked = parsed.ok ? check(lastMixSchema, parsed.value) : parsed;
  return checked.ok ? checked : none;
}

/** A bay that stands in where none was said. */
export const STAND_IN_BAY = { width_m: 1, depth_m: 1, height_m: 1 } as const;
