import type { BalanceRow, Droppings, DroppingsInput, HoldingBalance, Quantity } from '@loamwright/science';
import type { Figure, Saying } from '@loamwright/words';
import { mass, say, sayOf, smallMass } from './saying.ts';

/** A year from scrap to crop, in sentences. */
export interface BalanceOfYear {
  readonly answer: Saying;
  readonly act: Saying;
  readonly finding: readonly Saying[];
  readonly heap: readonly Saying[];
  readonly beds: readonly Saying[];
  readonly notes: readonly Saying[];
}

/** The answer of `holding-balance` in sentences. */
export function balanceOfYear(found: HoldingBalance): BalanceOfYear {
  const nitrogen = rowOf(found, 'nitrogen');
  const [greatest] = found.leaks;
  const arrived = nitrogen.heaped_kg.p50 + nitrogen.straight_kg.p50;
  return {
    answer:
      greatest === undefined || arrived <= 0
        ? say('balance.answer.nothing')
        : say('balance.answer', {
            in: handy(arrived),
            leak: handy(greatest.nitrogen_kg),
            where: sayOf('balance.where', greatest.leak),
            taken: handy(nitrogen.taken_kg ?? 0),
          }),
    act: sayOf('balance.act', found.act, { saved: handy(found.workedIn_kg) }),
    finding: rowOf(found, 'dry').heaped_kg.p50 > 0 ? [leftWords(rowOf(found, 'dry'))] : [],
    heap: found.rows.map((row) =>
      say('balance.row.heap', {
        what: sayOf('balance.id', row.id),
        heaped: handy(row.heaped_kg),
        lost: handy(row.lostInHeap_kg),
        spread: handy(row.spread_kg),
        left: handy(row.left_kg),
      }),
    ),
    beds: found.rows
      .filter(({ id }) => id !== 'water' && id !== 'dry' && id !== 'carbon')
      .map((row) =>
        say('balance.row.beds', {
          what: sayOf('balance.id', row.id),
          spread: handy(row.spread_kg),
          straight: handy(row.straight_kg),
          lost: handy(row.lostAtSpreading_kg),
          taken: handy(row.taken_kg ?? 0),
          stays: handy(row.stays_kg),
        }),
      ),
    notes: [
      say('balance.note.range', {
        low: handy(nitrogen.lostInHeap_kg.p10),
        high: handy(nitrogen.lostInHeap_kg.p90),
        bedsLow: handy(nitrogen.stays_kg.p10),
        bedsHigh: handy(nitrogen.stays_kg.p90),
      }),
      say('balance.note.water'),
      say('balance.note.stays'),
    ],
  };
}

function rowOf({ rows }: HoldingBalance, id: BalanceRow['id']): BalanceRow {
  const row = rows.find((one) => one.id === id);
  if (row === undefined) throw new RangeError(`no row ${id}`);
  return row;
}

/** Whether compost is over, too much was spread, or neither can be told: the whole range lies on one side or not. */
function leftWords({ left_kg }: BalanceRow): Saying {
  if (left_kg.p10 > 0) return say('balance.left.there', { left: mass(left_kg) });
  if (left_kg.p90 < 0) return say('balance.left.none', { left: mass(-left_kg.p50) });
  return say('balance.left.even');
}

/** A kilogram and more is no small mass. */
function handy(kg: Quantity): Figure {
  const likely = typeof kg === 'number' ? kg : kg.p50;
  return Math.abs(likely) < 1 ? smallMass(kg) : mass(kg);
}

/** What animals leave behind, in sentences. */
export function droppingsReport({ animal, count, days }: DroppingsInput, found: Droppings): readonly Saying[] {
  return [
    say('droppings.answer', {
      animals: say('droppings.animals', { count, animal: sayOf('droppings.animal', animal) }),
      days,
      wet: mass(found.wet_kg),
      range: { ...mass(found.wet_kg), asRange: true },
    }),
    say('droppings.holds', {
      nitrogen: handy(found.nitrogen_kg),
      phosphorus: handy(found.phosphorus_kg),
      potassium: handy(found.potassium_kg),
    }),
    say('droppings.kept', { nitrogen: handy(found.keptNitrogen_kg) }),
  ];
}
