import { describe, expect, test } from 'vitest';
import { holding } from '../testing/entries.ts';
import { offer, own, some, ten } from '../testing/held.ts';
import { begin, goOn, idle, receive } from './machine.ts';

describe('the machine', () => {
  test('the side that began asks; the other answers an offer with its own as well', () => {
    const began = begin(own(ten));
    expect(began.send).toEqual([offer(ten)]);
    const step = receive(idle(holding), began.send[0]);
    expect(step.after).toBe('offer');
    expect(goOn(step.state, own([]), 'offer').send.map(({ type }) => type)).toEqual(['ask', 'offer']);
    const back = receive(began.state, offer([]));
    expect(goOn(back.state, own(ten), 'offer').send).toEqual([]);
  });

  test('X9 asks once: an answer that brought nothing, or came twice, is not followed by the same ask', () => {
    const offered = receive(idle(holding), offer(ten));
    const first = goOn(offered.state, own([]), 'give');
    expect(first.send).toHaveLength(1);
    expect(goOn(first.state, own([]), 'give').send).toEqual([]);
    expect(goOn(goOn(first.state, own([]), 'give').state, own([]), 'give').send).toEqual([]);
    expect(goOn(first.state, own(some(1, 2)), 'give').send).toMatchObject([{ stretches: [{ from: 3, to: 10 }] }]);
  });

  test('its state is plain data', () => {
    const { state } = receive(idle(holding), offer(ten));
    expect(JSON.parse(JSON.stringify(state))).toEqual(state);
  });
});
