import '@loamwright/words/later';
import { heapFacts, type KeptCode } from '@loamwright/advisor';
import type { Heap } from '@loamwright/daybook';
import { type ClauseKind, type HeapFacts, type StuffId, stuffIds } from '@loamwright/science';
import type { ShownAs } from '@loamwright/units';
import type { ReactNode } from 'react';
import { useBook } from '../../keep/useBook.ts';
import { Choices } from '../../parts/Choices.tsx';
import { QuantityField } from '../../parts/QuantityField.tsx';
import { useSpeaker } from '../../shell/words.tsx';
import { StuffChoices } from './StuffChoices.tsx';
import { type AnswerFact, type FigureFact, sayOfHeap } from './said.ts';

interface FigureAsked {
  readonly name: FigureFact | 'lot_m2';
  readonly label: 'width' | 'depth' | 'height' | 'volume' | 'line' | 'house' | 'water' | 'lot';
  readonly shownAs: ShownAs;
  /** Asked where any clause of these kinds is kept. */
  readonly by: readonly ClauseKind[];
}

const ground: readonly ClauseKind[] = ['footprint', 'lot-share', 'sides', 'volume'];
const figuresAsked: readonly FigureAsked[] = [
  { name: 'width_m', label: 'width', shownAs: 'length', by: ground },
  { name: 'depth_m', label: 'depth', shownAs: 'length', by: ground },
  { name: 'height_m', label: 'height', shownAs: 'length', by: ['height', 'volume'] },
  { name: 'volume_m3', label: 'volume', shownAs: 'bulkVolume', by: ['volume'] },
  { name: 'lot_m2', label: 'lot', shownAs: 'area', by: ['lot-share', 'volume'] },
  { name: 'fromLine_m', label: 'line', shownAs: 'length', by: ['from-line'] },
  { name: 'fromHouse_m', label: 'house', shownAs: 'length', by: ['from-house'] },
  { name: 'fromWater_m', label: 'water', shownAs: 'length', by: ['from-water'] },
];

const answersAsked: readonly { readonly name: AnswerFact; readonly by: ClauseKind }[] = [
  { name: 'rearYard', by: 'rear-yard' },
  { name: 'covered', by: 'covered' },
  { name: 'enclosed', by: 'enclosed' },
  { name: 'scrapsBuried', by: 'scraps-buried' },
];

interface Properties {
  readonly heap: Heap;
  readonly kept: readonly KeptCode[];
  readonly said: HeapFacts;
}

/** What the kept clauses ask of a heap, and nothing else; the daybook's own answers stand there already. */
export function PlaceFacts({ heap, kept, said }: Properties): ReactNode {
  const speaker = useSpeaker();
  const { holding } = useBook().leaf;
  const known = heapFacts(heap, holding);
  const kinds = new Set(kept.flatMap(({ clauses }) => clauses.flatMap(({ clause }) => clause?.kind ?? [])));
  const figures = figuresAsked.filter(({ by }) => by.some((kind) => kinds.has(kind)));
  const answers = answersAsked.filter(({ by }) => kinds.has(by));
  const chosen: readonly StuffId[] = said.stuff ?? [];
  return (
    <section className="section stack">
      <h2>{speaker.say('placePage.facts')}</h2>
      {answers.map(({ name }) => (
        <Choices
          key={name}
          legend={speaker.say(`placePage.${name}`)}
          options={(['not-said', 'no', 'yes'] as const).map((value) => ({
            value,
            text: speaker.say(value === 'not-said' ? 'ripePage.notSaid' : `ripePage.${value}`),
          }))}
          value={said[name] === undefined ? 'not-said' : said[name] ? 'yes' : 'no'}
          onChange={(value) => sayOfHeap(heap, { [name]: value === 'not-said' ? null : value === 'yes' })}
        />
      ))}
      {figures.map(({ name, label, shownAs }) => (
        <QuantityField
          key={name}
          label={speaker.say(`placePage.${label}`)}
          shownAs={shownAs}
          value={said[name] ?? known[name] ?? null}
          onChange={(si) => sayOfHeap(heap, { [name]: si })}
        />
      ))}
      {known.stuff === undefined && (
        <StuffChoices
          legend={speaker.say('placePage.stuff')}
          ids={stuffIds}
          chosen={chosen}
          onChange={(stuff) => sayOfHeap(heap, { stuff: stuff.length === 0 ? null : stuff })}
        />
      )}
      <p className="small quiet">{speaker.say('placePage.kept')}</p>
    </section>
  );
}
