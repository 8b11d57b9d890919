import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Garden, garden } from './testing/garden.ts';

const told = readFileSync(fileURLToPath(new URL('../../../docs/commands.md', import.meta.url)), 'utf8');

let home: Garden;
beforeAll(() => {
  home = garden();
});
afterAll(() => home.remove());

const optionsIn = (text: string): readonly string[] => text.match(/(?<![\w-])--[a-z][a-z0-9-]*/gu) ?? [];

/** The help of every command that does something, by its words; those that only hold others are gone into. */
async function helps(command: readonly string[] = []): Promise<readonly (readonly [string, string])[]> {
  const { out } = await home.run([...command, '--help']);
  const inside = [...(out.split('\nCommands:\n')[1] ?? '').matchAll(/^ {2}([a-z-]+)(?: |$)/gmu)].flatMap(
    ([, name = '']) => (name === 'help' ? [] : [name]),
  );
  if (inside.length === 0) return [[command.join(' '), out]];
  return (await Promise.all(inside.map((name) => helps([...command, name])))).flat();
}

describe('docs/commands.md', () => {
  it('names every command and every option, and no other', async () => {
    const found = await helps();
    expect(found.length).toBeGreaterThan(30);
    const options = new Set(found.flatMap(([, help]) => optionsIn(help.split('\nOptions:\n')[1] ?? '')));
    const words = new Set(optionsIn(told));
    expect([...options].filter((option) => !words.has(option) && option !== '--help')).toEqual([]);
    expect([...words].filter((word) => !options.has(word))).toEqual([]);
    const headings = [...told.matchAll(/^## (.+)$/gmu)].flatMap(([, heading = '']) => heading.split(/[ ,]+/u));
    expect(found.flatMap(([command]) => command.split(' ')).filter((word) => !headings.includes(word))).toEqual([]);
  });
});
