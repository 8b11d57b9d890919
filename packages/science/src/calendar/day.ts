import { Temporal } from 'temporal-polyfill';
import { z } from 'zod';

/** A day of the calendar in the garden, `2026-03-01`. */
export type Day = string;

const FIRST = '1900-01-01';
const LAST = '2199-12-31';

/** A real day from 1900 to 2199, as ISO 8601 writes it. */
export const daySchema: z.ZodType<Day> = z.iso
  .date()
  .refine((day) => day >= FIRST && day <= LAST, { params: { wanted: `a day from ${FIRST} to ${LAST}` } });

/** The day so many days later; earlier where the number is below zero. */
export function daysAfter(day: Day, days: number): Day {
  return Temporal.PlainDate.from(day).add({ days }).toString();
}

/** Whole days from one day to another; below zero where the second is earlier. */
export function daysBetween(from: Day, to: Day): number {
  return Temporal.PlainDate.from(from).until(to).days;
}
