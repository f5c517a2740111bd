import type { FlightState } from '../scenario.js';
import { replanFreedom } from './replan-freedom.js';
import type { Transition } from './transition.js';
import { stateMeanings, transitions } from './transitions.js';

/** The state machine as a page of markdown: docs/flight-states.md is this text, and a test compares them. */
export function describeFlightStates(): string {
  const states = Object.keys(stateMeanings) as FlightState[];
  return `# States of a flight

This page is written from \`libs/planning/src/flight-states/transitions.ts\`; a test fails where they differ, and
\`npx vitest run --project repository flight-states --update\` writes it anew.

## States

${table(
  ['State', 'Meaning', 'A re-plan may change it'],
  states.map((state) => [state, stateMeanings[state], replanFreedom(state)]),
)}

"Needs a decision" is a mark on top of an offered, approved or given flight. Any act settles it but one that sets it. While it
stands, the flight is neither given nor loaded. A hold sets it on every flight that carries a held drum, in the moment in which the
hold is kept; the release takes it away again ("unmark"). So with a rule: a flight that the facts forbid as it stands is marked by the
program within the minute, at once by a surface report, and when the rule is kept again, a closed strip is reported dry, the mark goes by
itself. Nobody marked it, so nobody has to answer for it, and a mark whose words are no longer true teaches people to press marks away;
the history keeps both. Where another rule is broken then, the mark says that one. A mark that a person set, a refusal or a drum that
another flight took, alone or beside a rule, stands until somebody decides.

## Acts

${table(
  ['Act', 'From', 'To', 'Who', 'Needs', 'Besides'],
  transitions.map((line) => [
    line.act,
    line.from.join(', '),
    line.to,
    line.who.join(', '),
    line.needs.join(', ') || '-',
    besides(line).join('; ') || '-',
  ]),
)}

Planner is a planning run, in the name of whoever started it. Every act is kept with its person and time. The dispatcher enters what
comes by radio. A report is never refused for a step that is missing before it: it is accepted, and something to look at is raised.

## Reports that come late or twice

A crew may report hours after it happened, in any order. A report for which the flight is past is kept beside it and moves nothing:
the same again says nothing new, anything else is raised. So is a report of a flight that was called off or declined meanwhile, or is
offered only. What is refused is a step that has not come yet: to load before the flight is given, or with totals apart; to call every drum
accounted for before it has landed, or while one is missing.

A loading is judged as the flight stood when it was loaded: what base marked or held afterwards does not unload it, and is raised. A
loading told by radio or on paper, and one of a phone that says it stands so, is a fact and never refused: where it may not be entered as
loaded it is kept and raised, and when the flight is off, it flies with it.
`;
}

function besides({ handsDrumsBack, newVersion, mark, raises }: Transition): string[] {
  return [
    ...(newVersion ? ['new version'] : []),
    ...(handsDrumsBack ? ['drums go back to the pick list'] : []),
    ...(mark === 'set' ? ['sets "Needs a decision"'] : []),
    ...(raises ? [`raises: ${raises}`] : []),
  ];
}

function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  return [head, head.map(() => '---'), ...rows].map((cells) => `| ${cells.join(' | ')} |`).join('\n');
}
