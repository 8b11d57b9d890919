import { convert } from '@loamwright/units';
import { expect, it } from 'vitest';
import { createDraws } from '../estimate/index.ts';
import { droppings } from './droppings.ts';

// USDA Natural Resources Conservation Service, manure by animal unit: 12 laying hens in 30 days leave 90.3 lb (41.0 kg) with 0.552 kg of
// nitrogen as excreted, of which 69 % is left after storage (ratio of the two columns). Rounded figures of the table: half a percent.
it('USDA NRCS: twelve hens in thirty days', () => {
  const found = droppings.run({ animal: 'laying-hen', count: 12, days: 30 }, { draws: createDraws() });
  if (!found.ok) throw new RangeError('an answer');
  expect(convert(found.value.wet_kg.p50, 'kg', 'lb') / 90.3).toBeCloseTo(1, 2);
  expect(found.value.nitrogen_kg.p50 / 0.552).toBeCloseTo(1, 2);
  expect(found.value.keptNitrogen_kg.p50 / found.value.nitrogen_kg.p50).toBeCloseTo(0.69, 2);
});
