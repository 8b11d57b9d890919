import '@loamwright/words/later';
import { allCrops } from '@loamwright/science';
import { type ReactNode, useMemo } from 'react';
import { Autocomplete, Input, Label, ListBox, ListBoxItem, SearchField } from 'react-aria-components';
import { useSpeaker } from '../../shell/words.tsx';
import '../../parts/material-search.css';

const MOST_OFFERED = 8;

interface Properties {
  /** Crops offered before anything is typed: what grew here lately. */
  readonly lately: readonly string[];
  readonly typed: string;
  readonly onType: (typed: string) => void;
}

/** A crop by any of its names; what the tables lack may be written down all the same. */
export function CropSearch({ lately, typed, onType }: Properties): ReactNode {
  const speaker = useSpeaker();
  const crops = useMemo(
    () =>
      allCrops.map(({ id }) => {
        const name = speaker.sayIf(`crop.${id}.name`, id);
        return { id, name, words: `${name} ${speaker.sayIf(`crop.${id}.words`, '')}`.toLowerCase() };
      }),
    [speaker],
  );
  const asked = typed.trim().toLowerCase();
  const recent = crops.filter(({ id, name }) => lately.includes(id) || lately.includes(name));
  const named = ({ name }: { readonly name: string }): number => Number(name.toLowerCase() === asked);
  const found =
    asked === '' ? recent : crops.filter(({ words }) => words.includes(asked)).toSorted((a, b) => named(b) - named(a));
  return (
    <Autocomplete inputValue={typed} onInputChange={onType}>
      <SearchField className="search" data-first>
        <Label className="label">{speaker.say('bedPage.sown.crop')}</Label>
        <Input className="line" maxLength={60} />
      </SearchField>
      <ListBox
        className="found"
        aria-label={speaker.say('bedPage.sown.crop')}
        selectionMode="none"
        renderEmptyState={() => (asked === '' ? null : <p className="quiet">{speaker.say('bedPage.sown.none')}</p>)}
        onAction={(key) => onType(crops.find(({ id }) => id === key)?.name ?? String(key))}
      >
        {found.slice(0, MOST_OFFERED).map(({ id, name }) => (
          <ListBoxItem key={id} id={id} textValue={name} className="found-item">
            {name}
          </ListBoxItem>
        ))}
      </ListBox>
    </Autocomplete>
  );
}
