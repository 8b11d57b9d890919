import '@loamwright/words/later';
import type { SoilCarbon } from '@loamwright/science';
import type { ReactNode } from 'react';
import { Band } from '../../pictures/Band.tsx';
import { useSpeaker } from '../../shell/words.tsx';

interface Properties {
  readonly carbon: SoilCarbon;
  /** Whether nothing goes on: then there is no other case. */
  readonly isBare: boolean;
}

/** Organic matter over the years, as wide as it is uncertain, beside the bed with nothing put on. */
export function YearsPicture({ carbon, isBare }: Properties): ReactNode {
  const speaker = useSpeaker();
  const last = carbon.years.at(-1);
  if (last === undefined) return null;
  const tenths = (value: number): string => value.toFixed(1);
  return (
    <figure className="picture">
      <Band
        label={speaker.say('yearsPage.picture', {
          years: last.year,
          start: tenths(carbon.start_pctDry.p50),
          end: tenths(carbon.end_pctDry.p50),
          low: tenths(carbon.end_pctDry.p10),
          high: tenths(carbon.end_pctDry.p90),
          bare: tenths(last.without_pctDry.p50),
        })}
        years={carbon.years.map(({ year, organicMatter_pctDry, without_pctDry }) => ({
          year,
          low: organicMatter_pctDry.p10,
          likely: organicMatter_pctDry.p50,
          high: organicMatter_pctDry.p90,
          otherwise: without_pctDry.p50,
        }))}
        heights={speaker.say('yearsPage.picture.percent')}
        steps={speaker.say('yearsPage.picture.years')}
        otherwise={isBare ? null : speaker.say('yearsPage.picture.bare')}
        sayValue={tenths}
      />
    </figure>
  );
}
