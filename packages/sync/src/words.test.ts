import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { createSpeaker, isMessageKey } from '@loamwright/words';
import { expect, test } from 'vitest';

/** Every code that the sources give out, read from them: a new one can't be forgotten here. */
function codesInSources(): readonly string[] {
  const folder = fileURLToPath(new URL('.', import.meta.url));
  const files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter(
    (file) => file.endsWith('.ts') && !file.endsWith('.test.ts') && !file.includes('testing'),
  );
  const found = files.flatMap((file) => [
    ...readFileSync(join(folder, file), 'utf8').matchAll(/'((?:exchange|bundle)-[a-z-]+)'/gu),
  ]);
  return [...new Set(found.map(([, code = '']) => code))].sort();
}

const speaker = createSpeaker({ locale: 'en', system: 'metric' });

test('every problem has its words', () => {
  const codes = codesInSources();
  expect(codes.length).toBeGreaterThan(18);
  for (const code of codes) {
    const key = `problem.${code}`;
    if (!isMessageKey(key)) throw new Error(`${code} has no message`);
    const said = speaker.say(key, { path: 'line 7', found: 'what stood there', wanted: 'what would do' });
    expect(said).toMatch(/^[A-Z].*\.$/u);
    expect(said).not.toMatch(/[{}]/u);
  }
});
