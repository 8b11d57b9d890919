import type { Entry, Head, Offer } from '@loamwright/daybook';
import { offerOf } from '../exchange/offer.ts';
import { chain, holding, must } from './entries.ts';

export const device = 'phone-of-ada';

/** Ten notes of that device. */
export const ten: readonly Entry[] = chain(10);

/** Those of the ten with the numbers given. */
export const some = (...numbers: readonly number[]): readonly Entry[] => numbers.map((n) => must(ten[n - 1]));

/** What a side holds. */
export function own(heads: readonly Head[], attachmentsMissing: readonly string[] = []): Held {
  return { holding, heads, attachmentsMissing };
}

interface Held {
  readonly holding: string;
  readonly heads: readonly Head[];
  readonly attachmentsMissing: readonly string[];
}

/** What it offers. */
export const offer = (heads: readonly Head[]): Offer => offerOf(holding, heads);
