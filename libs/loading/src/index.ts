export * from './aircraft-type.js';
export type { BalanceMoment, BalanceMomentName, TipCheck } from './balance-moments.js';
export {
  type Cargo,
  type DrumAboard,
  type FlightCabin,
  type FlightFuel,
  type PlacedDrum,
  planningDrums,
} from './cabin.js';
export { type BalanceReport, checkBalance } from './check-balance.js';
export * from './dangerous-goods/goods-aboard.js';
export * from './dangerous-goods/particulars.js';
export * from './dangerous-goods/passengers-and-drums.js';
export type * from './delivery/delivery-report.js';
export { deliveryTexts } from './delivery/delivery-texts.js';
export { type ParsedDelivery, parseDelivery } from './delivery/parse-delivery.js';
export { centreOfGravity, envelopeAt, type Mass } from './envelope.js';
export { findPositions, type Positions } from './find-positions.js';
export * from './go-back/alternates.js';
export * from './go-back/fallbacks.js';
export * from './go-back/go-back-lines.js';
export * from './go-back/latest-leave.js';
export * from './go-back/leave-again.js';
export * from './go-back/soft-words.js';
export { asLoaded, type DrumAsLoaded } from './load-sheet/as-loaded.js';
export { checkCode } from './load-sheet/check-code.js';
export { gatherPassengers } from './load-sheet/gather-passengers.js';
export type * from './load-sheet/load-sheet.js';
export { makeLoadSheet } from './load-sheet/make-load-sheet.js';
export { sheetName } from './load-sheet/sheet-names.js';
export { readSquareCode } from './load-sheet/square-text.js';
export { waysToHold } from './load-sheet/ways-to-hold.js';
export type { RowBalance, WeightRow } from './load-sheet/weight-rows.js';
export type { BalanceFault } from './loading-faults.js';
export { checkLoad, type LoadReport } from './named-load/check-load.js';
export { drumInNoBook } from './named-load/drum-in-no-book.js';
export { heldAboardWords } from './named-load/held-aboard.js';
export type { NamedDrum, NamedLoad, StandingDrumAboard } from './named-load/named-load.js';
export {
  type BarBlock,
  type BarLimit,
  type PayloadBar,
  payloadBars,
  type SurfacesHeard,
} from './named-load/payload-bar.js';
export { type CargoToPlace, type PlacedCargo, placeCargo } from './named-load/place-cargo.js';
export { type PlacedDrums, placeDrums } from './named-load/place-drums.js';
export {
  type PreparationList,
  type PreparedPosition,
  preparationList,
} from './named-load/preparation-list.js';
export { type WeighedLeg, type WeightAgainstLimit, weighLoad } from './named-load/weigh-load.js';
export { outsideWords } from './outside-words.js';
export { ownFuel } from './own-fuel.js';
export {
  type PrintedLeg,
  type PrintedRequest,
  printedLb,
  printedLbOf,
  printedLegs,
  printedSpareLb,
} from './printed-weights.js';
export * from './route-load.js';
export { type StripWeights, stripWeights } from './strip-limit.js';
export { type MoveSuggestion, suggestMove } from './suggest-move.js';
export type { AircraftRating, RoadRating, WrittenRating } from './tie-down/rating.js';
export { type StrapAngles, type StrapShare, strapShare } from './tie-down/strap-share.js';
export * from './tie-down/tie-down.js';
export * from './tie-down/tie-down-setting.js';
export { compareTotals, type TotalsComparison } from './two-totals/compare-totals.js';
export { nearNumbers } from './two-totals/near-numbers.js';
export { questionFill, questionLimit, questionWeight } from './two-totals/question-weight.js';
export { type ItemTotals, itemTotals, type SheetItem } from './two-totals/sheet-item.js';
export type { Slip, SlipKind } from './two-totals/slip.js';
export {
  type OwnSheet,
  type ToldSheet,
  unlikeOwnCode,
  unlikeOwnSheet,
  whyDoesNotHold,
} from './two-totals/told-sheet.js';
export { areTwoPeople, totalsApart } from './two-totals/totals-apart.js';
export { compareWithSheet, roundingBeside, type SheetFigures } from './two-totals/with-sheet.js';
export { isSoftNearest } from './unknown-counts-soft.js';
export { printedPlan, unloadOrStay } from './unload-or-stay.js';
