import {
  checkLoad,
  compareWithSheet,
  type NamedLoad,
  readSquareCode,
  type SheetLeg,
  type SheetTotals,
} from '@drumline/loading';
import { drawSquare } from '@drumline/loading/code-square';
import {
  loadOfFlight,
  type PickedDrum,
  type SheetSettings,
  type StandingFlight,
  sheetOfFlight,
} from '@drumline/planning';
import { kilograms, pounds } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { hollowtarn } from './hand-plan.js';

const scenario = hollowtarn();
const settings: SheetSettings = {
  goods: {
    set: {
      reference: 'demo operations manual 9.1',
      packaging: 'steel drum 1A1',
      emergencyContact: 'not asked for',
      fields: [
        { label: 'UN number', value: { text: 'UN 1863' } },
        { label: 'Packages', value: { from: 'number and kind of packages' } },
        { label: 'In all', value: { from: 'total quantity' } },
      ],
    },
    others: [],
    citedApproval: null,
    approvalsOnFile: [],
  },
  tieDown: null,
  toleranceLb: pounds(10),
};

const planned = (id: string): StandingFlight => scenario.handPlan.find((flight) => flight.id === id)!;

function namedLoad(id: string, picked: readonly PickedDrum[]): NamedLoad {
  const found = loadOfFlight(scenario, planned(id), picked);
  if (!found.found) throw new Error(found.why);
  return found.load;
}

const numbers = (first: number, count: number) =>
  Array.from({ length: count }, (_, index) => String(first + index).padStart(4, '0'));
const standing = (list: readonly string[], place: string, positions: readonly string[]): PickedDrum[] =>
  list.map((number, index) => ({ number, place, position: positions[index] ?? null }));

const sheetOf = (id: string, load: NamedLoad, pilot: string, departs = '07:10') => {
  const { aircraft, date } = planned(id);
  const flight = { id, aircraft, date, departs, pilot, version: 3, replaces: 2 };
  return sheetOfFlight(scenario, flight, load, settings);
};
const rowsOf = (leg: SheetLeg) => Object.fromEntries(leg.rows.map(({ label, lb }) => [label, lb]));
const rowOf = (leg: SheetLeg, label: string) => leg.rows.find((row) => row.label === label)!;

