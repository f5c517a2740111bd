import type { AlternateStrip, NamedLoad, SheetFlight } from '@drumline/loading';
import { knownSurface, type Place } from '@drumline/network';
import {
  clockTimeAt,
  dayIndex,
  epochMinutes,
  type IsoInstant,
  instantOf,
  minutes,
  minutesOfDay,
  type NauticalMiles,
} from '@drumline/units';
import { whyNotFit } from '../problem/crew-fit.js';
import { wholeDayWindow } from '../problem/flying-window.js';
import { type Territory, territoryOf } from '../problem/territory.js';
import type { Scenario } from '../scenario.js';
import { roomOnDay } from './room-on-day.js';

/** Whose alternates they are, and over what ground. */
interface Asked {
  readonly scenario: Scenario;
  readonly territory: Territory;
  readonly flight: SheetFlight;
  readonly load: NamedLoad;
}

/**
 * By leg: the caches at which the flight could put its drums down instead, and the bases, to which they ride. Each with its surface as it is known when
 * the flight leaves (unknown stands as soft), the drums for which there is room on that day, and what keeps this crew
 * from going there: class and recency, a notice, the end of daylight.
 */
export function alternatesOfFlight(
  scenario: Scenario,
  flight: SheetFlight,
  load: NamedLoad,
): AlternateStrip[][] {
  const asked = { scenario, territory: territoryOf(scenario), flight, load };
  const { place, limit, distance } = asked.territory;
  const surface = surfaceAtTakeOff(asked);
  const room = roomOnDay(scenario, flight, load);
  const bases = new Map(scenario.bases.map((base) => [base.place, null]));
  const caches = new Map(scenario.caches.map((cache) => [cache.place, room(cache)]));
  const home = load.request.legs.at(-1)!.to.place.code;
  const strips = [...new Map([[home, null], ...caches, ...bases])].filter(
    ([code]) => place(code).runway !== null,
  );
  return load.request.legs.map(({ to }, leg) =>
    strips
      .filter(([code]) => code !== to.place.code)
      .map(([code, roomDrums]) => {
        const known = surface(place(code));
        return {
          end: {
            place: place(code),
            surface: known ?? 'soft',
            limit: limit(code, load.request.type.id),
          },
          isSurfaceUnknown: known === null,
          distanceNm: distance(to.place.code, code),
          homeNm: distance(code, home),
          isBase: bases.has(code),
          roomDrums,
          whyNot: whyNotThere(asked, leg, place(code)),
        };
      }),
  );
}

/** By the reports known now, as fresh or stale as they are when the flight leaves. */
function surfaceAtTakeOff({ scenario, flight }: Asked) {
  const { surfaceReports, asOf, timeZone } = scenario;
  const leaves = instantOf(flight.date, flight.departs, timeZone);
  const at: IsoInstant = epochMinutes(leaves) > epochMinutes(asOf) ? leaves : asOf;
  const known = surfaceReports.filter((report) => epochMinutes(report.at) <= epochMinutes(asOf));
  return knownSurface(known, at, timeZone);
}

function whyNotThere(asked: Asked, leg: number, place: Place): string | null {
  // Where the flight ends the crew is looked at with the flight.
  const isHome = place.code === asked.load.request.legs.at(-1)!.to.place.code;
  return (
    (isHome ? null : whyNotCrew(asked, place)) ??
    whyClosed(asked, leg, place) ??
    whyTooLate(asked, leg, place)
  );
}

function whyNotCrew({ scenario, flight, load }: Asked, place: Place): string | null {
  const pilot = scenario.pilots.find(({ id }) => id === flight.pilot);
  if (!pilot) return 'no pilot is named yet';
  return whyNotFit(pilot, load.request.type.id, [place], flight.date, scenario.policy.crew);
}

const whyClosed = ({ scenario, territory, flight, load }: Asked, leg: number, place: Place): string | null =>
  territory.leg(load.request.legs[leg]!.to.place.code, place.code, dayIndex(scenario.firstDay, flight.date))
    .closed;

/** Off as planned, so many minutes on the way and on the ground, and on to the alternate before its day ends. */
function whyTooLate({ scenario, territory, flight, load }: Asked, leg: number, place: Place): string | null {
  const window = wholeDayWindow(scenario, place, flight.date);
  if (window === null) return 'no daylight';
  const { request, route } = load;
  const flown = route.legs.slice(0, leg + 1).reduce((sum, { blockHours }) => sum + blockHours * 60, 0);
  const on = territory.distance(request.legs[leg]!.to.place.code, place.code);
  const lands =
    minutesOfDay(flight.departs) + flown + leg * request.type.turnRoundMinutes + minutesOn(load, on);
  return lands <= window.until ? null : `cannot be reached by ${clockTimeAt(window.until)}`;
}

const minutesOn = ({ request }: NamedLoad, distanceNm: NauticalMiles): number =>
  minutes((distanceNm / request.type.cruiseKt) * 60 + request.fuelPolicy.fixedMinutesPerLeg);
