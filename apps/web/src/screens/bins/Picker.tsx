import { allMaterials } from '@loamwright/science';
import type { ReactNode } from 'react';
import {
  Autocomplete,
  Header,
  Input,
  Label,
  ListBox,
  ListBoxItem,
  ListBoxSection,
  SearchField,
} from 'react-aria-components';
import { useBook } from '../../keep/useBook.ts';
import { nameOf } from '../../mix/amount.ts';
import { lately } from '../../mix/lately.ts';
import { Sheet } from '../../parts/Sheet.tsx';
import { goInstead, writeRoute } from '../../shell/route.ts';
import { useSpeaker } from '../../shell/words.tsx';
import './picker.css';

interface Choice {
  readonly id: string;
  readonly name: string;
  /** Everything a grower may search it by. */
  readonly words: string;
}

interface Properties {
  /** The page it lies over: what is found opens there as the sheet `amount:ID`. */
  readonly path: readonly string[];
  /** Materials that are there already. */
  readonly here: readonly string[];
}

/** Finds a material by any of its names. What is in stock and what was used lately come first. */
export function Picker({ path, here }: Properties): ReactNode {
  const speaker = useSpeaker();
  const { holding } = useBook().leaf;
  const choices = new Map(
    allMaterials
      .filter(({ id }) => id !== 'water')
      .map(({ id }): [string, Choice] => {
        const name = nameOf(speaker, id);
        return [id, { id, name, words: `${name}, ${speaker.sayIf(`material.${id}.words`, '')}` }];
      }),
  );
  const pick = (ids: readonly string[]): readonly Choice[] =>
    ids.flatMap((id) => choices.get(id) ?? []).filter(({ id }) => !here.includes(id));
  const stock = [...holding.stock.values()].filter(({ mass_kg }) => mass_kg > 0).map(({ material }) => material);
  const recent = lately(holding).filter((id) => !stock.includes(id));
  const rest = [...choices.keys()].filter((id) => !stock.includes(id) && !recent.includes(id));
  const sections = [
    { id: 'stock', title: speaker.say('app.pick.stock'), items: pick(stock) },
    { id: 'lately', title: speaker.say('app.pick.lately'), items: pick(recent) },
    { id: 'all', title: speaker.say('app.pick.all'), items: pick(rest) },
  ].filter(({ items }) => items.length > 0);
  const textOf = new Map([...choices.values()].map(({ name, words }) => [name, words]));
  return (
    <Sheet title={speaker.say('app.pick.title')}>
      <Autocomplete filter={(name, typed) => matches(textOf.get(name) ?? name, typed)}>
        <SearchField className="search" data-first>
          <Label className="label">{speaker.say('app.pick.search')}</Label>
          <Input className="line" placeholder={speaker.say('app.pick.hint')} />
        </SearchField>
        <ListBox
          className="found"
          aria-label={speaker.say('app.pick.title')}
          selectionMode="none"
          renderEmptyState={() => <p className="quiet">{speaker.say('app.pick.none')}</p>}
          onAction={(key) => goInstead(writeRoute({ path, sheet: `amount:${String(key)}` }))}
        >
          {sections.map(({ id, title, items }) => (
            <ListBoxSection key={id} id={id}>
              <Header className="label">{title}</Header>
              {items.map((item) => (
                <ListBoxItem key={item.id} id={item.id} textValue={item.name} className="found-item">
                  {item.name}
                </ListBoxItem>
              ))}
            </ListBoxSection>
          ))}
        </ListBox>
      </Autocomplete>
    </Sheet>
  );
}

/** Every word that was typed begins one of the words the material goes by. */
function matches(words: string, typed: string): boolean {
  const plain = (text: string): string => text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();
  const known = plain(words).split(/[^\p{L}\p{N}]+/u);
  return plain(typed)
    .split(/\s+/u)
    .every((word) => known.some((one) => one.startsWith(word)));
}
