export { type Day, daySchema, daysAfter, daysBetween } from './day.ts';
