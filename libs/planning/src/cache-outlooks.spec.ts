import { nauticalMiles } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { cacheOutlooks, type FlightToCome } from './cache-outlooks.js';
import { tinyTerritory } from './tiny-territory.js';

const flight = (
  id: string,
  state: FlightToCome['state'],
  changes: Partial<FlightToCome> = {},
): FlightToCome => ({
  id,
  state,
  date: '2031-03-04',
  half: 'morning',
  stops: [{ place: 'NOR', drums: 2 }],
  needsDecision: null,
  ...changes,
});
const outlook = (...flights: readonly FlightToCome[]) => {
  const found = cacheOutlooks(tinyTerritory(), flights);
  return {
    nor: found.find(({ place }) => place === 'NOR')!,
    sou: found.find(({ place }) => place === 'SOU')!,
  };
};

describe('the outlook of a cache', () => {
  it('without flights: 800 L and a draw of 500 L leave it below its minimum of 400 L on day 2', () => {
    const { nor } = outlook();
    expect(nor.noDeliveries.usable).toEqual([800, 800, 300, 300, 300, 300]);
    expect(nor.noDeliveries.belowMinimumDay).toBe(2);
    expect(nor.approved).toEqual(nor.noDeliveries);
    expect(nor.deliveries).toEqual([]);
  });

  it('tells approved deliveries from offered ones', () => {
    const { nor, sou } = outlook(flight('F1', 'given'), flight('F2', 'offered', { date: '2031-03-05' }));
    expect(nor.noDeliveries.usable[5]).toBe(300);
    expect(nor.approved.usable[5]).toBe(700);
    expect(nor.offered.usable[5]).toBe(1100);
    expect(sou.offered).toEqual(sou.noDeliveries);
  });

  it.each(['approved', 'given', 'loaded', 'away', 'home'] as const)(
    'a flight that is %s is counted with',
    (state) => {
      expect(outlook(flight('F1', state)).nor.approved.belowMinimumDay).toBeNull();
    },
  );

  it('drums on hold count in no level until others go in their place, and their litres are no delivery', () => {
    const { nor } = outlook(flight('F1', 'given', { stops: [{ place: 'NOR', drums: 2, heldDrums: 1 }] }));
    expect(nor.approved.usable[5]).toBe(500);
    expect(nor.approved.book[5]).toBe(700);
    expect(nor.deliveries).toMatchObject([{ drums: 2, heldDrums: 1, litres: 200 }]);
  });

  it('lists deliveries by date with drums, litres, state and what has to be decided', () => {
    const late = flight('F1', 'offered', {
      date: '2031-03-06',
      half: 'afternoon',
      needsDecision: 'Strip soft.',
    });
    expect(outlook(late, flight('F2', 'away')).nor.deliveries).toEqual([
      {
        flight: 'F2',
        state: 'away',
        date: '2031-03-04',
        half: 'morning',
        drums: 2,
        heldDrums: 0,
        litres: 400,
        needsDecision: null,
      },
      {
        flight: 'F1',
        state: 'offered',
        date: '2031-03-06',
        half: 'afternoon',
        drums: 2,
        heldDrums: 0,
        litres: 400,
        needsDecision: 'Strip soft.',
      },
    ]);
  });

  it('lists draws with the code of their programme, and leaves out a task that is done', () => {
    const territory = tinyTerritory();
    const [first] = territory.helicopterTasks;
    const done = { ...first!, date: '2031-03-03', litres: first!.litres, programme: 'Q' };
    const [nor] = cacheOutlooks(
      {
        ...territory,
        helicopterTasks: [first!, { ...done, litres: 0 as typeof done.litres }],
        plannedUplifts: [
          { date: '2031-03-03', place: 'NOR', litres: 90 as typeof done.litres, for: 'T1 top-up' },
        ],
      },
      [],
    );
    expect(nor?.draws).toEqual([
      { kind: 'planned uplift', date: '2031-03-03', litres: 90, for: 'T1 top-up', helicopter: null },
      { kind: 'helicopter task', date: '2031-03-04', litres: 500, for: 'P', helicopter: 'H' },
    ]);
  });

  it('says of a sling what it takes along, with the flights that land before it', () => {
    const sling = { date: '2031-03-04', helicopter: 'H', from: 'NOR', to: 'SOU', drums: 5 };
    const scenario = tinyTerritory({
      slings: [{ ...sling, distanceNm: nauticalMiles(12) }],
      helicopterTasks: [],
    });
    const loadAt = (place: string, ...flights: readonly FlightToCome[]) =>
      cacheOutlooks(scenario, flights).find((cache) => cache.place === place)!.slings[0]!.load;
    expect(loadAt('NOR')).toEqual({ drums: 4, litres: 800 });
    expect(loadAt('SOU', flight('F1', 'offered'))).toEqual({ drums: 5, litres: 1000 });
    // NOR has 4 drums: of the 5 one is there only if F1 lands, and somebody has still to decide on it.
    const inQuestionWith = (changes: Partial<FlightToCome>) =>
      cacheOutlooks(scenario, [flight('F1', 'given', changes)])[1]!.slings[0]!.inQuestion;
    expect(inQuestionWith({ needsDecision: 'NOR is soft.' })).toEqual({ drums: 1, litres: 200 });
    expect(inQuestionWith({})).toEqual({ drums: 0, litres: 0 });
  });
});
