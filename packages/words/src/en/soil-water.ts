/** Water that a soil holds for plants. */
export const soilWaterEn = {
  'soilWater.answer': 'These {depth} of soil hold about {water} of water for plants ({range}): {class}.',
  'soilWater.class.very-low': 'very little',
  'soilWater.class.low': 'little',
  'soilWater.class.moderate': 'a middling amount',
  'soilWater.class.high': 'much',
  'soilWater.class.very-high': 'very much',
  'soilWater.layer': '{span}: about {water}.',
  'soilWater.span': '{top} to {bottom}',
  'soilWater.by':
    'By US soil surveys, which class the water of the top 60 inches (1.5 m), or down to what stops roots.',
  'soilWater.organic': 'Organic matter at {layers} was not told: {pct} % is taken.',
  'soilWater.organic.top': 'Say how much the top holds with --om; a texture alone is a first guess.',
  'soilWater.note.shallow': 'It ends above 1.5 m: the class holds if roots can go no deeper.',
  'soilWater.note.near-a-bound': 'Its range reaches into another class.',
  'cli.bed.water': 'How much water a soil holds for plants, layer by layer.',
  'cli.bed.water.layers': 'layers from the top, such as loam=30cm clay-loam=70cm; 15%=1m where its water was measured',
  'cli.bed.water.om': 'organic matter of the top layer, %',
  'cli.bed.water.stones': 'stones in all of it, % of the volume',
} as const;
