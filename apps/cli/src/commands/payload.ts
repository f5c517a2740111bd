import type { RouteLoad } from '@drumline/loading';
import { type PayloadRow, payloadTable, type Scenario } from '@drumline/planning';
import { print, printNumber } from '@drumline/units';
import { loadScenario, type ScenarioOptions } from '../load-scenario.js';
import { cautions } from '../output/cautions.js';
import { table } from '../output/table.js';
import { overWords, wholeMoney } from '../output/words.js';
import { writeAnswer } from '../output/write-answer.js';

/** `drumline payload`. */
export function payload(path: string, options: ScenarioOptions & { readonly json?: boolean }): void {
  const scenario = loadScenario(path, options);
  writeAnswer(
    options,
    () => payloadTable(scenario),
    () => payloadLines(scenario),
  );
}

function payloadLines(scenario: Scenario): string[] {
  const { drum, fuel } = scenario.policy;
  return [
    `Payload of ${scenario.title}: round trips, planning drum ${print(drum.grossKg, 'kg')}.`,
    `Fuel by ${fuel.reference}. ${scenario.winds.length === 0 ? 'Still air.' : 'Winds of the first day.'} Bases dry.`,
    '',
    ...table(
      [
        { head: 'strip' },
        { head: 'base' },
        { head: 'type' },
        { head: 'dry', align: 'right' },
        { head: 'payload', align: 'right' },
        { head: 'binds when dry' },
        { head: 'soft', align: 'right' },
        { head: 'binds when soft' },
        { head: 'ramp fuel', align: 'right' },
        { head: 'block', align: 'right' },
        { head: 'flight cost', align: 'right' },
        { head: 'with everything aboard' },
      ],
      payloadTable(scenario).map((row) => cells(row, scenario.currency)),
    ),
    '',
    ...cautions,
  ];
}

function cells(row: PayloadRow, currency: string): string[] {
  const { strip, base, type, dry, soft } = row;
  if (dry === null || soft === null) return [strip, base, type, '-', '-', 'type not approved'];
  const out = dry.legs[0]!;
  return [
    strip,
    base,
    type,
    drums(dry),
    print(out.payloadKg, 'kg'),
    out.binding.name,
    drums(soft),
    soft.legs[0]!.binding.name,
    print(dry.rampFuelLb, 'lb'),
    print(dry.blockHours, 'h', 2),
    wholeMoney(dry.cost, currency),
    dry.unloadOrStay[0]!.canLeaveLoaded
      ? 'can leave again'
      : `unload or stay: ${overWords(dry.unloadOrStay[0]!)} over`,
  ];
}

const drums = (load: RouteLoad): string => printNumber(load.flyable ? load.legs[0]!.drums : 0);
