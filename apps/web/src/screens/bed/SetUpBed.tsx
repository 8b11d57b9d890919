import '@loamwright/words/later';
import type { Bed, Entered } from '@loamwright/daybook';
import { bedBounds, likely, type SoilTextureId, soilTextureIds } from '@loamwright/science';
import { type ReactNode, useId, useState } from 'react';
import { v7 } from 'uuid';
import { useBook } from '../../keep/useBook.ts';
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
  const { holding } = useBook().leaf;
  const nameId = useId();
  const plain = (text: string): string => text.trim().toLowerCase();
  // A bed is known by its name: of two of one name nobody could say which is meant.
  const taken = [...holding.beds.values()].find((one) => one.id !== id && plain(one.setUp.body.name) === plain(name));
  const deep_m = depth.value ?? 0;
  const [texture, setTexture] = useState<SoilTextureId | null>(before?.texture ?? null);
  return (
    <WritePage
      then={to('bed', id)}
      question={speaker.say('bedsPage.new.question')}
      act={speaker.say('bedsPage.new.act')}
      thing={(happened) =>
        name.trim() === '' || taken !== undefined || area.value === null || area.value <= 0
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
      <div className="field">
        <label className="label" htmlFor={nameId}>
          {speaker.say('bedsPage.new.name')}
        </label>
        <input
          id={nameId}
          className="line"
          value={name}
          maxLength={120}
          aria-invalid={taken !== undefined}
          aria-describedby={`${nameId}-hint`}
          onChange={(event) => setName(event.target.value)}
        />
        <span id={`${nameId}-hint`} className="hint" role="status">
          {taken === undefined ? null : speaker.say('bedsPage.new.taken', { name: taken.setUp.body.name })}
        </span>
      </div>
      <QuantityField
        label={speaker.say('bedsPage.new.area')}
        hint={speaker.say('bedsPage.new.area.hint', {
          sides: speaker.system === 'us' ? '4x8ft' : '1.2x2.4m',
        })}
        shownAs="area"
        least={bedBounds.area_m2.least}
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
