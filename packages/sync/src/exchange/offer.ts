import { canonicalBytes, conflictsOf, type Head, heldOf, type Offer, sha256Hex } from '@loamwright/daybook';

/** "This is what I hold": the same for the same set of entries, however they arrived (rule X3). */
export function offerOf(holding: string, heads: readonly Head[]): Offer {
  return { type: 'offer', v: 1, holding, held: heldOf(heads), conflicts: conflictsOf(heads) };
}

/** A short name of a set of entries: SHA-256 of the canonical JSON of its offer. Equal sets have equal digests. */
export function digestOf(holding: string, heads: readonly Head[]): string {
  return sha256Hex(canonicalBytes(offerOf(holding, heads)));
}
