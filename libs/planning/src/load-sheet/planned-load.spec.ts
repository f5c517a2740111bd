import { hours, kilograms } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import type { StandingFlight } from '../scenario.js';
import { tinyTerritory } from '../tiny-territory.js';
import { flightCard } from '../week/flight-card.js';
import { plannedBars, plannedLoadOfFlight } from './planned-load.js';

const flight: StandingFlight = {
  id: 'F1',
  state: 'offered',
  date: '2031-03-03',
  aircraft: 'T1',
  from: 'HOM',
  stops: [{ place: 'NOR', drums: 4 }],
  to: 'HOM',
};
const scenario = tinyTerritory({ flights: [flight], drums: [] });
const barsOf = (one: StandingFlight) => {
  const planned = plannedLoadOfFlight(scenario, one);
  if (!planned.found) throw new Error(planned.why);
  return plannedBars(planned.load);
};

describe('a flight whose drums are still to be filled', () => {
  it('has a bar by leg with the planned drums in one block at the planning weight, and nothing on the way home', () => {
    const [out, home] = barsOf(flight);
    expect(out).toMatchObject({
      operatingLb: 4000,
      drums: 4,
      load: [{ name: '4 drums', kg: 720, lb: 1587, isDrum: true }],
    });
    expect(home).toMatchObject({ drums: 0, load: [] });
  });

  it('has the same room under every limit as its decision card', () => {
    const [out] = barsOf(flight);
    const [onCard] = flightCard(scenario, 'F1')!.legs;
    const weights = onCard!.limits.filter(({ limitLb }) => limitLb !== null);
    expect(weights.length).toBeGreaterThan(3);
    for (const { name, place, surface, limitLb, spareLb } of weights)
      expect(out!.limits).toContainEqual(
        expect.objectContaining({ place, surface, limitLb, spareLb, moment: momentOf(name) }),
      );
  });

  it('beside passengers has them in one block', () => {
    const booked = {
      ...{ id: 'F1', date: flight.date, aircraft: 'T1', configuration: 'drums', purpose: 'crew change' },
      legs: [
        {
          ...{ from: 'HOM', to: 'NOR', passengers: 2 },
          passengersKg: kilograms(180),
          freightKg: kilograms(50),
        },
        { ...{ from: 'NOR', to: 'HOM', passengers: 0 }, passengersKg: kilograms(0), freightKg: kilograms(0) },
      ],
      heldHours: hours(2),
    };
    const { aircraftTypes, ...rest } = tinyTerritory({ bookedFlights: [booked] });
    const withSeats = aircraftTypes.map((type) => ({
      ...type,
      configurations: type.configurations.map((cabin) => ({
        ...cabin,
        seats: cabin.drumPositions.slice(0, 2),
      })),
    }));
    const load = plannedLoadOfFlight({ ...rest, aircraftTypes: withSeats }, { ...flight, stops: [] });
    if (!load.found) throw new Error(load.why);
    const [out] = plannedBars(load.load);
    expect(out!.load).toMatchObject([
      { name: '2 passengers', kg: 180, lb: 396 },
      { name: 'freight', lb: 110 },
    ]);
  });

  it('after the last day of the plan has no load', () => {
    expect(plannedLoadOfFlight(scenario, { ...flight, date: '2031-04-03' })).toEqual({
      found: false,
      why: '2031-04-03 is outside the days of the plan',
    });
  });
});

const momentOf = (name: string): string =>
  name === 'max zero-fuel weight' ? 'zero fuel' : name.includes('landing') ? 'landing' : 'take-off';
