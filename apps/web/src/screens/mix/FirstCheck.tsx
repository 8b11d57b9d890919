import '@loamwright/words/later';
import { firstChecks } from '@loamwright/advisor';
import type { BestMeasurement, BestMeasurementInput, CheckId, MixSolution, ValuedCheck } from '@loamwright/science';
import { type ReactNode, useEffect, useMemo, useState } from 'react';
import { useSettings } from '../../device/settings.ts';
import { useBook } from '../../keep/useBook.ts';
import type { Bins } from '../../mix/draft.ts';
import { mixLaid } from '../../mix/mix-laid.ts';
import { measureFirst } from '../../mix/solver.ts';
import { to } from '../../shell/route.ts';
import { useSpeaker } from '../../shell/words.tsx';

interface Properties {
  readonly bins: Bins;
  readonly solution: MixSolution;
}

/** Which check of a minute would change the mix most, and the way to write it down. It comes when it is found. */
export default function FirstCheck({ bins, solution }: Properties): ReactNode {
  const speaker = useSpeaker();
  const { measures_L } = useSettings();
  const { holding } = useBook().leaf;
  const input = useMemo(() => mixLaid(bins, solution, measures_L, holding), [bins, solution, measures_L, holding]);
  const found = useMeasureFirst(input);
  const checks = found === null ? null : firstChecks(found, holding);
  if (checks === null) return null;
  const link = linkOf(checks.first);
  return (
    <section className="section">
      <h2>{speaker.say('measureNext.title')}</h2>
      <ul className="lines">
        {checks.said.map((said) => (
          <li key={said.key}>{speaker.tell(said)}</li>
        ))}
        {link !== null && (
          <li>
            <a href={link.href}>{speaker.say(`measureNext.open.${link.check}`)}</a>
          </li>
        )}
      </ul>
    </section>
  );
}

/** A mix that can't be weighed, or a worker that is gone, asks for nothing. */
function useMeasureFirst(input: BestMeasurementInput): BestMeasurement | null {
  const [found, setFound] = useState<BestMeasurement | null>(null);
  useEffect(() => {
    let isWanted = true;
    setFound(null);
    measureFirst(input).then(
      (outcome) => {
        if (isWanted && outcome.ok) setFound(outcome.value);
      },
      () => undefined,
    );
    return () => {
      isWanted = false;
    };
  }, [input]);
  return found;
}

type Linked = Exclude<CheckId, 'settle'>;

const pages: Readonly<Partial<Record<CheckId, string>>> = { squeeze: 'squeeze', 'weigh-bucket': 'bucket' };

/** Where a check is written down. A bucket of the mix shaken down belongs to no one material. */
function linkOf({ check, material }: ValuedCheck): { readonly check: Linked; readonly href: string } | null {
  if (check === 'settle' || material === undefined) return null;
  if (check === 'count-again') return { check, href: to('bins') };
  const page = pages[check];
  return { check, href: page === undefined ? to('material', material) : to('material', material, page) };
}
