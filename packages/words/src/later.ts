import { laterEn } from './en/later.ts';
import { takeIn } from './messages.ts';

takeIn('en', laterEn);

/** How many messages came with it. To import this file is to have them; a page that says them imports it. */
export const laterCount: number = Object.keys(laterEn).length;
