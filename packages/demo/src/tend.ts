import type { Squeeze } from '@loamwright/daybook';
import { positive, withSpread } from '@loamwright/science';
import { convert } from '@loamwright/units';
import type { Garden, LivingHeap } from './garden.ts';

/** Days after building, and after a turn, on which the probe goes in. */
const readAt = new Set([
  1, 2, 3, 4, 6, 8, 10, 13, 16, 20, 24, 28, 33, 38, 45, 52, 60, 70, 80, 95, 110, 130, 150, 175, 200,
]);
const readAfterTurn = new Set([1, 2, 4]);

const TURN_AT_DEGC = convert(160, 'degF', 'degC');
const TURN_FALL_K = 6;
const TURN_EVERY_DAYS = 8;
const LAST_TURN_AGE_DAYS = 45;
const MOST_TURNS = 6;
const CURING_FROM_DAYS = 60;

/** The core of an invented heap, °C: rising within two days, falling over weeks, dented and freshened by each turn. */
function core_degC(heap: LivingHeap, garden: Garden): number {
  const age = garden.day.number - heap.builtOn;
  const sinceTurn = garden.day.number - heap.lastTurnOn;
  const strength_K = 70 * Math.exp(-age / 60) * (1 - 0.011 * garden.air_degC);
  const kindled = 1 - 0.75 * Math.exp(-age / 1.1);
  const turned = heap.turns === 0 ? 1 : 1 - 0.35 * Math.exp(-sinceTurn / 0.9);
  const spent = Math.exp(-Math.max(0, sinceTurn - 4) / 28);
  return garden.air_degC + strength_K * kindled * turned * spent + 0.8 * garden.random.normal();
}

/** Reads, and turns and waters where the reading calls for it. */
export function tend(garden: Garden, heap: LivingHeap): void {
  if (heap.state === 'gone') return;
  const age = garden.day.number - heap.builtOn;
  const sinceTurn = garden.day.number - heap.lastTurnOn;
  heap.thirst += garden.random.between(0, 0.14);
  if (age >= CURING_FROM_DAYS) heap.state = 'curing';
  if (age === 0 || !(readAt.has(age) || (heap.turns > 0 && readAfterTurn.has(sinceTurn)))) return;
  const core = core_degC(heap, garden);
  read(garden, heap, core, 'core', 0.5);
  if (age % 5 === 0 && age < CURING_FROM_DAYS) read(garden, heap, core - garden.random.between(12, 24), 'edge', 0.15);
  heap.peak_degC = Math.max(heap.peak_degC, core);
  const falls = heap.peak_degC - core >= TURN_FALL_K || sinceTurn >= TURN_EVERY_DAYS;
  const wants = core >= TURN_AT_DEGC || (sinceTurn >= 3 && falls && age <= LAST_TURN_AGE_DAYS);
  if (wants && age >= 3 && heap.turns < MOST_TURNS) turn(garden, heap);
}

/** Key of the reading that is typed wrongly and corrected the same evening. */
const SLIP_HEAP = 'heap-2';
const SLIP_AGE_DAYS = 6;
/** Typed for 135: two digits changed about. */
const SLIP_DEGF = 315;
const MEANT_DEGF = 135;

function read(garden: Garden, heap: LivingHeap, temp_degC: number, point: 'core' | 'edge', depth_m: number): void {
  const slip = heap.id === SLIP_HEAP && garden.day.number - heap.builtOn === SLIP_AGE_DAYS && point === 'core';
  const temp_degF = slip ? MEANT_DEGF : Math.round(convert(temp_degC, 'degC', 'degF'));
  const minutes = 7 * 60 + Math.floor(garden.random.between(0, 50)) + (point === 'edge' ? 3 : 0);
  const one = { day: garden.day.number, minutes, kind: 'reading', subject: heap.id } as const;
  const body = (degF: number) => ({
    temp_degC: convert(degF, 'degF', 'degC'),
    point,
    depth_m,
    probe: 'long dial',
    ambient_degC: Math.round(garden.air_degC),
    ...(point === 'core' && { squeeze: squeezeOf(heap), smell: 'earthy' as const }),
  });
  const entered = (degF: number) => ({ '/temp_degC': { amount: degF, unit: '°F' } });
  if (!slip) {
    garden.book.put({ ...one, body: body(temp_degF), entered: entered(temp_degF) });
    return;
  }
  garden.book.put({ ...one, key: 'slip', body: body(SLIP_DEGF), entered: entered(SLIP_DEGF) });
  garden.book.put({
    ...one,
    body: body(MEANT_DEGF),
    entered: entered(MEANT_DEGF),
    amends: 'slip',
    writtenAfter_min: 11 * 60,
  });
}

function squeezeOf(heap: LivingHeap): Squeeze {
  if (heap.thirst < 0.2) return 'drops';
  return heap.thirst < 0.8 ? 'holds' : 'crumbles';
}

function turn(garden: Garden, heap: LivingHeap): void {
  const { day, random, book } = garden;
  const minutes = 16 * 60 + Math.floor(random.between(0, 60));
  book.put({
    day: day.number,
    minutes,
    precision: 'hour',
    kind: 'turned',
    subject: heap.id,
    body: { outsideIn: true },
  });
  if (squeezeOf(heap) === 'crumbles') {
    const gallons = Math.round(random.between(3, 7));
    book.put({
      day: day.number,
      minutes: minutes + 20,
      precision: 'hour',
      kind: 'watered',
      subject: heap.id,
      body: { volume_L: withSpread(convert(gallons, 'gal', 'L'), Math.log(1.2), positive), note: 'While turning.' },
      entered: { '/volume_L': { amount: gallons, unit: 'gal' } },
    });
    heap.thirst = 0.1;
  }
  heap.lastTurnOn = day.number;
  heap.turns += 1;
  heap.peak_degC = 0;
}
