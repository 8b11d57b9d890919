import { likely, type Quantity } from '@loamwright/science';
import { type ReactNode, useState } from 'react';
import { useBook } from '../../keep/useBook.ts';
import { type BinBay, putBay, useBins } from '../../mix/draft.ts';
import { QuantityField } from '../../parts/QuantityField.tsx';
import { Sheet } from '../../parts/Sheet.tsx';
import { closeSheet } from '../../shell/route.ts';
import { useSpeaker } from '../../shell/words.tsx';

type Side = 'width_m' | 'depth_m' | 'height_m';
const sides: readonly { readonly side: Side; readonly key: 'app.bay.width' | 'app.bay.depth' | 'app.bay.height' }[] = [
  { side: 'width_m', key: 'app.bay.width' },
  { side: 'depth_m', key: 'app.bay.depth' },
  { side: 'height_m', key: 'app.bay.height' },
];

/** The bay that is to be filled: one of the holding's, or one measured now. */
export function BaySheet(): ReactNode {
  const speaker = useSpeaker();
  const { bay } = useBins();
  const bays = [...useBook().leaf.holding.bays.values()];
  const [draft, setDraft] = useState<Readonly<Record<Side, number | null>>>(bay);
  const { width_m, depth_m, height_m } = draft;
  const ready = width_m !== null && depth_m !== null && height_m !== null && Math.min(width_m, depth_m, height_m) > 0;
  const take = (chosen: BinBay): void => {
    putBay(chosen);
    closeSheet();
  };
  return (
    <Sheet title={speaker.say('app.bay.title')}>
      <div className="stack">
        {bays.length > 0 && (
          <ul className="lines">
            {bays.map(({ id, setUp: { body } }) => (
              <li key={id}>
                <button
                  type="button"
                  onClick={() =>
                    take({
                      id,
                      width_m: sideOf(body.width_m, bay.width_m),
                      depth_m: sideOf(body.depth_m, bay.depth_m),
                      height_m: sideOf(body.height_m, bay.height_m),
                      wall: body.wall,
                    })
                  }
                >
                  <strong>{body.name}</strong>
                </button>
              </li>
            ))}
          </ul>
        )}
        {sides.map(({ side, key }) => (
          <QuantityField
            key={side}
            label={speaker.say(key)}
            shownAs="length"
            value={bay[side]}
            onChange={(value) => setDraft((now) => ({ ...now, [side]: value }))}
          />
        ))}
        <button
          type="button"
          className="plain-act strong"
          aria-disabled={!ready}
          onClick={() => ready && take({ id: null, width_m, depth_m, height_m, wall: bay.wall })}
        >
          {speaker.say('app.bay.take')}
        </button>
      </div>
    </Sheet>
  );
}

function sideOf(told: Quantity | undefined, otherwise: number): number {
  return told === undefined ? otherwise : likely(told);
}
