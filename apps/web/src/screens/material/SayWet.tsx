import { changeOf, describedWith, materialName } from '@loamwright/advisor';
import { moistureWhenSaid, type Wetness, wetnessIds } from '@loamwright/science';
import { type ReactNode, useState } from 'react';
import { useBook } from '../../keep/useBook.ts';
import { Choices } from '../../parts/Choices.tsx';
import { WritePage } from '../../parts/WritePage.tsx';
import { to } from '../../shell/route.ts';
import { useSpeaker } from '../../shell/words.tsx';

/** How wet it is, in a word. */
export default function SayWet({ id }: { readonly id: string }): ReactNode {
  const speaker = useSpeaker();
  const { holding } = useBook().leaf;
  const [wetness, setWetness] = useState<Wetness | null>(null);
  const name = speaker.tell(materialName(holding, id));
  const moisture_pctWet = wetness === null ? null : moistureWhenSaid(wetness);
  return (
    <WritePage
      then={to('material', id)}
      question={speaker.say('app.material.is.question', { material: name })}
      act={speaker.say('app.material.keep')}
      thing={(happened) =>
        moisture_pctWet === null
          ? null
          : {
              kind: 'material-described',
              about: [{ type: 'material', id }],
              happened,
              body: describedWith(id, { moisture_pctWet }, { holding, name }),
              entered: { '/moisture_pctWet': { words: speaker.say(`known.wetness.${wetness ?? 'damp'}`) } },
            }
      }
    >
      <p className="quiet">{speaker.say('app.material.is.how')}</p>
      <Choices
        legend={speaker.say('app.material.wetness')}
        options={wetnessIds.map((value) => ({ value, text: speaker.say(`known.wetness.${value}`) }))}
        value={wetness}
        onChange={setWetness}
      />
      <div role="status">
        {moisture_pctWet !== null && (
          <p className="answer">{speaker.tell(changeOf(id, 'moisture_pctWet', moisture_pctWet, holding).said)}</p>
        )}
      </div>
    </WritePage>
  );
}
