import materialTable from '@loamwright/reference/materials.json' with { type: 'json' };
import measureTable from '@loamwright/reference/measures.json' with { type: 'json' };
import { describe, expect, it } from 'vitest';
import { createSpeaker, isMessageKey } from '../index.ts';

const say = createSpeaker({ locale: 'en', system: 'metric' });

describe('every material has its words', () => {
  it.each(materialTable.materials)('$id', ({ id, class: kind, chop, permit, permitReason }) => {
    for (const key of [
      `material.${id}.name`,
      `material.${id}.some`,
      `material.${id}.words`,
      `material.class.${kind}`,
      `chop.reason.${chop.reason}`,
      `permit.${permit}`,
      `permit.reason.${permitReason}`,
    ]) {
      expect(isMessageKey(key), key).toBe(true);
    }
  });

  it.each(materialTable.neverInputs)('$id', ({ id, permit, permitReason }) => {
    for (const key of [
      `doubtful.${id}.name`,
      `doubtful.${id}.words`,
      `permit.${permit}`,
      `permit.reason.${permitReason}`,
    ]) {
      expect(isMessageKey(key), key).toBe(true);
    }
  });
});

describe('every measure has its words', () => {
  it.each(measureTable.measures)('$id', ({ id }) => {
    for (const key of [`measure.${id}.name`, `measure.${id}.some`, `measure.${id}.half`, `measure.${id}.words`]) {
      expect(isMessageKey(key), key).toBe(true);
    }
  });

  it('and so has every fill and every vague amount', () => {
    const keys = [
      ...measureTable.fills.map(({ id }) => `measure.fill.${id}`),
      ...measureTable.vague.map(({ id }) => `measure.vague.${id}`),
      ...measureTable.vagueCounts.map(({ id }) => `measure.vagueCount.${id}`),
    ];
    for (const key of keys) expect(isMessageKey(key), key).toBe(true);
  });
});

describe('an amount in words', () => {
  it('puts the measure before the material', () => {
    const amount = say.say('measure.bucket-20l.some', { count: 9 });
    expect(say.say('material.straw.some', { amount })).toBe('9 buckets of straw');
    expect(say.say('measure.caddy.some', { count: 1 })).toBe('1 caddy');
  });
});
