/** The sorts of stuff in a heap that local rules tell apart. */
export const stuffIds = [
  'garden-stuff',
  'kitchen-scraps',
  'meat-or-fish',
  'dairy-or-fat',
  'horse-manure',
  'farm-manure',
  'poultry-manure',
  'rabbit-droppings',
  'dog-or-cat-waste',
  'human-waste',
  'other-stuff',
] as const;
export type StuffId = (typeof stuffIds)[number];

/** What a clause may name: a sort, or one of the wider words that town codes use. */
export type NamedId = StuffId | 'animal-droppings' | 'pet-waste';
export const namedIds: readonly NamedId[] = [...stuffIds, 'animal-droppings', 'pet-waste'];

const droppings: readonly NamedId[] = [
  'horse-manure',
  'farm-manure',
  'poultry-manure',
  'rabbit-droppings',
  'dog-or-cat-waste',
];

/**
 * Whether a sort falls under what a clause names. `maybe` where the word can be read either way: rabbits are pets to one
 * reader and livestock to another, so only the town can say.
 */
export function fallsUnder(stuff: StuffId, named: NamedId): 'is' | 'maybe' | 'no' {
  if (stuff === named) return 'is';
  if (named === 'animal-droppings') return droppings.includes(stuff) ? 'is' : 'no';
  if (named === 'pet-waste') {
    if (stuff === 'dog-or-cat-waste') return 'is';
    return stuff === 'rabbit-droppings' ? 'maybe' : 'no';
  }
  return 'no';
}

/** By the beginning or the end of a material's id; what is found in none of them is garden stuff or another thing. */
const byId: readonly (readonly [pattern: RegExp, stuff: StuffId])[] = [
  [/^rabbit-/u, 'rabbit-droppings'],
  [/^horse-/u, 'horse-manure'],
  [/^(?:hen|duck|turkey|poultry)-/u, 'poultry-manure'],
  [/manure|^goat-/u, 'farm-manure'],
  [/^(?:fish-scraps|crab-shells|meat-fish-dairy|carcasses|blood-meal|bone-meal)$/u, 'meat-or-fish'],
  [/^dog-cat-waste$/u, 'dog-or-cat-waste'],
  [/^(?:human-waste|urine)$/u, 'human-waste'],
  [
    /^(?:kitchen-scraps|vegetable-trimmings|fermented-scraps|bread|fruit-waste|citrus-peel|coffee-grounds|eggshells)$/u,
    'kitchen-scraps',
  ],
];

const plantClasses: ReadonlySet<string> = new Set(['nitrogen-rich', 'carbon-rich', 'bulking']);
const noPlants: ReadonlySet<string> = new Set(['feathers', 'hair', 'wool', 'hoof-and-horn', 'cotton-rags']);

/** The sort to which a material of the table, or a doubtful input, belongs. */
export function stuffOf(id: string, materialClass?: string): StuffId {
  const [, found] = byId.find(([pattern]) => pattern.test(id)) ?? [];
  if (found !== undefined) return found;
  const paper = /cardboard|newspaper|paper/u.test(id);
  return materialClass !== undefined && plantClasses.has(materialClass) && !paper && !noPlants.has(id)
    ? 'garden-stuff'
    : 'other-stuff';
}
