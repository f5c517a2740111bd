import type { FlightState } from '../scenario.js';

/** Who may take a flight further. `planner`: a planning run, in the name of whoever started it. */
export type FlightRole =
  | 'planner'
  | 'operations manager'
  | 'dispatcher'
  | 'pilot'
  | 'helicopter crew'
  | 'storekeeper'
  | 'accounts';

export type FlightAct =
  | 'offer'
  | 'replan'
  | 'approve'
  | 'amend'
  | 'decline'
  | 'give'
  | 'load'
  | 'take off'
  | 'land'
  | 'report'
  | 'close'
  | 'let go'
  | 'refuse'
  | 'call off'
  | 'turn back'
  | 'end elsewhere'
  | 'mark'
  | 'unmark'
  | 'keep';

/** What an act asks for beyond the person. */
export type Need =
  | 'reason'
  | 'checked today'
  | 'pilot'
  | 'totals agreed'
  | 'surface known'
  | 'no held drum'
  | 'every drum accounted for'
  | 'costs and hours'
  | 'no open decision';

/** One line of the state machine. */
export interface Transition {
  readonly act: FlightAct;
  readonly from: readonly FlightState[];
  /** `same`: the state stays. */
  readonly to: FlightState | 'same';
  readonly who: readonly FlightRole[];
  readonly needs: readonly Need[];
  /** The flight's drums go back to the pick list. */
  readonly handsDrumsBack?: true;
  /** The flight changes, and with it its version. */
  readonly newVersion?: true;
  /** Sets "Needs a decision"; absent: the act settles it. */
  readonly mark?: 'set';
  /** A report that skips a step is accepted, and this is raised. */
  readonly raises?: string;
}
