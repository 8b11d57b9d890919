import { fold } from '@loamwright/daybook';
import { bestMeasurement, createDraws } from '@loamwright/science';
import { createSpeaker } from '@loamwright/words';
import { describe, expect, it } from 'vitest';
import { measureNextWords } from './measure-next-report.ts';

const speaker = createSpeaker({ locale: 'en', system: 'metric' });
const empty = fold([]);

describe('what to measure first, in words', () => {
  it('names the check, what it is of, and what it does for the chance', () => {
    const ingredients = [
      { material: 'straw', amount: { measure: 'barrow', count: 4 } },
      { material: 'grass-clippings', amount: { measure: 'bucket-20l', count: 8 } },
    ];
    const found = bestMeasurement.run({ ingredients }, { draws: createDraws() });
    if (!found.ok) throw new Error(JSON.stringify(found.problems));
    const [first, more] = measureNextWords(found.value, empty).map((said) => speaker.tell(said));
    const { now_share, then_share } = found.value.ask[0]?.inBands ?? { now_share: 0, then_share: 0 };
    expect(first).toContain('weigh a bucket of straw');
    expect(first).toContain(`about ${Math.round(100 * then_share)} times in a hundred`);
    expect(first).toContain(`without it ${Math.round(100 * now_share)}.`);
    expect(more).toContain('Next best: weigh a bucket of grass clippings');
  });

  it('says nothing where nothing is worth a minute', () => {
    const asItStands = { water_L: 0, dry_times: 1, loss_softEdges: 0 };
    expect(measureNextWords({ ask: [], others: [], asItStands, perfect_softEdges: 0 }, empty)).toEqual([]);
  });
});
