/** A UUIDv7 that is the same on every run: for tests, where ids must not be random. */
export function testId(number: number, series = 0): string {
  const time = number.toString(16).padStart(12, '0');
  return `${time.slice(0, 8)}-${time.slice(8)}-7000-8000-${series.toString(16).padStart(12, '0')}`;
}

/** An instant some minutes after the first of January 2026. */
export function minutesIn2026(minutes: number): string {
  return new Date(Date.UTC(2026, 0, 1) + minutes * 60_000).toISOString();
}
