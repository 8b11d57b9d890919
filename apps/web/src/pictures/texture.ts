/** How stuff looks in a picture: a drawn pattern and a pigment. The pattern tells it apart where colours can't be seen. */
export interface Texture {
  readonly pattern: Pattern;
  readonly pigment: Pigment;
  /** A second material of the same pattern in one picture has it drawn another way round. */
  readonly variant: number;
}

export type Pattern = 'stalks' | 'leaves' | 'grains' | 'paste' | 'chips' | 'sheets' | 'pellets' | 'lumps' | 'waves';

export type Pigment = 'ochre' | 'sienna' | 'umber' | 'green' | 'slate' | 'bone' | 'soot' | 'moss';

/** What a picture has to know of a material. */
export interface Drawn {
  readonly id: string;
  readonly particle: string;
  readonly class: string;
}

const patternOf: Readonly<Record<string, Pattern>> = {
  stringy: 'stalks',
  leafy: 'leaves',
  fine: 'grains',
  pasty: 'paste',
  coarse: 'chips',
  sheet: 'sheets',
  pellet: 'pellets',
  lumpy: 'lumps',
  liquid: 'waves',
};

/** Those that a grower knows by their colour. */
const pigmentOf: Readonly<Record<string, Pigment>> = {
  straw: 'ochre',
  'hay-grass': 'ochre',
  'hay-legume': 'green',
  'autumn-leaves': 'sienna',
  'oak-leaves': 'umber',
  'grass-clippings': 'green',
  'green-weeds': 'green',
  'legume-greens': 'green',
  comfrey: 'moss',
  'vegetable-trimmings': 'moss',
  'coffee-grounds': 'soot',
  'finished-compost': 'soot',
  charcoal: 'soot',
  soil: 'umber',
  'wood-ash': 'slate',
  'goat-bedding': 'umber',
  'horse-manure-straw': 'umber',
  'kitchen-scraps': 'sienna',
  'apple-pomace': 'bone',
  'hedge-chippings': 'moss',
  'wood-chips': 'bone',
  sawdust: 'bone',
  'wood-shavings': 'bone',
  'corrugated-cardboard': 'bone',
  newspaper: 'slate',
  seaweed: 'moss',
};

const pigmentOfClass: Readonly<Record<string, Pigment>> = {
  'carbon-rich': 'ochre',
  'nitrogen-rich': 'umber',
  bulking: 'bone',
  mineral: 'slate',
  starter: 'soot',
  water: 'slate',
};

/** Textures of the materials in one picture, so that no two of them look alike. */
export function texturesFor(materials: readonly Drawn[]): ReadonlyMap<string, Texture> {
  const textures = new Map<string, Texture>();
  const used = new Map<Pattern, number>();
  for (const material of materials) {
    if (textures.has(material.id)) continue;
    const pattern = patternOf[material.particle] ?? 'grains';
    const variant = used.get(pattern) ?? 0;
    used.set(pattern, variant + 1);
    textures.set(material.id, {
      pattern,
      pigment: pigmentOf[material.id] ?? pigmentOfClass[material.class] ?? 'umber',
      variant,
    });
  }
  return textures;
}
