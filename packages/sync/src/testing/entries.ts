import { attachmentName } from '@loamwright/daybook';

export { chain, draft, holding, must, otherVersion } from '@loamwright/daybook/testing';

/** A photo's bytes, with their name. */
export function photoOf(text: string): {
  readonly hash: string;
  readonly bytes: Uint8Array;
  readonly mediaType: string;
} {
  const bytes = new TextEncoder().encode(text);
  return { hash: attachmentName(bytes), bytes, mediaType: 'image/jpeg' };
}
