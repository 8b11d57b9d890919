import { describe, expect, it } from 'vitest';
import { csv } from './csv.ts';

describe('a table', () => {
  // RFC 4180, 2: lines end in CR and LF (1); quotes round commas and quotes, which are doubled (5 to 7).
  it('is written as the standard has it', () => {
    expect(
      csv(
        ['a', 'b'],
        [
          ['1', 'x, "y"'],
          ['', ' z'],
        ],
      ),
    ).toBe('a,b\r\n1,"x, ""y"""\r\n," z"\r\n');
  });

  // OWASP, CSV injection: a cell that begins with = + - @ is reckoned with by spreadsheets; an apostrophe keeps it text.
  it.each([
    ['=HYPERLINK("http://x","y")', `"'=HYPERLINK(""http://x"",""y"")"`],
    ['+1', "'+1"],
    ['-2+3', "'-2+3"],
    ['-2', '-2'],
    ['-0.5', '-0.5'],
    ['-0.5=', "'-0.5="],
    ['@SUM(A1)', "'@SUM(A1)"],
    ['＝1', "'＝1"],
    ['  =1', "'  =1"],
    ['\t=1', "' =1"],
    ['a=1', 'a=1'],
    ['12 buckets', '12 buckets'],
  ])('%j holds no formula', (text, cell) => {
    expect(csv(['x'], [[text]])).toBe(`x\r\n${cell}\r\n`);
  });

  it('a name can’t break out of its line', () => {
    expect(csv(['x', 'y'], [['one\r\n=2,3', 'four\u0000five\u2028six']])).toBe('x,y\r\n"one =2,3",four five six\r\n');
  });
});
