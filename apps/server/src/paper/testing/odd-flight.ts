import type { AircraftType, CabinConfiguration, Cargo, LoadSheet, NamedLoad } from '@drumline/loading';
import { type Scenario, type StandingFlight, sheetOfFlight } from '@drumline/planning';
import { inches, kilograms, litres, pounds } from '@drumline/units';
import { sheetSettings } from '../../flights/sheet/sheet-for.js';
import { fullFlight, loadOf } from './example-sheet.js';

/**
 * As full as a sheet of this trade gets: eight drums, three passengers under an approval with long conditions, freight, empties that come home, the longest names, a one-way strip. The aeroplane is made for it.
 */
export const oddSheet = (scenario: Scenario): LoadSheet => {
  const flight: StandingFlight = { ...fullFlight, stops: [{ place: 'XJUN', drums: 6 }] };
  const load = oddLoad(loadOf(scenario, flight));
  const settings = sheetSettings(scenario, { id: 'F05', type: 'B' });
  return sheetOfFlight(
    scenario,
    {
      id: 'F1005',
      aircraft: 'ABC-DEF',
      date: flight.date,
      departs: '07:10',
      pilot: 'FW1005',
      version: 13,
      replaces: 12,
    },
    load,
    {
      ...settings,
      goods: {
        ...settings.goods,
        citedApproval: 'CA 2027/1717',
        approvalsOnFile: [approval],
        others: ['0301', '0302'].map((number) => ({
          number,
          content: 'uncleaned empty',
          litres: litres(0),
          position: 'R4L',
          fromLeg: 1,
          lastLeg: 1,
          unloadAt: 'XALD',
        })),
      },
    },
  );
};

const oddLoad = (load: NamedLoad): NamedLoad => {
  const { request } = load;
  const [out, home] = request.legs;
  const drum = load.drums[0]!;
  const drums = ['R1L', 'R1R', 'R2L', 'R2R', 'R3L', 'R3R', 'R4L', 'R4R'].map((position, at) => ({
    ...drum,
    number: `DRM-${1001 + at}`,
    batch: 'J2027-041B',
    grossKg: kilograms(60),
    litres: litres(50),
    position,
  }));
  return {
    ...load,
    request: { ...request, type: roomy(request.type), legs: [{ ...out!, passengers: 3 }, home!] },
    drums,
    cargo: [
      ...Array.from({ length: 3 }, (_, at) => aboard(`passenger ${at + 1}`, `S${at + 1}L`, 150)),
      aboard('camp kitchen and tents', 'POD', 80),
    ],
  };
};

const aboard = (name: string, place: string, lb: number): Cargo => ({
  name,
  place,
  weightLb: pounds(lb),
  firstLeg: 0,
  lastLeg: 0,
});

/** With as many places as the load needs, near the middle of its envelope. */
const roomy = (type: AircraftType): AircraftType => ({
  ...type,
  configurations: type.configurations.map((each): CabinConfiguration => {
    if (each.id !== type.drumConfiguration) return each;
    const middle = each.drumPositions.reduce((sum, { armIn }) => sum + armIn, 0) / each.drumPositions.length;
    const place = (id: string, unloadOrder: number, aft = 0) => ({
      id,
      armIn: inches(Math.round(middle) + aft),
      limitLb: pounds(900),
      unloadOrder,
    });
    const rows = [1, 2, 3, 4];
    return {
      ...each,
      drumPositions: rows.flatMap((row) => [
        place(`R${row}L`, 5 - row, row - 2),
        place(`R${row}R`, 5 - row, row - 2),
      ]),
      seats: Array.from({ length: 7 }, (_, at) => place(`S${at + 1}L`, 1)),
      freightPlaces: ['POD', 'NET1', 'NET2'].map((id) => place(id, 1)),
    };
  }),
});

const approval = {
  number: 'CA 2027/1717',
  authority: 'civil aviation authority of the territory',
  scope: 'fuel drums beside field staff',
  legs: null,
  aircraft: null,
  mostDrums: 8,
  mostPassengers: 8,
  conditions:
    'drums aft of the passengers behind a net, door side free, no smoking, one crew member facing the load',
  from: '2027-06-01',
  until: '2027-09-30',
  enteredBy: 'K. Aske',
  confirmedBy: 'T. Orrin',
};
