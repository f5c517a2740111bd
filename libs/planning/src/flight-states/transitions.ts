import type { FlightState } from '../scenario.js';
import type { FlightRole, Transition } from './transition.js';

/** What each state means; the order is that of a flight that goes well, then the side exits. */
export const stateMeanings: Readonly<Record<FlightState, string>> = {
  idea: 'found by a planning run; not shown to crews',
  offered: 'proposed to the dispatcher',
  approved: 'accepted by a named person; named drums are set aside for it',
  given: 'on the pilot’s phone or sheet, with its version',
  loaded: 'drums aboard, the two totals agreed',
  away: 'taken off',
  home: 'landed at a base',
  reported: 'every drum accounted for',
  closed: 'costs and hours entered',
  declined: 'not wanted, with the reason',
  'called off': 'will not be flown: weather, aircraft, no need',
  'turned back': 'came back without landing where it was going; drums still aboard',
  'ended elsewhere': 'landed where it was not going',
};

const office: readonly FlightRole[] = ['operations manager', 'dispatcher'];
const crew: readonly FlightRole[] = ['pilot', 'helicopter crew'];
/** The dispatcher enters what comes by radio. */
const reporters: readonly FlightRole[] = [...crew, 'dispatcher'];
/** States in which a flight may be in the air with nobody told. */
const unreported: readonly FlightState[] = ['approved', 'given', 'loaded'];
const noTakeOff = 'no take-off was reported';

/** The state machine of a flight. One line at most for an act in a state. */
export const transitions: readonly Transition[] = [
  { act: 'offer', from: ['idea'], to: 'offered', who: ['planner'], needs: [] },
  { act: 'replan', from: ['idea', 'offered'], to: 'same', who: ['planner'], needs: [], newVersion: true },
  { act: 'approve', from: ['offered'], to: 'approved', who: office, needs: ['checked today'] },
  {
    act: 'amend',
    from: ['offered', 'approved', 'given'],
    to: 'same',
    who: office,
    needs: ['checked today'],
    newVersion: true,
  },
  {
    act: 'amend',
    from: ['loaded'],
    to: 'given',
    who: office,
    needs: ['checked today'],
    newVersion: true,
  },
  {
    act: 'decline',
    from: ['offered'],
    to: 'declined',
    who: office,
    needs: ['reason'],
    handsDrumsBack: true,
  },
  { act: 'give', from: ['approved'], to: 'given', who: office, needs: ['pilot', 'no open decision'] },
  {
    act: 'load',
    from: ['given'],
    to: 'loaded',
    who: [...crew, 'dispatcher', 'storekeeper'],
    needs: ['totals agreed', 'surface known', 'no held drum', 'no open decision'],
  },
  { act: 'take off', from: ['loaded'], to: 'away', who: reporters, needs: [] },
  {
    act: 'take off',
    from: ['approved', 'given'],
    to: 'away',
    who: reporters,
    needs: [],
    raises: 'it took off before its totals were agreed',
  },
  { act: 'land', from: ['away'], to: 'home', who: reporters, needs: [] },
  {
    act: 'land',
    from: unreported,
    to: 'home',
    who: reporters,
    needs: [],
    raises: noTakeOff,
  },
  {
    act: 'report',
    from: ['home', 'turned back', 'ended elsewhere'],
    to: 'reported',
    who: reporters,
    needs: ['every drum accounted for'],
  },
  {
    act: 'close',
    from: ['reported'],
    to: 'closed',
    who: ['operations manager', 'accounts'],
    needs: ['costs and hours'],
  },
  {
    act: 'let go',
    from: ['approved', 'given'],
    to: 'offered',
    who: office,
    needs: [],
    handsDrumsBack: true,
    newVersion: true,
  },
  { act: 'refuse', from: ['approved', 'given'], to: 'same', who: crew, needs: [], mark: 'set' },
  { act: 'refuse', from: ['loaded'], to: 'given', who: crew, needs: [], mark: 'set' },
  {
    act: 'call off',
    from: ['offered'],
    to: 'called off',
    who: ['planner', ...office],
    needs: ['reason'],
    handsDrumsBack: true,
  },
  {
    act: 'call off',
    from: ['approved', 'given', 'loaded'],
    to: 'called off',
    who: office,
    needs: ['reason'],
    handsDrumsBack: true,
  },
  { act: 'turn back', from: ['away'], to: 'turned back', who: reporters, needs: [] },
  {
    act: 'turn back',
    from: unreported,
    to: 'turned back',
    who: reporters,
    needs: [],
    raises: noTakeOff,
  },
  { act: 'end elsewhere', from: ['away'], to: 'ended elsewhere', who: reporters, needs: [] },
  {
    act: 'end elsewhere',
    from: unreported,
    to: 'ended elsewhere',
    who: reporters,
    needs: [],
    raises: noTakeOff,
  },
  {
    act: 'mark',
    from: ['offered', 'approved', 'given'],
    to: 'same',
    who: ['planner', ...office],
    needs: ['reason'],
    mark: 'set',
  },
  { act: 'unmark', from: ['offered', 'approved', 'given'], to: 'same', who: ['planner'], needs: [] },
  {
    act: 'keep',
    from: ['offered', 'approved', 'given'],
    to: 'same',
    who: office,
    needs: ['reason', 'checked today'],
  },
];
