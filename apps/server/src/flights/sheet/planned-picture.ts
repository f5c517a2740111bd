import type { PlannedLoad } from '@drumline/contract';
import { makeLoadSheet, type NamedLoad } from '@drumline/loading';
import { plannedBars, plannedLoadOfFlight } from '@drumline/planning';
import { asStanding, type Board } from '../board/board.service.js';
import type { Flight } from '../store/flight.table.js';
import { type OnSheet, requestFor } from './sheet-for.js';

/** What the plan puts aboard, leg by leg, while there is no load of drums by number; null: it carries nothing, or not in the days of the plan. */
export const plannedPicture = (board: Board, flight: Flight): PlannedLoad | null => {
  const standing = asStanding(flight);
  if (standing === null) return null;
  const planned = plannedLoadOfFlight(board.scenario, standing);
  return planned.found ? drawPlanned(board, flight, planned.load) : null;
};

/** A planned load by leg. */
export const drawPlanned = (board: Board, flight: OnSheet, load: NamedLoad): PlannedLoad => {
  const request = requestFor(board, flight, load);
  const { assumptions, fuelWords, cautions, legs } = makeLoadSheet(request);
  return {
    ...{ assumptions, fuelWords, cautions },
    legs: legs.map(({ from, to, distanceNm }) => ({ from, to, distanceNm })),
    bars: plannedBars(load, request.surfacesHeard),
  };
};
