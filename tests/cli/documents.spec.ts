import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { root, run, runWith } from './run.js';

const seed = readFileSync(join(root, 'seeds/hollowtarn.json'), 'utf8');

describe('documents on the command line', () => {
  it('reads standard input for "-"', async () => {
    const { code, out } = await runWith(seed, 'project', '-');
    expect(code).toBe(0);
    expect(out).toContain('WITHOUT DELIVERIES');
  });

  it('says every fault at once, each with its path and what to do, and ends with 3', async () => {
    const broken = JSON.parse(seed) as { drums: { place: string }[]; caches: { capacityDrums: number }[] };
    broken.drums[0]!.place = 'XBIX';
    broken.caches[0]!.capacityDrums = 1;
    const { code, err } = await runWith(JSON.stringify(broken), 'plan', '-');
    expect(code).toBe(3);
    expect(err).toContain('drums[0].place');
    expect(err).toContain('caches[0].capacityDrums');
  });

  it('says where JSON stops being JSON', async () => {
    const { code, err } = await runWith('{ "format": ', 'check', '-');
    expect(code).toBe(3);
    expect(err).toMatch(/line 1/);
  });

  it('says what to do about a file that is not there', async () => {
    const { code, err } = await run('plan', 'nowhere.json');
    expect(code).toBe(3);
    expect(err).toContain('nowhere.json: there is no such file');
  });

  it('does not take a scenario for a plan', async () => {
    const { code, err } = await run('diff', 'seeds/hollowtarn.json', 'seeds/hollowtarn.json');
    expect(code).toBe(3);
    expect(err).toContain('is not a plan document');
  });

  it('ends with 2 for a command line that it does not understand', async () => {
    expect((await run('plam', 'seeds/hollowtarn.json')).code).toBe(2);
    expect((await run('plan', 'seeds/hollowtarn.json', '--seconds', 'soon')).code).toBe(2);
  });

  it('shows an example for every command', async () => {
    const { out } = await run('--help');
    const commands = [...out.matchAll(/^ {2}(\w+) \[options\]/gm)].map((match) => match[1]!);
    expect(commands).toEqual(['plan', 'project', 'payload', 'check', 'explain', 'diff', 'bench']);
    for (const command of commands)
      expect((await run(command, '--help')).out).toContain(`Example:\n  drumline ${command}`);
  });

  it('check ends with 1 where a rule is broken, and says which', async () => {
    const scenario = JSON.parse(seed) as { flights: unknown[]; handPlan: { stops: { drums: number }[] }[] };
    scenario.handPlan[0]!.stops[0]!.drums += 3;
    const { code, out } = await runWith(JSON.stringify(scenario), 'check', '-');
    expect(code).toBe(1);
    expect(out).toMatch(/fault/);
  });
});
