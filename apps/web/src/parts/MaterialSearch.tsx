import { vocabularyOf } from '@loamwright/advisor';
import { doubtfulInputs, findMaterials, type Meant, meant, type Vocabulary } from '@loamwright/science';
import { type ReactNode, useMemo, useState } from 'react';
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
import { useBook } from '../keep/useBook.ts';
import { alreadyThere } from '../mix/already.ts';
import { lately } from '../mix/lately.ts';
import { useSpeaker } from '../shell/words.tsx';
import './material-search.css';

interface Section {
  readonly id: 'stock' | 'own' | 'lately' | 'all' | 'may' | 'near' | 'found';
  readonly ids: readonly string[];
}

interface Properties {
  /** Materials that are not offered, because they are here already. */
  readonly without: readonly string[];
  readonly onPick: (material: string) => void;
}

/** Finds a material by any of its names. What is in stock, one's own and what was used lately come first. */
export function MaterialSearch({ without, onPick }: Properties): ReactNode {
  const speaker = useSpeaker();
  const { holding } = useBook().leaf;
  const [typed, setTyped] = useState('');
  const vocabulary = useMemo(() => vocabularyOf(speaker, holding), [speaker, holding]);
  const names = new Map([...vocabulary.own, ...vocabulary.materials].map(({ id, name }) => [id, name]));
  const said = typed.trim() === '' ? null : meant(typed, vocabulary);
  const titles = {
    stock: speaker.say('app.pick.stock'),
    own: speaker.say('app.materials.own'),
    lately: speaker.say('app.pick.lately'),
    all: speaker.say('app.pick.all'),
    may: speaker.say('app.pick.may'),
    near: speaker.say('app.pick.near'),
    found: speaker.say('app.pick.found'),
  };
  const there = alreadyThere(said, without).map((id) => names.get(id) ?? id);
  const shown = (said === null ? standing() : found(said))
    .map(({ id, ids }) => ({ id, ids: ids.filter((one) => one !== 'water' && !without.includes(one)) }))
    .filter(({ ids }) => ids.length > 0);
  return (
    <Autocomplete inputValue={typed} onInputChange={setTyped}>
      <SearchField className="search" data-first>
        <Label className="label">{speaker.say('app.pick.search')}</Label>
        <Input className="line" placeholder={speaker.say('app.pick.hint')} />
      </SearchField>
      <div role="status">
        {said?.is === 'doubtful' && <Doubt id={said.id} />}
        {there.length > 0 && <p>{speaker.say('app.pick.there', { names: speaker.list(there) })}</p>}
      </div>
      <ListBox
        className="found"
        aria-label={speaker.say('app.pick.title')}
        selectionMode="none"
        renderEmptyState={() =>
          said?.is === 'doubtful' || there.length > 0 ? null : <p className="quiet">{speaker.say('app.pick.none')}</p>
        }
        onAction={(key) => onPick(String(key))}
      >
        {shown.map(({ id, ids }) => (
          <ListBoxSection key={id} id={id}>
            <Header className="label">{titles[id]}</Header>
            {ids.map((one) => (
              <ListBoxItem key={one} id={one} textValue={names.get(one) ?? one} className="found-item">
                {names.get(one) ?? one}
              </ListBoxItem>
            ))}
          </ListBoxSection>
        ))}
      </ListBox>
    </Autocomplete>
  );

  function standing(): readonly Section[] {
    const stock = [...holding.stock.values()].filter(({ mass_kg }) => mass_kg > 0).map(({ material }) => material);
    const own = [...holding.materials.keys()].filter((id) => names.has(id) && !stock.includes(id));
    const recent = lately(holding).filter((id) => ![...stock, ...own].includes(id));
    const first = [...stock, ...own, ...recent];
    return [
      { id: 'stock', ids: stock },
      { id: 'own', ids: own },
      { id: 'lately', ids: recent },
      { id: 'all', ids: [...names.keys()].filter((id) => !first.includes(id)) },
    ];
  }

  function found(what: Meant): readonly Section[] {
    const others = sureOf(typed, vocabulary);
    switch (what.is) {
      case 'material':
        return [{ id: 'found', ids: [...new Set([what.id, ...others])] }];
      case 'which':
        return [
          { id: 'may', ids: what.ids },
          { id: 'found', ids: others.filter((id) => !what.ids.includes(id)) },
        ];
      case 'doubtful':
        return [{ id: 'found', ids: others }];
      case 'unknown':
        return [{ id: 'near', ids: what.near }];
    }
  }
}

function sureOf(typed: string, { own, materials }: Vocabulary): readonly string[] {
  return findMaterials(typed, [...own, ...materials])
    .filter(({ match }) => match !== 'near')
    .map(({ id }) => id);
}

/** What should not go on a heap: why, what to do with it instead, and what can hurt. */
function Doubt({ id }: { readonly id: string }): ReactNode {
  const speaker = useSpeaker();
  const doubt = doubtfulInputs.find((one) => one.id === id);
  if (doubt === undefined) return null;
  const places = {
    name: speaker.sayIf(`doubtful.${id}.name`, id),
    reason: speaker.sayIf(`permit.reason.${doubt.permitReason}`, ''),
  };
  const said = { never: 'app.pick.never', 'only-hot': 'app.pick.onlyHot', allowed: 'app.pick.doubt' } as const;
  return (
    <div className="alarm stack">
      <p>{speaker.say(said[doubt.permit], places)}</p>
      <p>{speaker.sayIf(`doubtful.${id}.instead`, '')}</p>
      {doubt.cautions.map((one) => (
        <p key={one} className="small">
          {speaker.say(`caution.${one}`)}
        </p>
      ))}
    </div>
  );
}
