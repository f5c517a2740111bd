import type { NamedLoad } from '@drumline/loading';
import { loadOfFlight, type StandingFlight } from '@drumline/planning';
import { dayIndex } from '@drumline/units';
import { asStanding, type Board } from '../board/board.service.js';
import { assignDrums } from '../offered/assign-drums.js';
import { loadsOf } from '../office/flight-acts.service.js';
import { isPastLoading } from '../reports/after-report.js';
import type { Flight, Load } from '../store/flight.table.js';

/** A flight with every drum by number in its place; or why there is no such load. */
export type NamedFlight =
  | { readonly found: true; readonly load: NamedLoad; readonly standing: StandingFlight }
  | {
      readonly found: false;
      readonly why: string;
      /** Its drums and cargo are known, and stand nowhere so that they hold. */
      readonly cannotStand?: true;
    };

/** Drums as set aside; where none are, those that its approval would take. */
export const drumsFor = (board: Board, flight: Flight): readonly Load[] => {
  const own = loadsOf(board, flight);
  if (own.length > 0 || flight.stops.length === 0) return own;
  const stops = flight.stops.map((stop) => ({ ...stop, numbers: [] }));
  return (
    assignDrums(board.scenario, [{ ...flight, stops }], new Set(board.takenBy.keys())).get(flight.id) ?? []
  );
};

/** The board as if the day of the flight were not over: paper comes in the day after. */
export const ofItsDay = (board: Board, { date }: Pick<Flight, 'date'>): Board => {
  const [firstDay] = [date, board.scenario.firstDay].sort();
  return { ...board, scenario: { ...board.scenario, firstDay: firstDay! } };
};

/** By today's facts; `positions`: drums stand as said here, and not as they are kept. */
export const namedFlight = (
  { scenario, ridingHome }: Board,
  flight: Flight,
  loads: readonly Load[],
  positions?: ReadonlyMap<string, string>,
): NamedFlight => {
  const standing = asStanding(flight);
  if (standing === null) return { found: false, why: `${flight.id} is ${flight.state}: it carries nothing.` };
  if (flight.date < scenario.firstDay)
    return { found: false, why: `The day of ${flight.id} is over. What it carried stands with its drums.` };
  if (dayIndex(scenario.firstDay, flight.date) >= scenario.days)
    return { found: false, why: `${flight.id} is after the last day of the plan: there is no sheet yet.` };
  const toFill = loads.filter(({ drum }) => drum === null).length;
  if (toFill > 0)
    return {
      found: false,
      why: `${toFill} of its ${loads.length} drums are still to be filled: there is no sheet before each has a number.`,
    };
  const isAboard = isPastLoading(flight.state);
  const picked = loads.map(({ drum, place, position, toldKg }) => ({
    number: drum!,
    place,
    position: positions === undefined ? position : (positions.get(drum!) ?? null),
    ...(isAboard ? { toldKg } : {}),
  }));
  const drums = [...scenario.drums, ...ridingHome];
  const answer = loadOfFlight({ ...scenario, drums }, standing, picked);
  return answer.found
    ? { found: true, load: answer.load, standing }
    : { ...answer, why: `${flight.id}: ${answer.why}.` };
};