describe('the load sheet of F05', () => {
  const rows = ['R1L', 'R1R', 'R2L', 'R2R', 'R3L', 'R3R'];
  const load = namedLoad('F05', standing(numbers(447, 6), 'XLOR', rows));
  const sheet = sheetOf('F05', load, 'FW3');
  const out = sheet.legs[0]!;

  // The worked sheet of the demo territory (`load_sheet_example`): invented data, checked against itself.
  it('has the weights of the worked example, in printed integers', () => {
    expect(sheet.drums.map(({ number, position, grossKg, lb }) => [number, position, grossKg, lb])).toEqual([
      ['0447', 'R1L', 179, 395],
      ['0448', 'R1R', 179.7, 396],
      ['0449', 'R2L', 180.4, 398],
      ['0450', 'R2R', 179, 395],
      ['0451', 'R3L', 179.7, 396],
      ['0452', 'R3R', 180.4, 398],
    ]);
    expect(rowsOf(out)).toEqual({
      'Operating weight': 4980,
      '6 drums, as weighed': 2378,
      'zero fuel': 7358,
      'fuel at start-up': 1200,
      taxi: 30,
      'take-off XALD': 8528,
      'fuel to XLOR': 397,
      'land XLOR, dry': 8131,
      'land XLOR, soft': 8131,
      'leave XLOR full, dry': 8131,
      'leave XLOR as planned, dry': 5753,
    });
    expect(sheet.holds).toBe(true);
  });

  it('holds them against the limits, dry and soft', () => {
    expect(rowOf(out, 'zero fuel').limit).toEqual({ lb: 8200, spareLb: 842, holds: true });
    expect(rowOf(out, 'take-off XALD').limit).toEqual({ lb: 8800, spareLb: 272, holds: true });
    expect(rowOf(out, 'land XLOR, dry').limit).toEqual({ lb: 8300, spareLb: 169, holds: true });
    expect(rowOf(out, 'land XLOR, soft').limit).toEqual({ lb: 7600, spareLb: -531, holds: false });
    // 8,300 lb at landing and 397 lb on the way there.
    expect(out.allowedTakeoffLb).toBe(8697);
    expect(out.binds).toBe(
      'Nearest limit: drum positions, 6 of 6; nearest weight XLOR strip landing limit 169 lb spare.',
    );
  });

  it('has its centre of gravity at 191.8 in without fuel and 192.4 in at take-off', () => {
    const zeroFuel = rowOf(out, 'zero fuel').cg!;
    const takeoff = rowOf(out, 'take-off XALD').cg!;
    expect(
      [zeroFuel.armIn, zeroFuel.forwardIn, zeroFuel.aftIn].map((arm) => Number(arm!.toFixed(1))),
    ).toEqual([191.8, 180.9, 193.8]);
    expect([takeoff.armIn, takeoff.forwardIn].map((arm) => Number(arm!.toFixed(1)))).toEqual([192.4, 183.4]);
  });

  it('says what the fuel is made of', () => {
    expect(sheet.fuelWords).toBe(
      'Fuel at start-up: taxi 30 lb + XLOR 397 lb + XALD 397 lb + 10 % contingency 79 lb + 45 min reserve 289 lb + rounding 8 lb = 1,200 lb. demo operations manual, fuel, revision 4.',
    );
  });

  it('when it is soft: takes 4, leaves 0451 and 0452', () => {
    expect(out.goBack.ifSoft!.words).toBe(
      'If XLOR is soft: take 4, leave 0451 and 0452 here. Lands with 7,337 lb.',
    );
  });

  it('the pound between 2,378 lb and 1,078.2 kg is explained', () => {
    expect(out.totals.roundingWords).toBe('1,078.2 kg is 2,377 lb, row by row 2,378 lb: 1 lb is rounding');
  });

  it('tells the pilot what dangerous goods are aboard, and nothing on the empty leg home', () => {
    expect(out.particulars.map(({ value }) => value)).toEqual(['UN 1863', '6 × steel drum 1A1', '1,200 L']);
    expect(sheet.legs[1]!.particulars).toEqual([]);
  });

  it('has a code square of the whole flight in plain words', () => {
    expect(readSquareCode(sheet.square)).toEqual({ ok: true, checkCode: sheet.checkCode });
    for (const number of numbers(447, 6))
      expect(sheet.square).toMatch(new RegExp(`^R\\d[LR] ${number} `, 'm'));
    expect(sheet.square).toContain('LAND XLOR - DRY 8131 LB LIMIT 8300 SPARE 169');
    expect(sheet.square).toContain(
      'XLOR SOFT: 8131 LB AGAINST 7550 LB TAKE-OFF LIMIT - 581 LB OVER. UNLOAD 2 DRUMS',
    );
    expect(sheet.square).toContain('IF XLOR IS SOFT: TAKE 4 - LEAVE 0451 AND 0452 HERE.');
    // 109 modules at 40 mm are 0.37 mm each.
    expect(drawSquare(sheet.square).side).toBeLessThanOrEqual(109);
  });

  describe('Two totals', () => {
    const compare = (totals: SheetTotals, of: 'load' | 'take-off weight', typed: number) =>
      compareWithSheet(
        { totals, otherDrums: [] },
        {
          of,
          bySheetLb: of === 'load' ? totals.loadLb : totals.takeoffLb,
          typedLb: pounds(typed),
          toleranceLb: sheet.toleranceLb,
        },
      );

    it('a take-off weight without the load, or without the fuel, says so', () => {
      const kinds = (typed: number) =>
        compare(out.totals, 'take-off weight', typed).slips.map(({ kind }) => kind);
      expect(kinds(8528 - 2378)).toEqual(['load left out']);
      expect(kinds(8528 - (out.totals.fuelLb - 30))).toEqual(['fuel left out']);
    });

    it('the hand total 2,378 lb and the aircraft’s 8,528 lb agree', () => {
      expect(compare(out.totals, 'load', 2378)).toMatchObject({ agrees: true, differenceLb: 0 });
      expect(compare(out.totals, 'take-off weight', 8528)).toMatchObject({ agrees: true, differenceLb: 0 });
    });

    it('8,258 lb for 8,528 lb: 270 lb apart, two digits changed over', () => {
      const compared = compare(out.totals, 'take-off weight', 8258);
      expect(compared).toMatchObject({ agrees: false, differenceLb: 270 });
      expect(compared.slips.map(({ kind }) => kind)).toEqual(['digits swapped']);
    });

    it('the plan said 8,531 lb', () => {
      expect(out.totals.plannedTakeoffLb).toBe(8531);
    });
  });
});

