import { mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { hasSaid, run, start } from './run.js';

const folder = () => mkdtempSync(join(tmpdir(), 'drumline-'));
const seed = 'seeds/hollowtarn.json';

describe('drumline plan', () => {
  it('prints flights, stock, bases, shortages, plans beside each other and the cautions', async () => {
    const { code, out } = await run('plan', seed, '--iterations', '200');
    expect(code).toBe(0);
    for (const head of ['FLIGHTS', 'STOCK', 'BASES', 'SHORTAGES', 'PLANS BESIDE EACH OTHER'])
      expect(out).toContain(head);
    expect(out).toContain('made by hand');
    expect(out.trimEnd()).toMatch(/pilot in command decide\.\nDangerous-goods .* apply\.$/);
  });

  it('writes a plan that check accepts, that explain explains, and that differs from itself in nothing', async () => {
    const file = join(folder(), 'plan.json');
    expect((await run('plan', seed, '--iterations', '100', '--end', 'minimum', '--out', file)).code).toBe(0);
    const checked = await run('check', seed, file);
    expect(checked).toMatchObject({ code: 0 });
    expect(checked.out).toContain('no fault');
    expect((await run('explain', seed, file)).out).toContain('If declined');
    const { out } = await run('diff', file, file);
    for (const change of ['Removed', 'Added', 'Moved (other day or aircraft)', 'Drums changed'])
      expect(out).toContain(`${change}: none`);
  });

  it('is the same plan every time for the same seed and iterations', async () => {
    const flights = async () => {
      const { out } = await run('plan', seed, '--iterations', '100', '--end', 'minimum', '--json');
      return (JSON.parse(out) as { plan: { flights: unknown } }).plan.flights;
    };
    expect(await flights()).toEqual(await flights());
  });

  it('shows progress, and answers Ctrl-C with the best plan so far', async () => {
    const { child, ended } = start('plan', seed, '--seconds', '60', '--end', 'minimum');
    await hasSaid(child, ' cr');
    child.kill('SIGINT');
    const { code, out, err } = await ended;
    expect(code).toBe(130);
    expect(err).toMatch(/best [\d,]+ cr/);
    expect(out).toContain('FLIGHTS');
  });

  it('leaves the old file whole when it is killed in the middle', async () => {
    const place = folder();
    const file = join(place, 'plan.json');
    writeFileSync(file, 'the old plan');
    const { child, ended } = start('plan', seed, '--seconds', '60', '--end', 'minimum', '--out', file);
    await hasSaid(child, ' cr');
    child.kill('SIGKILL');
    await ended;
    expect(readFileSync(file, 'utf8')).toBe('the old plan');
    expect(readdirSync(place)).toEqual(['plan.json']);
  });
});
