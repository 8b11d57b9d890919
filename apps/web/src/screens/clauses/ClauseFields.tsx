import '@loamwright/words/later';
import { namedIds } from '@loamwright/science';
import type { ShownAs } from '@loamwright/units';
import type { ReactNode } from 'react';
import { NumberField } from '../../parts/NumberField.tsx';
import { QuantityField } from '../../parts/QuantityField.tsx';
import { useSpeaker } from '../../shell/words.tsx';
import type { AskedKind, Figures } from './asked.ts';
import { StuffChoices } from './StuffChoices.tsx';

interface Properties {
  readonly kind: AskedKind;
  readonly figures: Figures;
  readonly onChange: (figures: Figures) => void;
}

/** What one kind of clause asks: a figure or two, sorts of stuff, or nothing more. */
export function ClauseFields({ kind, figures, onChange }: Properties): ReactNode {
  const speaker = useSpeaker();
  const put = (change: Partial<Figures>): void => onChange({ ...figures, ...change });
  const limit = (label: string, shownAs: ShownAs, hint?: string): ReactNode => (
    <QuantityField label={label} hint={hint} shownAs={shownAs} value={null} onChange={(si) => put({ limit: si })} />
  );
  const most = speaker.say('clausesPage.new.most');
  const untold = speaker.say('clausesPage.new.untold');
  switch (kind) {
    case 'volume':
      return (
        <>
          {limit(most, 'bulkVolume', untold)}
          <QuantityField
            label={speaker.say('clausesPage.new.per')}
            shownAs="area"
            value={null}
            onChange={(perLot_m2) => put({ perLot_m2 })}
          />
        </>
      );
    case 'height':
      return limit(most, 'length', untold);
    case 'footprint':
      return limit(most, 'area', untold);
    case 'lot-share':
      return (
        <NumberField
          label={speaker.say('clausesPage.new.share')}
          hint={untold}
          most={100}
          onChange={(share) => put({ limit: share })}
        />
      );
    case 'sides':
      return (
        <>
          {limit(speaker.say('clausesPage.new.long'), 'length')}
          <QuantityField
            label={speaker.say('clausesPage.new.short')}
            shownAs="length"
            value={null}
            onChange={(short_m) => put({ short_m })}
          />
        </>
      );
    case 'from-line':
    case 'from-house':
    case 'from-water':
      return limit(speaker.say('clausesPage.new.least'), 'length', untold);
    case 'bars':
    case 'allows':
    case 'allows-only':
      return (
        <StuffChoices
          legend={speaker.say('clausesPage.new.stuff')}
          ids={namedIds}
          chosen={figures.stuff}
          onChange={(stuff) => put({ stuff })}
        />
      );
    default:
      return null;
  }
}
