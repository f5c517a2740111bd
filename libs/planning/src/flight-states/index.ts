export { dayOverWords, isUnheardOf, unfinishedStates } from './day-over.js';
export { describeFlightStates } from './describe-states.js';
export {
  type DrumForStop,
  type DrumOfFlight,
  deliveryDifferences,
  drumsMissing,
} from './flight-drums.js';
export {
  actsOpen,
  type FlightStanding,
  type FlightStep,
  type Moved,
  nextState,
  type Refused,
} from './next-state.js';
export { type Kept, type ReportedAct, receiveReport, reportedActs } from './receive-report.js';
export { markableStates, type ReplanFreedom, replanFreedom, standingState } from './replan-freedom.js';
export type * from './transition.js';
export { stateMeanings, transitions } from './transitions.js';
export { type AwayWord, awayWord, expectedBack } from './who-is-away.js';
