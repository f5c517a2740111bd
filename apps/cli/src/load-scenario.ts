import { parseScenario, printFault } from '@drumline/contract';
import type { Scenario } from '@drumline/planning';
import { CommandEnd, exitCodes } from './exit-codes.js';
import { countOf } from './output/words.js';
import { readDocument } from './read-document.js';

/**
 * The scenario of a file or of standard input ("-"). Doubts are written to standard error; faults end the command,
 * all of them at once.
 */
export function loadScenario(path: string): Scenario {
  const parsed = parseScenario(readDocument(path));
  for (const doubt of parsed.doubts) process.stderr.write(`look at: ${printFault(doubt)}\n`);
  if (parsed.ok) return parsed.scenario;
  throw new CommandEnd(
    exitCodes.badInput,
    [
      `${path} has ${countOf(parsed.faults.length, 'fault')}:`,
      ...parsed.faults.map((fault) => `  ${printFault(fault)}`),
    ].join('\n'),
  );
}
