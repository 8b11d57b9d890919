import '@loamwright/words/later';
import type { NamedId } from '@loamwright/science';
import type { ReactNode } from 'react';
import { useSpeaker } from '../../shell/words.tsx';

interface Properties<Id extends NamedId> {
  readonly legend: string;
  readonly ids: readonly Id[];
  readonly chosen: readonly Id[];
  readonly onChange: (chosen: readonly Id[]) => void;
}

/** Any of the sorts of stuff that local rules tell apart. */
export function StuffChoices<Id extends NamedId>({ legend, ids, chosen, onChange }: Properties<Id>): ReactNode {
  const speaker = useSpeaker();
  return (
    <fieldset>
      <legend className="label">{legend}</legend>
      <div className="choices">
        {ids.map((id) => (
          <label key={id} className="choice">
            <input
              type="checkbox"
              checked={chosen.includes(id)}
              onChange={(event) =>
                onChange(event.target.checked ? [...chosen, id] : chosen.filter((one) => one !== id))
              }
            />
            <span>{speaker.say(`clauses.stuff.${id}`)}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
