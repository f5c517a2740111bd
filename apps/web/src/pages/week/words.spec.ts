import { describe, expect, it } from 'vitest';
import { approveOff, isFormOpen, keepOff, openActs, reasonText } from './acts/flight-acts.js';
import {
  bandWords,
  bindingMark,
  bindingShort,
  bindingWords,
  bookedTime,
  bookedWords,
  isFrozen,
  lineOf,
  markKey,
} from './board/box-words.js';
import type { Card, LimitLine, Today } from './card/card-read.js';
import {
  aboardWords,
  crewWords,
  fewerWords,
  heardWords,
  lastActWords,
  limitName,
  perLitre,
  planningWords,
  roomWords,
  weighedWords,
} from './card/card-words.js';
import { gapScale } from './title/gap-scale.js';
import { exampleBooked, exampleFlight } from './week-example.js';

const when = (at: string) => at.slice(11, 16);

describe('a box', () => {
  it('has a firmer line the firmer the flight', () => {
    const lines = ['declined', 'offered', 'approved', 'given', 'loaded', 'away', 'home', 'closed'];
    expect(lines.map((state) => lineOf(exampleFlight({ state })))).toEqual([
      'off',
      'offered',
      'approved',
      'given',
      'away',
      'away',
      'flown',
      'flown',
    ]);
    expect(lineOf(exampleFlight({ kind: 'booked' }))).toBe('booked');
  });

  it('is frozen once approved, and offered when it is held in place', () => {
    expect(isFrozen(exampleFlight())).toBe(false);
    expect(isFrozen(exampleFlight({ heldInPlace: true }))).toBe(true);
    expect(isFrozen(exampleFlight({ state: 'approved' }))).toBe(true);
    expect(isFrozen(exampleFlight({ state: 'called off' }))).toBe(false);
  });

  it('names what binds, and where fewer drums go than possible how many more would go', () => {
    const fewer = exampleFlight({ drums: 3, drumsPossible: 4 });
    expect(bindingWords(exampleFlight())).toBe('binds: XNOR landing');
    expect(bindingWords(fewer)).toBe('1 more would go');
    expect(bindingShort(fewer)).toEqual(['', '1 more would go']);
    expect(bindingMark(fewer)).toBe('');
    expect(bindingShort(exampleFlight())).toEqual(['binds: strip ', 'landing']);
    const weight = { name: 'max landing weight', place: null };
    expect(bindingShort(exampleFlight({ binding: weight }))).toEqual(['binds: ', 'landing weight']);
    expect(bindingWords(exampleFlight({ binding: null, drums: 0 }))).toBe('no drums');
  });

  it('of two weeks at once has a mark for the limit, and the key says which marks are there', () => {
    const positions = exampleFlight({ binding: { name: 'drum positions', place: null } });
    const balance = exampleFlight({ binding: { name: 'balance', place: null } });
    expect([exampleFlight(), positions, balance].map(bindingMark)).toEqual(['ldg', 'pos', 'balance']);
    expect(markKey([exampleFlight(), positions, exampleFlight(), balance])).toEqual([
      'ldg strip landing',
      'pos positions',
    ]);
  });

  it('of a flight that flies anyway says when it is off and how long it takes, or that the hour is not set', () => {
    expect(bookedTime(exampleBooked({ departs: '07:30', heldHours: 2 }))).toBe('off 07:30, takes 2.0 h');
    expect(bookedTime(exampleBooked())).toBe('takes 1.6 h, hour not set');
  });

  it('of a flight that flies anyway says what it could take', () => {
    expect(bookedWords(exampleBooked())).toEqual(['mail', 'spare 3 drums']);
    expect(bookedWords(exampleBooked({ passengers: 4, spareDrums: 0 }))).toEqual([
      '4 passengers',
      'no drums',
    ]);
    expect(bookedWords(exampleBooked({ spareDrums: null }))).toEqual(['mail', '']);
  });
});

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
    expect(keepOff(held)).toBe('Keep is off: Drum 0514 is held. Take another drum.');
    expect(keepOff(undefined)).toBeUndefined();
  });
});

