export * from './catalogue/index.ts';
export * from './caution/index.ts';
export * from './estimate/index.ts';
export * from './solver/index.ts';
