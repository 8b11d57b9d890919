export { between } from './between.ts';
export { createDraws, DEFAULT_DRAW_COUNT, type Draws, drawsOf } from './draws.ts';
export { permutation } from './hash.ts';
export { narrow } from './narrow.ts';
export { normalQuantile } from './normal.ts';
export {
  type Estimate,
  estimateSchema,
  fractionQuantity,
  freeQuantity,
  isEstimate,
  likely,
  percentQuantity,
  positiveQuantity,
  type Quantity,
  quantityOn,
} from './quantity.ts';
export { fraction, free, fromLine, insideScale, onScale, percent, positive, type Scale, toLine } from './scale.ts';
export { fromPublished, type PublishedRange, valueAt, withSpread } from './spread.ts';
export { type Chance, chance, chanceSchema, shareOf, summarise } from './summary.ts';
