import { describe, expect, it } from 'vitest';
import { examplesIn, matches } from './docs-examples.mjs';

describe('the examples of a document', () => {
  it('are the loamwright commands of its console blocks, each with the lines below it', () => {
    const markdown = [
      '# Straw',
      '```console',
      '$ loamwright reckon --list',
      'mix-balance',
      'water-to-add',
      '$ loamwright heap',
      '```',
      '```sh',
      '$ loamwright never',
      '```',
    ].join('\n');
    expect(examplesIn(markdown)).toEqual([
      { command: 'loamwright reckon --list', expected: ['mix-balance', 'water-to-add'], exitCode: 0, line: 3 },
      { command: 'loamwright heap', expected: [], exitCode: 0, line: 6 },
    ]);
  });

  it('leave out what else a reader types', () => {
    expect(examplesIn('```console\n$ npm start\nhttp://localhost\n$ loamwright heap\nnone\n```\n')).toEqual([
      { command: 'loamwright heap', expected: ['none'], exitCode: 0, line: 4 },
    ]);
  });

  it('may go on over several lines', () => {
    const markdown = "```console\n$ loamwright reckon x <<'END'\n> {}\n> END\nanswer\n```";
    expect(examplesIn(markdown)).toEqual([
      { command: "loamwright reckon x <<'END'\n{}\nEND", expected: ['answer'], exitCode: 0, line: 2 },
    ]);
  });

  it('may say how the last command of a block ends', () => {
    const examples = examplesIn('```console exit=2\n$ loamwright heap\n$ loamwright nonsense\nno\n```');
    expect(examples.map(({ exitCode }) => exitCode)).toEqual([0, 2]);
  });

  it('are found in longer fences, and in a block that nobody closed', () => {
    expect(examplesIn('````console\n$ loamwright a\n```\n````\n```console\n$ loamwright b')).toEqual([
      { command: 'loamwright a', expected: ['```'], exitCode: 0, line: 2 },
      { command: 'loamwright b', expected: [], exitCode: 0, line: 6 },
    ]);
  });
});

describe('printed lines', () => {
  it('match when they are the same, blanks at the ends aside', () => {
    expect(matches(['a', '', 'b'], ['a  ', '', 'b', '', ''])).toBe(true);
    expect(matches([], [''])).toBe(true);
  });

  it('do not match when a line is another, missing, or one too many', () => {
    expect(matches(['a', 'b'], ['a', 'c'])).toBe(false);
    expect(matches(['a', 'b'], ['a'])).toBe(false);
    expect(matches(['a'], ['a', 'b'])).toBe(false);
    expect(matches([], ['a'])).toBe(false);
  });

  it('match any lines where … stands alone, none included', () => {
    expect(matches(['a', '…', 'z'], ['a', 'b', 'c', 'z'])).toBe(true);
    expect(matches(['a', '…', 'z'], ['a', 'z'])).toBe(true);
    expect(matches(['a', '…', 'z'], ['a', 'b'])).toBe(false);
  });

  it('match any text within a line where … stands in it', () => {
    expect(matches(['heap … built'], ['heap 0199-ab built'])).toBe(true);
    expect(matches(['heap … built'], ['heap x', ' built'])).toBe(false);
  });

  it('take signs of a pattern as they stand', () => {
    expect(matches(['20–30 (C:N) a.b*'], ['20–30 (C:N) a.b*'])).toBe(true);
    expect(matches(['a.b'], ['axb'])).toBe(false);
  });
});
