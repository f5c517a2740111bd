import { parseScenario, printFault } from '@drumline/contract';
import { asStandingFlight, type PlannedFlight, type Scenario, type StandingFlight } from '@drumline/planning';
import { epochMinutes, instantOf } from '@drumline/units';
import { CommandEnd, exitCodes } from './exit-codes.js';
import { loadPlan } from './load-plan.js';
import { countOf } from './output/words.js';
import { readDocument } from './read-document.js';
import { addedNames, withChanges } from './with-changes.js';

export interface ScenarioOptions {
  /** Files of changes laid over the scenario, in order. */
  readonly with?: readonly string[];
  /** A plan whose flights stand. */
  readonly standing?: string;
}

/**
 * The scenario of a file or of standard input ("-"), with changes laid over it. Doubts are written to standard error;
 * faults end the command, all of them at once.
 */
export function loadScenario(path: string, options: ScenarioOptions = {}): Scenario {
  const changes = options.with ?? [];
  const text = readDocument(path);
  const document = changes.length === 0 ? text : changes.reduce<unknown>(layOver, json(path, text));
  const parsed = parseScenario(document);
  for (const doubt of parsed.doubts) process.stderr.write(`look at: ${printFault(doubt)}\n`);
  if (parsed.ok) return withStanding(parsed.scenario, options.standing);
  const source = [path, ...changes].join(' with ');
  throw new CommandEnd(
    exitCodes.badInput,
    [
      `${source} has ${countOf(parsed.faults.length, 'fault')}:`,
      ...parsed.faults.map((fault) => `  ${printFault(fault)}`),
    ].join('\n'),
  );
}

function layOver(document: unknown, path: string): unknown {
  const base = document as Record<string, unknown>;
  const changes = json(path, readDocument(path));
  for (const added of addedNames(base, changes))
    process.stderr.write(`look at: ${path} adds ${added}, which the scenario does not have.\n`);
  return withChanges(base, changes);
}

function json(path: string, text: string): Record<string, unknown> {
  try {
    const value: unknown = JSON.parse(text);
    if (typeof value === 'object' && value !== null && !Array.isArray(value))
      return value as Record<string, unknown>;
  } catch (error) {
    throw new CommandEnd(exitCodes.badInput, `${path} is not JSON: ${(error as Error).message}.`);
  }
  throw new CommandEnd(exitCodes.badInput, `${path} holds no JSON object. Write { "field": ... }.`);
}

/** The flights of a plan on the board: those that have departed by now were flown as planned, the others may move. */
function withStanding(scenario: Scenario, path: string | undefined): Scenario {
  if (path === undefined) return scenario;
  const flights = loadPlan(path)
    .flights.filter((flight) => flight.kind === 'positioning' || flight.drums > 0)
    .map((flight) => standing(scenario, flight));
  return { ...scenario, flights };
}

function standing(scenario: Scenario, flight: PlannedFlight): StandingFlight {
  const departed = epochMinutes(instantOf(flight.date, flight.departs, scenario.timeZone));
  const stands = asStandingFlight(flight);
  return departed < epochMinutes(scenario.asOf) && flight.state === 'offered'
    ? { ...stands, state: 'reported' }
    : stands;
}
