import '@loamwright/words/later';
import type { Bed, Entered } from '@loamwright/daybook';
import { likely, type SoilTextureId, soilTextureIds } from '@loamwright/science';
import { type ReactNode, useState } from 'react';
import { v7 } from 'uuid';
import { Pick } from '../../parts/Pick.tsx';
import { QuantityField } from '../../parts/QuantityField.tsx';
import { WritePage } from '../../parts/WritePage.tsx';
import { to } from '../../shell/route.ts';
import { useSpeaker } from '../../shell/words.tsx';
import { aboutBed } from './moment.ts';

/** A quantity, and how it was written. */
interface Written {
  readonly value: number | null;
  readonly entered: Entered | undefined;
}

function enteredOf(pointer: string, { entered }: Written): Readonly<Record<string, Entered>> {
  return entered === undefined ? {} : { [pointer]: entered };
}

/** A bed set up, or changed: its name, its area and how deep it is worked. */
export default function SetUpBed({ bed }: { readonly bed?: Bed | undefined }): ReactNode {
  const speaker = useSpeaker();
  const before = bed?.setUp.body;
  const [id] = useState(() => bed?.id ?? v7());
  const [name, setName] = useState(before?.name ?? '');
  const [area, setArea] = useState<Written>({
    value: before === undefined ? null : likely(before.area_m2),
    entered: bed?.setUp.entry.entered?.['/area_m2'],
  });
  const [depth, setDepth] = useState<Written>({
    value: before?.depth_m === undefined ? null : likely(before.depth_m),
    entered: bed?.setUp.entry.entered?.['/depth_m'],
  });
  const deep_m = depth.value ?? 0;
  const [texture, setTexture] = useState<SoilTextureId | null>(before?.texture ?? null);
  return (
    <WritePage
      then={to('bed', id)}
      question={speaker.say('bedsPage.new.question')}
      act={speaker.say('bedsPage.new.act')}
      thing={(happened) =>
        name.trim() === '' || area.value === null || area.value <= 0
          ? null
          : {
              kind: 'bed-set-up',
              about: aboutBed(id),
              happened,
              body: {
                name: name.trim(),
                area_m2: area.value,
                ...(deep_m > 0 && { depth_m: deep_m }),
                ...(texture !== null && { texture }),
                ...(before?.note !== undefined && { note: before.note }),
              },
              entered: {
                ...enteredOf('/area_m2', area),
                ...(deep_m > 0 && enteredOf('/depth_m', depth)),
              },
            }
      }
    >
      <label className="field">
        <span className="label">{speaker.say('bedsPage.new.name')}</span>
        <input className="line" value={name} maxLength={120} onChange={(event) => setName(event.target.value)} />
      </label>
      <QuantityField
        label={speaker.say('bedsPage.new.area')}
        hint={speaker.say('bedsPage.new.area.hint', {
          sides: speaker.system === 'us' ? '4x8ft' : '1.2x2.4m',
        })}
        shownAs="area"
        value={area.value}
        words={area.entered?.words}
        onChange={(value, words) => setArea({ value, entered: { words } })}
      />
      <QuantityField
        label={speaker.say('bedsPage.new.depth')}
        shownAs="depth"
        value={depth.value}
        words={depth.entered?.words}
        onChange={(value, words) => setDepth({ value, entered: { words } })}
      />
      <Pick
        label={speaker.say('bedsPage.new.texture')}
        options={soilTextureIds.map((value) => ({ value, text: speaker.say(`soil.texture.${value}`) }))}
        value={texture}
        onChange={setTexture}
      />
    </WritePage>
  );
}
