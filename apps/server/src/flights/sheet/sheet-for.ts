import {
  type LoadSheet,
  type LoadSheetRequest,
  makeLoadSheet,
  type NamedLoad,
  tieDownFor,
} from '@drumline/loading';
import { approvalsOnFile, type Scenario, type SheetSettings, sheetRequest } from '@drumline/planning';
import { pounds } from '@drumline/units';
import type { Board } from '../board/board.service.js';
import type { Flight } from '../store/flight.table.js';

/** A flight, and the check codes that its version was printed with; absent: nobody has asked. */
export type FlightOnPaper = Flight & { readonly printedCodes?: readonly string[] };

/** What a sheet says of its flight. */
export type OnSheet = Pick<
  FlightOnPaper,
  'id' | 'aircraft' | 'date' | 'departs' | 'pilot' | 'version' | 'state' | 'printedCodes'
>;

/** The sheet of a flight with that load, at the flight's version. */
export const sheetFor = (board: Board, flight: OnSheet, load: NamedLoad): LoadSheet =>
  makeLoadSheet(requestFor(board, flight, load));

/** What that sheet is made from. */
export const requestFor = ({ scenario }: Board, flight: OnSheet, load: NamedLoad): LoadSheetRequest => {
  const { id, aircraft, date, departs, pilot, version, state, printedCodes = [] } = flight;
  const replaces = version > 1 ? version - 1 : null;
  return sheetRequest(
    scenario,
    {
      ...{ id, aircraft, date, departs, pilot, version, replaces },
      ...(printedCodes.length === 0 ? {} : { printedCodes }),
      ...(state === 'offered' ? { notApproved: true } : {}),
    },
    load,
    sheetSettings(scenario, { id, type: load.request.type.id }),
  );
};

/** What the load sheets of a territory are made with beside the flight. */
export const sheetSettings = (
  scenario: Scenario,
  { id, type }: { readonly id: string; readonly type: string },
): SheetSettings => ({
  goods: {
    set: scenario.dangerousGoods ?? null,
    others: [],
    citedApproval: scenario.bookedFlights.find((booked) => booked.id === id)?.approval ?? null,
    approvalsOnFile: approvalsOnFile(scenario),
  },
  tieDown: tieDownFor(scenario.tieDown ?? [], type),
  toleranceLb: scenario.policy.twoTotals?.toleranceLb ?? pounds(0),
});
