import type { ShownAs, Unit, UnitSystem } from '@loamwright/units';
import { IntlMessageFormat } from 'intl-messageformat';
import { isMessageKey, type Locale, locales, type MessageKey } from './messages.ts';
import { type Shown, sensible, showLikely, showRange } from './number.ts';
import type { Place, Saying, SentencePart } from './saying.ts';

/** Puts messages into one person's language and units. */
export interface Speaker {
  readonly locale: Locale;
  readonly system: UnitSystem;
  /** A message as text, its places filled with plain text and numbers. */
  say(key: MessageKey, places?: Readonly<Record<string, string | number>>): string;
  /** A message whose key is made at run time; a key without a message comes back as `otherwise`. */
  sayIf(key: string, otherwise: string): string;
  /** A sentence as text. */
  tell(saying: Saying): string;
  /** A sentence in pieces: every filled place is a piece of its own, with the quantity behind it. */
  tellParts(saying: Saying): readonly SentencePart[];
  /** "straw, leaves and hay". */
  list(items: readonly string[]): string;
  /** A plain figure to sensible digits. */
  figure(value: number): string;
  /** The likely value in the reader's unit. */
  likely(value: Shown, siUnit: Unit, as: ShownAs): string;
  /** From p10 to p90 in the reader's unit. */
  range(value: Shown, siUnit: Unit, as: ShownAs): string;
  /** A chance in words that never claims certainty: "about 7 in 10". */
  chance(met: number, of: number): string;
}

/** A speaker for one language and one system of units. */
export function createSpeaker(options: { readonly locale: Locale; readonly system: UnitSystem }): Speaker {
  const { locale, system } = options;
  const compiled = new Map<MessageKey, IntlMessageFormat>();
  const listFormat = new Intl.ListFormat(locale, { type: 'conjunction' });

  const speaker: Speaker = {
    locale,
    system,
    say: (key, places = {}) => String(compile(key).format({ ...places })),
    sayIf: (key, otherwise) => (isMessageKey(key) ? speaker.say(key) : otherwise),
    tell: (saying) =>
      tellParts(saying, '')
        .map(({ text }) => text)
        .join(''),
    tellParts: (saying) => tellParts(saying, ''),
    list: (items) => listFormat.format(items),
    figure: (value) => sensible(value, locale),
    likely: (value, siUnit, as) => showLikely(value, siUnit, as, system, locale),
    range: (value, siUnit, as) => showRange(value, siUnit, as, system, locale),
    chance: tellChance,
  };
  return speaker;

  function compile(key: MessageKey): IntlMessageFormat {
    const held = compiled.get(key);
    if (held !== undefined) return held;
    const made = new IntlMessageFormat(locales[locale][key], locale, undefined, { ignoreTag: true });
    compiled.set(key, made);
    return made;
  }

  /** Text and quantities pass through the formatter as objects that it hands back whole; numbers as numbers, for plurals. */
  function tellParts(saying: Saying, under: string): readonly SentencePart[] {
    const entries = Object.entries(saying.places ?? {});
    const filled = Object.fromEntries(
      entries.map(([name, place]) => [
        name,
        typeof place === 'number' ? place : { parts: fill(place, under + name), toString: () => wordOf(place) },
      ]),
    );
    return compile(saying.key)
      .formatToParts<{ parts: readonly SentencePart[] }>(filled)
      .flatMap(({ value }): readonly SentencePart[] =>
        typeof value === 'object' && value !== null && 'parts' in value ? value.parts : [{ text: String(value) }],
      );
  }

  function fill(place: Exclude<Place, number>, name: string): readonly SentencePart[] {
    if (typeof place === 'string') return [{ text: place, place: name }];
    if ('figure' in place) {
      const show = place.asRange === true ? speaker.range : speaker.likely;
      return [{ text: show(place.figure, place.unit, place.as), place: name, figure: place }];
    }
    if ('chance' in place) {
      return [{ text: tellChance(place.chance.met, place.chance.of), place: name, chance: place.chance }];
    }
    // "9 buckets" is a sentence of its own inside another: its plain words stand in that place.
    if ('key' in place) return tellParts(place, `${name}.`).map((part) => ({ place: name, ...part }));
    return fillList(place, name);
  }

  function fillList(items: readonly Saying[], name: string): readonly SentencePart[] {
    let next = 0;
    return listFormat.formatToParts(items.map((_, i) => String(i))).flatMap(({ type, value }) => {
      if (type !== 'element') return [{ text: value }];
      const index = next++;
      const item = items[index];
      return item === undefined ? [] : tellParts(item, `${name}[${index}].`);
    });
  }

  function tellChance(met: number, of: number): string {
    if (met === 0) return speaker.say('chance.hardly', { of });
    if (met === of) return speaker.say('chance.nearlyAll', { of });
    const tenths = Math.round((10 * met) / of);
    if (tenths === 0) return speaker.say('chance.underOneInTwenty', { met, of });
    if (tenths === 10) return speaker.say('chance.overNineteenInTwenty', { met, of });
    return speaker.say('chance.inTen', { tenths, met, of });
  }
}

/** By what a message chooses among its forms (`select`); nothing but a plain word is chosen by. */
function wordOf(place: Exclude<Place, number>): string {
  return typeof place === 'string' ? place : '';
}
