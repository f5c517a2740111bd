import { describe, expect, it } from 'vitest';
import { exampleFlight } from '../week-example.js';
import { approveOff, isFormOpen, keepOff, openActs, reasonText } from './flight-acts.js';

describe('Approve', () => {
  const short = '18 drums would have been taken by then; 14 stood filled.';

  it('is off for a flight that needs a decision, and says why', () => {
    expect(approveOff({ needsDecision: short }, undefined)).toBe(
      `Approve is off: it needs a decision first. ${short} Amend it, keep it as it is, or decline it.`,
    );
  });

  it('is off where a limit of today does not hold, and open for a flight with neither', () => {
    expect(approveOff({ needsDecision: null }, { problem: short })).toBe(`Approve is off: ${short}`);
    expect(approveOff({ needsDecision: null }, undefined)).toBeUndefined();
  });

  it('keep is off for what the server would refuse, before a reason is asked for', () => {
    const held = { problem: 'Drum 0514 is held.', remedy: 'Take another drum.' };
    expect(keepOff([held])).toBe('Keep is off: Drum 0514 is held. Take another drum.');
    expect(keepOff([])).toBeUndefined();
    expect(keepOff(undefined)).toBe("Keep is off: today's facts of it are not read yet.");
  });
});

describe('the acts', () => {
  it('are those of the state', () => {
    const open = (state: string, needsDecision: string | null = null, unheard = false) =>
      Object.entries(openActs({ state, needsDecision, unheard }))
        .filter(([, isOpen]) => isOpen)
        .map(([act]) => act);
    expect(open('offered')).toEqual(['approve', 'amend', 'decline', 'hold']);
    expect(open('approved')).toEqual(['amend', 'callOff', 'give', 'letGo']);
    expect(open('given', 'soft')).toEqual(['amend', 'callOff', 'letGo', 'keep']);
    expect(open('away')).toEqual([]);
    expect(open('declined')).toEqual([]);
    // Of a day that is over: neither approved nor given any more.
    expect(open('offered', 'soft', true)).toEqual(['amend', 'decline']);
    expect(open('approved', 'soft', true)).toEqual(['amend', 'callOff']);
  });

  it('a form goes away when somebody else has been quicker', () => {
    expect(isFormOpen('decline', exampleFlight({ state: 'offered' }))).toBe(true);
    expect(isFormOpen('decline', exampleFlight({ state: 'approved' }))).toBe(false);
    expect(isFormOpen('keep', exampleFlight({ state: 'approved' }))).toBe(false);
  });

  it('a reason is a word of the list; Other wants a few words', () => {
    expect(reasonText('', 'fog')).toBeUndefined();
    expect(reasonText('Weather', ' ')).toBe('Weather');
    expect(reasonText('Weather', 'fog')).toBe('Weather: fog');
    expect(reasonText('Other', 'ab')).toBeUndefined();
    expect(reasonText('Other', 'festival at the strip')).toBe('festival at the strip');
  });
});
