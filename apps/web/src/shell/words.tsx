import { allUnits, unitTable } from '@loamwright/units';
import { createSpeaker, type Speaker } from '@loamwright/words';
import { createContext, type ReactNode, useContext, useMemo } from 'react';
import { useSettings } from '../device/settings.ts';

const symbols = [...new Set(allUnits.map((unit) => unitTable[unit].symbol)), '%']
  .map((symbol) => symbol.replace(/[.*+?^${}()|[\]\\/]/gu, '\\$&'))
  .sort((a, b) => b.length - a.length)
  .join('|');
const beforeUnit = new RegExp(`(?<=\\d) (?=(?:${symbols})(?![\\p{L}\\p{N}]))`, 'gu');

/** A figure and its unit stay on one line. */
function together(text: string): string {
  return text.replace(beforeUnit, '\u00a0');
}

/** A speaker for the page. */
function pageSpeaker(system: Speaker['system']): Speaker {
  const plain = createSpeaker({ locale: 'en', system });
  return {
    ...plain,
    say: (key, places) => together(plain.say(key, places)),
    tell: (saying) => together(plain.tell(saying)),
    tellParts: (saying) => plain.tellParts(saying).map((part) => ({ ...part, text: together(part.text) })),
    likely: (value, siUnit, as) => together(plain.likely(value, siUnit, as)),
    range: (value, siUnit, as) => together(plain.range(value, siUnit, as)),
  };
}

const SpeakerContext = createContext<Speaker>(pageSpeaker('metric'));

/** Gives everything inside one speaker, in the units that were chosen. */
export function Words({ children }: { readonly children: ReactNode }): ReactNode {
  const { system } = useSettings();
  const speaker = useMemo(() => pageSpeaker(system), [system]);
  return <SpeakerContext value={speaker}>{children}</SpeakerContext>;
}

export function useSpeaker(): Speaker {
  return useContext(SpeakerContext);
}
