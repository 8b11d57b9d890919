import '@loamwright/words/later';
import { namedIds } from '@loamwright/science';
import type { ShownAs } from '@loamwright/units';
import type { ReactNode } from 'react';
import { NumberField } from '../../parts/NumberField.tsx';
import { QuantityField } from '../../parts/QuantityField.tsx';
import { useSpeaker } from '../../shell/words.tsx';
import { type AskedKind, type FigureName, type Figures, withFigure } from './asked.ts';
import { StuffChoices } from './StuffChoices.tsx';

interface Properties {
  readonly kind: AskedKind;
  readonly figures: Figures;
  readonly onChange: (figures: Figures) => void;
}

/** What one kind of clause asks: a figure or two, sorts of stuff, or nothing more. */
export function ClauseFields({ kind, figures, onChange }: Properties): ReactNode {
  const speaker = useSpeaker();
  const fill = (name: FigureName, value: number | null, isWrong: boolean): void =>
    onChange(withFigure(figures, name, value, isWrong));
  const limit = (label: string, shownAs: ShownAs, hint?: string): ReactNode => (
    <QuantityField
      label={label}
      hint={hint}
      shownAs={shownAs}
      value={null}
      onChange={(si, _words, isWrong) => fill('limit', si, isWrong)}
    />
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
            onChange={(si, _words, isWrong) => fill('perLot_m2', si, isWrong)}
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
          onChange={(share, isWrong) => fill('limit', share, isWrong)}
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
            onChange={(si, _words, isWrong) => fill('short_m', si, isWrong)}
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
          onChange={(stuff) => onChange({ ...figures, stuff })}
        />
      );
    default:
      return null;
  }
}
