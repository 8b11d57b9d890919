import { fold } from '@loamwright/daybook';
import {
  check,
  createDraws,
  type RuleId,
  type SanitationCheck,
  type SanitationInput,
  type SanitationLog,
  sanitationCheck,
} from '@loamwright/science';
import { createSpeaker } from '@loamwright/words';
import { describe, expect, it } from 'vitest';
import { heapLog, methodOf, sanitationReport } from './index.ts';
import { hotHeap, noonOf, sixteenHotDays } from './testing/hot-heap.ts';

const us = createSpeaker({ locale: 'en', system: 'us' });
const later = noonOf(25);

function logOf(writer: ReturnType<typeof hotHeap>, now = later): SanitationLog {
  const holding = fold(writer.entries, { now });
  const heap = holding.heaps.get('heap');
  if (heap === undefined) throw new RangeError('no heap');
  return heapLog(holding, heap, now);
}

function judged(log: SanitationLog): SanitationCheck {
  const input = check(sanitationCheck.input, { log });
  const found = input.ok ? sanitationCheck.run(input.value, { draws: createDraws() }) : input;
  if (!found.ok) throw new RangeError(JSON.stringify(found.problems));
  return found.value;
}

const verdictOf = (log: SanitationLog, rule: string): string | undefined =>
  judged(log).rules.find((one) => one.rule === rule)?.verdict;

function told(log: SanitationLog): string {
  const { answer, counts, rules, notes } = sanitationReport(
    log,
    judged(log),
    null,
    log.readings[0]?.day ?? '2026-01-01',
  );
  return [answer, counts, ...rules, ...notes].map((said) => us.tell(said)).join('\n');
}

describe('a heap of the daybook as a log', () => {
  it('has no reading that was doubted when it was typed', () => {
    const writer = hotHeap(sixteenHotDays);
    const before = logOf(writer).readings.length;
    writer.write('reading', 'heap', { temp_degC: 75, point: 'core', doubted: true }, { happened: noonOf(24) });
    expect(logOf(writer).readings).toHaveLength(before);
    writer.write('reading', 'heap', { temp_degC: 75, point: 'core' }, { happened: noonOf(24) });
    expect(logOf(writer).readings).toHaveLength(before + 1);
  });

  it('has its readings by day, its turnings, its C:N and its last raw matter', () => {
    const log = logOf(hotHeap(sixteenHotDays));
    expect(log).toMatchObject({
      method: 'turned',
      animalMatter: true,
      stillFed: false,
      carbonToNitrogen: 30,
      begun_day: '2026-03-01',
      lastRaw_day: '2026-03-01',
    });
    expect(log.readings).toHaveLength(20);
    expect(log.turned).toEqual(['2026-03-05', '2026-03-08', '2026-03-11', '2026-03-14', '2026-03-17']);
  });

  it('leaves out what lies ahead of the day asked, and what no heap can be', () => {
    const writer = hotHeap(sixteenHotDays);
    writer.write('reading', 'heap', { temp_degC: 540 }, { happened: noonOf(21) });
    const log = logOf(writer, noonOf(10));
    expect(log.readings).toHaveLength(10);
    expect(log.turned).toHaveLength(2);
    expect(logOf(writer).readings).toHaveLength(20);
  });

  it('a feeding begins the count anew, and a correction counts in place of what it corrects', () => {
    const writer = hotHeap(sixteenHotDays);
    const wrong = writer.entries.find(({ kind, happened }) => kind === 'reading' && happened === noonOf(10));
    writer.write('reading', 'heap', { temp_degC: 20 }, { happened: noonOf(10), amends: wrong?.id });
    expect(logOf(writer).readings.find(({ day }) => day === '2026-03-10')?.temp_degC).toBe(20);
    writer.write(
      'heap-fed',
      'heap',
      { layers: [{ material: 'rabbit-droppings', mass_kg: 5, raw: true }] },
      { happened: noonOf(12) },
    );
    expect(logOf(writer).lastRaw_day).toBe('2026-03-12');
    expect(verdictOf(logOf(writer), 'us-organic-turned')).not.toBe('met');
  });

  it('without a turning it is unturned, and a drum is a vessel', () => {
    expect(logOf(hotHeap('150 150 150 150')).method).toBe('unturned');
    const writer = hotHeap('150');
    writer.write('bay-set-up', 'drum', { name: 'Drum', wall: 'drum' });
    writer.write('moved', 'heap', { bay: 'drum' });
    const holding = fold(writer.entries, { now: noonOf(9) });
    const heap = holding.heaps.get('heap');
    expect(heap === undefined ? undefined : methodOf(holding, heap)).toBe('in-vessel');
  });

  // 7 CFR 205.203(c)(2) with NOP 5021, which asks that all of the stuff was at heat; that a turning mixes by chance and
  // leaves part of the skin outside: common practice, no source.
  it('one turning outside in, or five, prove by themselves nothing of all the material', () => {
    const threeDays = '90 150 150T 150 120';
    const once = logOf(hotHeap(threeDays, { outsideIn: true }));
    expect(once.allMaterial).toBeUndefined();
    expect(verdictOf(once, 'us-organic-5021')).toBe('cannot-be-shown');
    expect(verdictOf({ ...once, allMaterial: true }, 'us-organic-5021')).toBe('met');
    const oftener = logOf(hotHeap(sixteenHotDays, { outsideIn: true }));
    expect(oftener.allMaterial).toBeUndefined();
    expect(oftener).toEqual(logOf(hotHeap(sixteenHotDays)));
  });

  it('edges that were read decide in place of what is said', () => {
    const writer = hotHeap('90 150 150T 150 120', { outsideIn: true });
    for (const day of [2, 3, 4])
      writer.write('reading', 'heap', { temp_degC: 40, point: 'edge' }, { happened: noonOf(day) });
    expect(verdictOf({ ...logOf(writer), allMaterial: true }, 'us-organic-5021')).toBe('not-yet');
    const hot = hotHeap('90 150 150T 150 120');
    for (const day of [2, 3, 4])
      hot.write('reading', 'heap', { temp_degC: 60, point: 'edge' }, { happened: noonOf(day) });
    expect(verdictOf(logOf(hot), 'us-organic-5021')).toBe('met');
  });
});

