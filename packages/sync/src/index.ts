export { attachmentsMissing, type BringReport, type Brought, bring, type ExchangeKeeping } from './bring.ts';
export { type BundleRead, type BundleText, bundleItems, readBundle } from './bundle/read.ts';
export type { BundleItem, BundleProblem } from './bundle/reader.ts';
export { type Bundle, bundleLines, bundleOf } from './bundle/write.ts';
export { digestOf, offerOf } from './exchange/offer.ts';
export { createExchange, type Exchange, type Taken } from './exchange.ts';
