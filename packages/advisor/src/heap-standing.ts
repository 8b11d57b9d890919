import type { Cover, Wall } from '@loamwright/daybook';
import type { HeapCoverId, HeapWallId } from '@loamwright/science';

/** What the walls of a bay, as the daybook has them, are to the model of a heap. */
export const wallAround: Readonly<Record<Wall, HeapWallId>> = {
  boards: 'timber',
  pallets: 'pallet',
  mesh: 'none',
  masonry: 'block',
  bales: 'strawBales',
  plastic: 'plastic',
  drum: 'plastic',
  open: 'none',
  other: 'none',
};

/** What lies on a heap. Leaves keep warm as straw does, soil as compost does: neither has figures of its own. */
export const coverOver: Readonly<Record<Cover, HeapCoverId>> = {
  none: 'open',
  sheet: 'tarpaulin',
  lid: 'lid',
  straw: 'straw',
  leaves: 'straw',
  soil: 'compost',
  compost: 'compost',
  other: 'open',
};
