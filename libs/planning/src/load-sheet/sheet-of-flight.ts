import {
  type LoadSheet,
  type LoadSheetRequest,
  makeLoadSheet,
  type NamedLoad,
  type SheetFlight,
} from '@drumline/loading';
import type { Scenario } from '../scenario.js';
import { alternatesOfFlight } from './alternates-of-flight.js';
import { surfaceHeard } from './surface-heard.js';

/** What the operator sets for load sheets beside the scenario. */
export type SheetSettings = Pick<LoadSheetRequest, 'goods' | 'tieDown' | 'toleranceLb'>;

/**
 * What the load sheet of a flight with its named load is made from (`makeLoadSheet`), by the scenario's policies and the
 * operator's settings.
 */
export function sheetRequest(
  scenario: Scenario,
  flight: SheetFlight,
  load: NamedLoad,
  settings: SheetSettings,
): LoadSheetRequest {
  const { flyingDay, bookDensityKgPerLitre } = scenario.policy;
  const heard = surfaceHeard(scenario);
  const landings = load.request.legs.map(({ to }) => to.place);
  return {
    flight,
    load,
    surfacesHeard: Object.fromEntries(landings.map((place) => [place.code, heard(place)])),
    landingHours: {
      timeZone: scenario.timeZone,
      lastLanding: flyingDay.lastLanding,
      daylightMarginMinutes: flyingDay.daylightMarginMinutes,
    },
    alternates: alternatesOfFlight(scenario, flight, load),
    bookDensityKgPerLitre,
    ...settings,
  };
}

/** The load sheet of a flight with its named load. */
export const sheetOfFlight = (...of: Parameters<typeof sheetRequest>): LoadSheet =>
  makeLoadSheet(sheetRequest(...of));
