import type { Turned } from '@loamwright/daybook';
import { testWriter, type Writer } from '@loamwright/daybook/testing';
import { daysAfter } from '@loamwright/science';
import { convert } from '@loamwright/units';

/** A log of twenty days in °F, T where it was turned: sixteen days at heat and five turnings. Invented for checks. */
export const sixteenHotDays = '90 128 140 146 150T 142 148 151T 144 149 152T 139 145 147T 136 140 142T 133 128 118';

const BUILT = '2026-03-01';

/** The instant at noon of a day of the log, the first being 1. */
export function noonOf(day: number): string {
  return `${daysAfter(BUILT, day - 1)}T12:00:00.000Z`;
}

/** A daybook with one heap of goat bedding and straw, read and turned as a log says. */
export function hotHeap(log: string, turning: Turned = {}, carbonToNitrogen = 30): Writer {
  const writer = testWriter();
  writer.write(
    'heap-built',
    'heap',
    {
      name: 'March heap',
      layers: [
        { material: 'goat-bedding', mass_kg: 300, raw: true },
        { material: 'straw', mass_kg: 40, raw: false },
      ],
      mix: { carbonToNitrogen },
    },
    { happened: `${BUILT}T08:00:00.000Z` },
  );
  log.split(' ').forEach((text, i) => {
    const happened = noonOf(i + 1);
    writer.write('reading', 'heap', { temp_degC: convert(Number.parseInt(text, 10), 'degF', 'degC') }, { happened });
    if (text.endsWith('T')) writer.write('turned', 'heap', turning, { happened });
  });
  return writer;
}
