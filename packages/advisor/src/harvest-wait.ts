import { type Heap, type Holding, localDate, type Spreading } from '@loamwright/daybook';
import { type Day, harvestInterval, type Needs, type RuleInterval } from '@loamwright/science';
import type { Saying } from '@loamwright/words';
import { dayWords } from './day-words.ts';
import { logMeetsARule } from './local-clauses.ts';
import { bedName } from './names.ts';
import { say } from './saying.ts';

/**
 * How long to wait with harvests on the beds that a heap went to raw, by the leading rule of `harvest-interval`. Nothing where nothing
 * raw went in, and where its log meets a rule.
 */
export function waitNotes(holding: Holding, heap: Heap, now: string, needs: Needs): readonly Saying[] {
  const met = logMeetsARule(heap, holding, { now, draws: needs.draws });
  if (met.ok && met.value === true) return [];
  return [...holding.beds.values()].flatMap(({ id, spreadings }) => {
    const own = spreadings.filter(
      ({ told, raw }) => raw && told.body.of.type === 'heap' && told.body.of.id === heap.id,
    );
    // The wait of the last one is over last.
    const last = own.at(-1);
    return last === undefined ? [] : waitOf(last, bedName(holding, id), needs);
  });
}

function waitOf({ told: { entry, body } }: Spreading, bed: Saying, needs: Needs): readonly Saying[] {
  const day = localDate(entry.happened, entry.zone) ?? entry.happened.slice(0, 10);
  const [touching, clear] = (['touches', 'clear'] as const).map((contact) => leading(day, contact, needs));
  if (touching?.earliest_day === undefined || clear?.earliest_day === undefined) return [];
  if (!body.workedIn) {
    const { wait_days = 0 } = touching;
    return [
      say('interval.spread-wait-on-top', {
        bed,
        day: dayWords(day),
        touching: wait_days,
        clear: clear.wait_days ?? wait_days,
      }),
    ];
  }
  return [
    say('interval.spread-wait', {
      bed,
      day: dayWords(day),
      touching: dayWords(touching.earliest_day),
      clear: dayWords(clear.earliest_day),
    }),
  ];
}

/** What the leading rule says of raw stuff that was worked in on a day. */
function leading(day: Day, contact: 'touches' | 'clear', needs: Needs): RuleInterval | undefined {
  const found = harvestInterval.run(
    { put: 'raw-manure', lay: 'worked-in', spread_day: day, workedIn_day: day, contact },
    needs,
  );
  return found.ok ? found.value.rules[0] : undefined;
}
