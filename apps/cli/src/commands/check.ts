import {
  asStandingFlight,
  checkFlights,
  type Fault,
  type Scenario,
  type StandingFlight,
} from '@drumline/planning';
import { CommandEnd, exitCodes } from '../exit-codes.js';
import { warnOfOtherPicture } from '../fingerprint.js';
import { loadPlanDocument } from '../load-plan.js';
import { loadScenario, type ScenarioOptions } from '../load-scenario.js';
import { countOf } from '../output/words.js';
import { writeAnswer } from '../output/write-answer.js';

/** `drumline check`: every rule, by code that shares nothing with the planner; exit code 1 where one is broken. */
export function check(
  path: string,
  planPath: string | undefined,
  options: ScenarioOptions & { readonly json?: boolean },
): void {
  const scenario = loadScenario(path, options);
  const subjects = planPath === undefined ? ownFlights(scenario) : [planOf(scenario, planPath)];
  const answers = subjects.map(({ name, flights }) => ({
    name,
    flights,
    faults: checkFlights(scenario, flights),
  }));
  writeAnswer(
    options,
    () => answers.map(({ name, faults }) => ({ name, faults })),
    () => answers.flatMap(({ name, flights, faults }) => faultLines(name, flights.length, faults)),
  );
  if (answers.some(({ faults }) => faults.length > 0)) throw new CommandEnd(exitCodes.faults, '');
}

interface Subject {
  readonly name: string;
  readonly flights: readonly StandingFlight[];
}

function ownFlights(scenario: Scenario): Subject[] {
  return [
    { name: 'the standing flights', flights: scenario.flights },
    { name: 'the hand plan', flights: scenario.handPlan },
  ].filter(({ name, flights }) => flights.length > 0 || name === 'the standing flights');
}

function planOf(scenario: Scenario, path: string): Subject {
  const document = loadPlanDocument(path);
  warnOfOtherPicture(scenario, document);
  return { name: path, flights: document.plan.flights.map(asStandingFlight) };
}

function faultLines(name: string, flights: number, faults: readonly Fault[]): string[] {
  if (faults.length === 0) return [`${countOf(flights, 'flight')} of ${name}: no fault.`];
  return [
    `${countOf(flights, 'flight')} of ${name}: ${countOf(faults.length, 'fault')}.`,
    ...faults.map((fault) => `  ${fault.where}: ${fault.what} ${fault.mend}`),
  ];
}
