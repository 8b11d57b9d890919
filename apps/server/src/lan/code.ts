import { create } from 'qrcode';

/** Cells of quiet ground around a code that a camera needs (ISO/IEC 18004: four). */
const QUIET = 4;

/**
 * A QR code as lines of text, two rows of cells to a line. It is drawn dark on light with the terminal's own colours
 * set aside, because many cameras do not read a light code on a dark ground.
 */
export function codeLines(text: string): readonly string[] {
  const { modules } = create(text, { errorCorrectionLevel: 'L' });
  const size = modules.size + 2 * QUIET;
  const isDark = (row: number, column: number): boolean => {
    const [y, x] = [row - QUIET, column - QUIET];
    return y >= 0 && x >= 0 && y < modules.size && x < modules.size && modules.get(y, x) === 1;
  };
  return Array.from({ length: Math.ceil(size / 2) }, (_, line) => {
    const cells = Array.from({ length: size }, (_, column) =>
      cell(isDark(2 * line, column), isDark(2 * line + 1, column)),
    );
    return `\u001b[30;107m${cells.join('')}\u001b[0m`;
  });
}

function cell(upper: boolean, lower: boolean): string {
  if (upper) return lower ? '█' : '▀';
  return lower ? '▄' : ' ';
}

/** Two blocks of lines beside one another; the left one's lines are all of one width. */
export function beside(
  left: readonly string[],
  right: readonly string[],
  gap: string,
  leftWidth: number,
): readonly string[] {
  return Array.from({ length: Math.max(left.length, right.length) }, (_, i) =>
    `${left[i] ?? ' '.repeat(leftWidth)}${gap}${right[i] ?? ''}`.trimEnd(),
  );
}
