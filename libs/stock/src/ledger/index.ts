export { isUnheardOf } from './balance.js';
export { bookAt, stepAt } from './book-at.js';
export {
  bookStandsAfter,
  type CaseClosing,
  type ClosingAnswer,
  closeCase,
  type DifferenceCase,
  type DifferenceCause,
  differenceCases,
  differenceCauses,
} from './difference-case.js';
export { drawnOn, slungSince } from './done-in.js';
export { type LedgerChange, ledgerChange } from './ledger-change.js';
export type * from './ledger-state.js';
export { lookAlikeDraws } from './look-alikes.js';
export { mayHurt } from './may-hurt.js';
export * from './millilitres.js';
export { missingLoading } from './missing-loading.js';
export type * from './movement.js';
export { overCapacity } from './over-capacity.js';
export type * from './raised.js';
export { raisedIn } from './raised-in.js';
export { holdAt, standingHold } from './read-batch.js';
export { applyMovement, asItWasAt, asKnownAt, replay } from './replay.js';
export { standingCorrections } from './reversals.js';
export { asLanded, ridingHome, withRiding } from './riding-home.js';
export { standingCounts } from './standing-counts.js';
export { stockAfter } from './stock-after.js';
export { type KnownHere, strangeIn } from './strange-report.js';
export { type Subjects, subjectsOf } from './subjects.js';
export { carriedCount, toBatches, toCounts, toDrums } from './to-stock.js';
