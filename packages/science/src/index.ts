export { catalogue } from './all.ts';
export * from './belief/index.ts';
export * from './catalogue/index.ts';
export * from './caution/index.ts';
export * from './estimate/index.ts';
export * from './heap/index.ts';
export * from './material/index.ts';
export * from './mix/index.ts';
export * from './solver/index.ts';
