import fc from 'fast-check';
import { pailCover } from '../../pail/index.ts';
import { amountTimes, timesMore } from './amounts.ts';
import { expectNoLess, type LawsOf, law } from './law.ts';

const pails = fc.double({ min: 0.5, max: 6, noNaN: true }).map((count) => ({
  pail: [{ material: 'kitchen-scraps', amount: { measure: 'pail', count } }],
  dry: [{ material: 'straw' }, { material: 'autumn-leaves' }],
}));

export const pailLaws: Readonly<Record<string, LawsOf>> = {
  'pail-cover': {
    scale: law(pailCover, {
      says: 'so many times the pail wants so many times as much of each dry stuff (dry stuff in plenty, nothing known of the bin)',
      cases: fc.tuple(pails, timesMore),
      inputs: ([input, by]) => [
        input,
        { ...input, pail: input.pail.map((one) => ({ ...one, amount: amountTimes(one.amount, by) })) },
      ],
      expects: ([once, more], [, by]) => {
        once?.options.forEach(({ better }, i) => {
          const after = more?.options[i]?.better.wet_kg.p50 ?? Number.NaN;
          expectNoLess(after, by * better.wet_kg.p50, 'dry stuff');
          expectNoLess(by * better.wet_kg.p50, after, 'dry stuff');
        });
      },
    }),
    others: [
      law(pailCover, {
        says: 'a wetter pail of the same dry matter never wants less dry stuff',
        cases: fc.tuple(fc.double({ min: 40, max: 85, noNaN: true }), fc.double({ min: 0, max: 8, noNaN: true })),
        inputs: ([moisture_pctWet, more]) =>
          [moisture_pctWet, moisture_pctWet + more].map((wet) => ({
            pail: [
              {
                material: 'kitchen-scraps',
                // The same dry matter, with more water in it.
                amount: { mass_kg: 5 / (1 - wet / 100) },
                described: { moisture_pctWet: wet },
              },
            ],
            dry: [{ material: 'straw' }],
          })),
        expects: ([drier, wetter]) => {
          drier?.options.forEach(({ better }, i) => {
            expectNoLess(wetter?.options[i]?.better.wet_kg.p50 ?? Number.NaN, better.wet_kg.p50, 'dry stuff');
          });
        },
      }),
    ],
  },
};
