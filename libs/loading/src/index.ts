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
export { centreOfGravity, envelopeAt, type Mass } from './envelope.js';
export { findPositions, type Positions } from './find-positions.js';
export type { BalanceFault } from './loading-faults.js';
export { ownFuel } from './own-fuel.js';
export * from './route-load.js';
export { type StripWeights, stripWeights } from './strip-limit.js';
export { type MoveSuggestion, suggestMove } from './suggest-move.js';
