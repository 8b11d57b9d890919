import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { KeepingError } from './port.ts';

const rules = readFileSync(new URL('../PORTS.md', import.meta.url), 'utf8');

describe('the rules of the ports', () => {
  it.each(['K', 'X'])('%s are numbered from 1 without gap or repetition', (letter) => {
    const numbers = [...rules.matchAll(new RegExp(`^- \\*\\*${letter}(\\d+)\\*\\* `, 'gmu'))].map(([, number]) =>
      Number(number),
    );
    expect(numbers).toEqual(numbers.map((_number, i) => i + 1));
    expect(numbers.length).toBeGreaterThan(10);
  });
});

it('a refusal of a keeping carries its code and its cause', () => {
  const cause = new Error('disk');
  const error = new KeepingError('full', 'there is no room for 3 entries', { cause });
  expect(error).toBeInstanceOf(Error);
  expect(error).toMatchObject({ name: 'KeepingError', code: 'full', message: 'there is no room for 3 entries', cause });
});
