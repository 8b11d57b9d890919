import { z } from 'zod';
import { bad, type Calculation, type Citation, cited, good, type Outcome } from '../catalogue/index.ts';
import { type CautionId, cautionIds, inOrder } from '../caution/index.ts';
import { allMaterials, doubtfulInputs, materialById, nearest, type Permit } from '../material/index.ts';
import { inputParameters, type SprayedId, sprayedIds } from './parameters.ts';

/** How the heap is kept that it is to go into: hot and logged, slow, fed by and by, or a worm bed. */
export const heapKinds = ['hot', 'slow', 'fed', 'worms'] as const;
export type HeapKind = (typeof heapKinds)[number];

export interface InputCheckInput {
  /** A material, or one of the doubtful inputs, by its id. */
  readonly stuff: string;
  readonly heap: HeapKind;
  readonly sprayed?: SprayedId | undefined;
  /** Mowings that were left lying since. */
  readonly mowings?: number | undefined;
  readonly weeks?: number | undefined;
}

export const inputVerdicts = ['yes', 'wait', 'test-first', 'not-here', 'never'] as const;
/** Yes; wait; test with beans first; not in such a heap, which is not hot; never. */
export type InputVerdict = (typeof inputVerdicts)[number];

export interface InputCheck extends Citation {
  readonly stuff: string;
  readonly kind: 'material' | 'doubtful';
  readonly permit: Permit;
  /** The message `permit.reason.ID`. */
  readonly reason: string;
  readonly verdict: InputVerdict;
  readonly sprayed?:
    | {
        readonly what: SprayedId;
        readonly wait?: { readonly mowings: Span; readonly weeks: Span } | undefined;
        readonly source: string;
        readonly place: string;
        readonly mark: Citation['mark'];
      }
    | undefined;
  /** What others hold, where experts differ. */
  readonly disputed?: Citation | undefined;
  readonly cautions: readonly CautionId[];
}

interface Span {
  readonly low: number;
  readonly high: number;
}

interface Known extends Citation {
  readonly kind: InputCheck['kind'];
  readonly permit: Permit;
  readonly reason: string;
  readonly cautions: readonly CautionId[];
}

function known(id: string): Known | undefined {
  const material = materialById(id);
  if (material !== undefined) {
    const { permit, permitReason, permitSource, permitMark, cautions } = material;
    return {
      kind: 'material',
      permit,
      reason: permitReason,
      cautions,
      source: permitSource,
      place: permitReason,
      mark: permitMark,
    };
  }
  const doubtful = doubtfulInputs.find((one) => one.id === id);
  if (doubtful === undefined) return undefined;
  const { permit, permitReason, cautions } = doubtful;
  return { kind: 'doubtful', permit, reason: permitReason, cautions, ...cited(doubtful) };
}

function run(input: InputCheckInput): Outcome<InputCheck> {
  const found = known(input.stuff);
  if (found === undefined) {
    const ids = [...allMaterials, ...doubtfulInputs].map(({ id }) => id);
    return bad({
      code: 'unknown-material',
      path: 'stuff',
      found: input.stuff,
      wanted: nearest(input.stuff, ids).join(', '),
    });
  }
  const spray =
    input.sprayed === undefined ? undefined : inputParameters.sprayed.find(({ id }) => id === input.sprayed);
  const disputed = inputParameters.disputed.find(({ id }) => id === input.stuff);
  return good({
    stuff: input.stuff,
    kind: found.kind,
    permit: found.permit,
    reason: found.reason,
    verdict: verdictOf(found, input),
    ...(spray !== undefined && {
      sprayed: { what: spray.id, ...(spray.wait !== undefined && { wait: spray.wait }), ...cited(spray) },
    }),
    ...(disputed !== undefined && { disputed: cited(disputed) }),
    cautions: inOrder([...found.cautions, 'local-rules']),
    ...cited(found),
  });
}

/** What may carry a weed-killer through: the table marks it. */
const carries = ({ cautions }: Known): boolean => cautions.includes('herbicide-carryover');

/** Clippings of a treated lawn are never for a heap until the wait is over: then they are clippings again. */
const waitsOver = 'leave-mowings-lie';

function verdictOf(found: Known, input: InputCheckInput): InputVerdict {
  const spray = sprayVerdict(input);
  if (found.reason === waitsOver) return spray === 'yes' ? 'yes' : (spray ?? 'never');
  if (found.permit === 'never') return 'never';
  if (carries(found) && spray !== undefined && spray !== 'yes') return spray;
  if (found.reason === 'bean-test-first') return 'test-first';
  return found.permit === 'only-hot' && input.heap !== 'hot' ? 'not-here' : 'yes';
}

/** By what it was treated with, and how long ago: either enough mowings or enough weeks, each by its cautious end. */
function sprayVerdict({ sprayed, mowings = 0, weeks = 0 }: InputCheckInput): InputVerdict | undefined {
  if (sprayed === undefined) return undefined;
  if (sprayed === 'persistent') return 'never';
  if (sprayed === 'unknown') return 'test-first';
  const wait = inputParameters.sprayed.find(({ id }) => id === sprayed)?.wait;
  if (wait === undefined) return 'never';
  return mowings >= wait.mowings.high || weeks >= wait.weeks.high ? 'yes' : 'wait';
}

const span = z.strictObject({ low: z.number().min(0), high: z.number().min(0) });
const citationShape = { source: z.string(), place: z.string(), mark: z.enum(['seen', 'memory', 'derived']) };

/** Whether something may go into a heap. */
export const inputCheck: Calculation<InputCheckInput, InputCheck> = {
  id: 'input-check',
  title: 'May this go in?',
  summary:
    'Tells for every material and every doubtful input whether it may go into a heap that is hot and logged, slow, fed by and by, or a worm bed: yes, only in a hot one, after a wait, after a test with beans, or never, with the reason and its source. What was sprayed and how long ago is asked where it matters.',
  input: z.strictObject({
    stuff: z.string().min(1).max(200),
    heap: z.enum(heapKinds),
    sprayed: z.enum(sprayedIds).optional(),
    mowings: z.number().min(0).max(1000).optional(),
    weeks: z.number().min(0).max(5200).optional(),
  }),
  output: z.strictObject({
    stuff: z.string(),
    kind: z.enum(['material', 'doubtful']),
    permit: z.enum(['allowed', 'only-hot', 'never']),
    reason: z.string(),
    verdict: z.enum(inputVerdicts),
    sprayed: z
      .strictObject({
        what: z.enum(sprayedIds),
        wait: z.strictObject({ mowings: span, weeks: span }).optional(),
        ...citationShape,
      })
      .optional(),
    disputed: z.strictObject(citationShape).optional(),
    cautions: z.array(z.enum(cautionIds as readonly [CautionId, ...CautionId[]])),
    ...citationShape,
  }),
  sources: [...inputParameters.sprayed, ...inputParameters.disputed, ...doubtfulInputs],
  cautions: cautionIds.filter(
    (id) => id === 'local-rules' || [...allMaterials, ...doubtfulInputs].some(({ cautions }) => cautions.includes(id)),
  ),
  example: { stuff: 'grass-clippings', heap: 'slow', sprayed: 'weed-killer', weeks: 2 },
  run,
};
