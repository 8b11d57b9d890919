import { describe, expect, it } from 'vitest';
import { readPast } from './when.ts';

const now = new Date('2026-03-10T12:00:00.000Z');

describe('when something happened', () => {
  it.each(['2099-01-01', '2026-03-13', '2026-04-01 18:00'])('refuses %s, which lies ahead', (text) => {
    expect(readPast(text, now, 'Europe/London')).toMatchObject({ ok: false, problems: [{ code: 'when-ahead' }] });
  });

  it.each(['now', 'yesterday', '2026-03-10', '2026-03-01 18:00', '3 weeks ago'])('reads %s', (text) => {
    expect(readPast(text, now, 'Europe/London').ok).toBe(true);
  });
});
