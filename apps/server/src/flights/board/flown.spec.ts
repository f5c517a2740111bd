import type { DrumOfFlight, FlightState } from '@drumline/planning';
import { expect, it } from 'vitest';
import type { Flight, Load } from '../store/flight.table.js';
import { flownBy } from './flown.js';

const flight = (state: FlightState) =>
  ({ state, fromPlace: 'XMER', stops: [{ place: 'XGAN', drums: 3 }] }) as unknown as Flight;
const loads = ['0431', '0432', null].map(
  (drum, at): Load => ({
    flightId: 'F06',
    load: at + 1,
    stop: 0,
    place: 'XGAN',
    drum,
    settled: true,
    position: null,
    toldKg: null,
  }),
);
const off = (drum: string, kind: 'left at' | 'brought home', place: string): DrumOfFlight => ({
  drum,
  off: { kind, place },
  aboard: false,
});
const landed = (state: FlightState, ...moved: readonly DrumOfFlight[]) => {
  const { stops, drums } = flownBy(flight(state), loads, moved);
  return [stops[0]!.drums, drums.map(({ drum }) => drum)];
};

it('a flight that is away lands what it carries, until a report says otherwise', () => {
  expect(landed('away')).toEqual([3, ['0431', '0432']]);
  expect(landed('away', off('0431', 'left at', 'XGAN'))).toEqual([3, ['0431', '0432']]);
  expect(landed('away', off('0431', 'left at', 'XCIN'))).toEqual([2, ['0432']]);
});

it('a drum that came home is not at the strip', () => {
  expect(landed('home', off('0431', 'left at', 'XGAN'), off('0432', 'brought home', 'XMER'))).toEqual([
    2,
    ['0431'],
  ]);
});

it('a drum planned without a number is the one that was left with another', () => {
  expect(landed('home', off('0500', 'left at', 'XGAN'))).toEqual([3, ['0500', '0431', '0432']]);
});

it('one that turned back lands what it is known to have left', () => {
  expect(landed('turned back')).toEqual([0, []]);
  expect(landed('turned back', off('0431', 'left at', 'XGAN'))).toEqual([1, ['0431']]);
});
