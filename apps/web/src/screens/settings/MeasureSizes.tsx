import { allMeasures, likely } from '@loamwright/science';
import { convert } from '@loamwright/units';
import type { ReactNode } from 'react';
import { changeSettings, settings, useSettings } from '../../device/settings.ts';
import { QuantityField } from '../../parts/QuantityField.tsx';
import { useSpeaker } from '../../shell/words.tsx';

/** The grower's own sizes of buckets, barrows and bags. */
export function MeasureSizes(): ReactNode {
  const speaker = useSpeaker();
  const { measures_L } = useSettings();
  return (
    <section className="section stack">
      <h2>{speaker.say('app.settings.measures')}</h2>
      <p className="small quiet">{speaker.say('app.settings.measuresTold')}</p>
      {allMeasures
        .filter(({ kind }) => kind === 'container')
        .map(({ id, volume_L }) => (
          <QuantityField
            key={id}
            label={speaker.sayIf(`measure.${id}.name`, id)}
            hint={speaker.say('app.settings.measureUsual', {
              size: speaker.likely(litres(likely(volume_L)), 'm3', 'liquid'),
            })}
            shownAs="liquid"
            value={measures_L[id] === undefined ? null : litres(measures_L[id])}
            onChange={(size_m3) => putSize(id, size_m3)}
          />
        ))}
    </section>
  );
}

function litres(volume_L: number): number {
  return convert(volume_L, 'L', 'm3');
}

/** Nothing written, or nothing that holds anything, gives the measure its usual size back. */
function putSize(measure: string, size_m3: number | null): void {
  const { [measure]: _before, ...others } = settings().measures_L;
  const size_L = size_m3 === null ? 0 : convert(size_m3, 'm3', 'L');
  changeSettings({ measures_L: size_L > 0 ? { ...others, [measure]: size_L } : others });
}
