import table from '@loamwright/reference/beliefs.json' with { type: 'json' };
import { describe, expect, it } from 'vitest';
import { beliefsHeldEn, createSpeaker, isMessageKey } from '../index.ts';

const { say } = createSpeaker({ locale: 'en', system: 'metric' });

function told(key: string): string {
  if (!isMessageKey(key)) throw new RangeError(`no message ${key}`);
  return say(key);
}

/** Numbers in a text, units and the signs of names such as O157:H7 aside. */
function numbersIn(text: string): readonly string[] {
  return [...text.replace(/[A-Z]\d+:[A-Z]\d+/gu, '').matchAll(/\d+(?:\.\d+)?/gu)].map(([number]) => number);
}

describe('every belief has its words', () => {
  it.each(Object.entries(table))('%s', (id, { finding, evidence, sources }) => {
    const [held, says] = [beliefsHeldEn[id]?.held ?? '', told(`belief.${id}.says`)];
    expect(held).toMatch(/^[“A-Z0-9].*\.$/u);
    expect(says).toMatch(/\.$/u);
    expect(beliefsHeldEn[id]?.words).toMatch(/\w$/u);
    expect(told(`belief.finding.${finding}`)).not.toBe('');
    if (evidence === 'none') expect(says).toContain('common practice, no source');
    // A figure that is told stands beside a source, or is the belief itself.
    const places = [held, ...sources.map(({ place }) => place)]
      .join(' ')
      .replaceAll('ft3', 'ft³')
      .replaceAll('m3', 'm³');
    const cited = new Set(numbersIn(places));
    for (const number of numbersIn(says)) expect([...cited], `${id}: ${number}`).toContain(number);
    expect(told(`belief.evidence.${evidence}`)).not.toBe('');
  });
});
