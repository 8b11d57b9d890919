export { type AttachmentsOf, attachmentName, attachmentsOf } from './attachment.ts';
export { type DraftHeader, draftOf, readDraft } from './draft.ts';
export { canonical, canonicalBytes } from './entry/canonical.ts';
export type { About, Draft, Entered, Entry, JsonObject, JsonValue, Precision, Tip } from './entry/entry.ts';
export { readEntry } from './entry/read.ts';
export { continues, headerVersion, seal } from './entry/seal.ts';
export { sha256Hex, sumOf } from './entry/sum.ts';
export {
  type Break,
  type Changed,
  type CheckedChain,
  type Conflict,
  checkChain,
  conflictsOf,
  type Doubled,
  type Gap,
} from './entry/verify.ts';
export { type FoldOptions, fold } from './fold/fold.ts';
export { type ConflictKept, type Force, settle } from './fold/force.ts';
export type {
  Bay,
  Bed,
  Heap,
  HeapAct,
  HeapPhase,
  Holding,
  LastRaw,
  Layer,
  Loose,
  LooseReason,
  OwnMaterial,
  Spreading,
  StockMove,
  StockOfMaterial,
  Transfer,
  Unread,
  Warning,
  WarningCode,
} from './fold/holding.ts';
export { within_ms } from './fold/open.ts';
export type { OutOfForce, PointsNowhere, Powerless, Waiting } from './fold/threads.ts';
export { type Head, type HeldOfDevice, heldOf, type Run, type Side } from './held.ts';
export * from './kinds/index.ts';
export * from './limits.ts';
export { type LineageSubject, lineageOf, type MaterialShare, madeOf } from './lineage.ts';
export { type Merged, merge } from './merge.ts';
export { compareInChain, compareInFold, compareText } from './order.ts';
export {
  type Ask,
  type Attachment,
  type AttachmentNote,
  type CheckReport,
  type DeviceTip,
  type ExchangeMessage,
  type Give,
  type GivenAttachment,
  type Keeping,
  KeepingError,
  type KeepingErrorCode,
  type KeepReport,
  type Offer,
  type Page,
  type Position,
  type Stretch,
} from './port.ts';
export { isAhead } from './slips.ts';
export { daysBetween, epoch_ms, isInstant, isZone, localDate } from './time.ts';
