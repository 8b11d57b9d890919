import type { Ask, Give } from '@loamwright/daybook';
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chain, holding, must, otherVersion } from '../testing/entries.ts';
import { device, offer, ten } from '../testing/held.ts';
import { maxItems } from './limits.ts';
import { idle, receive } from './machine.ts';
import { readMessage } from './read-message.ts';

describe('reading a message', () => {
  const good = offer([
    ...ten,
    otherVersion(must(ten[3]), { text: 'other' }),
    ...chain(2, { first: 50, device: 'shed' }),
  ]);
  const hash = 'a'.repeat(64);
  const run = (from: number, to: number) => ({ from, to, sum: hash });
  const heldWith = (over: object) => ({ ...good, held: [{ device: 'a', runs: [], sides: [], ...over }] });

  test('X1 an offer, an ask and a give come back as they were sent', () => {
    const ask: Ask = { type: 'ask', v: 1, holding, stretches: [{ device, from: 1, to: 9 }], attachments: [hash] };
    const give: Give = { type: 'give', v: 1, holding, entries: ten, attachments: [], last: true };
    for (const message of [good, ask, give]) {
      expect(readMessage(JSON.parse(JSON.stringify(message)), holding)).toEqual({ ok: true, value: message });
    }
  });

  test.each([
    ['null', null, 'exchange-no-message', ''],
    ['a list', [good], 'exchange-no-message', ''],
    ['text', 'offer', 'exchange-no-message', ''],
    ['nothing in it', {}, 'exchange-no-message', 'type'],
    ['an unknown type', { ...good, type: 'wish' }, 'exchange-no-message', 'type'],
    ['a newer version', { ...good, v: 2 }, 'exchange-newer', 'v'],
    ['no version', { ...good, v: '1' }, 'exchange-no-message', 'v'],
    ['X2 another holding', { ...good, holding: 'mill-farm' }, 'exchange-other-holding', 'holding'],
    ['a holding that is no name', { ...good, holding: '../mill' }, 'exchange-no-message', 'holding'],
    ['no list', { ...good, held: { length: 3 } }, 'exchange-no-message', 'held'],
    ['a device twice', { ...good, held: [good.held[0], good.held[0]] }, 'exchange-no-message', 'held[1].device'],
    ['X14 runs that overlap', heldWith({ runs: [run(1, 9), run(9, 12)] }), 'exchange-no-message', 'held[0].runs[1]'],
    ['X14 a run backwards', heldWith({ runs: [run(9, 1)] }), 'exchange-no-message', 'held[0].runs[0]'],
    [
      'X14 a number beyond 2^53 − 1',
      heldWith({ runs: [run(1, 2 ** 53)] }),
      'exchange-no-message',
      'held[0].runs[0].to',
    ],
    ['n = 0', heldWith({ runs: [run(0, 2)] }), 'exchange-no-message', 'held[0].runs[0].from'],
    [
      'half a number',
      heldWith({ sides: [{ n: 1.5, id: must(ten[0]).id, sum: hash }] }),
      'exchange-no-message',
      'held[0].sides[0].n',
    ],
    [
      'a sum that is none',
      heldWith({ runs: [{ from: 1, to: 2, sum: 'A'.repeat(64) }] }),
      'exchange-no-message',
      'held[0].runs[0].sum',
    ],
    [
      'a conflict of nothing',
      { ...good, conflicts: [{ id: 'x', sums: [] }] },
      'exchange-no-message',
      'conflicts[0].id',
    ],
    ['X14 too many items', { ...good, held: Array.from({ length: maxItems + 1 }) }, 'exchange-too-many', 'held'],
    [
      'a stretch backwards',
      { type: 'ask', v: 1, holding, stretches: [{ device, from: 3, to: 2 }], attachments: [] },
      'exchange-no-message',
      'stretches[0]',
    ],
    [
      'a path as a hash',
      { type: 'ask', v: 1, holding, stretches: [], attachments: ['../../etc/passwd'] },
      'exchange-no-message',
      'attachments[0]',
    ],
    [
      'X14 too many in all',
      {
        type: 'ask',
        v: 1,
        holding,
        stretches: Array.from({ length: 60_000 }, () => ({ device, from: 1, to: 1 })),
        attachments: Array.from({ length: 60_000 }, () => hash),
      },
      'exchange-too-many',
      'attachments',
    ],
    [
      'a give without its mark',
      { type: 'give', v: 1, holding, entries: [], attachments: [] },
      'exchange-no-message',
      'last',
    ],
  ])('%s', (_, message, code, path) => {
    const read = readMessage(message, holding);
    expect(read).toMatchObject({ ok: false, problems: [{ code, path }] });
    expect(JSON.stringify(read).length).toBeLessThan(400);
    // The machine keeps nothing of it and says nothing.
    const state = idle(holding);
    expect(receive(state, message)).toMatchObject({
      state,
      keep: { entries: [], attachments: [] },
      answer: null,
      after: null,
    });
  });

  test('whatever comes, it never throws', () => {
    const key = fc.constantFrom(
      'type',
      'v',
      'holding',
      'held',
      'conflicts',
      'stretches',
      'attachments',
      'entries',
      'last',
      'device',
      'runs',
      'sides',
      'from',
      'to',
      'sum',
      'n',
      'id',
    );
    const value = fc.oneof(
      fc.constantFrom<unknown>('offer', 'ask', 'give', holding, 1, device, hash, true),
      fc.jsonValue(),
    );
    const message = fc.dictionary(key, fc.oneof(value, fc.array(fc.dictionary(key, value))));
    void fc.assert(
      fc.property(fc.oneof(message, fc.anything()), (input) => {
        expect(typeof readMessage(input, holding).ok).toBe('boolean');
        const whole = typeof input === 'object' && input !== null ? { ...input, v: 1, holding } : input;
        receive(idle(holding), whole);
      }),
      { numRuns: 2000, seed: 11 },
    );
  });
});
