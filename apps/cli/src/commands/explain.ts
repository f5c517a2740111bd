import {
  asStandingFlight,
  type FlightQuestion,
  type PlannedFlight,
  type Scenario,
  type WhyNot,
  whyNot,
} from '@drumline/planning';
import { CommandEnd, exitCodes } from '../exit-codes.js';
import { warnOfOtherPicture } from '../fingerprint.js';
import { loadPlanDocument } from '../load-plan.js';
import { loadScenario, type ScenarioOptions } from '../load-scenario.js';
import { flightLines, flightText } from '../output/flights.js';
import { countOf, printDay } from '../output/words.js';
import { writeAnswer } from '../output/write-answer.js';

/** `drumline explain`: why one flight flies, or why another does not. */
export function explain(
  scenarioPath: string,
  planPath: string,
  flightId: string | undefined,
  options: ScenarioOptions & { readonly json?: boolean; readonly whyNot?: string },
): void {
  const scenario = loadScenario(scenarioPath, options);
  const document = loadPlanDocument(planPath);
  warnOfOtherPicture(scenario, document);
  const { plan } = document;
  if (options.whyNot !== undefined) {
    const question = questionOf(options.whyNot, scenario);
    const answer = whyNot(scenario, plan.flights.map(asStandingFlight), question, plan.endTarget);
    writeAnswer(
      options,
      () => answer,
      () => whyNotLines(answer, plan.currency),
    );
    return;
  }
  const flights = flightId === undefined ? plan.flights : [flightOf(plan.flights, flightId)];
  writeAnswer(
    options,
    () => flights,
    () => flightLines({ ...plan, flights }),
  );
}

function flightOf(flights: readonly PlannedFlight[], id: string): PlannedFlight {
  const found = flights.find((flight) => flight.id === id);
  if (found) return found;
  const ids = flights.map((flight) => flight.id).join(', ');
  throw new CommandEnd(exitCodes.usage, `There is no flight ${id} in the plan. It has: ${ids}.`);
}

/** "C1 XLOR 2027-06-15", "A2 XESK:3 XKNA:2 2027-06-16 by FW2 from XMER". */
function questionOf(text: string, scenario: Scenario): FlightQuestion {
  const match =
    /^(\S+)\s+((?:[A-Z]{4}(?::\d+)?\s+)+)(\d{4}-\d{2}-\d{2})(?:\s+by\s+(\S+))?(?:\s+from\s+(\S+))?$/.exec(
      text.trim(),
    );
  if (!match)
    throw new CommandEnd(
      exitCodes.usage,
      `"${text}" is not a flight. Write: aircraft, strips (with drums if you like), date, like "C1 XLOR 2027-06-15" or "A2 XESK:3 XKNA:2 2027-06-16 by FW2".`,
    );
  const [, aircraft, stops, date, pilot, from] = match;
  const question: FlightQuestion = {
    aircraft: aircraft!,
    date: date!,
    stops: stops!
      .trim()
      .split(/\s+/)
      .map((stop) => {
        const [place, drums] = stop.split(':');
        return drums === undefined ? { place: place! } : { place: place!, drums: Number(drums) };
      }),
    ...(pilot === undefined ? {} : { pilot }),
    ...(from === undefined ? {} : { from }),
  };
  refuseUnknown(question, scenario);
  return question;
}

function refuseUnknown({ aircraft, stops, pilot, from }: FlightQuestion, scenario: Scenario): void {
  const unknown = (what: string, name: string, known: readonly string[]) => {
    if (!known.includes(name))
      throw new CommandEnd(
        exitCodes.usage,
        `There is no ${what} ${name} in the scenario. It has: ${known.join(', ')}.`,
      );
  };
  const places = scenario.places.map(({ code }) => code);
  unknown(
    'aircraft',
    aircraft,
    scenario.aircraft.map(({ tail }) => tail),
  );
  for (const { place } of stops) unknown('place', place, places);
  if (from !== undefined) unknown('place', from, places);
  if (pilot !== undefined)
    unknown(
      'pilot',
      pilot,
      scenario.pilots.map(({ id }) => id),
    );
}

function whyNotLines(answer: WhyNot, currency: string): string[] {
  if (answer.verdict === 'allowed')
    return ['No rule forbids it. This is what it would be:', ...flightText(answer.described, currency)];
  const { fault, others, flight } = answer;
  return [
    `${flight.aircraft} ${[flight.from, ...flight.stops.map((stop) => stop.place), flight.to].join(' > ')} on ${printDay(flight.date)}: no.`,
    `  ${fault.where}: ${fault.what} ${fault.mend}`,
    ...(others.length === 0 ? [] : [`It breaks ${countOf(others.length, 'more rule')}:`]),
    ...others.map((other) => `  ${other.where}: ${other.what} ${other.mend}`),
  ];
}
