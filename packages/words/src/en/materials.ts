import { animalsEn } from './material/animals.ts';
import { gardenGreensEn } from './material/garden-greens.ts';
import { generalNamesEn } from './material/general.ts';
import { kitchenEn } from './material/kitchen.ts';
import { knownEn } from './material/known.ts';
import { materialReasonsEn } from './material/reasons.ts';
import { startersAndMineralsEn } from './material/starters-and-minerals.ts';
import { strawAndLeavesEn } from './material/straw-and-leaves.ts';
import { woodAndPaperEn } from './material/wood-and-paper.ts';

type MaterialsEn = typeof strawAndLeavesEn &
  typeof woodAndPaperEn &
  typeof gardenGreensEn &
  typeof kitchenEn &
  typeof animalsEn &
  typeof startersAndMineralsEn &
  typeof generalNamesEn &
  typeof knownEn &
  typeof materialReasonsEn;

/** Every message about materials: their names, the words they are searched by, and the reasons that go with them. */
export const materialsEn: MaterialsEn = {
  ...strawAndLeavesEn,
  ...woodAndPaperEn,
  ...gardenGreensEn,
  ...kitchenEn,
  ...animalsEn,
  ...startersAndMineralsEn,
  ...generalNamesEn,
  ...knownEn,
  ...materialReasonsEn,
};
