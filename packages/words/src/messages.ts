import { en } from './en/index.ts';

/** The key of a message; every locale has the same keys as English. */
export type MessageKey = keyof typeof en;

/** One language's messages, in ICU MessageFormat. */
export type Messages = Readonly<Record<MessageKey, string>>;

/** The languages there are. English first; another is one more file with the same keys. */
export const locales: Readonly<Record<'en', Messages>> = { en };

export type Locale = keyof typeof locales;

/** Whether a key made at run time (`material.straw.name`) has a message. */
export function isMessageKey(key: string): key is MessageKey {
  return Object.hasOwn(en, key);
}
