import { describe, expect, it } from 'vitest';
import { exampleFlight } from '../week-example.js';
import type { Card, LimitLine, Today } from './card-read.js';
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
} from './card-words.js';

const when = (at: string) => at.slice(11, 16);

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
    const card = (weighed: Card['weighed']) =>
      ({
        weighed,
        today: {
          load: { drums: 6, kg: 1080 },
          legs: [{ drumsAboard: 6, limits: [limit({ spareLb: -534 })] }],
        },
      }) as unknown as Card;
    expect(weighedWords(card({ kg: 1078.2, lbOnLegs: [2378] }))).toBe(
      'As weighed, 1,078 kg, as on Load: XLOR landing, soft, 531 lb over.',
    );
    // Positions have no pounds: where they bind, the nearest weight is said.
    const positions = limit({ name: 'drum positions', place: null, limitLb: null, positions: 6 });
    const taken = card({ kg: 1078.2, lbOnLegs: [2378] });
    const dry = limit({ surface: 'dry', limitLb: 8300, spareLb: 166 });
    Object.assign(taken.today!.legs[0]!, { to: 'XLOR', surface: 'soft' });
    taken.today!.legs[0]!.limits.unshift(positions, dry);
    expect(weighedWords(taken)).toBe('As weighed, 1,078 kg, as on Load: XLOR landing, soft, 531 lb over.');
    expect(weighedWords(card({ kg: 1080, lbOnLegs: [2381] }))).toBeNull();
    expect(weighedWords(card(null))).toBeNull();
    // Of two legs the tighter one is said, with what is aboard on it.
    const second = limit({ place: 'XGAN', surface: 'soft', spareLb: -600 });
    const two = card({ kg: 1078.2, lbOnLegs: [2378, 1580] });
    two.today!.legs.push({ ...two.today!.legs[0]!, drumsAboard: 4, limits: [second] });
    expect(weighedWords(two)).toBe('As weighed, 1,078 kg, as on Load: XGAN landing, soft, 593 lb over.');
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
