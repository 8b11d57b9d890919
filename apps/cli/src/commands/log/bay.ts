import type { Bodies, Holding, Wall } from '@loamwright/daybook';
import { bad, good, type Outcome } from '@loamwright/science';
import type { Jotting } from '../../book.ts';
import { readBaySize } from '../../grammar/measurement.ts';
import type { WhenRead } from '../../grammar/when.ts';
import type { Session } from '../../session.ts';
import { subjectNamed } from '../../subject.ts';
import type { LogOptions } from './options.ts';

const walls: readonly Wall[] = ['boards', 'pallets', 'mesh', 'masonry', 'bales', 'plastic', 'drum', 'open', 'other'];

/** What `log bay` is asked. */
export interface BayAsked {
  readonly typed: readonly string[];
  readonly options: LogOptions;
  readonly when: WhenRead;
  readonly holding: Holding;
  readonly session: Session;
}

/** `log bay "Left bay" 1.2x1.2x1m --wall pallets`: a bay set up, or a known one altered. */
export function logBay({ typed, options, when, holding, session }: BayAsked): Outcome<Jotting> {
  const [name = '', ...rest] = typed;
  if (name.trim() === '') return bad({ code: 'nothing-named', path: 'bay', found: '', wanted: '' });
  const known = subjectNamed(holding, 'bay', name);
  const before = known.ok ? holding.bays.get(known.value)?.setUp.body : undefined;
  const text = rest.join(' ');
  const size = text === '' ? undefined : readBaySize(text, session.speaker.system);
  if (text !== '' && size === undefined)
    return bad({ code: 'bay-unreadable', path: 'bay', found: text.slice(0, 60), wanted: '' });
  const typedWall = options.wall ?? before?.wall ?? 'other';
  const wall = walls.find((one) => one === typedWall);
  if (wall === undefined)
    return bad({ code: 'not-one-of', path: '--wall', found: typedWall.slice(0, 40), wanted: walls.join(', ') });
  const roofed = options.roofed ?? before?.roofed;
  const body: Bodies['bay-set-up'] = {
    ...before,
    ...size,
    name: before?.name ?? name.trim(),
    wall,
    ...(roofed !== undefined && { roofed }),
    ...(options.note !== undefined && { note: options.note }),
  };
  const about = [{ type: 'bay', id: known.ok ? known.value : session.newId() }];
  const entered =
    size === undefined
      ? undefined
      : { '/width_m': { words: text }, '/depth_m': { words: text }, '/height_m': { words: text } };
  return good({ kind: 'bay-set-up', body, about, when, entered });
}
