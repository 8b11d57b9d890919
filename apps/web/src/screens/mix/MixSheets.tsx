import type { MixReport } from '@loamwright/advisor';
import type { MixSolution } from '@loamwright/science';
import { convert } from '@loamwright/units';
import { type ReactNode, useState } from 'react';
import { type Bins, putMostWater } from '../../mix/draft.ts';
import { QuantityField } from '../../parts/QuantityField.tsx';
import { QuantitySheet } from '../../parts/QuantitySheet.tsx';
import { closeSheet, useRoute } from '../../shell/route.ts';
import { useSpeaker } from '../../shell/words.tsx';
import { JudgedSheet } from './JudgedSheet.tsx';
import { StuffSheet } from './StuffSheet.tsx';

interface Properties {
  readonly bins: Bins;
  readonly solution: MixSolution;
  readonly report: MixReport;
}

/** What lies behind each quantity of the mix. */
export function MixSheets({ bins, solution, report }: Properties): ReactNode {
  const { sheet } = useRoute();
  if (sheet === 'water') return <WaterSheet bins={bins} report={report} />;
  const [, kind, name = ''] = /^(stuff|judged):(.+)$/u.exec(sheet ?? '') ?? [];
  if (kind === 'judged') {
    const judged = report.judged.find(({ quantity }) => quantity === name);
    return judged === undefined ? null : <JudgedSheet words={judged} />;
  }
  if (kind !== 'stuff') return null;
  const used = [...report.use, ...report.unused].find(({ stock }) => stock === Number(name));
  const item = bins.items[Number(name)];
  if (used === undefined || item === undefined) return null;
  const balanced = solution.balance?.ingredients.find(({ material }) => material === used.material);
  return <StuffSheet key={name} item={item} used={used} balanced={balanced} />;
}

/** Why so much water, and what to say where water is short. */
function WaterSheet({ bins, report }: Pick<Properties, 'bins' | 'report'>): ReactNode {
  const speaker = useSpeaker();
  const [most_m3, setMost] = useState<number | null>(
    bins.mostWater_L === null ? null : convert(bins.mostWater_L, 'L', 'm3'),
  );
  const moisture = report.judged.find(({ quantity }) => quantity === 'moisture_pctWet');
  return (
    <QuantitySheet title={speaker.likely(report.water_L, 'L', 'liquid')}>
      <p>{speaker.say('app.mix.waterWhy')}</p>
      {moisture !== undefined && <p>{speaker.tell(moisture.said)}</p>}
      <QuantityField
        label={speaker.say('app.mix.waterThere')}
        hint={speaker.say('app.mix.waterHint')}
        shownAs="liquid"
        value={most_m3}
        onChange={setMost}
      />
      <button
        type="button"
        className="plain-act strong"
        onClick={() => {
          putMostWater(most_m3 === null ? null : convert(most_m3, 'm3', 'L'));
          closeSheet();
        }}
      >
        {speaker.say('app.mix.workAgain')}
      </button>
    </QuantitySheet>
  );
}
