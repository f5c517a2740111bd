import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseScenario } from '@drumline/contract';
import type { LoadSheet, NamedLoad } from '@drumline/loading';
import { loadOfFlight, type Scenario, type StandingFlight, sheetOfFlight } from '@drumline/planning';
import { rootFolder } from '../../config.js';
import { sheetSettings } from '../../flights/sheet/sheet-for.js';
import type { SheetPrint } from '../sheet/load-sheet-pages.js';

/** The demo territory, for the specs of this folder. */
export const demo = (): Scenario => {
  const parsed = parseScenario(readFileSync(join(rootFolder, 'seeds', 'hollowtarn.json'), 'utf8'));
  if (!parsed.ok) throw new Error('the seed does not read');
  return parsed.scenario;
};

/** Six drums on type B: every position of its cabin. */
export const fullFlight: StandingFlight = {
  id: 'F05',
  state: 'given',
  date: '2027-06-15',
  departs: '07:10',
  aircraft: 'B1',
  pilot: 'FW3',
  from: 'XALD',
  to: 'XALD',
  stops: [{ place: 'XLOR', drums: 6 }],
};

/** The load sheet of a flight with the first sealed drums of its base, or with these. */
export const sheetOf = (scenario: Scenario, flight: StandingFlight, numbers?: readonly string[]): LoadSheet =>
  sheetWith(scenario, flight, loadOf(scenario, flight, numbers));

export const sheetWith = (scenario: Scenario, flight: StandingFlight, load: NamedLoad): LoadSheet => {
  const { id, aircraft, date, departs = '07:10', pilot = null } = flight;
  return sheetOfFlight(
    scenario,
    { id, aircraft, date, departs, pilot, version: 3, replaces: 2 },
    load,
    sheetSettings(scenario, { id, type: load.request.type.id }),
  );
};

export const loadOf = (
  scenario: Scenario,
  flight: StandingFlight,
  numbers?: readonly string[],
): NamedLoad => {
  const there = scenario.drums.filter(
    ({ place, content }) => place === flight.from && content === 'filled sealed',
  );
  const own = numbers ?? there.map(({ number }) => number);
  const places = flight.stops.flatMap(({ place, drums }) => Array.from({ length: drums }, () => place));
  const picked = places.map((place, at) => ({ number: own[at]!, place, position: null }));
  const found = loadOfFlight(scenario, flight, picked);
  if (!found.found) throw new Error(found.why);
  return found.load;
};

export const printOf = (scenario: Scenario, paper: SheetPrint['paper']): SheetPrint => ({
  stamp: { at: 'Mon 14 June 2027 17:02', by: 'Demo dispatcher' },
  paper,
  names: new Map(scenario.places.map(({ code, name }) => [code, name])),
});
