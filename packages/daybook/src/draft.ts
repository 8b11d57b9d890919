import { bad, check, good, type Outcome, type Problem } from '@loamwright/science';
import { canonical, canonicalBytes } from './entry/canonical.ts';
import type { Draft, JsonValue } from './entry/entry.ts';
import { draftSchema } from './entry/header.ts';
import { plainJson, tooLarge } from './entry/json.ts';
import { headerVersion } from './entry/seal.ts';
import { type Bodies, type KindId, kinds, tell } from './kinds/registry.ts';
import { maxEntry_bytes } from './limits.ts';
import { slipsIn } from './slips.ts';
import { isZone } from './time.ts';

/** Room that `v`, `n` and `prev` take in the sealed entry. */
const SEAL_BYTES = 128;

/** The header of a draft: all but its kind and body. */
export type DraftHeader = Omit<Draft, 'kind' | 'kv' | 'body'>;

/** A draft of a known kind, with the version of the body that this version of the program writes. */
export function draftOf<Id extends KindId>(kind: Id, header: DraftHeader, body: Bodies[Id]): Outcome<Draft> {
  return readDraft({ ...header, kind, kv: kinds[kind].kv, body });
}

/**
 * Checks what is about to be written. Stricter than `readEntry`: an entry from elsewhere is kept even if it can't
 * be read here, but nothing is written here that can't. The result is a copy that shares nothing with the input.
 *
 * Problems: those of `readEntry`, `tell` and `slipsIn`, `unknown-zone` for a zone this machine doesn't know, and
 * `no-such-place` for an `entered` amount whose pointer leads nowhere in the body.
 */
export function readDraft(input: unknown): Outcome<Draft> {
  const plain = plainJson(input);
  if (!plain.ok) return plain;
  const checked = check(draftSchema, plain.value);
  if (!checked.ok) return checked;
  const size_bytes = canonicalBytes(plain.value).length + SEAL_BYTES;
  if (size_bytes > maxEntry_bytes) return bad(tooLarge(size_bytes));
  const draft = JSON.parse(canonical(plain.value)) as Draft;
  const told = tell({ ...draft, v: headerVersion, n: 1, prev: null, sum: '' });
  if (!told.ok) return told;
  const problems = [...zoneProblems(draft), ...enteredProblems(draft), ...slipsIn(told.value)];
  return problems.length === 0 ? good(draft) : bad(...problems);
}

function zoneProblems(draft: Draft): readonly Problem[] {
  if (isZone(draft.zone)) return [];
  return [{ code: 'unknown-zone', path: 'zone', found: draft.zone, wanted: 'an IANA zone such as Europe/London' }];
}

function enteredProblems(draft: Draft): readonly Problem[] {
  return Object.keys(draft.entered ?? {})
    .filter((pointer) => !leadsSomewhere(pointer, draft.body))
    .map((pointer) => ({
      code: 'no-such-place',
      path: 'entered',
      found: pointer,
      wanted: 'a JSON Pointer to a value in the body',
    }));
}

/** Follows a JSON Pointer (RFC 6901 section 4). */
function leadsSomewhere(pointer: string, body: JsonValue): boolean {
  let here: unknown = body;
  for (const part of pointer.slice(1).split('/')) {
    const key = part.replaceAll('~1', '/').replaceAll('~0', '~');
    if (typeof here !== 'object' || here === null || !Object.hasOwn(here, key)) return false;
    here = (here as Record<string, unknown>)[key];
  }
  return true;
}
