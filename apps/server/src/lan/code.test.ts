import { create } from 'qrcode';
import { describe, expect, it } from 'vitest';
import { beside, codeLines } from './code.ts';

const address = 'https://192.168.100.200:4380/#key=AAAAAAAAAAAAAAAAAAAAAA';

/** Black on bright white, and back (ECMA-48, SGR; 107 is a common extension). */
const DARK_ON_LIGHT = '\u001b[30;107m';
const PLAIN = '\u001b[0m';

/** The cells of a drawn code, read back from its half blocks; the colours say which are dark. */
function cellsOf(lines: readonly string[]): readonly (readonly boolean[])[] {
  return lines.flatMap((line) => {
    const signs = [...line.replace(DARK_ON_LIGHT, '').replace(PLAIN, '')];
    return [signs.map((sign) => '█▀'.includes(sign)), signs.map((sign) => '█▄'.includes(sign))];
  });
}

describe('a code in the terminal', () => {
  it('has every cell of the code, with the quiet ground of four that ISO/IEC 18004 asks for', () => {
    const { modules } = create(address, { errorCorrectionLevel: 'L' });
    const cells = cellsOf(codeLines(address));
    const size = modules.size + 8;
    for (let y = 0; y < size; y++) {
      for (let x = 0; x < size; x++) {
        const inside = y >= 4 && x >= 4 && y < size - 4 && x < size - 4;
        const dark = inside && modules.get(y - 4, x - 4) === 1;
        expect(cells[y]?.[x]).toBe(dark);
      }
    }
  });

  it('is drawn dark on light whatever the terminal’s colours are', () => {
    for (const line of codeLines(address)) {
      expect(line.startsWith(DARK_ON_LIGHT) && line.endsWith(PLAIN)).toBe(true);
    }
  });

  it('stands beside another in 80 columns', () => {
    const width = (lines: readonly string[]): number => cellsOf(lines)[0]?.length ?? 0;
    const [trust, open] = [codeLines('https://192.168.100.200:4380/trust'), codeLines(address)];
    expect(width(trust) + 2 + width(open)).toBeLessThanOrEqual(80);
    expect(beside(trust, open, '  ', width(trust))).toHaveLength(Math.max(trust.length, open.length));
  });
});