describe('what the rules say, in sentences', () => {
  // 7 CFR 205.203(c)(2)(iii): 15 days at 131 to 170 °F with five turnings, C:N 25 to 40.
  it('a log that meets a rule says so first, with its paragraph', () => {
    const text = told(logOf(hotHeap(sixteenHotDays)));
    expect(text).toMatch(/^This log meets: .*US organic rule \(turned heap\)/u);
    expect(text).toContain('It counts as treated by what it met');
    expect(text).toMatch(/US organic rule \(turned heap\): met\. \(.*205\.203/u);
    expect(text).toContain('US produce safety rule (turned heap): not yet: it is still to cure');
    expect(text).toContain('ask your own authority');
  });

  it('one that does not tells what is missing of the nearest, and counts as raw', () => {
    const text = told(logOf(hotHeap('90 150T 150T 150T 150 150')));
    expect(text).toMatch(/^No rule is met yet\. The nearest is /u);
    expect(text).toContain('5 of 15 days at 131 °F');
    expect(text).toContain('3 of 5 turnings');
    expect(text).toContain('counts as raw manure');
  });

  it('nothing read, nothing turned, nothing of animals: each says so', () => {
    const log = logOf(hotHeap(sixteenHotDays));
    expect(told({ ...log, readings: [] })).toMatch(/^Nothing can be shown/u);
    expect(told({ ...log, method: 'unturned' })).toMatch(/^A plain heap/u);
    const { lastRaw_day: _, ...plants } = { ...log, animalMatter: false, readings: [] };
    expect(told(plants)).toMatch(/^There is nothing of animals in it/u);
  });

  // NOP Guidance 5021 with the Compost Task Force of 2002: any shape of heap, three days at heat, all of it shown to have been there.
  it('a plain heap is told of the one rule that takes any shape, and of what that still wants', () => {
    const plain = { ...logOf(hotHeap(sixteenHotDays)), method: 'unturned' } as const;
    const text = told(plain);
    expect(text).toMatch(/^A plain heap, .*rules for turned or aired heaps do not take it/u);
    expect(text).toContain(
      'The US organic rule (its second door) takes a heap of any shape, and is not met yet: nothing shows that all of it came into the heat',
    );
    expect(text).toMatch(/These take only heaps kept in another way than this one: US organic rule \(turned heap\)/u);
    expect(told({ ...plain, allMaterial: true })).toMatch(/^This log meets: US organic rule \(its second door\)\./u);
  });

  it('of rules that were picked, the answer speaks of those alone', () => {
    const log = logOf(hotHeap('90 150T 150T 150T 150 150'));
    const of = (method: SanitationLog['method'], rule: RuleId): string => {
      const asked = check<SanitationInput>(sanitationCheck.input, { log: { ...log, method }, rules: [rule] });
      const found = asked.ok ? sanitationCheck.run(asked.value, { draws: createDraws() }) : asked;
      if (!found.ok) throw new RangeError(JSON.stringify(found.problems));
      return us.tell(sanitationReport(log, found.value, null, '2026-01-01').answer);
    };
    expect(of('turned', 'france-turned')).toMatch(/The nearest is France \(turned heap\)/u);
    expect(of('unturned', 'us-organic-turned')).toMatch(/^None of the rules asked about/u);
  });

  it('every verdict of any rule has its sentence, and no figure is missing from one', () => {
    for (const text of ['90', '150 150 150', '150T 120 150T 120', sixteenHotDays])
      expect(told(logOf(hotHeap(text)))).not.toMatch(/undefined|NaN|\{/u);
  });
});
