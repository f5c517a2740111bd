import { pounds } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { exampleDay, exampleFlight } from '../testing/example-flight.js';
import { howTheyAdd } from './how-they-add.js';
import { reasonWords, whyNotSigned } from './signing.js';
import { comparedTotals } from './two-totals.js';

const sheet = exampleFlight.sheet!;
const { loadLb, takeoffLb } = sheet.legs[0]!.totals;
const compare = (byHandLb: number, byAircraftLb: number) =>
  comparedTotals(exampleFlight, exampleDay, { byHandLb, byAircraftLb });

describe('two totals on the phone', () => {
  it('agree within the tolerance of the sheet, and not a pound further', () => {
    expect(compare(loadLb + 10, takeoffLb - 10).agrees).toBe(true);
    expect(compare(loadLb + 11, takeoffLb).agrees).toBe(false);
    expect(compare(loadLb, takeoffLb - 11)).toMatchObject({
      agrees: false,
      load: { agrees: true },
      takeoff: { agrees: false, differenceLb: 11 },
    });
  });

  it('apart by a whole drum name it, and a drum of the base that was taken for another', () => {
    expect(compare(loadLb - 395, takeoffLb).load.slips.map(({ kind }) => kind)).toContain('left out');
    // 0436 weighs 401 lb and stands at the base; 0434 weighs 395 lb. Within 10 lb nothing is asked.
    const tight = { ...exampleFlight, sheet: { ...sheet, toleranceLb: pounds(2) } };
    const typed = { byHandLb: loadLb + 6, byAircraftLb: takeoffLb };
    const words = comparedTotals(tight, exampleDay, typed).load.slips.map((slip) => slip.words);
    expect(words.join(' ')).toContain('0436 for 0434 in R1L');
  });
});

describe('how they add', () => {
  const [load, takeoff] = howTheyAdd(sheet, { byHandLb: 1198, byAircraftLb: takeoffLb });

  it('goes drum by drum, with what stands under each', () => {
    expect(load!.lines.map(({ label, lb, soFarLb }) => [label, lb, soFarLb])).toEqual([
      ['0434 in R1L', 395, 395],
      ['0435 in R1R', 396, 791],
      ['0437 in R2L', 398, 1189],
    ]);
    expect(load!.difference).toBe('1,189 lb by the sheet, 1,198 lb by hand. 1,198 − 1,189 = 9 lb.');
  });

  it('goes from the operating weight over fuel less taxi to the take-off weight', () => {
    expect(takeoff!.lines[0]).toMatchObject({ label: 'Operating weight', lb: 4500, soFarLb: 4500 });
    expect(takeoff!.lines.find(({ label }) => label === 'taxi')).toMatchObject({ sign: '-', lb: 30 });
    for (const { sign, lb, soFarLb } of takeoff!.lines) if (sign === '=') expect(soFarLb).toBe(lb);
    expect(takeoff!.lines.at(-1)).toMatchObject({ sign: '=', lb: takeoffLb });
  });

  it('has no word about which figure is right', () => {
    expect(`${load!.difference} ${takeoff!.difference}`).not.toMatch(/right|wrong|correct|should/i);
  });
});

describe('signing for a difference', () => {
  it('takes a reason and a second person, who is somebody else', () => {
    expect(whyNotSigned('A. Pilot', ' ', 'S. Keeper')).toBe('The reason first');
    expect(whyNotSigned('A. Pilot', 'scale is out', '')).toBe('The second person first');
    expect(whyNotSigned('A. Pilot', 'scale is out', ' a. pilot ')).toBe('Somebody else than yourself');
    expect(whyNotSigned('A. Pilot', 'scale is out', 'S. Keeper')).toBeNull();
  });

  it('keeps every attempt with the reason', () => {
    expect(reasonWords(' scale is out ', ['2,378 lb by hand', '2,387 lb by hand'])).toBe(
      'scale is out. Typed: 2,378 lb by hand; 2,387 lb by hand',
    );
  });
});
