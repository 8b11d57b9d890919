import { bad, good, type Outcome } from '@loamwright/science';

/** Text as JSON. Problem: `not-json-text`, with the place of the fault as the parser tells it. */
export function parseJson(text: string, path: string): Outcome<unknown> {
  try {
    return good(JSON.parse(text));
  } catch (error) {
    const found = error instanceof Error ? error.message.slice(0, 120) : '';
    return bad({ code: 'not-json-text', path, found, wanted: '' });
  }
}
