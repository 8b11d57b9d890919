import { describedWith, materialName, ownMaterialId, vocabularyOf } from '@loamwright/advisor';
import { moistureWhenSaid, type Wetness, wetnessIds } from '@loamwright/science';
import { type ReactNode, useState } from 'react';
import { useBook } from '../../keep/useBook.ts';
import { Pick } from '../../parts/Pick.tsx';
import { WritePage } from '../../parts/WritePage.tsx';
import { to } from '../../shell/route.ts';
import { useSpeaker } from '../../shell/words.tsx';

/** A material of one's own, by what it is like and how it differs. */
export default function OwnLike({ id }: { readonly id: string }): ReactNode {
  const speaker = useSpeaker();
  const { holding } = useBook().leaf;
  const [name, setName] = useState('');
  const [wetness, setWetness] = useState<Wetness | null>(null);
  const [ratio, setRatio] = useState('');
  const material = speaker.tell(materialName(holding, id));
  const own = ownMaterialId(name);
  const plain = name.trim().toLowerCase();
  const { own: named, materials } = vocabularyOf(speaker, holding);
  const taken = [...named, ...materials].some((one) => one.name.toLowerCase() === plain || one.id === own);
  const carbonToNitrogen = Number(ratio.replace(',', '.'));
  const ratioRead = ratio.trim() === '' || carbonToNitrogen > 0;
  return (
    <WritePage
      then={to('material', own)}
      question={speaker.say('app.material.own.question', { material })}
      act={speaker.say('app.material.keep')}
      thing={(happened) =>
        own === '' || taken || !ratioRead
          ? null
          : {
              kind: 'material-described',
              about: [{ type: 'material', id: own }],
              happened,
              body: {
                ...describedWith(
                  own,
                  {
                    ...(wetness !== null && { moisture_pctWet: moistureWhenSaid(wetness) }),
                    ...(ratio.trim() !== '' && { carbonToNitrogen }),
                  },
                  { holding, name: name.trim() },
                ),
                like: holding.materials.get(id)?.described?.body.like ?? id,
              },
            }
      }
    >
      <label className="field">
        <span className="label">{speaker.say('app.material.name')}</span>
        <input className="line large" value={name} maxLength={60} onChange={(event) => setName(event.target.value)} />
        <span className="hint">{taken ? speaker.say('app.material.nameTaken') : ''}</span>
      </label>
      <Pick
        label={speaker.say('app.material.is')}
        options={wetnessIds.map((value) => ({ value, text: speaker.say(`known.wetness.${value}`) }))}
        value={wetness}
        onChange={setWetness}
      />
      <label className="field">
        <span className="label">{speaker.say('app.material.ratio')}</span>
        <input
          className="line"
          inputMode="decimal"
          value={ratio}
          aria-invalid={!ratioRead}
          onChange={(event) => setRatio(event.target.value)}
        />
      </label>
    </WritePage>
  );
}
