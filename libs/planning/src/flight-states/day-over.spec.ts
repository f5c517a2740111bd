import { describe, expect, it } from 'vitest';
import type { FlightState } from '../scenario.js';
import { isUnheardOf, unfinishedStates } from './day-over.js';
import { stateMeanings } from './transitions.js';

const today = '2027-06-15';
const states = Object.keys(stateMeanings) as FlightState[];

describe('a flight of a day that is over', () => {
  it('nobody has said that it flew: from offered to loaded', () => {
    const unheard = states.filter((state) => isUnheardOf({ state, date: '2027-06-14' }, today));
    expect(unheard).toEqual(['offered', 'approved', 'given', 'loaded']);
  });

  it('on its own day it may still fly', () => {
    expect(states.filter((state) => isUnheardOf({ state, date: today }, today))).toEqual([]);
  });

  it('something is still to be said of it until its drums are reported or it is called off', () => {
    expect(unfinishedStates).toEqual([
      ...['offered', 'approved', 'given', 'loaded', 'away', 'home', 'turned back', 'ended elsewhere'],
    ]);
  });
});
