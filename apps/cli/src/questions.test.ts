import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import sources from '@loamwright/reference/sources.json' with { type: 'json' };
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { type Built, built } from './testing/built.ts';

/**
 * A question that a grower asked, by its id, retold at Quarry Lane: the command lines that answer it, in order, on one new
 * data folder, and what must be found. A number is the likely value at a path of the answer's JSON.
 */
const questionSchema = z.strictObject({
  id: z.string(),
  retold: z.string(),
  /** What the numbers rest on, by the table of sources. */
  sources: z.array(z.string()).min(1),
  steps: z.array(
    z.strictObject({
      run: z.array(z.string()),
      /** Patterns of the text that a person reads: the decision, what to do, what it rests on. */
      says: z.array(z.string()).default([]),
      /** Within a share of a figure (30 % unless the figure is known better), or inside a range that is shown. */
      numbers: z
        .array(
          z.union([
            z.strictObject({ at: z.string(), is: z.number(), within_share: z.number().max(0.3) }),
            z.strictObject({ at: z.string(), from: z.number(), to: z.number() }),
          ]),
        )
        .default([]),
      equals: z.record(z.string(), z.union([z.string(), z.number()])).default({}),
      includes: z.record(z.string(), z.string()).default({}),
      cautions: z.array(z.string()).default([]),
      cautionsAt: z.string().default('cautions'),
      /** The same with the amounts a third less and a third more: which way each number goes. */
      third: z
        .strictObject({
          less: z.array(z.string()),
          more: z.array(z.string()),
          moves: z.record(z.string(), z.enum(['up', 'down'])),
        })
        .optional(),
    }),
  ),
});

const folder = fileURLToPath(new URL('../../../tests/questions/', import.meta.url));
const questions = readdirSync(folder)
  .filter((name) => name.endsWith('.json'))
  .sort()
  .map((name) => questionSchema.parse(JSON.parse(readFileSync(join(folder, name), 'utf8'))));

let program: Built;
beforeAll(async () => {
  program = await built();
});
afterAll(() => program.remove());

function at(answer: unknown, path: string): unknown {
  return path
    .split('.')
    .reduce<unknown>((value, key) => (value as Readonly<Record<string, unknown>> | undefined)?.[key], answer);
}

/** The likely value: a number, or the middle of an estimate. */
function likelyAt(answer: unknown, path: string): number {
  const value = at(answer, path);
  return typeof value === 'number' ? value : Number(at(value, 'p50'));
}

/** Each question starts processes of its own. */
const QUESTION_MS = 120_000;

describe.each(questions)('$id: $retold', ({ sources: named, steps }) => {
  it('is answered at the command line, and moves the right way with the amounts', {
    timeout: QUESTION_MS,
  }, async () => {
    for (const source of named) expect(Object.keys(sources)).toContain(source);
    const data = mkdtempSync(join(tmpdir(), 'loamwright-question-'));
    const run = async (args: readonly string[]): Promise<string> => {
      const { code, out, err } = await program.run([...args, '--units', 'metric'], { LOAMWRIGHT_DATA: data });
      expect(code, `${args.join(' ')}: ${err}`).toBe(0);
      return out;
    };
    const answerOf = async (args: readonly string[]): Promise<unknown> =>
      at(JSON.parse(await run([...args, '--json'])), 'value');
    for (const step of steps) {
      const text = (await run(step.run)).replace(/\s+/gu, ' ');
      for (const pattern of step.says) expect(text, step.run.join(' ')).toMatch(new RegExp(pattern, 'u'));
      // What is written down once is not written down twice.
      if (step.run[0] === 'material') continue;
      const answer = await answerOf(step.run);
      for (const number of step.numbers) {
        const found = likelyAt(answer, number.at);
        const within = 'is' in number ? number.is * number.within_share : 0;
        const [low, high] = 'is' in number ? [number.is - within, number.is + within] : [number.from, number.to];
        expect(found, number.at).toBeGreaterThanOrEqual(low);
        expect(found, number.at).toBeLessThanOrEqual(high);
      }
      for (const [path, value] of Object.entries(step.equals)) expect(at(answer, path), path).toBe(value);
      for (const [path, value] of Object.entries(step.includes)) expect(at(answer, path), path).toContain(value);
      for (const caution of step.cautions) expect(at(answer, step.cautionsAt)).toContain(caution);
      if (step.third === undefined) continue;
      const less = await answerOf(step.third.less);
      const more = await answerOf(step.third.more);
      for (const [path, way] of Object.entries(step.third.moves)) {
        const [low, high] = way === 'up' ? [less, more] : [more, less];
        expect(likelyAt(low, path), `${path} goes ${way}`).toBeLessThan(likelyAt(answer, path));
        expect(likelyAt(answer, path), `${path} goes ${way}`).toBeLessThan(likelyAt(high, path));
      }
    }
    rmSync(data, { recursive: true, force: true });
  });
});
