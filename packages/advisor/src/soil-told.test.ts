import { fold } from '@loamwright/daybook';
import { testWriter } from '@loamwright/daybook/testing';
import { createSpeaker } from '@loamwright/words';
import { describe, expect, it } from 'vitest';
import { soilTestedSaying } from './soil-told.ts';

const speaker = createSpeaker({ locale: 'en', system: 'metric' });

describe('a soil test in the daybook', () => {
  it('is told with its figures, methods and laboratory', () => {
    const writer = testWriter();
    writer.write('bed-set-up', 'kale', { name: 'Kale', area_m2: 3 }, {});
    const figures = [
      { element: 'phosphorus', value: 84, unit: 'ppm', method: 'bray-1' },
      { element: 'potassium', value: 100, unit: 'ppm', method: 'ammonium-acetate', asOxide: true },
    ] as const;
    writer.write('soil-tested', 'kale', { figures, pH: 6.2, laboratory: 'Valley Soils' }, {});
    const body = fold(writer.entries, {}).beds.get('kale')?.tests[0]?.body;
    if (body === undefined) throw new RangeError('tested');
    const bed = { key: 'beds.crop', places: { crop: 'Kale' } } as const;
    expect(speaker.tell(soilTestedSaying(body, bed))).toBe(
      'Soil of Kale tested by Valley Soils: phosphorus 84 ppm (Bray-1), potassium 100 ppm K₂O (Ammonium-acetate), and pH 6.2.',
    );
  });
});
