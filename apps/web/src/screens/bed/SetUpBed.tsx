import '@loamwright/words/later';
import type { Bed } from '@loamwright/daybook';
import { likely } from '@loamwright/science';
import { type ReactNode, useState } from 'react';
import { v7 } from 'uuid';
import { QuantityField } from '../../parts/QuantityField.tsx';
import { WritePage } from '../../parts/WritePage.tsx';
import { to } from '../../shell/route.ts';
import { useSpeaker } from '../../shell/words.tsx';
import { aboutBed } from './moment.ts';

/** A bed set up, or changed: its name, its area and how deep it is worked. */
export default function SetUpBed({ bed }: { readonly bed?: Bed | undefined }): ReactNode {
  const speaker = useSpeaker();
  const before = bed?.setUp.body;
  const [id] = useState(() => bed?.id ?? v7());
  const [name, setName] = useState(before?.name ?? '');
  const [area_m2, setArea] = useState(before === undefined ? null : likely(before.area_m2));
  const [depth_m, setDepth] = useState(before?.depth_m === undefined ? null : likely(before.depth_m));
  return (
    <WritePage
      then={to('bed', id)}
      question={speaker.say('bedsPage.new.question')}
      act={speaker.say('bedsPage.new.act')}
      thing={(happened) =>
        name.trim() === '' || area_m2 === null || area_m2 <= 0
          ? null
          : {
              kind: 'bed-set-up',
              about: aboutBed(id),
              happened,
              body: {
                name: name.trim(),
                area_m2,
                ...(depth_m !== null && depth_m > 0 && { depth_m }),
                ...(before?.note !== undefined && { note: before.note }),
              },
            }
      }
    >
      <label className="field">
        <span className="label">{speaker.say('bedsPage.new.name')}</span>
        <input className="line" value={name} maxLength={120} onChange={(event) => setName(event.target.value)} />
      </label>
      <QuantityField label={speaker.say('bedsPage.new.area')} shownAs="area" value={area_m2} onChange={setArea} />
      <QuantityField label={speaker.say('bedsPage.new.depth')} shownAs="depth" value={depth_m} onChange={setDepth} />
    </WritePage>
  );
}
