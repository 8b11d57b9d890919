export { type QuarryLaneOptions, quarryLane, quarryLaneDays, quarryLaneHolding } from './year.ts';
