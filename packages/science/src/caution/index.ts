export { type CautionId, type CautionSource, cautionIds, cautions, inOrder } from './caution.ts';
