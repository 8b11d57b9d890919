/**
 * A command in a document and what it is said to print.
 * @typedef {object} Example
 * @property {string} command for a POSIX shell
 * @property {readonly string[]} expected the lines shown; `…` stands for any text, alone on a line for any lines
 * @property {number} exitCode
 * @property {number} line where the command stands in the document, from 1
 */

const fence = /^(`{3,})console(?: exit=(\d+))?\s*$/;
const prompt = '$ loamwright';

/**
 * The examples in the fenced blocks marked `console` of a document. A command goes on over lines that begin
 * with `> `; other lines that begin with `$ ` are shown to the reader and not run.
 * @param {string} markdown
 * @returns {readonly Example[]}
 */
export function examplesIn(markdown) {
  const lines = markdown.split('\n');
  /** @type {Example[]} */
  const examples = [];
  for (let at = 0; at < lines.length; at += 1) {
    const [, ticks, exit] = fence.exec(lines[at] ?? '') ?? [];
    if (ticks === undefined) continue;
    const end = lines.findIndex((line, index) => index > at && line.trimEnd() === ticks);
    const block = lines.slice(at + 1, end === -1 ? lines.length : end);
    examples.push(...examplesOf(block, at + 2, Number(exit ?? 0)));
    at += block.length + 1;
  }
  return examples;
}

/**
 * @param {readonly string[]} block
 * @param {number} firstLine
 * @param {number} exitCode of the last command in the block; those before it must end well
 * @returns {readonly Example[]}
 */
function examplesOf(block, firstLine, exitCode) {
  const starts = block.flatMap((line, index) => (line.startsWith('$ ') ? [index] : []));
  const runs = starts.filter((start) => block[start]?.startsWith(prompt));
  return runs.map((start) => {
    const next = starts.find((other) => other > start) ?? block.length;
    const body = block.slice(start + 1, next);
    const more = body.findIndex((line) => !line.startsWith('> '));
    const length = more === -1 ? body.length : more;
    const command = [block[start] ?? '', ...body.slice(0, length)].map((line) => line.slice(2)).join('\n');
    const isLast = start === runs.at(-1);
    return { command, expected: body.slice(length), exitCode: isLast ? exitCode : 0, line: firstLine + start };
  });
}

/**
 * Whether the printed lines are the expected ones. Blanks at the end of a line, and empty lines at the end, do
 * not count.
 * @param {readonly string[]} expected
 * @param {readonly string[]} printed
 * @returns {boolean}
 */
export function matches(expected, printed) {
  const pattern = trimmed(expected).map((line) =>
    line.trim() === '…' ? '(?:.*\\n)*' : `${line.split('…').map(escaped).join('.*')}\\n`,
  );
  return new RegExp(`^${pattern.join('')}$`).test(
    trimmed(printed)
      .map((line) => `${line}\n`)
      .join(''),
  );
}

/**
 * @param {readonly string[]} lines
 * @returns {readonly string[]}
 */
function trimmed(lines) {
  const ended = lines.map((line) => line.trimEnd());
  return ended.slice(0, ended.findLastIndex((line) => line !== '') + 1);
}

/**
 * @param {string} text
 * @returns {string}
 */
function escaped(text) {
  return text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
}
