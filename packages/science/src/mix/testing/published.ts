import { expect } from 'vitest';

/** The published figure, within the tolerance that stands beside it in `reference/mix-examples.json`. */
export function expectPublished<Expected extends Record<string, number>>(
  example: { readonly expected: Expected; readonly tolerance: Readonly<Partial<Record<keyof Expected, number>>> },
  name: keyof Expected & string,
  found: number | undefined,
): void {
  const wanted = example.expected[name] ?? Number.NaN;
  const within = example.tolerance[name] ?? Number.NaN;
  expect(Math.abs((found ?? Number.NaN) - wanted), `${name}: ${found} for ${wanted}`).toBeLessThanOrEqual(within);
}