describe('the load sheet of F06, the one-way strip', () => {
  const load = namedLoad('F06', standing(numbers(573, 4), 'XGAN', []));
  const sheet = sheetOf('F06', load, 'FW1');
  const out = sheet.legs[0]!;

  it('Unload or stay: 6,255 lb with its named drums against 6,250 lb, one drum must come off', () => {
    expect(out.goBack.leaveAgain).toMatchObject({
      arrivalLb: 6255,
      limitLb: 6250,
      overLb: 5,
      canLeaveLoaded: false,
    });
    expect(out.goBack.leaveAgain!.drumsOff).toHaveLength(1);
    expect(rowsOf(out)).toMatchObject({ 'zero fuel': 5831, 'take-off XMER': 6396, 'land XGAN, dry': 6255 });
  });

  it('Unload or stay by the plan: take-off 6,402 lb less 141 lb is 6,261 lb, 11 lb over', () => {
    expect(out.totals.plannedTakeoffLb).toBe(6402);
    expect(load.route.unloadOrStay[0]).toMatchObject({ printedArrivalLb: 6261, printedOverLb: 11 });
  });

  it('says when to go back', () => {
    expect(out.goBack.lines.slice(0, 2)).toEqual([
      'Go back if tailwind more than 3 kt. Decide by 1.1 NM final, at the stream fork.',
      'XGAN is one-way: land one direction, take off the other.',
    ]);
    // Home by 20:00 (the sun does not set): less 48.1 min of block both ways and 35 min on the ground.
    expect(out.goBack.latestLeave).toEqual({
      from: 'XMER',
      at: '18:36',
      setBy: { place: 'XMER', landBy: '20:00' },
    });
  });

  it('if it closes while you are away: home, 49 NM, though a strip is nearer', () => {
    // 424 lb on landing; home burns 141 lb: 283 lb, of 248 lb final reserve. XFAL: 293 lb, home 126 lb: 167 lb.
    const [home, ...others] = out.goBack.alternates;
    expect(home).toMatchObject({ place: 'XMER', isHome: true, fuelLb: 283, roomDrums: null });
    expect(others.find(({ place }) => place === 'XFAL')).toMatchObject({ fuelLb: 293, homeShortLb: 81 });
    expect(out.goBack.notToUse).toMatch(/^Not to use: XLOR \(no fuel to come home: \d+ lb short\)\.$/);
    expect(out.goBack.lines).toContain('If XGAN closes while you are away: come home with 4 drums.');
    expect(out.goBack.lines.join(' ')).not.toContain('no fuel to come home');
  });

  it('says until when it may leave, from the base and from the strip', () => {
    expect(out.goBack.lines).toContain('Leave XMER by 18:36, XGAN by 19:35: land XMER by 20:00.');
  });

  it('on the way home it is not sent back to the one-way strip', () => {
    const home = sheet.legs[1]!.goBack;
    expect(home.lines.join(' ')).not.toMatch(/[Gg]o back/);
    expect(home.lines.at(-1)).toBe(
      'If XMER closes while you are away: no place takes this flight. Hear from XMER before you leave XGAN.',
    );
  });
});

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

describe('a booked flight', () => {
  it('X1 has its passengers in seats; drums on it are refused with the rule', () => {
    const booked: StandingFlight = {
      id: 'X1',
      state: 'offered',
      date: '2027-06-14',
      aircraft: 'A1',
      from: 'XMER',
      stops: [],
      to: 'XMER',
    };
    const found = loadOfFlight(scenario, booked, []);
    if (!found.found) throw new Error(found.why);
    expect(found.load.cargo.filter(({ name }) => name.startsWith('passenger'))).toHaveLength(8);
    const goods = {
      ...settings.goods,
      others: [
        {
          number: '0573',
          content: 'fuel' as const,
          litres: scenario.policy.drum.fillLitres,
          position: 'AFT',
          fromLeg: 0,
          lastLeg: 0,
          unloadAt: 'XISK',
        },
      ],
    };
    const flight = {
      id: 'X1',
      aircraft: 'A1',
      date: '2027-06-14',
      departs: '08:00',
      pilot: null,
      version: 1,
      replaces: null,
    };
    const sheet = sheetOfFlight(scenario, flight, found.load, { ...settings, goods });
    expect(sheet.faults).toContain(
      'XMER-XISK: 4 passengers and 1 drum are refused (demo operations manual, cargo, revision 2). Only an approval of the authority on file sets this aside.',
    );
  });

  it('a drum that is aboard and not in the book counts with what its crew says it weighs, else as planned', () => {
    const own = numbers(447, 5);
    const rows = ['R1L', 'R1R', 'R2L', 'R2R', 'R3L', 'R3R'];
    const sheetWith = (toldKg: number | null) => {
      const told = toldKg === null ? null : kilograms(toldKg);
      const picked = standing([...own, '9999'], 'XLOR', rows).map((drum) => ({ ...drum, toldKg: told }));
      return sheetOf('F05', namedLoad('F05', picked), 'FW3');
    };
    const [told, untold] = [sheetWith(190), sheetWith(null)];
    // 190 kg is 419 lb, the planned 180 kg are 397 lb; 0447 has its weight by the book, whatever was said.
    const drum = ({ drums }: typeof told, which: string) => drums.find(({ number }) => number === which);
    expect(drum(told, '9999')).toMatchObject({ lb: 419, batch: 'NOT IN BOOK', leaveAt: 'XLOR' });
    expect(drum(untold, '9999')).toMatchObject({ lb: 397 });
    expect(drum(told, '0447')).toEqual(drum(untold, '0447'));
    expect(told.legs[0]!.totals.loadLb - untold.legs[0]!.totals.loadLb).toBe(22);
    expect(told.notInBookWords).toBe('9999 is not in the book: 190.0 kg by the crew.');
    expect(untold.notInBookWords).toBe('9999 is not in the book: no weight was told, 180.0 kg as planned.');
    expect(told.legs[0]!.particulars.map(({ value }) => value)).toContain('6 × steel drum 1A1');
  });

  it('a drum that is not in the book is an answer', () => {
    expect(
      loadOfFlight(scenario, planned('F05'), [{ number: '9999', place: 'XLOR', position: null }]),
    ).toEqual({
      found: false,
      why: 'There is no drum 9999 in the book',
    });
    expect(
      loadOfFlight(scenario, planned('F05'), [{ number: '0447', place: 'XGAN', position: null }]),
    ).toEqual({
      found: false,
      why: 'F05 does not land at XGAN',
    });
  });
});
