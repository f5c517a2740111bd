import type { MovementKind, Where } from '@drumline/stock';
import { describe, expect, it } from 'vitest';
import type { FlightState } from './scenario.js';
import { stillToCome } from './still-to-come.js';

const flight = (state: FlightState) => ({
  id: 'F05',
  state,
  date: '2027-06-15',
  fromPlace: 'XALD',
  needsDecision: null,
  planned: { half: 'morning' as const },
  stops: [{ place: 'XLOR', drums: 3 }],
});
const loads = ['0431', '0432', '0433'].map((drum) => ({ flightId: 'F05', stop: 0, drum }));
const seen = (drums: Record<string, readonly [Where, MovementKind]>) =>
  new Map(Object.entries(drums).map(([number, [where, since]]) => [number, { where, since, isHeld: false }]));
const drumsToCome = (state: FlightState, drums: ReturnType<typeof seen> = new Map()) =>
  stillToCome([flight(state)], loads, drums).flatMap(({ stops }) => stops.map((stop) => stop.drums));

describe('the drums that a flight has still to set down', () => {
  it('are all of them while it waits at base', () => {
    const atBase = ['received', { kind: 'at', place: 'XALD' }] as const;
    expect(drumsToCome('given', seen({ '0431': [atBase[1], atBase[0]] }))).toEqual([3]);
  });

  it('are those that the ledger has not seen set down, brought home or lost', () => {
    const under = seen({
      '0431': [{ kind: 'at', place: 'XLOR' }, 'left at'],
      '0432': [{ kind: 'aboard', flight: 'F05', leg: 1, from: 'XALD' }, 'loaded'],
      '0433': [{ kind: 'at', place: 'XALD' }, 'brought home'],
    });
    expect(drumsToCome('away', under)).toEqual([1]);
    expect(drumsToCome('away', seen({ '0431': [{ kind: 'unknown', lastSeenAt: 'XALD' }, 'lost'] }))).toEqual([
      2,
    ]);
  });

  it('a drum on hold is told apart: it counts nothing until another goes in its place', () => {
    const atBase = { where: { kind: 'at', place: 'XALD' }, since: 'filled', isHeld: true } as const;
    const [toCome] = stillToCome([flight('given')], loads, new Map([['0432', atBase]]));
    expect(toCome?.stops).toEqual([{ place: 'XLOR', drums: 3, heldDrums: 1 }]);
  });

  it.each(['reported', 'closed', 'turned back', 'ended elsewhere', 'declined', 'called off'] as const)(
    'a flight that is %s has none',
    (state) => {
      expect(stillToCome([flight(state)], loads, new Map())).toEqual([]);
    },
  );

  it('a flight without named drums has what was planned', () => {
    expect(stillToCome([flight('offered')], [], new Map())[0]?.stops).toEqual([
      { place: 'XLOR', drums: 3, heldDrums: 0 },
    ]);
  });
});
