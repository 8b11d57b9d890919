import {
  type Ask,
  type Attachment,
  attachmentName,
  canonicalBytes,
  type Entry,
  type Give,
  type GivenAttachment,
  maxAttachment_bytes,
  maxGive_bytes,
  readEntry,
} from '@loamwright/daybook';
import type { Problem } from '@loamwright/science';
import { base64Length, fromBase64, toBase64 } from '../base64.ts';
import { maxItems, maxProblems } from './limits.ts';
import type { RawGive } from './read-message.ts';

/** JSON around what is given: the header of the message, or of one attachment, and its commas. Longer than it ever is. */
const wrapping_bytes = 512;
/** Items of one part: well under what a reader accepts. */
const mostItems = maxItems / 2;

/**
 * The gives that answer an ask: parts of at most `maxGive_bytes`, made one at a time, the last
 * marked as such (rules X6, X7). An ask of which nothing is here is answered too.
 *
 * @param entries what is held within the stretches asked for
 * @param attachments those asked for that are held
 */
export async function* givesFor(
  ask: Ask,
  entries: Iterable<Entry>,
  attachments: AsyncIterable<Attachment> | Iterable<Attachment>,
): AsyncGenerator<Give> {
  let part = createPart();
  for (const entry of entries) {
    const size_bytes = canonicalBytes(entry).length + 1;
    if (!part.hasRoom(size_bytes)) {
      yield part.give(ask.holding, false);
      part = createPart();
    }
    part.addEntry(entry, size_bytes);
  }
  for await (const { hash, mediaType, bytes } of attachments) {
    const size_bytes = base64Length(bytes.length) + wrapping_bytes;
    if (!part.hasRoom(size_bytes)) {
      yield part.give(ask.holding, false);
      part = createPart();
    }
    part.addAttachment({ hash, mediaType, bytes_base64: toBase64(bytes) }, size_bytes);
  }
  yield part.give(ask.holding, true);
}

interface Part {
  /** An empty part takes anything: what is too large for any must travel alone. */
  hasRoom(more_bytes: number): boolean;
  addEntry(entry: Entry, size_bytes: number): void;
  addAttachment(attachment: GivenAttachment, size_bytes: number): void;
  give(holding: string, last: boolean): Give;
}

function createPart(): Part {
  const entries: Entry[] = [];
  const attachments: GivenAttachment[] = [];
  let filled_bytes = wrapping_bytes;
  return {
    hasRoom: (more_bytes) => {
      const items = entries.length + attachments.length;
      return items === 0 || (items < mostItems && filled_bytes + more_bytes <= maxGive_bytes);
    },
    addEntry: (entry, size_bytes) => {
      entries.push(entry);
      filled_bytes += size_bytes;
    },
    addAttachment: (attachment, size_bytes) => {
      attachments.push(attachment);
      filled_bytes += size_bytes;
    },
    give: (holding, last) => ({ type: 'give', v: 1, holding, entries, attachments, last }),
  };
}

/** What may be kept of a give, and what was left out of it, and why. */
export interface Received {
  readonly entries: readonly Entry[];
  readonly attachments: readonly Attachment[];
  readonly problems: readonly Problem[];
}

/** Checks every entry and every attachment of a give by itself; one that fails leaves the others (rule X8). */
export function readGive(give: RawGive): Received {
  const problems: Problem[] = [];
  const tell = (found: readonly Problem[], at: string): void => {
    for (const problem of found)
      if (problems.length < maxProblems)
        problems.push({ ...problem, path: problem.path === '' ? at : `${at}.${problem.path}` });
  };
  const entries = give.entries.flatMap((value, i): readonly Entry[] => {
    const entry = readEntryOf(value, give.holding);
    if (entry.ok) return [entry.value];
    tell(entry.problems, `entries[${i}]`);
    return [];
  });
  const attachments = give.attachments.flatMap((value, i): readonly Attachment[] => {
    const attachment = readAttachment(value);
    if ('hash' in attachment) return [attachment];
    tell([attachment], `attachments[${i}]`);
    return [];
  });
  return { entries, attachments, problems };
}

/** An entry from outside that belongs to this holding; to any where that is not known. */
export function readEntryOf(value: unknown, holding: string | null): ReturnType<typeof readEntry> {
  const read = readEntry(value);
  if (!read.ok || holding === null || read.value.holding === holding) return read;
  const problem: Problem = {
    code: 'exchange-other-holding',
    path: 'holding',
    found: read.value.holding,
    wanted: holding,
  };
  return { ok: false, problems: [problem] };
}

const mediaTypeForm = /^[a-z]+\/[a-z0-9.+-]{1,80}$/u;

/** An attachment from outside whose bytes have its name, or what is wrong with it. */
export function readAttachment(value: unknown): Attachment | Problem {
  if (
    typeof value !== 'object' ||
    value === null ||
    !('hash' in value) ||
    !('mediaType' in value) ||
    !('bytes_base64' in value)
  )
    return {
      code: 'exchange-no-attachment',
      path: '',
      found: typeof value,
      wanted: 'hash, mediaType and bytes_base64',
    };
  const { hash, mediaType, bytes_base64 } = value;
  if (typeof hash !== 'string' || typeof mediaType !== 'string' || !mediaTypeForm.test(mediaType))
    return {
      code: 'exchange-no-attachment',
      path: 'mediaType',
      found: String(mediaType).slice(0, 60),
      wanted: 'a media type such as image/jpeg',
    };
  if (typeof bytes_base64 !== 'string')
    return { code: 'exchange-no-attachment', path: 'bytes_base64', found: typeof bytes_base64, wanted: 'base64' };
  if (bytes_base64.length > base64Length(maxAttachment_bytes))
    return {
      code: 'exchange-attachment-too-large',
      path: 'bytes_base64',
      found: `${bytes_base64.length}`,
      wanted: `${base64Length(maxAttachment_bytes)}`,
    };
  const bytes = fromBase64(bytes_base64);
  if (bytes === null)
    return { code: 'exchange-no-attachment', path: 'bytes_base64', found: bytes_base64.slice(0, 20), wanted: 'base64' };
  const found = attachmentName(bytes);
  if (found !== hash) return { code: 'exchange-attachment-changed', path: 'hash', found, wanted: hash.slice(0, 64) };
  return { hash, mediaType, bytes };
}
