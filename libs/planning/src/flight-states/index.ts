export { describeFlightStates } from './describe-states.js';
export {
  actsOpen,
  type FlightStanding,
  type FlightStep,
  type Moved,
  nextState,
  type Refused,
} from './next-state.js';
export { type ReplanFreedom, replanFreedom, standingState } from './replan-freedom.js';
export type * from './transition.js';
export { stateMeanings, transitions } from './transitions.js';
