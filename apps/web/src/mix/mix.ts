import { stuffed } from '@loamwright/advisor';
import type { Holding } from '@loamwright/daybook';
import {
  type Aim,
  type Alternative,
  type BuildCard,
  type BuildCardInput,
  buildCard,
  type CardLine,
  type MixSolution,
  type MixSolveInput,
  type Outcome,
  type Season,
  type StockLine,
  withAim,
} from '@loamwright/science';
import { use, useEffect, useState } from 'react';
import type { OwnMeasures } from '../device/settings.ts';
import type { BinItem, Bins } from './draft.ts';
import { needs } from './needs.ts';
import { solveMix } from './solver.ts';

/** A mix worked out, or why it could not be. */
export type Worked =
  | { readonly is: 'worked'; readonly solution: MixSolution }
  | { readonly is: 'refused'; readonly problems: Extract<Outcome<never>, { readonly ok: false }>['problems'] }
  | { readonly is: 'no-solver'; readonly why: string };

const worked = new Map<string, Promise<Worked>>();
/** Those that are there already: to choose among them the page need not wait, and keeps its place. */
const done = new Map<string, Worked>();

/** The question to the solver that what was said at the bins comes to. */
export function solveInput(bins: Bins, ownSizes: OwnMeasures, holding: Holding): MixSolveInput {
  const { width_m, depth_m, height_m } = bins.bay;
  return {
    stock: bins.items.map((item) => stockLine(item, holding)),
    bay: { width_m, depth_m, height_m },
    step: 'half',
    ownSizes,
    season: seasonNow(),
    ...(bins.mostWater_L === null ? {} : { mostWater_L: bins.mostWater_L }),
  };
}

/** The month on this device. Where on earth it is nobody has said: north of the equator, as the answer tells. */
function seasonNow(): Season {
  return { month: new Date().getMonth() + 1, hemisphere: 'north' };
}

function stockLine({ material, amount, wish }: BinItem, holding: Holding): StockLine {
  const line = { ...stuffed(material, [], holding), amount };
  if (wish === undefined) return line;
  return 'all' in wish ? { ...line, useAll: true } : { ...line, atLeast: wish.exactly, atMost: wish.exactly };
}

/**
 * The mix to lay, worked out once as long as the question stays the same. The page waits for it: for the first answer
 * alone, unless another was chosen.
 */
export function useMix(input: MixSolveInput, aim: Aim | null): Worked {
  const alone = { ...input, alternatives: false };
  const known = done.get(JSON.stringify(input)) ?? (aim === null ? done.get(JSON.stringify(alone)) : undefined);
  const found = known ?? use(workOnce(aim === null ? alone : input));
  if (found.is !== 'worked' || aim === null) return found;
  return { is: 'worked', solution: withAim(found.solution, aim) ?? found.solution };
}

/** The other answers to a question, sought beside the page once the first is there; none until they are found. */
export function useOthers(input: MixSolveInput): readonly Alternative[] {
  const [others, setOthers] = useState<readonly Alternative[]>([]);
  useEffect(() => {
    let isWanted = true;
    setOthers([]);
    void workOnce(input).then((found) => {
      if (isWanted && found.is === 'worked') setOthers(found.solution.alternatives);
    });
    return () => {
      isWanted = false;
    };
  }, [input]);
  return others;
}

function workOnce(input: MixSolveInput): Promise<Worked> {
  const key = JSON.stringify(input);
  const known = worked.get(key);
  if (known !== undefined) return known;
  const working = work(input);
  worked.set(key, working);
  void working.then((found) => done.set(key, found));
  return working;
}

/** Forgets the mixes that could not be worked out, so that they are tried again. */
export function tryAgain(): void {
  worked.clear();
  done.clear();
}

async function work(input: MixSolveInput): Promise<Worked> {
  try {
    const outcome = await solveMix(input);
    return outcome.ok ? { is: 'worked', solution: outcome.value } : { is: 'refused', problems: outcome.problems };
  } catch (error) {
    return { is: 'no-solver', why: error instanceof Error ? error.message : String(error) };
  }
}

/** A worked mix as the lines of a build card. */
export function cardInput(solution: MixSolution, bins: Bins, ownSizes: OwnMeasures, holding: Holding): BuildCardInput {
  const { width_m, depth_m, height_m } = bins.bay;
  const used = solution.use.flatMap(({ stock, measure, count, fill, packed }): readonly CardLine[] => {
    const item = bins.items[stock];
    if (item === undefined || count <= 0) return [];
    return [{ ...stuffed(item.material, [], holding), measure, count, fill, packed }];
  });
  const fetched = solution.fetch.map(
    ({ material, measure, count, fill, packed }): CardLine => ({ material, measure, count, fill, packed }),
  );
  return {
    mix: [...used, ...fetched],
    water_L: solution.water_L,
    bay: { width_m, depth_m, height_m },
    ownSizes,
  };
}

export function workOutCard(input: BuildCardInput): Outcome<BuildCard> {
  return buildCard.run(input, needs);
}
