export { beliefsHeldEn } from './en/beliefs.ts';
export { isMessageKey, type Locale, locales, type MessageKey, type Messages } from './messages.ts';
export type { Shown } from './number.ts';
export { outline } from './outline.ts';
export { placeSaying, tellProblem } from './problem.ts';
export type { ChancePlace, Figure, Place, Saying, SentencePart } from './saying.ts';
export { createSpeaker, type Speaker } from './speaker.ts';
