export { convert } from './convert.ts';
export { readArea, readQuantity, readSides, siUnitOf, type TypedArea, type TypedQuantity } from './read.ts';
export { type ShownAs, type UnitSystem, unitFor } from './system.ts';
export { allUnits, type Dimension, type Unit, unitTable } from './table.ts';
