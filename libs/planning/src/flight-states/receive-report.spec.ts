import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { FlightState } from '../scenario.js';
import type { FlightStanding } from './next-state.js';
import { type ReportedAct, receiveReport, reportedActs } from './receive-report.js';
import type { Need } from './transition.js';
import { stateMeanings } from './transitions.js';

const everything: readonly Need[] = [
  'totals agreed',
  'surface known',
  'no held drum',
  'every drum accounted for',
];
const flight = (state: FlightState): FlightStanding => ({
  id: 'F05',
  state,
  version: 1,
  needsDecision: null,
});
const receive = (state: FlightState, act: ReportedAct, met = everything) =>
  receiveReport(flight(state), { act, by: { name: 'Ana', role: 'pilot' }, met });

describe('a report that comes in late or twice', () => {
  it('moves the flight while it is about what comes next', () => {
    expect(receive('loaded', 'take off')).toMatchObject({ kind: 'moved', flight: { state: 'away' } });
    expect(receive('given', 'land')).toMatchObject({
      kind: 'moved',
      flight: { state: 'home' },
      raised: 'F05: no take-off was reported.',
    });
  });

  it('of what is known already, from a second phone, is kept and says nothing new', () => {
    expect(receive('away', 'take off')).toEqual({ kind: 'kept', raised: null });
    expect(receive('home', 'land')).toEqual({ kind: 'kept', raised: null });
    expect(receive('loaded', 'load')).toEqual({ kind: 'kept', raised: null });
    expect(receive('reported', 'report')).toEqual({ kind: 'kept', raised: null });
  });

  it('of a step that the flight is past is kept and raised', () => {
    const raised = 'F05 is home: "take off" by Ana came in after that.';
    expect(receive('home', 'take off')).toEqual({ kind: 'kept', raised });
    expect(receive('away', 'load')).toMatchObject({ kind: 'kept', raised: expect.any(String) });
    expect(receive('turned back', 'land')).toMatchObject({ kind: 'kept', raised: expect.any(String) });
  });

  it('of a flight that base called off meanwhile is kept and raised: somebody may be flying it', () => {
    const raised = 'F05 is called off: "take off" by Ana came in after that.';
    expect(receive('called off', 'take off')).toEqual({ kind: 'kept', raised });
  });

  it('is refused where the step is still to come', () => {
    expect(receive('approved', 'load').kind).toBe('refused');
    expect(receive('given', 'load', []).kind).toBe('refused');
    expect(receive('away', 'report').kind).toBe('refused');
    expect(receive('home', 'report', []).kind).toBe('refused');
  });
});

it('what has been flown is never refused, whatever state the flight is in', () => {
  const flown = ['take off', 'land', 'turn back', 'end elsewhere'] as const;
  const states = Object.keys(stateMeanings) as FlightState[];
  fc.assert(
    fc.property(fc.constantFrom(...states), fc.constantFrom(...flown), (state, act) => {
      expect(receive(state, act, []).kind).not.toBe('refused');
    }),
  );
  expect(reportedActs).toEqual(expect.arrayContaining([...flown]));
});
