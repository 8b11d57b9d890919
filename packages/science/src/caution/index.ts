export { type CautionId, cautionIds, cautions, inOrder } from './caution.ts';
