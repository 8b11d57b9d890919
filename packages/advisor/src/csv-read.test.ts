import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { csv } from './csv.ts';
import { readCsv } from './csv-read.ts';

const cellsOf = (text: string, delimiter: ',' | ';' | '\t' = ','): unknown => {
  const read = readCsv(text, delimiter, 'x.csv');
  return read.ok ? read.value.map(({ cells }) => cells) : read.problems;
};

describe('a table', () => {
  // The forms of RFC 4180, section 2, rules 1 to 7, with its own examples.
  it.each([
    [
      'aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n',
      [
        ['aaa', 'bbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    [
      'aaa,bbb,ccc\r\nzzz,yyy,xxx',
      [
        ['aaa', 'bbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    [
      '"aaa","bbb","ccc"\r\nzzz,yyy,xxx',
      [
        ['aaa', 'bbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    [
      '"aaa","b\r\nbb","ccc"\r\nzzz,yyy,xxx',
      [
        ['aaa', 'b\r\nbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    ['"aaa","b""bb","ccc"', [['aaa', 'b"bb', 'ccc']]],
  ])('%j is read as the standard has it', (text, rows) => {
    expect(cellsOf(text)).toEqual(rows);
  });

  it.each([
    [
      '\uFEFFa,b\n1,2',
      ',',
      [
        ['a', 'b'],
        ['1', '2'],
      ],
    ],
    [
      'a;b\r1,5;2',
      ';',
      [
        ['a', 'b'],
        ['1,5', '2'],
      ],
    ],
    [
      'a\tb\n\n\n1\t2\n\n',
      '\t',
      [
        ['a', 'b'],
        ['1', '2'],
      ],
    ],
    [',,\n , \na,,b', ',', [['a', '', 'b']]],
    ['', ',', []],
  ] as const)('%j is read as it is meant', (text, delimiter, rows) => {
    expect(cellsOf(text, delimiter)).toEqual(rows);
  });

  it('counts lines as an editor does, also within quotes', () => {
    const read = readCsv('a,b\n"x\r\ny\nz",1\n\nlast,2', ',', 'x.csv');
    expect(read.ok && read.value.map(({ line }) => line)).toEqual([1, 2, 6]);
  });

  it('says where a quote is never closed, and what is too much', () => {
    expect(cellsOf('a,b\n1,2\n3,"4\n5,6')).toMatchObject([{ code: 'csv-quote-open', path: 'x.csv:3' }]);
    expect(cellsOf(`a\n${','.repeat(300)}`)).toMatchObject([{ code: 'csv-too-wide', path: 'x.csv:2' }]);
    expect(cellsOf('1\n'.repeat(250_002))).toMatchObject([{ code: 'csv-too-long', path: 'x.csv:250001' }]);
  });

  it('reads back what is written', () => {
    const cell = fc
      .string({ maxLength: 12 })
      .filter((text) => !/\p{Cc}|[\u2028\u2029]/u.test(text) && !/^[\s\u00a0]*[=+\-@＝＋－＠]/u.test(text));
    const row = fc
      .array(cell, { minLength: 2, maxLength: 2 })
      .filter((cells) => cells.some((one) => one.trim() !== ''));
    fc.assert(
      fc.property(fc.array(row, { maxLength: 8 }), (rows) => {
        expect(cellsOf(csv(['a', 'b'], rows))).toEqual([['a', 'b'], ...rows]);
      }),
      { seed: 1 },
    );
  });

  it('ends on whatever comes, with no more rows than lines', () => {
    fc.assert(
      fc.property(fc.string({ unit: fc.constantFrom('"', ',', ';', '\n', '\r', 'a', '1'), maxLength: 60 }), (text) => {
        const read = readCsv(text, ',', 'x.csv');
        if (read.ok) expect(read.value.length).toBeLessThanOrEqual(text.split(/\r\n|\r|\n/u).length);
        else expect(read.problems[0]?.code).toBe('csv-quote-open');
      }),
      { seed: 1, numRuns: 2000 },
    );
  });
});
