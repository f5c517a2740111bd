import { readdirSync, readFileSync } from 'node:fs';
import { parseScenario, printFault } from '@drumline/contract';
import { tieDown as strapsFor, type TieDownSetting, tieDownFor } from '@drumline/loading';
import { pounds } from '@drumline/units';
import { describe, expect, it } from 'vitest';

const folder = new URL('../../seeds/', import.meta.url);
const read = (name: string) => parseScenario(readFileSync(new URL(name, folder), 'utf8'));
const scenarioOf = (name: string) => {
  const parsed = read(name);
  if (!parsed.ok) throw new Error(parsed.faults.map(printFault).join('\n'));
  return parsed.scenario;
};
const straps = ({ factors, kit }: TieDownSetting) => strapsFor(pounds(400), factors, kit);
const sum = (figures: readonly number[]) => figures.reduce((total, figure) => total + figure, 0);

describe.each(readdirSync(folder).filter((name) => name.endsWith('.json')))('%s', (name) => {
  it('is read without a fault or a doubt', () => {
    const parsed = read(name);
    expect([...(parsed.ok ? [] : parsed.faults), ...parsed.doubts].map(printFault)).toEqual([]);
  });

  it('has each drum at exactly one place, and the litres by place add up to the total', () => {
    const { drums, caches, bases } = scenarioOf(name);
    const byPlace = [...caches, ...bases].map(({ place }) => drums.filter((drum) => drum.place === place));
    expect(new Set(drums.map(({ number }) => number)).size).toBe(drums.length);
    expect(sum(byPlace.map((there) => there.length))).toBe(drums.length);
    expect(sum(byPlace.flat().map(({ litres }) => litres))).toBe(sum(drums.map(({ litres }) => litres)));
  });

  it('counts straps for every type, by figures with a reference, and has the operator’s own dangerous-goods fields', () => {
    const { aircraftTypes, tieDown = [], dangerousGoods } = scenarioOf(name);
    for (const { id } of aircraftTypes) {
      const setting = tieDownFor(tieDown, id);
      expect(setting?.factors.reference, id).toMatch(/manual/);
      expect(straps(setting!).layout).not.toBeNull();
    }
    expect(dangerousGoods!.fields.map(({ label }) => label)).toContain('UN number');
  });

  it('uses codes that belong to no real aerodrome', () => {
    // Location indicators begin with a letter of a region; none has I, J, Q or X (ICAO Doc 7910, from memory).
    for (const { code } of scenarioOf(name).places) expect(code).toMatch(/^[IJQX]/);
  });
});

it('the Hollowtarn register has 186 drums, 84 of them at the two bases', () => {
  const { drums, bases } = scenarioOf('hollowtarn.json');
  expect(drums).toHaveLength(186);
  expect(drums.filter(({ place }) => bases.some((base) => base.place === place))).toHaveLength(84);
});

it('the Hollowtarn plan by hand lands 73 drums in 16 flights', () => {
  const { handPlan } = scenarioOf('hollowtarn.json');
  expect(handPlan).toHaveLength(16);
  expect(sum(handPlan.flatMap(({ stops }) => stops.map(({ drums }) => drums)))).toBe(73);
});
