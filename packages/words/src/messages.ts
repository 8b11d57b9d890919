import { en } from './en/index.ts';

/** The key of a message; every locale has the same keys as English. */
export type MessageKey = keyof typeof en;

/** One language's messages, in ICU MessageFormat. */
export type Messages = Readonly<Record<MessageKey, string>>;

const held: { readonly en: Record<MessageKey, string> } = { en: { ...en } };

/** The languages there are. English first; another is one more file with the same keys. */
export const locales: Readonly<Record<'en', Messages>> = held;

export type Locale = keyof typeof locales;

/** Whether a key made at run time (`material.straw.name`) has a message. */
export function isMessageKey(key: string): key is MessageKey {
  return Object.hasOwn(held.en, key);
}

/** Adds words that a page brought with it, as a browser has them only then. */
export function takeIn(locale: Locale, words: Partial<Messages>): void {
  Object.assign(held[locale], words);
}
