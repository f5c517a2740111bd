import { readFileSync } from 'node:fs';
import { parsePlan, parseScenario, printFault } from '@drumline/contract';
import { planByHand } from '@drumline/planning';
import { describe, expect, it } from 'vitest';

const seed = parseScenario(readFileSync(new URL('../../seeds/hollowtarn.json', import.meta.url), 'utf8'));
if (!seed.ok) throw new Error(seed.faults.map(printFault).join('\n'));
const { plan } = planByHand(seed.scenario, { endTarget: 'minimum', weather: { fortnights: 20, seed: 1 } });
const document = {
  format: 'drumline-plan/1',
  madeFrom: '0123456789ab',
  plan,
  beside: [{ name: 'the same', plan }],
};

const faultsOf = (value: unknown) => {
  const parsed = parsePlan(value);
  return parsed.ok ? [] : parsed.faults.map(printFault);
};

describe('a plan document', () => {
  it('is read as it was written', () => {
    expect(parsePlan(JSON.stringify(document))).toEqual({ ok: true, document });
  });

  it('says what is missing or unknown, with its path', () => {
    const [first, ...others] = plan.flights;
    const { drums: _, ...withoutDrums } = first!;
    const spoilt = { ...document, plan: { ...plan, flights: [{ ...withoutDrums, drum: 4 }, ...others] } };
    expect(faultsOf(spoilt)).toEqual([
      'plan.flights[0].drums: this field is missing. Add it (a number).',
      'plan.flights[0].drum: this field is not known. Did you mean drums?',
    ]);
  });

  it('a scenario is no plan', () => {
    expect(faultsOf(seed.scenario)).toContain(
      'format: "drumline-scenario/1" is not a word known here. Use "drumline-plan/1".',
    );
  });
});
