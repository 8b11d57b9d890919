import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { deciding, markOf } from './testing/deciding.ts';

const readme = readFileSync(fileURLToPath(new URL('../../../../reference/README.md', import.meta.url)), 'utf8');

function sectionOf(title: string): string {
  const section = new RegExp(`\\n## ${title}\\n(.*?)(?:\\n## |$)`, 's').exec(readme)?.[1];
  if (section === undefined) throw new Error(`reference/README.md has no section "${title}"`);
  return section;
}

const properties = {
  'C:N': 'carbonToNitrogen_ratio',
  Moisture: 'moisture_pctWet',
  'Loose density': 'densityLoose_kgPerM3AsIs',
} as const;

/** The figures listed under a title, a line for each property: `- Moisture: ` and the ids in backticks. */
function listed(title: string): readonly string[] {
  const section = sectionOf(title);
  return Object.entries(properties).flatMap(([name, property]) => {
    const line = new RegExp(`\\n- ${name}: (.*?)(?=\\n- |\\n\\n|$)`, 's').exec(section)?.[1] ?? '';
    return [...line.matchAll(/`([a-z-]+)`/g)].map(([, id]) => `${id}/${property}`);
  });
}

/** Figures that decided answers while they were recalled, and were looked for one by one. */
const lookedFor = [
  'hen-manure/carbonToNitrogen_ratio',
  'hen-manure/nitrogen_pctDry',
  'hen-manure/volatileSolids_pctDry',
  'hen-manure/densityLoose_kgPerM3AsIs',
  'cattle-manure/carbonToNitrogen_ratio',
  'cattle-manure/nitrogen_pctDry',
  'cattle-manure/volatileSolids_pctDry',
  'poultry-litter/carbonToNitrogen_ratio',
  'poultry-litter/nitrogen_pctDry',
  'poultry-litter/volatileSolids_pctDry',
  'hedge-chippings/moisture_pctWet',
  'wood-chips/moisture_pctWet',
  'wood-shavings/moisture_pctWet',
  'autumn-leaves/moisture_pctWet',
  'autumn-leaves/densityLoose_kgPerM3AsIs',
  'horse-manure-straw/densityLoose_kgPerM3AsIs',
  'goat-bedding/carbonToNitrogen_ratio',
  'goat-bedding/nitrogen_pctDry',
  'goat-bedding/moisture_pctWet',
  'straw/volatileSolids_pctDry',
  'grass-clippings/volatileSolids_pctDry',
  'eelgrass/carbonToNitrogen_ratio',
  'seaweed/moisture_pctWet',
  'sea-lettuce/carbonToNitrogen_ratio',
  'sea-lettuce/moisture_pctWet',
  'lawn-thatch/carbonToNitrogen_ratio',
  'lawn-thatch/moisture_pctWet',
  'leaf-mould/carbonToNitrogen_ratio',
  'leaf-mould/moisture_pctWet',
  'spoiled-hay/moisture_pctWet',
  'fermented-scraps/moisture_pctWet',
  'bracken/moisture_pctWet',
  'reeds/moisture_pctWet',
  'tomato-plants/moisture_pctWet',
  'squash-vines/moisture_pctWet',
  'potato-tops/moisture_pctWet',
  'pine-needles/moisture_pctWet',
  'worm-castings/moisture_pctWet',
  'eelgrass/moisture_pctWet',
  'peat/moisture_pctWet',
  'shredded-paper/densityLoose_kgPerM3AsIs',
  'seaweed/densityLoose_kgPerM3AsIs',
  'rabbit-droppings/moisture_pctWet',
  'rabbit-bedding/moisture_pctWet',
  'rabbit-bedding/densityLoose_kgPerM3AsIs',
  'coffee-grounds/densityLoose_kgPerM3AsIs',
  'border-stems/carbonToNitrogen_ratio',
  'border-stems/moisture_pctWet',
  'border-stems/densityLoose_kgPerM3AsIs',
  'finished-compost/carbonToNitrogen_ratio',
  'seaweed/carbonToNitrogen_ratio',
  'worm-castings/carbonToNitrogen_ratio',
  'onion-waste/moisture_pctWet',
  'weeds-in-seed/moisture_pctWet',
  'weed-roots/carbonToNitrogen_ratio',
  'weed-roots/moisture_pctWet',
  'cut-flowers/moisture_pctWet',
  'used-potting-mix/carbonToNitrogen_ratio',
  'used-potting-mix/moisture_pctWet',
  'unfinished-compost/carbonToNitrogen_ratio',
  'peanut-shells/densityLoose_kgPerM3AsIs',
  'prunings/densityLoose_kgPerM3AsIs',
  'cotton-rags/densityLoose_kgPerM3AsIs',
  'hair/densityLoose_kgPerM3AsIs',
  'feathers/densityLoose_kgPerM3AsIs',
  'potatoes/densityLoose_kgPerM3AsIs',
];

describe('figures that decide an answer', () => {
  it.each(lookedFor)('%s rests on a print, or says that none was found', (figure) => {
    const { mark, note } = markOf(figure);
    expect(mark).toBeDefined();
    if (mark === 'memory') expect(note).toContain('no published figure found');
  });

  it('are told in reference/README.md where they are recalled, each of them and no other', () => {
    const recalled = deciding(({ values }, property) => values[property]?.mark === 'memory');
    expect(listed('What is still recalled').toSorted()).toEqual(recalled.toSorted());
  });
});
