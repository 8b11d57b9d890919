import { wrap } from './terminal.ts';

/** Paragraphs under one another, each wrapped; its later lines are set in by its indent. */
export function page(columns: number, ...paragraphs: readonly (readonly [text: string, indent?: string])[]): string {
  return paragraphs.map(([text, indent]) => wrap(text, columns, indent)).join('\n');
}
