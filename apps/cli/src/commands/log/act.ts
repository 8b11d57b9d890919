import type { Cover, Entered, Holding, Liquid } from '@loamwright/daybook';
import { bad, good, isEstimate, measureById, type Outcome, type Quantity } from '@loamwright/science';
import { unitTable } from '@loamwright/units';
import type { Jotting } from '../../book.ts';
import { readAmount } from '../../grammar/amount.ts';
import { readMeasurement } from '../../grammar/measurement.ts';
import type { Names } from '../../grammar/names.ts';
import type { WhenRead } from '../../grammar/when.ts';
import type { Session } from '../../session.ts';
import { subjectNamed } from '../../subject.ts';
import type { LogOptions } from './options.ts';

/** What was done to a heap, without the words for it. */
export interface ActAsked {
  readonly heap: string;
  /** The words after it. */
  readonly rest: readonly string[];
  readonly options: LogOptions;
  readonly when: WhenRead;
  readonly holding: Holding;
  readonly names: Names;
  readonly session: Session;
}

type Acts = Readonly<Record<string, (asked: ActAsked) => Outcome<Jotting>>>;

/** Everything that can be done to a heap with `log HEAP …`, by its word. */
export const acts: Acts = { turned, watered, covered, uncovered, moved, finished, note };

function jotting<Id extends Jotting['kind']>(
  asked: ActAsked,
  kind: Id,
  body: Jotting<Id>['body'],
  entered?: Jotting['entered'],
): Jotting<Id> {
  return { kind, body, about: [{ type: 'heap', id: asked.heap }], when: asked.when, entered };
}

function withNote({ options }: ActAsked): { readonly note?: string } {
  return options.note === undefined ? {} : { note: options.note };
}

function turned(asked: ActAsked): Outcome<Jotting> {
  const bay = bayInto(asked, asked.options.into);
  if (!bay.ok) return bay;
  return good(jotting(asked, 'turned', { ...(bay.value && { bay: bay.value }), ...withNote(asked) }));
}

function bayInto({ holding }: ActAsked, typed: string | undefined): Outcome<string | undefined> {
  return typed === undefined ? good(undefined) : subjectNamed(holding, 'bay', typed);
}

function moved(asked: ActAsked): Outcome<Jotting> {
  const typed = asked.options.into ?? asked.rest.join(' ');
  if (typed === '') return bad({ code: 'bay-missing', path: 'moved', found: '', wanted: '' });
  const bay = subjectNamed(asked.holding, 'bay', typed);
  return bay.ok ? good(jotting(asked, 'moved', { bay: bay.value, ...withNote(asked) })) : bay;
}

const liquids: readonly Liquid[] = ['water', 'leachate', 'urine', 'slurry', 'other'];

function watered(asked: ActAsked): Outcome<Jotting> {
  const text = asked.rest.join(' ');
  const volume = readVolume(text, asked);
  if (!volume.ok) return volume;
  const typed = asked.options.liquid ?? 'water';
  const liquid = liquids.find((known) => known === typed);
  if (liquid === undefined)
    return bad({ code: 'not-one-of', path: '--liquid', found: typed, wanted: liquids.join(', ') });
  const body = { volume_L: volume.value.volume_L, ...(liquid !== 'water' && { liquid }), ...withNote(asked) };
  return good(jotting(asked, 'watered', body, { '/volume_L': volume.value.entered }));
}

const LITRES_PER_M3 = 1000;

/** Water by the litre or gallon, or in buckets and cans. */
function readVolume(
  text: string,
  { names, session }: ActAsked,
): Outcome<{ readonly volume_L: Quantity; readonly entered: Entered }> {
  const measured = readMeasurement(text, 'liquid', 'watered', session.speaker.system);
  if (measured.ok) {
    const { si, value, unit } = measured.value;
    return good({ volume_L: si * LITRES_PER_M3, entered: { amount: value, unit: unitTable[unit].symbol } });
  }
  const read = readAmount(text, 'watered', names);
  if (!read.ok) return text === '' ? measured : read;
  const { amount, entered } = read.value;
  if ('measure' in amount && typeof amount.count === 'number' && amount.fill === undefined) {
    const each = session.settings.measures_L?.[amount.measure] ?? measureById(amount.measure)?.volume_L;
    if (each !== undefined) return good({ volume_L: times(each, amount.count), entered });
  }
  return bad({
    code: 'measurement-unreadable',
    path: 'watered',
    found: text.slice(0, 40),
    wanted: '20 L, 5 gal, 2 buckets',
  });
}

function times(quantity: Quantity, count: number): Quantity {
  if (!isEstimate(quantity)) return quantity * count;
  return { p10: quantity.p10 * count, p50: quantity.p50 * count, p90: quantity.p90 * count };
}

const covers: readonly Cover[] = ['none', 'sheet', 'lid', 'straw', 'leaves', 'soil', 'compost', 'other'];

/** `covered`, `covered straw`, `covered with straw`. */
function covered(asked: ActAsked): Outcome<Jotting> {
  const [first = 'other', second] = asked.rest;
  const typed = first === 'with' ? (second ?? '') : first;
  const cover = covers.find((known) => known === typed.toLowerCase());
  if (cover === undefined)
    return bad({ code: 'not-one-of', path: 'covered', found: typed.slice(0, 40), wanted: covers.join(', ') });
  const { thickness } = asked.options;
  if (thickness === undefined) return good(jotting(asked, 'covered', { cover, ...withNote(asked) }));
  const read = readMeasurement(thickness, 'depth', '--thickness', asked.session.speaker.system);
  if (!read.ok) return read;
  const { si, value, unit } = read.value;
  const entered = { '/thickness_m': { amount: value, unit: unitTable[unit].symbol } };
  return good(jotting(asked, 'covered', { cover, thickness_m: si, ...withNote(asked) }, entered));
}

function uncovered(asked: ActAsked): Outcome<Jotting> {
  return good(jotting(asked, 'covered', { cover: 'none', ...withNote(asked) }));
}

function finished(asked: ActAsked): Outcome<Jotting> {
  return good(jotting(asked, 'finished', withNote(asked)));
}

function note(asked: ActAsked): Outcome<Jotting> {
  const text = [...asked.rest, ...(asked.options.note === undefined ? [] : [asked.options.note])].join(' ').trim();
  if (text === '') return bad({ code: 'note-empty', path: 'note', found: '', wanted: '' });
  return good(jotting(asked, 'note', { text }));
}