describe('the card', () => {
  const limit = (changes: Partial<LimitLine> = {}): LimitLine => ({
    name: 'strip landing limit',
    place: 'XLOR',
    surface: 'soft',
    limitLb: 7600,
    positions: null,
    spareLb: -534.3,
    binds: true,
    ...changes,
  });

  it('rounds over up and spare down', () => {
    expect(roomWords(-534.3)).toBe('535 lb over');
    expect(roomWords(169.9)).toBe('169 lb spare');
    expect(roomWords(0)).toBe('0 lb spare');
    expect(limitName(limit())).toBe('XLOR landing, soft');
    expect(limitName(limit({ name: 'max take-off weight', place: null, surface: null }))).toBe(
      'Take-off weight',
    );
  });

  it('says how many drums of those that may go, and never 5 of 4', () => {
    expect(aboardWords({ drumsAboard: 4, drumsPossible: 5 })).toBe('4 drums of 5');
    expect(aboardWords({ drumsAboard: 5, drumsPossible: 4 })).toBe('5 drums, 4 may go');
  });

  it('of fewer drums than may go says that nothing binds, how many more would go, and what the cache needs', () => {
    const leg = (drumsAboard: number) => ({
      ...{ from: 'XHOM', to: 'XNOR', surface: 'dry' as const, drumsAboard, drumsPossible: 5 },
      limits: [limit({ name: 'drum positions', place: null, surface: null, positions: 5, binds: false })],
    });
    const levels = { lowestLitres: 850, endLitres: 900, belowMinimum: null, belowCritical: null };
    const cache = { place: 'XNOR', minimumLitres: 800, criticalLitres: 400, withIt: levels, without: levels };
    const card = { ifDeclined: { ifDeclined: '', protects: null, caches: [cache] } };
    expect(fewerWords(card, leg(3))).toBe(
      'Nothing binds at 3 drums: 2 more would go; what binds then: positions. With 3 drums XNOR is lowest at 850 L, minimum 800 L.',
    );
    expect(fewerWords(card, leg(5))).toBeNull();
  });

  it('says what the drums as weighed leave: 2,378 lb printed instead of 2,381 lb at 180 kg a drum', () => {
    const card = (weighed: { kg: number; lb: number } | null) =>
      ({
        weighed,
        today: { load: { drums: 6, kg: 1080 }, legs: [{ limits: [limit({ spareLb: -534 })] }] },
      }) as unknown as Card;
    expect(weighedWords(card({ kg: 1078.2, lb: 2378 }))).toBe(
      'As weighed, 1,078 kg, as on Load: XLOR landing, soft, 531 lb over.',
    );
    // Positions have no pounds: where they bind, the nearest weight is said.
    const positions = limit({ name: 'drum positions', place: null, limitLb: null, positions: 6 });
    const taken = card({ kg: 1078.2, lb: 2378 });
    taken.today!.legs[0]!.limits.unshift(positions);
    expect(weighedWords(taken)).toBe('As weighed, 1,078 kg, as on Load: XLOR landing, soft, 531 lb over.');
    expect(weighedWords(card({ kg: 1080, lb: 2381 }))).toBeNull();
    expect(weighedWords(card(null))).toBeNull();
    expect(planningWords({ load: { drums: 6, kg: 1080 } } as unknown as Today)).toBe('at 180 kg a drum');
    expect(planningWords({ load: { drums: 2, kg: 365 } } as unknown as Today)).toBe('at 182.5 kg a drum');
  });

  it('says what was heard, how long it counts, and what counts without it', () => {
    const report = { state: 'soft' as const, at: '2031-03-03T06:52Z', by: 'strip helper' };
    const heard = {
      place: 'XLOR',
      counts: 'dry' as const,
      report,
      staleAt: '2031-03-03T18:52Z',
      isStale: false,
    };
    expect(heardWords(heard, when)).toBe('06:52, strip helper. Stale at 18:52.');
    expect(heardWords({ ...heard, isStale: true }, when)).toContain('Stale since 18:52: planned as dry.');
    expect(heardWords({ ...heard, report: null, staleAt: null }, when)).toBe('No report. Planned as dry.');
  });

  it('names who else is fit, and why the named pilot is not', () => {
    const crew = [
      { id: 'FW1', whyNot: null },
      { id: 'FW2', whyNot: 'FW2 is off duty' },
      { id: 'FW3', whyNot: null },
    ];
    const classes = [{ place: 'XLOR', stripClass: 2 }];
    expect(crewWords({ crew, classes }, 'FW1')).toEqual({
      who: 'FW1',
      unfit: null,
      rest: 'Also fit: FW3. XLOR is class 2.',
    });
    expect(crewWords({ crew, classes }, 'FW2').unfit).toBe('FW2 is off duty');
    expect(crewWords({ crew: [], classes: [] }, null).rest).toBe('Nobody is fit for it.');
  });

  it('has the cost a litre to a tenth of a cent', () => {
    expect(perLitre(245_400, 1200, 'cr')).toBe('2.045 cr/L');
  });

  it('says who was quicker', () => {
    const flight = exampleFlight({ id: 'F06', lastAct: 'approve', changedAt: '2031-03-03T07:02Z' });
    expect(lastActWords(flight, when)).toBe('F06 was approved by K. Aske at 07:02');
  });
});

describe('a box', () => {
  it('asks of a flight whose day is over whether it flew', () => {
    expect(bandWords(exampleFlight({ state: 'approved', unheard: true }))).toBe('Did it fly?');
    expect(bandWords(exampleFlight({ unheard: true }))).toBe('Its day is over');
    expect(bandWords(exampleFlight({ needsDecision: 'soft' }))).toBe('Needs a decision');
    expect(bandWords(exampleFlight())).toBeNull();
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

describe('the gap ruler', () => {
  it('has floor and plan well apart, and the plan right of the floor', () => {
    for (const gap of [1, 6, 237, 1008, 20_000]) {
      const { floor, plan, ticks } = gapScale(55_218 - gap, 55_218);
      expect(floor).toBeGreaterThan(0.2);
      expect(plan).toBeLessThan(0.8);
      expect(plan - floor).toBeGreaterThan(0.4);
      expect(ticks.every(({ at }) => at >= 0 && at <= 1)).toBe(true);
      expect(ticks.length).toBeLessThan(30);
    }
  });
});
