import { type LoadSheet, type NamedLoad, type ParticularsSet, turbineFuelTexts } from '@drumline/loading';
import { approvalsOnFile, type Scenario, type SheetSettings, sheetOfFlight } from '@drumline/planning';
import { pounds } from '@drumline/units';
import type { Board } from './board.service.js';
import type { Flight } from './flight.table.js';

/** The sheet of a flight with that load, at the flight's version. */
export const sheetFor = ({ scenario }: Board, flight: Flight, load: NamedLoad): LoadSheet => {
  const { id, aircraft, date, departs, pilot, version } = flight;
  const replaces = version > 1 ? version - 1 : null;
  return sheetOfFlight(
    scenario,
    { id, aircraft, date, departs, pilot, version, replaces },
    load,
    sheetSettings(scenario, id),
  );
};

/** What the load sheets of a territory are made with beside the flight. */
const sheetSettings = (scenario: Scenario, id: string): SheetSettings => ({
  goods: {
    set: { ...particularsSet, reference: scenario.policy.passengers.reference },
    others: [],
    citedApproval: scenario.bookedFlights.find((booked) => booked.id === id)?.approval ?? null,
    approvalsOnFile: approvalsOnFile(scenario),
  },
  tieDown: null,
  toleranceLb: scenario.policy.twoTotals?.toleranceLb ?? pounds(0),
});

/** The usual fields, for as long as the operator keeps no set of its own. */
const particularsSet: Omit<ParticularsSet, 'reference'> = {
  packaging: 'steel drum',
  fields: [
    { label: 'UN number', value: { text: turbineFuelTexts.unNumber } },
    { label: 'Proper shipping name', value: { text: turbineFuelTexts.shippingName } },
    { label: 'Class', value: { text: turbineFuelTexts.hazardClass } },
    { label: 'Packing group', value: { text: turbineFuelTexts.packingGroup } },
    { label: 'Packages', value: { from: 'number and kind of packages' } },
    { label: 'Each', value: { from: 'quantity of each package' } },
    { label: 'Total', value: { from: 'total quantity' } },
    { label: 'Drums', value: { from: 'drum numbers' } },
    { label: 'Positions', value: { from: 'positions' } },
    { label: 'Unload at', value: { from: 'place of unloading' } },
    { label: 'Empties', value: { from: 'uncleaned empties' } },
    { label: 'Passengers', value: { from: 'passengers' } },
    { label: 'Approval', value: { from: 'approval cited' } },
    { label: 'Date', value: { from: 'date of flight' } },
  ],
};
