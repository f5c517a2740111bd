import { checkLoad } from '@drumline/loading';
import { describe, expect, it } from 'vitest';
import { namedLoad, numbers, scenario, sheetOf, standing } from './sheet-of-flight.js';

describe('the load sheet of F04, whose pilot is cleared for classes 1 and 2', () => {
  const load = namedLoad('F04', standing(numbers(447, 5), 'XESK', []));
  const { alternates, notToUse } = sheetOf('F04', load, 'FW4').legs[0]!.goBack;

  it('names no strip of class 3, though the nearest is one', () => {
    const willDo = alternates.filter(({ whyNot }) => whyNot === null).map(({ place }) => place);
    const classOf = (code: string) => scenario.places.find((place) => place.code === code)!.stripClass!;
    expect(willDo.length).toBeGreaterThan(1);
    expect(willDo.filter((code) => classOf(code) > 2)).toEqual([]);
    expect(notToUse).toBe('Not to use: XKNA (FW4 is not cleared for XKNA, class 3).');
  });

  it('one that is closed to type C when soft only while its report is fresh', () => {
    const hask = (departs: string) =>
      sheetOf('F04', load, 'FW4', departs).legs[0]!.goBack.alternates.find(({ place }) => place === 'XHAS')!;
    // Reported dry on Sunday at 23:40, fresh for 8 h: then only its fuel keeps it away.
    expect(hask('07:10').whyNot).toMatch(/^no fuel to come home: \d+ lb short$/);
    expect(hask('08:10').whyNot).toBe('closed to type C when soft, surface unknown');
  });
});

describe('wrong positions', () => {
  // Type C with the named drums of its own flight: the aft limit of 211.0 in is passed with rows 2 and 3.
  const four = standing(numbers(447, 4), 'XESK', ['R2L', 'R2R', 'R3L', 'R3R']);
  const { drums: ofF04 } = namedLoad('F04', four);

  it('four drums in rows 2 and 3 are refused, and two to row 1 mend it', () => {
    const load = namedLoad('F04', four);
    const report = checkLoad({ ...load, drums: ofF04 });
    expect(report.holds).toBe(false);
    expect(report.mend!.text).toBe('move two drums from row 3 to row 1');
    const positions = new Map(report.mend!.drums.map(({ id, position }) => [id, position]));
    const mended = ofF04.map((drum) => ({ ...drum, position: positions.get(drum.number)! }));
    expect(checkLoad({ ...load, drums: mended }).holds).toBe(true);
  });
});
