import { loadOfFlight, type StandingFlight, sheetOfFlight } from '@drumline/planning';
import { kilograms } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { namedLoad, numbers, planned, scenario, settings, sheetOf, standing } from './sheet-of-flight.js';

describe('a booked flight', () => {
  it('X1 has its passengers in seats; drums on it are refused with the rule', () => {
    const booked: StandingFlight = {
      id: 'X1',
      state: 'offered',
      date: '2027-06-14',
      aircraft: 'A1',
      from: 'XMER',
      stops: [],
      to: 'XMER',
    };
    const found = loadOfFlight(scenario, booked, []);
    if (!found.found) throw new Error(found.why);
    expect(found.load.cargo.filter(({ name }) => name.startsWith('passenger'))).toHaveLength(8);
    const goods = {
      ...settings.goods,
      others: [
        {
          number: '0573',
          content: 'fuel' as const,
          litres: scenario.policy.drum.fillLitres,
          position: 'AFT',
          fromLeg: 0,
          lastLeg: 0,
          unloadAt: 'XISK',
        },
      ],
    };
    const flight = {
      id: 'X1',
      aircraft: 'A1',
      date: '2027-06-14',
      departs: '08:00',
      pilot: null,
      version: 1,
      replaces: null,
    };
    const sheet = sheetOfFlight(scenario, flight, found.load, { ...settings, goods });
    expect(sheet.faults).toContain(
      'XMER-XISK: 4 passengers and 1 drum are refused (demo operations manual, cargo, revision 2). Only an approval of the authority on file sets this aside.',
    );
  });

  it('a drum that is aboard and not in the book counts with what its crew says it weighs, else as planned', () => {
    const own = numbers(447, 5);
    const rows = ['R1L', 'R1R', 'R2L', 'R2R', 'R3L', 'R3R'];
    const sheetWith = (toldKg: number | null) => {
      const told = toldKg === null ? null : kilograms(toldKg);
      const picked = standing([...own, '9999'], 'XLOR', rows).map((drum) => ({ ...drum, toldKg: told }));
      return sheetOf('F05', namedLoad('F05', picked), 'FW3');
    };
    const [told, untold] = [sheetWith(190), sheetWith(null)];
    // 190 kg is 419 lb, the planned 180 kg are 397 lb; 0447 has its weight by the book, whatever was said.
    const drum = ({ drums }: typeof told, which: string) => drums.find(({ number }) => number === which);
    expect(drum(told, '9999')).toMatchObject({ lb: 419, batch: 'NOT IN BOOK', leaveAt: 'XLOR' });
    expect(drum(untold, '9999')).toMatchObject({ lb: 397 });
    expect(drum(told, '0447')).toEqual(drum(untold, '0447'));
    expect(told.legs[0]!.totals.loadLb - untold.legs[0]!.totals.loadLb).toBe(22);
    expect(told.notInBookWords).toBe('9999 is not in the book: 190.0 kg by the crew.');
    expect(untold.notInBookWords).toBe('9999 is not in the book: no weight was told, 180.0 kg as planned.');
    expect(told.legs[0]!.particulars.map(({ value }) => value)).toContain('6 × steel drum 1A1');
  });

  it('a drum that is not in the book is an answer', () => {
    expect(
      loadOfFlight(scenario, planned('F05'), [{ number: '9999', place: 'XLOR', position: null }]),
    ).toEqual({
      found: false,
      why: 'There is no drum 9999 in the book',
    });
    expect(
      loadOfFlight(scenario, planned('F05'), [{ number: '0447', place: 'XGAN', position: null }]),
    ).toEqual({
      found: false,
      why: 'F05 does not land at XGAN',
    });
  });
});
