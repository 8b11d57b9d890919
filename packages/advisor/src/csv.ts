/** What a program that opens the table would take for a formula: also behind blanks, and in the wide forms of Asian scripts. */
const formula = /^[\s\u00a0]*[=+\-@＝＋－＠]/u;

/** A number below zero is no formula, and is to stay a number. */
const number = /^-?\d+(?:\.\d+)?$/u;

/** One cell. Text that a spreadsheet would reckon with is marked as text by an apostrophe; control marks become blanks. */
function cell(text: string): string {
  if (number.test(text)) return text;
  const plain = text.replace(/[\p{Cc}\u2028\u2029]+/gu, ' ');
  const safe = formula.test(plain) ? `'${plain}` : plain;
  return /[",]|^\s|\s$/u.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

/** A table as RFC 4180 has it: a header, lines that end in CR and LF, quotes doubled. */
export function csv(header: readonly string[], rows: readonly (readonly string[])[]): string {
  return [header, ...rows].map((row) => `${row.map(cell).join(',')}\r\n`).join('');
}
